// How well a record agrees with itself, as `derive` prints it: in rows of text or as JSON, in the units shown.
import { counted } from '../measure/counted.ts';
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { JudgedReading } from '../model/agreement-result.ts';
import { othersSay } from '../model/others-say.ts';
import { relationNamed } from '../model/own-model.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { tidy } from './shots.ts';

export interface AgreementJson {
  readonly status: 'solved' | 'unsolved';
  readonly chi2: number;
  readonly dof: number;
  /** Probability of so large a chi2 in a record that agrees with itself. */
  readonly p: number;
  /** The |w| above which an entry is in conflict. */
  readonly threshold: number;
  readonly entries: readonly {
    readonly id: string;
    /** The place among several readings of one quantity, from 0. */
    readonly reading: number;
    readonly value: number;
    readonly u: number;
    readonly unit: string;
    readonly implied: number | null;
    readonly u_implied: number | null;
    readonly w: number | null;
    readonly redundancy: number;
    readonly verdict: JudgedReading['verdict'];
  }[];
}

export function agreementJson({ agreement, subject }: Analysis): AgreementJson | undefined {
  if (agreement === undefined) return undefined;
  const { status, chi2, dof, p, threshold } = agreement;
  const entries = judged(agreement.entries, subject.registry).map(({ quantity: { unit }, entry }) => ({
    id: entry.id,
    reading: entry.reading,
    value: tidy(fromSI(entry.value, unit)),
    u: tidy(differenceFromSI(entry.u, unit)),
    unit,
    implied: entry.implied === null ? null : tidy(fromSI(entry.implied, unit)),
    u_implied: entry.uImplied === null ? null : tidy(differenceFromSI(entry.uImplied, unit)),
    w: entry.w === null ? null : tidy(entry.w),
    redundancy: tidy(entry.redundancy),
    verdict: entry.verdict,
  }));
  return { status, chi2: tidy(chi2), dof: tidy(dof), p: tidy(p), threshold: tidy(threshold), entries };
}

function words(conflicts: number, p: number): string {
  if (conflicts > 0) return 'they do not agree';
  return p < 0.001 ? 'they do not agree as a whole, and none stands out' : 'they agree';
}

/** "42 entries, 18 checked; they agree (p 0.98)", then one row for each that does not fit. */
export function agreementRows({ agreement, derivation, subject }: Analysis): readonly string[] {
  if (agreement === undefined || agreement.entries.length === 0) return [];
  if (agreement.status === 'unsolved') return ['  not judged: the model gives no number for these entries'];
  const { p, conflicts } = agreement;
  const entries = agreement.entries.filter(({ id }) => relationNamed(id) === undefined);
  const checked = entries.filter(({ verdict }) => verdict !== 'unchecked').length;
  const verdict =
    checked === 0
      ? 'nothing holds one against another'
      : `${words(conflicts.length, p)} (p ${probability(p)})`;
  const off = entries.filter((entry) => entry.verdict === 'conflict');
  return [
    `  ${counted(entries.length, 'entry', 'entries')}, ${checked} checked; ${verdict}`,
    ...judged(off, subject.registry).map(({ quantity, entry }) => {
      const readings = entries.filter(({ id }) => id === entry.id).length;
      const { implied, uImplied } = othersSay(entry, readings, derivation);
      const others = implied === null ? '' : showValue(quantity, implied, uImplied);
      return `  ${entry.id} ${showValue(quantity, entry.value, entry.u)} does not fit; the others say ${others}`;
    }),
  ];
}

function judged(
  entries: readonly JudgedReading[],
  registry: Registry,
): { readonly quantity: Quantity; readonly entry: JudgedReading }[] {
  return entries.flatMap((entry) => {
    const quantity = registry.find(entry.id);
    return quantity === undefined ? [] : [{ quantity, entry }];
  });
}

function probability(p: number): string {
  return p < 0.001 ? 'below 0.001' : p.toFixed(p < 0.1 ? 3 : 2);
}
