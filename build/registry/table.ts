// Writes src/registry/generated.ts from the registry: the rows in SI and the words; knows no file.
import type { QuantityRow } from '../../src/registry/expand.ts';
import type { Range } from '../../src/registry/quantity.ts';
import type { Registry } from './source.ts';

/** The text of the module, equal for equal registries. */
export function writeTable(registry: Registry): string {
  const sources = sharedSources(registry);
  const range = (r: Range): string => `r(${r.min}, ${r.max}, s[${sources.indexOf(r.source)}])`;
  const ranges = (map: Readonly<Record<string, Range>>): string =>
    record(Object.entries(map).map(([name, r]) => [name, range(r)]));
  const setOf = new Map(Object.entries(registry.directions).map(([name, words]) => [words, name]));
  const shared = (row: QuantityRow): string =>
    [
      `path: ${quote(row.path)}, title: ${quote(row.title)}, meaning: ${quote(row.meaning)},`,
      `from: ${quote(row.from)}, to: ${quote(row.to)},`,
      `dimension: ${quote(row.dimension)}, unit: ${quote(row.unit)}, decimals: ${row.decimals},`,
      `directions: ${row.directions.length === 0 ? '[]' : `words.${setOf.get(row.directions)}`}, lateral: ${row.lateral},`,
      `bounds: ${range(row.bounds)},`,
      `uncertainty: { otherwise: ${row.uncertainty.otherwise}, by: ${record(numbers(row.uncertainty.by))} },`,
    ].join('\n    ');

  return [
    '// Generated from schemas/quantities.yaml by `npx tsx build/generate.ts`: quantities, methods and words in SI; do not edit.',
    "import type { DirectionWord } from '../measure/measure.ts';",
    "import { expand, type CheckpointRow, type PlainRow } from './expand.ts';",
    "import { checkpoints as everywhere } from './quantity.ts';",
    "import type { BodyPart, Checkpoint, Comparative, Contact, Method, Miss, Quantity, Range, Shape } from './quantity.ts';",
    '',
    'const r = (min: number, max: number, source: string): Range => ({ min, max, source });',
    '',
    `const s = [\n${sources.map((source) => `  ${quote(source)},\n`).join('')}] as const;`,
    '',
    `const words = {\n${lines(
      Object.entries(registry.directions).map(([name, set]) => {
        const items = set.map((w) => {
          const bearing = w.bearing === undefined ? '' : `, bearing: ${w.bearing}`;
          return `{ word: ${quote(w.word)}, sign: ${w.sign}${bearing} }`;
        });
        return `${name}: [${items.join(', ')}]`;
      }),
    )}} satisfies Record<string, readonly DirectionWord[]>;`,
    '',
    `const checkpointRows: readonly CheckpointRow[] = [\n${registry.checkpointRows
      .map((row) => {
        const at = row.at.length === Object.keys(registry.checkpoints).length ? 'everywhere' : array(row.at);
        const places = [
          `at: ${at},`,
          `practiceAt: ${ranges(row.practiceAt)},`,
          ...(row.practiceByClubAt === undefined
            ? []
            : [
                `practiceByClubAt: ${record(Object.entries(row.practiceByClubAt).map(([at, map]) => [at, ranges(map)]))},`,
              ]),
          `boundsAt: ${ranges(row.boundsAt)},`,
        ];
        return `  {\n    ${shared(row)}\n    ${places.join('\n    ')}\n  },\n`;
      })
      .join('')}];`,
    '',
    `const plainRows: readonly PlainRow[] = [\n${registry.plainRows
      .map((row) => {
        const practice = row.practice === undefined ? 'undefined' : range(row.practice);
        const byClub =
          row.practiceByClub === undefined ? '' : `\n    practiceByClub: ${ranges(row.practiceByClub)},`;
        return `  {\n    section: ${quote(row.section)}, ${shared(row)}\n    practice: ${practice},${byClub}\n  },\n`;
      })
      .join('')}];`,
    '',
    '/** Every quantity: checkpoint by checkpoint in their order, then section by section. */',
    'export const quantities: readonly Quantity[] = expand(checkpointRows, plainRows);',
    '',
    '/** What happens at each checkpoint, in their order. */',
    `export const checkpointWords: Readonly<Record<Checkpoint, { readonly title: string; readonly meaning: string }>> = {\n${lines(
      Object.entries(registry.checkpoints).map(
        ([name, { title, meaning }]) => `${name}: { title: ${quote(title)}, meaning: ${quote(meaning)} }`,
      ),
    )}};`,
    '',
    `export const methods: readonly Method[] = [\n${lines(
      registry.methods.map((method) => {
        const figures = Object.entries(method.uncertainty).map(([dimension, figure]): [string, string] => [
          dimension,
          `{ u: ${figure.u}, source: ${quote(figure.source)} }`,
        ]);
        return `{ name: ${quote(method.name)}, meaning: ${quote(method.meaning)}, uncertainty: ${record(figures)} }`;
      }),
    )}];`,
    '',
    `export const clubKinds = ${array(Object.keys(registry.clubKinds))} as const;`,
    'export type ClubKind = (typeof clubKinds)[number];',
    '',
    '/** What each kind of club is, in a few words. */',
    `export const clubKindMeanings: Readonly<Record<ClubKind, string>> = ${record(
      Object.entries(registry.clubKinds).map(([kind, meaning]) => [kind, quote(meaning)]),
    )};`,
    '',
    `export const shapes: readonly Shape[] = [\n${lines(
      registry.shapes.map(
        (shape) =>
          `{ word: ${quote(shape.word)}, start: ${shape.start}, curve: ${shape.curve}, large: ${shape.large} }`,
      ),
    )}];`,
    '',
    `export const misses: readonly Miss[] = [\n${lines(
      registry.misses.map(({ word, meaning, signs, absolute }) => {
        const items = signs.map(({ id, sign }) => `{ id: ${quote(id)}, sign: ${sign} }`);
        return `{ word: ${quote(word)}, meaning: ${quote(meaning)}, signs: [${items.join(', ')}], absolute: ${absolute} }`;
      }),
    )}];`,
    '',
    `export const contacts: readonly Contact[] = [\n${lines(
      registry.contacts.map(({ word, meaning, also, windows }) => {
        const items = windows.map(({ id, min, max }) => `{ id: ${quote(id)}, min: ${min}, max: ${max} }`);
        return `{ word: ${quote(word)}, meaning: ${quote(meaning)}, also: ${array(also)}, windows: [${items.join(', ')}] }`;
      }),
    )}];`,
    '',
    `export const comparatives: readonly Comparative[] = [\n${lines(
      registry.comparatives.map(
        ({ more, less, of }) => `{ more: ${array(more)}, less: ${array(less)}, of: ${array(of)} }`,
      ),
    )}];`,
    '',
    `export const bodyParts: readonly BodyPart[] = [\n${lines(
      registry.bodyParts.map(({ name, within, sides, also }) => {
        const outer = within === undefined ? 'undefined' : quote(within);
        return `{ name: ${quote(name)}, within: ${outer}, sides: ${sides}, also: ${array(also)} }`;
      }),
    )}];`,
    '',
    ...idTypes(registry),
    '',
  ].join('\n');
}

