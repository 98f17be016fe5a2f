// Compiles the schemas into one self-contained module that needs neither Ajv nor eval; knows nothing of what they describe.
import { Ajv2020 } from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { build } from 'esbuild';
import { format } from 'prettier';
import type { Schema } from './schemas/parts.ts';

/** The module and its declarations; one exported function for each name in `schemas`. */
export async function compileValidators(
  schemas: ReadonlyMap<string, Schema>,
): Promise<{ readonly code: string; readonly declarations: string }> {
  const ajv = new Ajv2020({
    allErrors: true,
    allowUnionTypes: true,
    inlineRefs: false,
    messages: false,
    code: { source: true, esm: true, lines: false },
    schemas: [...schemas.values()].map((schema) => bare(schema) as Schema),
  });
  const exported = Object.fromEntries([...schemas].map(([name, schema]) => [name, String(schema.$id)]));
  const bundle = await build({
    stdin: { contents: standaloneCode(ajv, exported), resolveDir: import.meta.dirname, loader: 'js' },
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    target: 'es2022',
    minify: true,
    write: false,
    banner: { js: `// ${banner}\n/* eslint-disable */` },
    legalComments: 'none',
    logLevel: 'silent',
  });
  return { code: bundle.outputFiles[0]?.text ?? '', declarations: await declare([...schemas.keys()]) };
}

const banner =
  'Generated from schemas/*.schema.json by `npx tsx build/generate.ts`: says whether a parsed file has the shape of its kind; do not edit.';

function declare(names: readonly string[]): Promise<string> {
  const lines = [
    `// ${banner}`,
    '',
    '/** One way in which the data leave the schema. */',
    'export interface ShapeError {',
    '  /** A JSON pointer to the place in the data. */',
    '  readonly instancePath: string;',
    '  readonly schemaPath: string;',
    "  readonly keyword: 'additionalProperties' | 'enum' | 'exclusiveMinimum' | 'minimum' | 'maximum' | 'pattern' | 'required' | 'type';",
    '  /** By keyword: additionalProperty, allowedValues, comparison and limit, pattern, missingProperty, or type. */',
    '  readonly params: Readonly<Record<string, unknown>>;',
    '}',
    '',
    '/** True where the data have the shape; else `errors` holds every way in which they have not, until the next call. */',
    'export interface Validate {',
    '  (data: unknown): boolean;',
    '  errors?: readonly ShapeError[] | null;',
    '}',
    '',
    ...names.map((name) => `export const ${name}: Validate;`),
  ];
  return format(lines.join('\n'), { parser: 'typescript', printWidth: 110, singleQuote: true });
}

const annotations = new Set(['description', 'title', '$comment', '$schema']);

/**
 * A schema that accepts and refuses the same data in a twentieth of the code: without annotations, without wrappers
 * around a single reference, and with one pattern for keys whose values have the same shape.
 */
function bare(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(bare);
  if (typeof node !== 'object' || node === null) return node;
  const kept = Object.entries(node).filter(([key]) => !annotations.has(key));
  const [only] = kept;
  if (kept.length === 1 && only?.[0] === 'allOf') return (only[1] as unknown[])[0];
  const parts = kept.flatMap(([key, value]): [string, unknown][] => {
    if (key === 'definitions') return [[key, Object.fromEntries(bareEntries(value))]];
    return key === 'properties' ? groupAlike(bareEntries(value)) : [[key, bare(value)]];
  });
  const patterns = parts.flatMap(([key, value]) => (key === 'patternProperties' ? [value as Schema] : []));
  const all = patterns.length > 0 ? { patternProperties: Object.assign({}, ...patterns) as Schema } : {};
  return { ...Object.fromEntries(parts), ...all };
}

function bareEntries(map: unknown): [string, unknown][] {
  return Object.entries(map as Schema).map(([name, schema]) => [name, bare(schema)]);
}

function groupAlike(entries: readonly [string, unknown][]): [string, unknown][] {
  const groups = new Map<string, [string, unknown][]>();
  for (const entry of entries) {
    const shape = JSON.stringify(entry[1]);
    groups.set(shape, [...(groups.get(shape) ?? []), entry]);
  }
  const single = [...groups.values()].filter((group) => group.length === 1).flat();
  const patterns = [...groups.values()]
    .filter((group) => group.length > 1)
    .map((group): [string, unknown] => [
      `^(${group.map(([name]) => escape(name)).join('|')})$`,
      group[0]?.[1],
    ]);
  return [
    ...(single.length > 0 ? [['properties', Object.fromEntries(single)] as [string, unknown]] : []),
    ...(patterns.length > 0
      ? [['patternProperties', Object.fromEntries(patterns)] as [string, unknown]]
      : []),
  ];
}

/** Keys hold letters, digits, underscores, spaces and dots; only the dot means something in a pattern. */
function escape(name: string): string {
  return name.replaceAll('.', '\\.');
}
