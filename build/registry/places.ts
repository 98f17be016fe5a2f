// Writes what may stand at each place of each kind of file (a mapping, a list, a value, which words), for completion; knows nothing of how files are read.
import { referenceOf, writtenByUser } from './keys.ts';
import type { Schema } from './schemas/parts.ts';

type Definitions = Readonly<Record<string, Schema>>;

/** The module's text; equal places are written once. */
export function writePlaces(schemas: ReadonlyMap<string, Schema>): string {
  const names = new Map<string, string>();
  const lines: string[] = [];
  const nameOf = (place: string): string => {
    const known = names.get(place);
    if (known !== undefined) return known;
    const name = `p${names.size}`;
    names.set(place, name);
    lines.push(`const ${name}: Place = ${place};`);
    return name;
  };
  const write = (written: Schema, definitions: Definitions): string => {
    const reference = referenceOf(written);
    const schema = reference === undefined ? written : (definitions[reference] ?? {});
    const below = [
      ...Object.entries((schema.properties ?? {}) as Record<string, Schema>),
      ...writtenByUser(schema).map((others) => ['*', others] as const),
      ...(schema.items === undefined ? [] : [['[]', schema.items as Schema] as const]),
    ].map(([key, part]) => `${JSON.stringify(key)}: ${write(part, definitions)}`);
    const words = wordsOf(schema);
    return nameOf(
      `{ holds: '${holdsOf(schema)}'${words.length === 0 ? '' : `, words: ${JSON.stringify(words)}`}${below.length === 0 ? '' : `, below: { ${below.join(', ')} }`} }`,
    );
  };
  const kinds = [...schemas].map(
    ([kind, schema]) => `  ${kind}: ${write(schema, (schema.definitions ?? {}) as Definitions)},`,
  );
  return `${header}${lines.join('\n')}\n\n/** By kind of file, from the whole file down. */\nexport const places = {\n${kinds.join('\n')}\n} as const;\n`;
}

function holdsOf(schema: Schema): 'mapping' | 'list' | 'value' {
  const types = ([] as unknown[]).concat(schema.type ?? 'string').filter((type) => type !== 'null');
  if (types.length !== 1) return 'value';
  return types[0] === 'object' ? 'mapping' : types[0] === 'array' ? 'list' : 'value';
}

function wordsOf(schema: Schema): readonly string[] {
  if (Array.isArray(schema.enum)) return schema.enum.filter((word) => word !== null).map(String);
  if (schema.type !== undefined && ([] as unknown[]).concat(schema.type).includes('boolean'))
    return ['true', 'false'];
  return typeof schema.pattern === 'string' ? schema.pattern.slice(2, -2).split('|') : [];
}

const header = `// Generated from the schemas by \`npx tsx build/generate.ts\`: what may stand at each place; do not edit.

export interface Place {
  /** What is written here: a mapping or a list only, or a value (which may have longer forms). */
  readonly holds: 'mapping' | 'list' | 'value';
  /** Where only some words may stand. */
  readonly words?: readonly string[];
  /** \`*\` stands for any key, \`[]\` for the items of a list. */
  readonly below?: { readonly [key: string]: Place };
}

`;
