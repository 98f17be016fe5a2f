// What a student's other records say of a believed effect: a line through what was measured in them; knows no physics.
import { noSay, saidOf, type Claim, type Said } from '../judgement/claims.ts';
import { studentBelow } from '../model/quantiles.ts';
import { straightLine } from '../model/straight-line.ts';
import type { Value } from '../model/value.ts';
import type { Lesson } from './lessons.ts';
import type { Analysis } from './result.ts';

export interface History extends Said {
  /** How many other records with a club of this kind have both cause and effect. */
  readonly records: number;
}

export interface TracedClaim extends Claim {
  readonly history: History;
}

/** Fewer say nothing: two points make any line. */
const fewestRecords = 3;

/** The claims of a record, each beside what the student's other records say of it. */
export function traceClaims(analysis: Analysis, lessons: readonly Lesson[]): readonly TracedClaim[] {
  const others = lessons.filter(({ uri, analysis: { subject } }) => {
    return uri !== analysis.uri && subject.club?.kind?.value === analysis.subject.club?.kind?.value;
  });
  return (analysis.subject.judgement?.claims ?? []).map((claim) => ({
    ...claim,
    history: historyOf(claim, others),
  }));
}

/**
 * The slope of the effect over the cause, both uncertain (York 2004). What is left over beyond the uncertainties of the readings,
 * for no two days are alike, widens the slope's uncertainty by Birge's ratio √(χ²/ν) where that is above 1; of so few records
 * the sign is judged by Student's distribution.
 */
function historyOf(claim: Claim, others: readonly Lesson[]): History {
  const { cause, noCause, quantity, toward, over } = claim;
  if (cause === undefined) return { ...noSay(noCause ?? ''), records: 0 };
  const points = others.flatMap(({ analysis }) => {
    const [x, y] = [measured(analysis, cause.id), measured(analysis, quantity.id)];
    if (x === undefined || y === undefined || x.u === null || y.u === null) return [];
    // What was computed from the cause would only tell what the arithmetic is.
    if (x.from.some((id) => y.from.includes(id))) return [];
    return [{ x: x.value, ux: x.u, y: y.value, uy: y.u }];
  });
  const records = points.length;
  if (records < fewestRecords) return { ...noSay(tooFew(records)), records };
  const line = straightLine(points);
  if (line === undefined) return { ...noSay('the cause hardly differs among the other records'), records };
  const u = line.u * Math.max(1, Math.sqrt(line.chiSquared / line.freedom));
  const below = (t: number): number => studentBelow(t, line.freedom);
  return { ...saidOf(line.slope * toward * over, u * over, claim, below), records };
}

/** As entered, or as it follows from entries by arithmetic alone: with a step of the model history would be physics once more. */
function measured({ derivation }: Analysis, id: string): Value | undefined {
  const value = derivation?.values.get(id);
  if (value === undefined || value.kind === 'entered') return value;
  const isModelled = value.assumed.length > 0 || [...value.shares.keys()].some((key) => key.includes(':'));
  return value.kind === 'expected' || isModelled ? undefined : value;
}

function tooFew(records: number): string {
  const have =
    records === 0 ? 'no other record has' : `${records} other record${records === 1 ? ' has' : 's have'}`;
  return `${have} both with this kind of club; ${fewestRecords} are needed`;
}
