// Reads schemas/quantities.yaml into rows in SI and says what is wrong with an entry; knows no file and writes nothing.
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'yaml';
import type { Dimension, DirectionWord } from '../../src/measure/measure.ts';
import { differenceToSI, findUnit, toSI } from '../../src/measure/units.ts';
import type { CheckpointRow, PlainRow, QuantityRow } from '../../src/registry/expand.ts';
import {
  checkpoints,
  type BodyPart,
  type Checkpoint,
  type Comparative,
  type Contact,
  type Method,
  type Miss,
  type Range,
  type RangeByClub,
  type Shape,
} from '../../src/registry/quantity.ts';
import { sourceSchema } from './source-schema.ts';
import type { Edges, EdgesByClub, SourceEntry, SourceFile, SourceRange } from './source-schema.ts';

/** What quantities.yaml says, in SI; `entries` keeps the words of the file for the reference page. */
export interface Registry {
  readonly checkpoints: Readonly<Record<Checkpoint, { readonly title: string; readonly meaning: string }>>;
  readonly clubKinds: Readonly<Record<string, string>>;
  readonly shapes: readonly Shape[];
  readonly misses: readonly Miss[];
  readonly contacts: readonly Contact[];
  readonly bodyParts: readonly BodyPart[];
  readonly directions: Readonly<Record<string, readonly DirectionWord[]>>;
  readonly comparatives: readonly Comparative[];
  readonly methods: readonly Method[];
  readonly checkpointRows: readonly CheckpointRow[];
  readonly plainRows: readonly PlainRow[];
  readonly source: SourceFile;
}

/** Throws an Error that names the entry and what was expected there. */
export function readRegistry(text: string): Registry {
  const source = parse(text) as SourceFile;
  const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(sourceSchema);
  if (!validate(source)) {
    const lines = (validate.errors ?? []).map(
      (e) => `${e.instancePath}: ${e.message} ${JSON.stringify(e.params)}`,
    );
    throw new Error(`quantities.yaml has a wrong shape:\n${lines.join('\n')}`);
  }
  const named = Object.keys(source.checkpoints);
  if (named.join() !== checkpoints.join()) throw new Error(`checkpoints must be ${checkpoints.join(', ')}`);

  const directions = Object.fromEntries(
    Object.entries(source.directions).map(([name, set]) => [name, directionWords(set)]),
  );
  const kinds = Object.keys(source.club_kinds);
  const sections = Object.entries(source.quantities);
  const checkpointRows = Object.entries(source.quantities.checkpoints).map(([path, entry]) =>
    checkpointRow(path, entry, directions, kinds),
  );
  const plainRows = sections
    .filter(([section]) => section !== 'checkpoints')
    .flatMap(([section, entries]) =>
      Object.entries(entries).map(([path, entry]) =>
        plainRow(section as PlainRow['section'], path, entry, directions, kinds),
      ),
    );
  const rows = new Map(plainRows.map((row) => [`${row.section}.${row.path}`, row]));
  return {
    checkpoints: source.checkpoints,
    clubKinds: source.club_kinds,
    shapes: Object.entries(source.shapes).map(([word, { start, curve, large }]) => ({
      word,
      start,
      curve,
      large: large ?? false,
    })),
    misses: Object.entries(source.misses).map(([word, { meaning, is, absolute }]) => ({
      word,
      meaning,
      signs: Object.entries(is).map(([id, direction]) => ({
        id,
        sign: signOf(word, rows.get(id), direction),
      })),
      absolute: absolute ?? false,
    })),
    contacts: Object.entries(source.contacts).map(([word, { meaning, also, means }]) => ({
      word,
      meaning,
      also: also ?? [],
      windows: Object.entries(means).map(([id, { from, to }]) => {
        const unit = rows.get(id)?.unit;
        if (unit === undefined) throw new Error(`contacts.${word}: no quantity is called ${id}`);
        const end = (edge: number | undefined): number | undefined =>
          edge === undefined ? undefined : toSI(edge, unit);
        return { id, min: end(from), max: end(to) };
      }),
    })),
    bodyParts: Object.entries(source.body_parts).map(([name, { within, sides, also }]) => {
      if (within !== undefined && !Object.hasOwn(source.body_parts, within))
        throw new Error(`body_parts.${name}: no part is called ${within}`);
      return { name, within, sides: sides ?? false, also: also ?? [] };
    }),
    directions,
    comparatives: source.comparatives.map((one) => {
      const known = [...rows.keys(), ...checkpointRows.map(({ path }) => `checkpoints.${path}`)];
      const unknown = one.of.find((id) => !known.includes(id));
      if (unknown !== undefined) throw new Error(`comparatives: no quantity is called ${unknown}`);
      return one;
    }),
    methods: Object.entries(source.methods).map(([name, method]) => ({
      name,
      meaning: method.meaning,
      uncertainty: Object.fromEntries(
        Object.entries(method.uncertainty).map(([dimension, { u, unit, source: from }]) => {
          requireDimension(`methods.${name}.${dimension}`, unit, dimension as Dimension);
          return [dimension, { u: differenceToSI(u, unit), source: from }];
        }),
      ),
    })),
    checkpointRows,
    plainRows,
    source,
  };
}

