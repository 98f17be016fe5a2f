// Writes what the schemas say of each place that is no quantity, for hovers; knows nothing of how files are read.
import { referenceOf, writtenByUser } from './keys.ts';
import { definitions as quantityParts, type Schema } from './schemas/parts.ts';

type Definitions = Readonly<Record<string, Schema>>;

/** The text of the module; places of equal words are written once. */
export function writeDescriptions(schemas: ReadonlyMap<string, Schema>): string {
  const names = new Map<string, string>();
  const lines: string[] = [];
  const nameOf = (node: string): string => {
    const known = names.get(node);
    if (known !== undefined) return known;
    const name = `d${names.size}`;
    names.set(node, name);
    lines.push(`const ${name}: Description = ${node};`);
    return name;
  };
  const write = (written: Schema, definitions: Definitions, isTop: boolean): string | undefined => {
    const reference = referenceOf(written);
    // A quantity's own entry says more than its schema.
    if (reference !== undefined && Object.hasOwn(quantityParts, reference)) return undefined;
    const schema = reference === undefined ? written : { ...definitions[reference], ...written };
    const below = [
      ...Object.entries((schema.properties ?? {}) as Record<string, Schema>),
      ...writtenByUser(schema).map((others) => ['*', others] as const),
      ...(schema.items === undefined ? [] : [['[]', schema.items as Schema] as const]),
    ].flatMap(([key, part]) => {
      const name = write(part, definitions, false);
      return name === undefined ? [] : [`${JSON.stringify(key)}: ${name}`];
    });
    const text = isTop ? schema.title : schema.description;
    if (text === undefined && below.length === 0) return undefined;
    const inner = below.length === 0 ? '' : `, below: { ${below.join(', ')} }`;
    return nameOf(`{ text: ${JSON.stringify(text ?? '')}${inner} }`);
  };
  const kinds = [...schemas].map(
    ([kind, schema]) => `  ${kind}: ${write(schema, (schema.definitions ?? {}) as Definitions, true)!},`,
  );
  return `${header}${lines.join('\n')}\n\n/** By kind of file, from the whole file down. */\nexport const descriptions = {\n${kinds.join('\n')}\n} as const;\n`;
}

const header = `// Generated from the schemas by \`npx tsx build/generate.ts\`: what stands at each place that is no quantity; do not edit.

/** One place in a sentence, and those below it; \`*\` stands for any key, \`[]\` for the items of a list. */
export interface Description {
  readonly text: string;
  readonly below?: { readonly [key: string]: Description };
}

`;
