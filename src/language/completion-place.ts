// What is known of the place where something is proposed: its keys and words by the schemas, and the quantity that it holds.
import type { FileKind } from '../record/document.ts';
import { wordBeside, type Cursor } from '../record/cursor.ts';
import type { Registry } from '../registry/registry.ts';
import type { Quantity } from '../registry/quantity.ts';
import { findShotQuantity } from '../record/shot-quantity.ts';
import { descriptions, type Description } from './descriptions.generated.ts';
import { places, type Place } from './places.generated.ts';

export type Path = readonly (string | number)[];

/** What the schema says of this place; undefined where it knows none. */
export function placeAt(kind: FileKind, path: Path): Place | undefined {
  let place: Place | undefined = places[kind];
  for (const part of path) {
    const below: Place['below'] = place?.below;
    if (below === undefined) return undefined;
    place = typeof part === 'number' ? below['[]'] : Object.hasOwn(below, part) ? below[part] : below['*'];
  }
  return place;
}

/** The schema's sentence on this place. */
export function describedAt(kind: FileKind, path: Path): string | undefined {
  let place: Description | undefined = descriptions[kind];
  for (const part of path) {
    const below: Description['below'] = place?.below;
    if (below === undefined) return undefined;
    place = typeof part === 'number' ? below['[]'] : Object.hasOwn(below, part) ? below[part] : below['*'];
  }
  return place?.text;
}

/** The quantity whose value, list of readings or long form stands at this path. */
export function quantityAt(kind: FileKind, path: Path, registry: Registry): Quantity | undefined {
  const keys = [...path];
  while (typeof keys.at(-1) === 'number' || /^(?:value|window|give_or_take)$/.test(String(keys.at(-1))))
    keys.pop();
  const last = String(keys.at(-1));
  const first = keys[0];
  switch (kind) {
    case 'swing':
      if (first === 'goals') return keys.length === 3 ? registry.find(`flight.${last}`) : undefined;
      if (first === 'shots') return keys.length === 3 ? findShotQuantity(last, registry) : undefined;
      return registry.find(keys.join('.'));
    case 'student':
      if (first === 'goals') return keys.length === 3 ? registry.find(`flight.${last}`) : undefined;
      if (first === 'bag') return keys.length === 3 ? registry.find(`club.${last}`) : undefined;
      return keys.length === 1 ? registry.find(`student.${last}`) : undefined;
    case 'template':
      return registry.find(keys.join('.'));
    case 'faults':
    case 'review':
    case 'workspace':
      return undefined;
  }
}

/** The quantity that is named beside a value: what `to`, `by`, `direction` and `size` are about. */
export function quantityBeside(text: string, cursor: Cursor, registry: Registry): Quantity | undefined {
  const name = wordBeside(text, cursor, 'change') ?? wordBeside(text, cursor, 'effect');
  return name === undefined ? undefined : registry.find(name);
}
