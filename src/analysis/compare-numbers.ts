// Compares the numbers of two records: entries, what is computed from them, predictions, means of shots; knows no words and no file.
import { wide95 } from '../judgement/changed.ts';
import { uncertaintyOfMean } from '../judgement/measured.ts';
import type { Entry, Reading } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { standardUncertainty } from '../registry/registry.ts';
import { combineReadings } from '../model/combine.ts';
import type { ShotStatistic } from '../model/shots.ts';
import type { Aspect, Difference, Figure, QuantityChange, ShotsChange, ShotsOf } from './comparison.ts';
import type { RecordAnalysis } from './compare.ts';

/** Relative: another unit or notation for the same number leaves no more than the dust of binary fractions. */
const dust = 1e-9;
/** A computed number that moved by less than this share of its uncertainty is shown with the same digits: it is no change. */
const unnoticed = 0.01;

export function compareEntries(
  first: RecordAnalysis,
  second: RecordAnalysis,
): { readonly changes: readonly QuantityChange[]; readonly same: number } {
  const [a, b] = [entriesOf(first), entriesOf(second)];
  let same = 0;
  const changes = orderedIds(a, b, first).flatMap((id): QuantityChange[] => {
    const [before, after] = [a.get(id), b.get(id)];
    if (before !== undefined && after !== undefined) {
      const aspects = aspectsOf(before, after, first, second);
      if (aspects.length > 0)
        return [turned(changeOf('changed', after.quantity, id, first, second, aspects), before, after)];
      same += 1;
      return [];
    }
    const quantity = (after ?? before)!.quantity;
    const change = changeOf(before === undefined ? 'new' : 'gone', quantity, id, first, second, []);
    return [turned(change, before, after)];
  });
  return { changes, same };
}

/** A wind is as far from another as the one arrow is from the other, not as the one speed is from the other. */
function turned(change: QuantityChange, before: Entry | undefined, after: Entry | undefined): QuantityChange {
  const [from, to] = [fromOf(before), fromOf(after)];
  if (from === undefined && to === undefined) return change;
  const [a, b] = [change.before && { ...change.before, from }, change.after && { ...change.after, from: to }];
  return { ...change, before: a, after: b, difference: differenceOf(a, b) };
}

function fromOf(entry: Entry | undefined): Figure['from'] {
  const measure = entry?.readings.find((reading) => reading.measure.bearing !== undefined)?.measure;
  const { bearing, direction } = measure ?? {};
  return bearing === undefined || direction === undefined ? undefined : { bearing, word: direction };
}

/** Of what neither record enters: what one of them alone enters is told with the entries. */
export function compareComputed(first: RecordAnalysis, second: RecordAnalysis): readonly QuantityChange[] {
  const [entered, others] = [entriesOf(first), entriesOf(second)];
  const [a, b] = [first.derivation!.values, second.derivation!.values];
  return orderedIds(a, b, first).flatMap((id): QuantityChange[] => {
    const quantity = second.subject.registry.find(id) ?? first.subject.registry.find(id);
    if (quantity === undefined || entered.has(id) || others.has(id)) return [];
    const [before, after] = [a.get(id), b.get(id)];
    if (before === undefined || after === undefined)
      return [changeOf(before === undefined ? 'new' : 'gone', quantity, id, first, second, [])];
    const most = unnoticed * Math.max(before.u ?? 0, after.u ?? 0);
    const isMoved = Math.abs(after.value - before.value) > Math.max(most, dust * Math.abs(before.value));
    const isSurer = Math.abs((after.u ?? 0) - (before.u ?? 0)) > most;
    return isMoved || isSurer ? [changeOf('changed', quantity, id, first, second, [])] : [];
  });
}

