// Finds the entries of a record that cannot all be true, one conflict after another; knows no single quantity.
import type { Agreement, Conflict, JudgedReading, ReadingRef } from './agreement-result.ts';
import { mirroredNumber, mirroredSituation } from './mirror.ts';
import { mostOfWindows, posteriorOf } from './posterior.ts';
import { normalQuantile } from './quantiles.ts';
import { readingsOf, type Reading } from './readings.ts';
import { reconcile, refit, type Reconciliation } from './reconciliation.ts';
import { likenessOf, votesFor } from './votes.ts';
import type { Judgement } from './statistics.ts';
import type { Situation } from './value.ts';

/** Below this redundancy a tenth or less of an error would show, and the rest would be blamed on others. */
export const leastRedundancy = 0.1;

/** How many records of a hundred may raise a warning though nothing is wrong with them. */
export const falseAlarms = 0.01;

/** Residuals that go together like this, and are as large to within `hair`, cannot be told apart. */
const alike = 0.98;
const hair = 0.02;

/**
 * Every reading against all the others. The reading with the largest normalised residual above the threshold is taken out
 * and the swing fitted anew until none is left (Baarda 1968, data snooping; backward elimination as in survey engineering);
 * those that fit in the end are taken back. The threshold keeps false alarms to one record in a hundred (Šidák 1967 over
 * the checked readings). Never throws, always ends, gives no number that is not finite.
 */
export function agree(situation: Situation): Agreement {
  const plain = mirroredSituation(situation);
  const first = reconcile(plain);
  if (!first) return unsolved(readingsOf(situation));
  const outcome = eliminated(first);
  return presented(first, outcome, situation.hand);
}

interface Outcome {
  readonly last: Reconciliation;
  readonly threshold: number;
  readonly groups: readonly Group[];
}

/** Measurements that were taken out together, since they could not be told apart, and the fit that spoke against them. */
interface Group {
  readonly members: readonly number[];
  readonly at: Reconciliation;
}

function eliminated(first: Reconciliation): Outcome {
  const checked = first.measured.filter((_, i) => isChecked(first, i)).length;
  const threshold = thresholdFor(checked);
  const original = first.problem.measurements.map((measurement) => measurement.u);
  const us = [...original];
  let last = first;
  let groups: Group[] = [];
  for (let round = 0; round < original.length; round++) {
    const worst = worstOf(last, threshold);
    if (worst === undefined) break;
    const members = [worst, ...indistinguishable(last, worst)];
    for (const i of members) us[i] = Infinity;
    const next = refit(last, us);
    if (!next) break;
    groups.push({ members, at: last });
    last = next;
  }
  const fitting = groups.filter(({ members }) =>
    members.every((i) => members.length === 1 && Math.abs(strangeness(last, i, original[i]!)) < threshold),
  );
  if (groups.length > 1 && fitting.length > 0) {
    for (const i of fitting.flatMap((group) => group.members)) us[i] = original[i]!;
    const next = refit(last, us);
    if (next && worstOf(next, threshold) === undefined) {
      last = next;
      groups = groups.filter((group) => !fitting.includes(group));
    }
  }
  return { last, threshold, groups };
}

/** Two-sided, for `checked` normal residuals of which none may exceed it in all but `falseAlarms` of the records. */
function thresholdFor(checked: number): number {
  const each = 1 - (1 - falseAlarms) ** (1 / Math.max(1, checked));
  return -normalQuantile(each / 2);
}

/** None where only windows would show an error. */
function redundancyOf(at: Reconciliation, i: number): number {
  const { redundancy, windows } = at.statistics.judgements[i]!;
  return windows <= mostOfWindows ? redundancy : 0;
}

/** Enough redundancy, and what is implied rests on entries more than on windows. */
function isChecked(at: Reconciliation, i: number): boolean {
  const judgement = at.statistics.judgements[i]!;
  return (
    judgement.normalised !== undefined &&
    judgement.redundancy >= leastRedundancy &&
    judgement.windows <= mostOfWindows
  );
}

function worstOf(at: Reconciliation, threshold: number): number | undefined {
  const above = at.statistics.judgements
    .map((judgement, i) => ({ i, w: Math.abs(judgement.normalised ?? 0) }))
    .filter(({ w }) => w > threshold)
    .sort((a, b) => b.w - a.w);
  return above.find(({ i }) => isChecked(at, i))?.i;
}

