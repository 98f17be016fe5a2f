// Takes out of a fit, one after another, the readings that contradict the rest; knows no single quantity and shows nothing.
import { mostOfWindows } from './posterior.ts';
import { normalQuantile } from './quantiles.ts';
import { refit, type Reconciliation } from './reconciliation.ts';
import { likenessOf } from './votes.ts';

/** Below this redundancy a tenth or less of an error would show, and the rest would be blamed on others. */
export const leastRedundancy = 0.1;

/** How many records of a hundred may raise a warning though nothing is wrong with them. */
export const falseAlarms = 0.01;

/** Residuals that go together like this, and are as large to within `hair`, cannot be told apart. */
const alike = 0.9;
const hair = 0.05;

export interface Outcome {
  readonly first: Reconciliation;
  readonly last: Reconciliation;
  readonly threshold: number;
  readonly groups: readonly Group[];
}

/** Measurements that were taken out together, since they could not be told apart, and the fit that spoke against them. */
export interface Group {
  readonly members: readonly number[];
  readonly at: Reconciliation;
}

/**
 * The reading with the largest normalised residual above the threshold goes, the rest is fitted anew, until none is left
 * (Baarda 1968, data snooping; backward elimination as in survey engineering); those that fit in the end come back. The
 * threshold keeps false alarms to `falseAlarms` (Šidák 1967 over the checked readings).
 */
export function eliminated(first: Reconciliation): Outcome {
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
  return { first, last, threshold, groups };
}

/** Two-sided, for `checked` normal residuals of which none may exceed it in all but `falseAlarms` of the records. */
export function thresholdFor(checked: number): number {
  const each = 1 - (1 - falseAlarms) ** (1 / Math.max(1, checked));
  return -normalQuantile(each / 2);
}

/** Enough redundancy, and what is implied rests on entries more than on windows. */
export function isChecked(at: Reconciliation, i: number): boolean {
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
export function strangeness(at: Reconciliation, i: number, u: number): number {
  const implied = at.statistics.judgements[i]!.implied;
  const value = at.problem.measurements[i]!.value;
  return implied ? (value - implied.value) / Math.hypot(u, implied.u) : 0;
}