/** What the plans are predicted to lead to. */
export function comparePredicted(first: RecordAnalysis, second: RecordAnalysis): readonly QuantityChange[] {
  const [a, b] = [withReadings(first.document.predicted), withReadings(second.document.predicted)];
  return orderedIds(a, b, first).flatMap((id): QuantityChange[] => {
    const [before, after] = [a.get(id), b.get(id)];
    const aspects = before && after ? aspectsOf(before, after, first, second) : [];
    if (before !== undefined && after !== undefined && aspects.length === 0) return [];
    const [from, to] = [figureOf(before, first), figureOf(after, second)];
    const state = before === undefined ? 'new' : after === undefined ? 'gone' : 'changed';
    const { quantity } = (after ?? before)!;
    return [{ quantity, state, before: from, after: to, difference: differenceOf(from, to), aspects }];
  });
}

/** Means are compared, spreads only told: with as few shots as in a lesson a spread is hardly known itself. */
export function compareShots(first: RecordAnalysis, second: RecordAnalysis): readonly ShotsChange[] {
  const none: ReadonlyMap<string, ShotStatistic> = new Map();
  const a = first.subject.shots?.summary?.statistics ?? none;
  const b = second.subject.shots?.summary?.statistics ?? none;
  return orderedIds(a, b, first).flatMap((id): ShotsChange[] => {
    const quantity = second.subject.registry.find(id) ?? first.subject.registry.find(id);
    if (quantity === undefined) return [];
    const [before, after] = [shotsOf(a.get(id)), shotsOf(b.get(id))];
    const isSame =
      before?.count === after?.count &&
      isClose(before?.mean, after?.mean, before?.u ?? 0) &&
      isClose(before?.sd, after?.sd, before?.sd ?? 0);
    if (isSame) return [];
    const state = before === undefined ? 'new' : after === undefined ? 'gone' : 'changed';
    return [
      {
        quantity,
        state,
        before,
        after,
        difference: differenceOf(before && meanOf(before), after && meanOf(after)),
      },
    ];
  });
}

/** The second less the first, with the uncertainty that measuring twice gives it. */
export function differenceOf(
  before: Pick<Figure, 'value' | 'u' | 'from'> | undefined,
  after: Pick<Figure, 'value' | 'u' | 'from'> | undefined,
): Difference {
  if (before === undefined || after === undefined)
    return { value: undefined, u: undefined, size: 'not known' };
  const turn = (after.from?.bearing ?? 0) - (before.from?.bearing ?? 0);
  if (before.from !== undefined && after.from !== undefined && turn !== 0) {
    // |b − a|² = a² + b² − 2ab cos γ, the law of cosines, with γ between the sides that the winds come from. The uncertainty is that of
    // the two speeds alone: how exactly a side is told, the words say nothing of, and it is left out (judgement).
    const between = Math.sqrt(
      before.value ** 2 + after.value ** 2 - 2 * before.value * after.value * Math.cos(turn),
    );
    return { ...differenceOf({ value: 0, u: before.u }, { value: between, u: after.u }), isTurned: true };
  }
  const value = after.value - before.value + 0;
  if (before.u === null || after.u === null) return { value, u: undefined, size: 'not known' };
  const u = Math.hypot(before.u, after.u);
  if (!(u > 0 && u < Infinity && Number.isFinite(value))) return { value, u: undefined, size: 'not known' };
  return { value, u, size: Math.abs(value) > wide95 * u ? 'larger' : 'within' };
}

function changeOf(
  state: QuantityChange['state'],
  quantity: Quantity,
  id: string,
  first: RecordAnalysis,
  second: RecordAnalysis,
  aspects: readonly Aspect[],
): QuantityChange {
  const [before, after] = [standing(id, first), standing(id, second)];
  return { quantity, state, before, after, difference: differenceOf(before, after), aspects };
}

function standing(id: string, { derivation }: RecordAnalysis): Figure | undefined {
  const value = derivation?.values.get(id);
  return value && { value: value.value, u: value.u, kind: value.kind };
}

/** Every entry that has a number: of the record, the student and the club. */
function entriesOf({ document, subject }: RecordAnalysis): ReadonlyMap<string, Entry> {
  const { student, club } = subject;
  return withReadings(
    new Map([...(student?.document.entries ?? []), ...(club?.entries ?? []), ...document.entries]),
  );
}

function withReadings(entries: ReadonlyMap<string, Entry>): ReadonlyMap<string, Entry> {
  return new Map([...entries].filter(([, { readings }]) => readings.length > 0));
}

