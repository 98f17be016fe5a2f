// Writes schemas/QUANTITIES.md, the page that people read, in the units and words of quantities.yaml; knows no file.
import type { Checkpoint } from '../../src/registry/quantity.ts';
import type { Registry } from './source.ts';
import type { Edges, SourceEntry } from './source-schema.ts';

const sectionTitles: Readonly<Record<string, string>> = {
  delivery: 'Delivery: how the club head comes to the ball',
  ground: 'Ground: what the club leaves in the ground',
  strike: 'Strike: where on the face the ball is struck',
  flight: 'Flight: what the ball does',
  conditions: 'Conditions: the air and the place',
  student: 'Student',
  club: 'Club',
};

/** The text of the page, equal for equal registries. */
export function writeReference(registry: Registry): string {
  const { source } = registry;
  const { checkpoints: atCheckpoints, ...sections } = source.quantities;
  return [
    '<!-- Generated from schemas/quantities.yaml by `npx tsx build/generate.ts`; do not edit. -->',
    '',
    '# Quantities',
    '',
    'Every quantity that a record may hold, under the id that files, expressions and messages call it by. A bare number takes the unit given here. Where a quantity has two direction words, the first is the positive one, and a number without a word is taken as positive.',
    '',
    '- **Bounds** are what physics, anatomy or the Rules allow: a value outside is an error.',
    '- **Practice** is what is seen on a lesson tee: a value outside is only information.',
    '- **Uncertainty** is one standard deviation, taken where neither the record nor the workspace says better: first by the method named after `by`, else by the [method for that dimension](#methods), else the first figure here. An estimate (`~`) doubles it.',
    '- **Mirrored** marks quantities whose left and right change places for a left-handed player in what they mean for the swing; they are always written as the player sees them.',
    '- Sources: “judgement” is ours and chosen to be wide; “common practice, no source” is what the trade holds; “from memory” was not looked up.',
    '',
    '## Checkpoints',
    '',
    ...table(
      ['checkpoint', 'the moment at which'],
      Object.entries(registry.checkpoints).map(([name, { meaning }]) => [`\`${name}\``, meaning]),
    ),
    '',
    'The id of each is `checkpoints.<checkpoint>.` with the key below.',
    '',
    ...describe(Object.entries(atCheckpoints)),
    '',
    '### Practice at each checkpoint',
    '',
    ...table(
      ['key', 'unit', ...Object.keys(registry.checkpoints), 'source'],
      Object.entries(atCheckpoints).map(([key, entry]) => [
        `\`${key}\``,
        entry.unit,
        ...Object.keys(registry.checkpoints).map((c) => cell(entry, c as Checkpoint)),
        entry.practice.source,
      ]),
    ),
    '',
    ...Object.entries(sections).flatMap(([section, entries]) => [
      `## ${sectionTitles[section] ?? section}`,
      '',
      ...describe(Object.entries(entries).map(([path, entry]) => [`${section}.${path}`, entry] as const)),
      '',
    ]),
    '## Methods',
    '',
    'Default standard uncertainties by dimension, for quantities that have no figure of their own.',
    '',
    ...table(
      ['method', 'what it is', 'dimension', 'uncertainty', 'source'],
      Object.entries(source.methods).flatMap(([name, { meaning, uncertainty }]) =>
        Object.entries(uncertainty).map(([dimension, { u, unit, source: from }], index) => [
          index === 0 ? `\`${name}\`` : '',
          index === 0 ? meaning : '',
          dimension,
          withUnit(String(u), unit),
          from,
        ]),
      ),
    ),
    '',
    '## Kinds of club',
    '',
    ...table(
      ['kind', 'what it is'],
      Object.entries(registry.clubKinds).map(([kind, meaning]) => [`\`${kind}\``, meaning]),
    ),
    '',
    '## Shapes of shot',
    '',
    'For a right-handed player; left and right change places for a left-handed one.',
    '',
    ...table(
      ['word', 'starts', 'curves'],
      registry.shapes.map(({ word, start, curve, large }) => [
        `\`${word}\``,
        side(start),
        `${side(curve)}${large ? ', more than was wanted' : ''}`,
      ]),
    ),
    '',
  ].join('\n');
}

function describe(entries: readonly (readonly [string, SourceEntry])[]): readonly string[] {
  return table(
    ['id', 'meaning', 'from', 'to', 'unit', 'directions', 'practice', 'bounds', 'uncertainty'],
    entries.map(([id, entry]) => [
      `\`${id}\``,
      `**${entry.title}.** ${entry.meaning}${entry.lateral === true ? ' Mirrored.' : ''}`,
      entry.from,
      entry.to,
      entry.unit === '' ? 'plain number' : entry.unit,
      entry.directions === 'none' ? '–' : entry.directions,
      practice(entry),
      bounds(entry),
      uncertainty(entry),
    ]),
  );
}

function practice(entry: SourceEntry): string {
  const { window, source } = entry.practice;
  if (window !== undefined) return `${edges(window, entry.unit)}; ${source}`;
  return 'by checkpoint, below';
}

function cell(entry: SourceEntry, checkpoint: Checkpoint): string {
  const belongs = entry.at === 'all' || entry.at?.includes(checkpoint) === true;
  if (!belongs) return '';
  const window = entry.practice[checkpoint];
  return window === undefined ? '–' : edges(window, '');
}

function bounds(entry: SourceEntry): string {
  const elsewhere = Object.entries(entry.bounds.at ?? {}).map(
    ([checkpoint, range]) => `; at \`${checkpoint}\` ${edges(range.window, entry.unit)}, ${range.source}`,
  );
  return `${edges(entry.bounds.window, entry.unit)}; ${entry.bounds.source}${elsewhere.join('')}`;
}

function uncertainty({ uncertainty: { otherwise, by, source }, unit }: SourceEntry): string {
  const figures = Object.entries(by).map(([method, u]) => `; by ${method} ${u}`);
  return `${withUnit(String(otherwise), unit)}${figures.join('')}${source === undefined ? '' : `; ${source}`}`;
}

function edges([min, max]: Edges, unit: string): string {
  return withUnit(`${signed(min)} to ${signed(max)}`, unit);
}

function signed(value: number): string {
  return value < 0 ? `−${-value}` : String(value);
}

function withUnit(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}

function side(sign: number | undefined): string {
  if (sign === undefined) return 'anywhere';
  if (sign === 0) return 'straight';
  return sign > 0 ? 'right' : 'left';
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((text) => text.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)];
}
