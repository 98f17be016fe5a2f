// Writes schemas/QUANTITIES.md, the page that people read, in the units and words of quantities.yaml; knows no file.
import type { Checkpoint } from '../../src/registry/quantity.ts';
import type { Registry } from './source.ts';
import { practiceWindow } from './source.ts';
import type { Edges, EdgesByClub, SourceEntry } from './source-schema.ts';

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
  const names = Object.keys(registry.checkpoints) as Checkpoint[];
  const everywhere = Object.entries(atCheckpoints).filter(([, entry]) => entry.at === 'all');
  const elsewhere = Object.entries(atCheckpoints).flatMap(([path, entry]) =>
    entry.at === 'all' ? [] : (entry.at ?? []).map((at) => [`checkpoints.${at}.${path}`, entry] as const),
  );
  return [
    '<!-- Generated from schemas/quantities.yaml by `npx tsx build/generate.ts`; do not edit. -->',
    '',
    '# Quantities',
    '',
    'Every quantity that a record may hold, under the id that files, expressions and messages call it by. A bare number takes the unit given here. Where a quantity has two direction words, the first is the positive one, and a number without a word is taken as positive.',
    '',
    '- **Bounds** are what physics, anatomy or the Rules allow: a value outside is an error.',
    '- **Practice** is what is seen on a lesson tee: a value outside is only information. Children and tall adults are included; the edges are judgement even where the trade agrees on the middle. Where it hangs on the kind of club, the window of all clubs stands first.',
    '- **Uncertainty** is one standard deviation, taken where neither the record nor the workspace says better: first by the method named after `by`, else by the [method for that dimension](#methods), else the first figure here. An estimate (`~`) doubles it.',
    '- **Mirrored** marks quantities whose left and right change places for a left-handed player in what they mean for the swing; they are always written as the player sees them, and their windows here are as for a right-handed player.',
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
    ...meanings(registry, everywhere),
    '',
    ...table(
      ['key', 'bounds', 'uncertainty'],
      everywhere.map(([key, entry]) => [`\`${key}\``, bounds(entry), uncertainty(entry)]),
    ),
    '',
    '### Practice at each checkpoint',
    '',
    'A dash marks a checkpoint at which practice has nothing to say of the quantity.',
    '',
    ...table(
      ['key', 'unit', ...names.map((name) => name.replaceAll('_', ' ')), 'source'],
      everywhere.map(([key, entry]) => [
        `\`${key}\``,
        entry.unit,
        ...names.map((name) => practiceAt(entry, name)),
        entry.practice.source,
      ]),
    ),
    '',
    '### Only at some checkpoints',
    '',
    ...meanings(registry, elsewhere),
    '',
    ...figures(elsewhere),
    '',
    ...Object.entries(sections).flatMap(([section, entries]) => [
      `## ${sectionTitles[section] ?? section}`,
      '',
      ...meanings(registry, withSection(section, entries)),
      '',
      ...figures(withSection(section, entries)),
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
    '## Misses',
    '',
    'What a player complains of, each with what it is in a record; any one of them makes the miss. Left and right change places for a left-handed player, but for the words `left` and `right` themselves.',
    '',
    ...table(
      ['word', 'what it is', 'in a record'],
      Object.entries(source.misses).map(([word, { meaning, is }]) => [
        `\`${word}\``,
        meaning,
        Object.entries(is)
          .map(([id, direction]) => `\`${id}\` ${direction}`)
          .join(', '),
      ]),
    ),
    '',
    '## Contacts',
    '',
    'What a goal may want of the strike at `contact`, each with the windows that it is in a record; an end that is left out is open.',
    '',
    ...table(
      ['word', 'also', 'what it is', 'in a record'],
      Object.entries(source.contacts).map(([word, { also = [], meaning, means }]) => [
        `\`${word}\``,
        also.map((other) => `\`${other}\``).join(', '),
        meaning,
        Object.entries(means)
          .map(
            ([id, edges]) =>
              `\`${id}\` ${edgeWords(edges, registry.plainRows.find((row) => `${row.section}.${row.path}` === id)?.unit ?? '')}`,
          )
          .join(', '),
      ]),
    ),
    '',
    '## Parts of the body',
    '',
    'What cautions and injuries may name. Of a part with two sides `lead`, `trail`, `left` or `right` may stand before it.',
    '',
    ...table(
      ['part', 'belongs to', 'sides', 'also called'],
      registry.bodyParts.map(({ name, within, sides, also }) => [
        `\`${name}\``,
        within ?? '',
        sides ? 'two' : '',
        also.join(', '),
      ]),
    ),
    '',
  ].join('\n');
}

type Described = readonly (readonly [id: string, entry: SourceEntry])[];

function withSection(section: string, entries: Readonly<Record<string, SourceEntry>>): Described {
  return Object.entries(entries).map(([path, entry]) => [`${section}.${path}`, entry]);
}

function meanings(registry: Registry, entries: Described): readonly string[] {
  return table(
    ['id', 'meaning', 'from', 'to', 'unit', 'directions'],
    entries.map(([id, entry]) => [
      `\`${id}\``,
      `**${entry.title}.** ${entry.meaning}${entry.lateral === true ? ' Mirrored.' : ''}`,
      entry.from,
      entry.to,
      entry.unit === '' ? 'plain number' : entry.unit,
      directions(registry, entry.directions),
    ]),
  );
}

function figures(entries: Described): readonly string[] {
  return table(
    ['id', 'practice', 'bounds', 'uncertainty'],
    entries.map(([id, entry]) => [`\`${id}\``, practice(entry), bounds(entry), uncertainty(entry)]),
  );
}

function directions(registry: Registry, name: string): string {
  const words = registry.directions[name] ?? [];
  if (words.length === 0) return '–';
  if (words[0]?.bearing !== undefined) return words.map(({ word }) => word).join(', ');
  const ofSign = (sign: 1 | -1): string =>
    words
      .filter((word) => word.sign === sign)
      .map(({ word }) => word)
      .join(' or ');
  return `${ofSign(1)} / ${ofSign(-1)}`;
}

function practice(entry: SourceEntry): string {
  const { by_club: byClub, source, ...windows } = entry.practice;
  const [only] = Object.values(windows);
  const shown = practiceWindow(entry.practice) ?? only;
  if (shown === undefined) return '–';
  const kinds = byClub === undefined ? '' : `; ${withEachClub(byClub as EdgesByClub)}`;
  return `${edges(shown, entry.unit)}${kinds} (${source})`;
}

function practiceAt(entry: SourceEntry, checkpoint: Checkpoint): string {
  const window = entry.practice[checkpoint];
  const byClub = (entry.practice.by_club as Partial<Record<Checkpoint, EdgesByClub>> | undefined)?.[
    checkpoint
  ];
  if (window === undefined) return '–';
  return `${edges(window, '')}${byClub === undefined ? '' : `; ${withEachClub(byClub)}`}`;
}

function withEachClub(byClub: EdgesByClub): string {
  return Object.entries(byClub)
    .map(([kind, window]) => `${kind} ${edges(window, '')}`)
    .join(', ');
}

function bounds(entry: SourceEntry): string {
  const elsewhere = Object.entries(entry.bounds.at ?? {}).map(
    ([checkpoint, { window, source }]) => `; at \`${checkpoint}\` ${edges(window, entry.unit)} (${source})`,
  );
  return `${edges(entry.bounds.window, entry.unit)} (${entry.bounds.source})${elsewhere.join('')}`;
}

function uncertainty({ uncertainty: { otherwise, by, source }, unit }: SourceEntry): string {
  const figures = Object.entries(by).map(([method, u]) => `, by ${method} ${u}`);
  return `${withUnit(String(otherwise), unit)}${figures.join('')}${source === undefined ? '' : ` (${source})`}`;
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

function edgeWords({ from, to }: { readonly from?: number; readonly to?: number }, unit: string): string {
  if (to === undefined) return `at least ${from} ${unit}`;
  return from === undefined ? `at most ${to} ${unit}` : `${from} to ${to} ${unit}`;
}
