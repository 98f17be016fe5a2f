// Adds a workspace's own quantities to the published JSON Schema of a kind of file; knows no file and changes nothing in place.
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { FileKind } from './document.ts';
import { heldToNotation, type JsonSchema } from './notation-schema.ts';

/**
 * The same schema where the workspace has no quantity and no method of its own; else one with an `$id` of its own, the same for the
 * same quantities and methods.
 */
export function schemaWith(kind: FileKind, schema: JsonSchema, registry: Registry): JsonSchema {
  const { own, ownMethods } = registry;
  const isOfQuantities = kind === 'swing' || kind === 'template' || kind === 'student';
  if (!isOfQuantities || own.length + ownMethods.size === 0) return schema;
  const copy = structuredClone<Mutable>(schema);
  for (const quantity of own) {
    if (kind === 'student') addTo(copy, placeInStudent(quantity), quantity, 'measure');
    else addTo(copy, quantity.id.split('.'), quantity, kind === 'swing' ? 'measure' : 'window');
    if (quantity.section !== 'flight' || kind === 'template') continue;
    addTo(copy, ['goals', '[]', quantity.key], quantity, 'target');
    if (kind === 'swing') addTo(copy, ['shots', '[]', quantity.key], quantity, 'measure');
  }
  copy.$id = `${String(schema.$id)}:own-${fingerprint(JSON.stringify([own, [...ownMethods.keys()]]))}`;
  return heldToNotation(kind, copy, registry);
}

type Mutable = Record<string, unknown>;

/** Below the root for the student, below each club of the bag for a club; nowhere for others. */
function placeInStudent({ id, section }: Quantity): readonly string[] {
  const path = id.split('.').slice(1);
  if (section === 'student') return path;
  return section === 'club' ? ['bag', '*', ...path] : [];
}

/** Walks to the place, making mappings on the way where there are none; a section that the kind does not have is left out. */
function addTo(root: Mutable, path: readonly string[], quantity: Quantity, definition: string): void {
  let at = root;
  for (const [depth, part] of path.entries()) {
    if (part === '[]' || part === '*') {
      at = at[part === '[]' ? 'items' : 'additionalProperties'] as Mutable;
      continue;
    }
    const properties = (at.properties ??= {}) as Record<string, Mutable>;
    if (depth === path.length - 1) {
      properties[part] = {
        description: describe(quantity),
        allOf: [{ $ref: `#/definitions/${definition}` }],
      };
      return;
    }
    if (properties[part] === undefined && depth === 0) return;
    properties[part] ??= mapping(part);
    at = properties[part];
  }
}

function mapping(name: string): Mutable {
  return {
    description: `Quantities of ${name}.`,
    type: ['object', 'null'],
    properties: {},
    additionalProperties: false,
  };
}

function describe({ title, meaning, unit, directions }: Quantity): string {
  const words = directions.map(({ word }) => word).join(' / ');
  const sentences = [
    `${title}.`,
    meaning,
    `${unit === '' ? 'A plain number' : `In ${unit}`}${words === '' ? '' : `, ${words}`}.`,
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

/** FNV-1a over the UTF-16 units, 32 bits (Fowler, Noll, Vo; RFC 9923), to tell one set of quantities from another. */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
