// Writes which keys are known at each place of each kind of file, as the schemas have them; knows nothing of how files are read.
import type { Schema } from './schemas/parts.ts';

/** The module's text; equal mappings are written once. */
export function writeKeys(schemas: ReadonlyMap<string, Schema>): string {
  const names = new Map<string, string>();
  const lines: string[] = [];
  const nameOf = (tree: string): string => {
    const known = names.get(tree);
    if (known !== undefined) return known;
    const name = `k${names.size}`;
    names.set(tree, name);
    lines.push(`const ${name}: KeyTree = ${tree};`);
    return name;
  };
  const write = (schema: Schema, definitions: Readonly<Record<string, Schema>>): string => {
    const reference = referenceOf(schema);
    if (reference !== undefined) return write(definitions[reference] ?? {}, definitions);
    const parts = Object.entries((schema.properties ?? {}) as Record<string, Schema>).map(
      ([key, below]) => [key, write(below, definitions)] as const,
    );
    const any = writtenByUser(schema).map((others) => ['*', write(others, definitions)] as const);
    const items =
      schema.items === undefined ? [] : [['[]', write(schema.items as Schema, definitions)] as const];
    const all = [...parts, ...any, ...items];
    return nameOf(`{${all.map(([key, below]) => `${JSON.stringify(key)}:${below}`).join(',')}}`);
  };
  const kinds = [...schemas].map(
    ([kind, schema]) => `  ${kind}: ${write(schema, (schema.definitions ?? {}) as Record<string, Schema>)},`,
  );
  return `${header}${lines.join('\n')}\n\n/** By kind of file, from its top-level keys on. */\nexport const knownKeys = {\n${kinds.join('\n')}\n} as const;\n`;
}

/** What stands behind keys that the user names, whether any name will do or only some. */
export function writtenByUser({ additionalProperties, patternProperties }: Schema): readonly Schema[] {
  if (typeof additionalProperties === 'object') return [additionalProperties as Schema];
  return Object.values((patternProperties ?? {}) as Record<string, Schema>);
}

/** The definition that a schema refers to, wrapped or not. */
export function referenceOf(schema: Schema): string | undefined {
  const wrapped = (schema.allOf as readonly Schema[] | undefined)?.[0] ?? schema;
  return typeof wrapped.$ref === 'string' ? wrapped.$ref.split('/').at(-1) : undefined;
}

const header = `// Generated from the schemas by \`npx tsx build/generate.ts\`: the keys known at each place; do not edit.

/** Keys to what may stand below them; \`*\` stands for any key, \`[]\` for the items of a list. */
export interface KeyTree {
  readonly [key: string]: KeyTree;
}

`;
