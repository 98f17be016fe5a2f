// Takes out of a fit, one after another, the readings that contradict the rest; knows no single quantity and shows nothing.
import { mostOfWindows } from './posterior.ts';
import { normalQuantile } from './quantiles.ts';
import { refit, type Reconciliation } from './reconciliation.ts';
import { likenessOf, votesFor } from './votes.ts';

/** Below this redundancy a tenth or less of an error would show, and the rest would be blamed on others. */
export const leastRedundancy = 0.1;

/**
 * An entry much surer than what the rest implies shows little of its own error in the fit, yet stands plainly apart from what
 * the rest says; passed over, its error would be laid on another. Below this nothing but rounding is left of it.
 */
const leastBlamable = 0.005;

/**
 * The share of records that may raise a warning though nothing is wrong with them, under normal errors and linear steps. What
 * is neither adds a little, so that about one record in a hundred does (build/bench/detection.ts).
 */
export const falseAlarms = 0.007;

/** Residuals that go together like this, and are as large to within `hair`, cannot be told apart. */
const alike = 0.9;
const hair = 0.05;

/** So many times as strange as any reading that the fit checks is one that it hardly checks, before it is blamed first. */
const farther = 1.3;

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
 * (Baarda 1968, data snooping; backward elimination as in survey engineering); those that fit in the end come back. What is
 * out of the last fit stands in a group. The threshold keeps false alarms to `falseAlarms` (Šidák 1967 over the readings that could be blamed).
 */
export function eliminated(first: Reconciliation): Outcome {
  const blamable = first.measured.filter((_, i) => isBlamable(first, i)).length;
  const threshold = thresholdFor(blamable);
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
  const stands = ({ members }: Group): boolean =>
    members.length > 1 || members.some((i) => Math.abs(strangeness(last, i, original[i]!)) >= threshold);
  const fitting = groups.filter((group) => !stands(group));
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

/** Two-sided, for so many normal residuals of which none may exceed it in all but `falseAlarms` of the records. */
export function thresholdFor(count: number): number {
  const each = 1 - (1 - falseAlarms) ** (1 / Math.max(1, count));
  return -normalQuantile(each / 2);
}

/** Enough redundancy to be called right, and what is implied rests on entries more than on windows. */
export function isChecked(at: Reconciliation, i: number): boolean {
  return hasRedundancy(at, i, leastRedundancy);
}

/** Enough to be called wrong where it stands apart from what the rest implies. */
function isBlamable(at: Reconciliation, i: number): boolean {
  return hasRedundancy(at, i, leastBlamable);
}

function hasRedundancy(at: Reconciliation, i: number, least: number): boolean {
  const { normalised, redundancy, windows } = at.statistics.judgements[i]!;
  return normalised !== undefined && redundancy >= least && windows <= mostOfWindows;
}

/** The reading that stands out most; one that the fit hardly checks only where it stands out more than any that it checks. */
function worstOf(at: Reconciliation, threshold: number): number | undefined {
  const above = at.statistics.judgements
    .map((judgement, i) => ({ i, w: Math.abs(judgement.normalised ?? 0) }))
    .filter(({ w }) => w > threshold)
    .sort((a, b) => b.w - a.w);
  const checked = above.find(({ i }) => isChecked(at, i));
  const blamable = above.find(({ i }) => isBlamable(at, i) && votesFor(at, i).length > 0);
  const isFarther = blamable && blamable.w > farther * (checked?.w ?? 0);
  return (isFarther ? blamable : checked)?.i;
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