function indistinguishable(at: Reconciliation, worst: number): readonly number[] {
  const { judgements } = at.statistics;
  const largest = Math.abs(judgements[worst]!.normalised!);
  return judgements.flatMap(({ normalised }, i) => {
    if (i === worst || normalised === undefined || Math.abs(normalised) < largest * (1 - hair)) return [];
    return isChecked(at, i) && Math.abs(likenessOf(at, worst, i)) > alike ? [i] : [];
  });
}

/** (value − prediction) over its standard uncertainty for a measurement that was taken out. */
function strangeness(at: Reconciliation, i: number, u: number): number {
  const implied = at.statistics.judgements[i]!.implied;
  const value = at.problem.measurements[i]!.value;
  return implied ? (value - implied.value) / Math.hypot(u, implied.u) : 0;
}

function presented(first: Reconciliation, outcome: Outcome, hand: Situation['hand']): Agreement {
  const { last, threshold, groups } = outcome;
  const groupOf = new Map(groups.flatMap((group) => group.members.map((i) => [i, group] as const)));
  const place = new Map(last.measured.map((r, i) => [r, i]));
  const entries = last.readings.map((reading, r): JudgedReading => {
    const bare = bareOf(reading, hand);
    const i = place.get(r);
    if (i === undefined) return bare;
    const group = groupOf.get(i);
    const { implied, normalised } = judgementOf(outcome, i, group);
    const isJudged = group !== undefined || isChecked(last, i);
    return {
      ...bare,
      implied: implied ? mirroredNumber(reading.id, implied.value, hand) : null,
      uImplied: implied?.u ?? null,
      w: isJudged && normalised !== undefined ? mirroredNumber(reading.id, normalised, hand) : null,
      redundancy: redundancyOf(group?.at ?? last, i),
      verdict: group ? 'conflict' : isJudged ? 'fits' : 'unchecked',
    };
  });
  const conflicts = groups.flatMap((group) =>
    group.members.map((i): Conflict => {
      const { id, reading, value, u, implied, uImplied, w } = entries[last.measured[i]!]!;
      const outvotedBy = votesFor(group.members.length > 1 ? group.at : last, i);
      const rivals = group.members.filter((other) => other !== i).map((other) => refOf(last, other));
      return {
        id,
        reading,
        value,
        u,
        implied: implied ?? value,
        uImplied: uImplied ?? 0,
        w: w ?? 0,
        outvotedBy,
        rivals,
      };
    }),
  );
  const { chiSquared, freedom, p } = first.statistics;
  const posterior = posteriorOf(last, hand);
  return { status: 'solved', chi2: chiSquared, dof: freedom, p, threshold, entries, posterior, conflicts };
}

/**
 * A single misfit is held against the fit without it; rivals each against all the others as they stood, since without
 * them nobody may be left to speak.
 */
function judgementOf(
  { last }: Outcome,
  i: number,
  group: Group | undefined,
): Pick<Judgement, 'implied' | 'normalised'> {
  if (!group) return last.statistics.judgements[i]!;
  if (group.members.length > 1) return group.at.statistics.judgements[i]!;
  const { implied } = last.statistics.judgements[i]!;
  if (!implied) return group.at.statistics.judgements[i]!;
  return { implied, normalised: strangeness(last, i, group.at.problem.measurements[i]!.u) };
}

function refOf({ readings, measured }: Reconciliation, i: number): ReadingRef {
  const { id, reading } = readings[measured[i]!]!;
  return { id, reading };
}

function bareOf({ id, reading, value, u }: Reading, hand: Situation['hand']): JudgedReading {
  return {
    id,
    reading,
    value: mirroredNumber(id, value, hand),
    u,
    implied: null,
    uImplied: null,
    w: null,
    redundancy: 0,
    verdict: 'unchecked',
  };
}

function unsolved(readings: readonly Reading[]): Agreement {
  return {
    status: 'unsolved',
    chi2: 0,
    dof: 0,
    p: 1,
    threshold: thresholdFor(1),
    entries: readings.map((reading) => bareOf(reading, 'right')),
    posterior: new Map(),
    conflicts: [],
  };
}