function checkpointRow(
  path: string,
  entry: SourceEntry,
  directions: Registry['directions'],
  kinds: readonly string[],
): CheckpointRow {
  const { source, window, by_club: byClub = {}, ...windows } = entry.practice;
  if (window !== undefined) throw new Error(`${path}: practice needs a window for each checkpoint`);
  const at = entry.at === 'all' ? checkpoints : checkpoints.filter((c) => entry.at?.includes(c));
  for (const named of Object.keys({ ...windows, ...byClub, ...entry.bounds.at })) {
    if (!at.includes(named as Checkpoint)) throw new Error(`${path} does not belong to ${named}`);
  }
  const practiceAt = Object.entries(windows).map(([c, edges]): [string, Range] => [
    c,
    range({ window: edges, source }, entry.unit),
  ]);
  const boundsAt = Object.entries(entry.bounds.at ?? {}).map(([c, bounds]): [string, Range] => [
    c,
    range(bounds, entry.unit),
  ]);
  const practiceByClubAt = Object.entries(byClub).map(([c, edges]): [string, RangeByClub] => [
    c,
    rangesByClub(`${path} at ${c}`, edges as EdgesByClub, windows[c as Checkpoint], entry, kinds),
  ]);
  return {
    ...shared(path, entry, directions),
    at,
    practiceAt: Object.fromEntries(practiceAt),
    ...(practiceByClubAt.length === 0 ? {} : { practiceByClubAt: Object.fromEntries(practiceByClubAt) }),
    boundsAt: Object.fromEntries(boundsAt),
  };
}

function plainRow(
  section: PlainRow['section'],
  path: string,
  entry: SourceEntry,
  directions: Registry['directions'],
  kinds: readonly string[],
): PlainRow {
  const { source, by_club: byClub } = entry.practice;
  const window = practiceWindow(entry.practice);
  if (window === undefined) throw new Error(`${section}.${path}: practice needs a window`);
  return {
    ...shared(path, entry, directions),
    section,
    practice: range({ window, source }, entry.unit),
    ...(byClub === undefined
      ? {}
      : {
          practiceByClub: rangesByClub(`${section}.${path}`, byClub as EdgesByClub, window, entry, kinds),
        }),
  };
}

/** The window of all kinds of club together, where each has its own. */
export function practiceWindow({ window, by_club: byClub }: SourceEntry['practice']): Edges | undefined {
  if (window !== undefined || byClub === undefined) return window;
  const all = Object.values(byClub as EdgesByClub);
  return [Math.min(...all.map(([min]) => min)), Math.max(...all.map(([, max]) => max))];
}

function rangesByClub(
  where: string,
  byClub: EdgesByClub,
  all: Edges | undefined,
  { practice, unit }: SourceEntry,
  kinds: readonly string[],
): RangeByClub {
  if (Object.keys(byClub).join() !== kinds.join())
    throw new Error(`${where}: practice by club needs ${kinds.join(', ')}`);
  for (const [kind, [min, max]] of Object.entries(byClub)) {
    if (all === undefined || min < all[0] || max > all[1])
      throw new Error(`${where}: practice with ${kind} leaves that of all clubs`);
  }
  return Object.fromEntries(
    Object.entries(byClub).map(([kind, window]) => [kind, range({ window, source: practice.source }, unit)]),
  );
}

function shared(path: string, entry: SourceEntry, directions: Registry['directions']): QuantityRow {
  requireDimension(path, entry.unit, entry.dimension);
  const words = entry.directions === 'none' ? [] : directions[entry.directions];
  if (words === undefined)
    throw new Error(`${path}: no set of direction words is called ${entry.directions}`);
  const by = Object.entries(entry.uncertainty.by).map(([name, u]): [string, number] => [
    name,
    differenceToSI(u, entry.unit),
  ]);
  return {
    path,
    title: entry.title,
    meaning: entry.meaning,
    from: entry.from,
    to: entry.to,
    dimension: entry.dimension,
    unit: entry.unit,
    decimals: entry.decimals,
    directions: words,
    lateral: entry.lateral ?? false,
    bounds: range(entry.bounds, entry.unit),
    uncertainty: {
      otherwise: differenceToSI(entry.uncertainty.otherwise, entry.unit),
      by: Object.fromEntries(by),
    },
  };
}

function range({ window: [min, max], source }: SourceRange, unit: string): Range {
  return { min: toSI(min, unit), max: toSI(max, unit), source };
}

/** Of a direction word of the quantity, or of `more` or `less`. */
function signOf(miss: string, row: PlainRow | undefined, word: string): 1 | -1 {
  if (row === undefined) throw new Error(`misses.${miss}: no such quantity`);
  if (word === 'more') return 1;
  if (word === 'less') return -1;
  const direction = row.directions.find((known) => known.word === word);
  if (direction === undefined) throw new Error(`misses.${miss}: ${row.path} has no direction ${word}`);
  return direction.sign;
}

function directionWords(set: SourceFile['directions'][string]): readonly DirectionWord[] {
  if (set.bearings !== undefined) {
    return Object.entries(set.bearings).map(([word, degrees]) => ({
      word,
      sign: 1,
      bearing: toSI(degrees, 'deg'),
    }));
  }
  return [
    ...(set.positive ?? []).map((word): DirectionWord => ({ word, sign: 1 })),
    ...(set.negative ?? []).map((word): DirectionWord => ({ word, sign: -1 })),
  ];
}

function requireDimension(where: string, unit: string, dimension: Dimension): void {
  const found = findUnit(unit);
  if (found?.name !== unit) throw new Error(`${where}: "${unit}" is not the printed spelling of a unit`);
  if (found.dimension !== dimension) throw new Error(`${where}: "${unit}" is a unit of ${found.dimension}`);
}