/** In the order of the registry, which is that of a record as a reader expects it; quantities of a workspace's own come last. */
function orderedIds(
  a: ReadonlyMap<string, unknown>,
  b: ReadonlyMap<string, unknown>,
  { subject }: RecordAnalysis,
): readonly string[] {
  const places = placesOf(subject.registry.quantities);
  const place = (id: string): number => places.get(id) ?? places.size;
  return [...new Set([...a.keys(), ...b.keys()])].sort(
    (one, other) => place(one) - place(other) || (one < other ? -1 : 1),
  );
}

const kept = new WeakMap<readonly Quantity[], ReadonlyMap<string, number>>();

function placesOf(all: readonly Quantity[]): ReadonlyMap<string, number> {
  const places = kept.get(all) ?? new Map(all.map(({ id }, place) => [id, place]));
  kept.set(all, places);
  return places;
}

function aspectsOf(
  before: Entry,
  after: Entry,
  first: RecordAnalysis,
  second: RecordAnalysis,
): readonly Aspect[] {
  const [a, b] = [figureOf(before, first), figureOf(after, second)];
  // One reading more has most in common with the others: only what is new among them is told.
  const isAsMany = before.readings.length === after.readings.length;
  const words = (of: (reading: Reading) => string | number | boolean | undefined): boolean =>
    isAsMany
      ? !areSame(before.readings.map(of), after.readings.map(of))
      : !areSame([...new Set(before.readings.map(of))], [...new Set(after.readings.map(of))]);
  const all: readonly (readonly [Aspect, boolean])[] = [
    ['value', !isClose(a?.value, b?.value, Math.max(a?.u ?? 0, b?.u ?? 0))],
    ['uncertainty', !isClose(a?.u ?? undefined, b?.u ?? undefined, 0)],
    ['side of the wind', words(({ measure }) => measure.bearing)],
    ['method', words(({ measure }) => measure.method)],
    ['doubt', words(({ doubtful }) => doubtful)],
    ['note', words(({ note }) => note?.replace(/\s+/g, ' ').trim())],
    ['frame', words(({ seen }) => seen?.trim())],
    ['readings', !areSame(...valuesOf(before, after)) && before.readings.length + after.readings.length > 2],
  ];
  return all.flatMap(([aspect, differs]) => (differs ? [aspect] : []));
}

function valuesOf(before: Entry, after: Entry): readonly [readonly number[], readonly number[]] {
  const values = ({ readings }: Entry): readonly number[] =>
    readings.map(({ measure }) => roundedTo9(measure.value));
  return [values(before), values(after)];
}

/** Whether both lists hold the same, in whatever order. */
function areSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  const text = (list: readonly unknown[]): string =>
    JSON.stringify(list.map((one) => JSON.stringify(one) ?? '').sort());
  return text(a) === text(b);
}

function roundedTo9(value: number): number {
  return Number(value.toPrecision(9)) + 0;
}

function isClose(a: number | undefined, b: number | undefined, scale: number): boolean {
  if (a === undefined || b === undefined) return a === b;
  return a === b || Math.abs(a - b) <= dust * Math.max(Math.abs(a), Math.abs(b), scale);
}

function figureOf(entry: Entry | undefined, { subject }: RecordAnalysis): Figure | undefined {
  if (entry === undefined) return undefined;
  const coverage = subject.workspace?.document.coverage ?? 1;
  const combined = combineReadings(
    entry.id,
    entry.readings.map(({ measure, doubtful }) => ({
      value: measure.value,
      u: standardUncertainty(entry.quantity, measure, coverage, subject.registry).u,
      doubtful,
    })),
  );
  return combined && { value: combined.value, u: combined.u, kind: 'entered' };
}

function shotsOf(statistic: ShotStatistic | undefined): ShotsOf | undefined {
  if (statistic === undefined) return undefined;
  const { count, mean, sd } = statistic;
  return { count, mean, sd, u: uncertaintyOfMean(statistic) };
}

function meanOf({ mean, u }: ShotsOf): Pick<Figure, 'value' | 'u'> {
  return { value: mean, u: u ?? null };
}