function idTypes(registry: Registry): readonly string[] {
  const rows = registry.checkpointRows;
  const all = Object.keys(registry.checkpoints).length;
  const everywhere = rows.filter((row) => row.at.length === all).map((row) => quote(row.path));
  const elsewhere = rows
    .filter((row) => row.at.length !== all)
    .flatMap((row) => row.at.map((checkpoint) => quote(`checkpoints.${checkpoint}.${row.path}`)));
  const plain = registry.plainRows.map((row) => quote(`${row.section}.${row.path}`));
  return [
    `type CheckpointKey =\n${everywhere.map((key) => `  | ${key}`).join('\n')};`,
    '',
    '/** Every id of the table. */',
    `export type QuantityId =\n  | \`checkpoints.\${Checkpoint}.\${CheckpointKey}\`\n${[
      ...elsewhere,
      ...plain,
    ]
      .map((id) => `  | ${id}`)
      .join('\n')};`,
  ];
}

function sharedSources(registry: Registry): readonly string[] {
  const ranges = [
    ...registry.checkpointRows.flatMap((row) => [
      row.bounds,
      ...Object.values(row.practiceAt),
      ...Object.values(row.boundsAt),
    ]),
    ...registry.plainRows.flatMap((row) => [
      row.bounds,
      ...(row.practice === undefined ? [] : [row.practice]),
    ]),
  ];
  return [...new Set(ranges.map((range) => range.source))];
}

function numbers(map: Readonly<Record<string, number>>): [string, string][] {
  return Object.entries(map).map(([name, value]) => [name, String(value)]);
}

function record(entries: readonly (readonly [string, string])[]): string {
  if (entries.length === 0) return '{}';
  return `{ ${entries.map(([name, value]) => `${/^\w+$/.test(name) ? name : quote(name)}: ${value}`).join(', ')} }`;
}

function array(items: readonly string[]): string {
  return `[${items.map(quote).join(', ')}]`;
}

function lines(items: readonly string[]): string {
  return items.map((item) => `  ${item},\n`).join('');
}

function quote(text: string): string {
  return text.includes("'") ? JSON.stringify(text) : `'${text}'`;
}
