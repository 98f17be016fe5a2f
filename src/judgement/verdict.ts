// Holds a fault of a book against what is known of a swing: supported, contradicted or nobody can tell; knows no file and no message.
import { mirroredNumber } from '../model/mirror.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Belief } from './belief.ts';
import { evidenceOf, type BookFault, type CompiledEvidence } from './book.ts';
import { chanceOf, type Chance } from './chance.ts';

export type Verdict = 'supported' | 'contradicted' | 'cannot tell';

/** One line of evidence with what is known of its quantities, as the player sees left and right. */
export interface JudgedLine {
  readonly evidence: CompiledEvidence;
  readonly probability: number | undefined;
  readonly values: readonly { readonly quantity: Quantity; readonly value: number; readonly u: number }[];
  readonly missing: readonly Quantity[];
  /** True where what the book says of left and right is turned round for the player. */
  readonly isMirrored: boolean;
}

export interface FaultVerdict extends BookFault {
  readonly at: string | undefined;
  readonly verdict: Verdict;
  /** Undefined where less than half of the evidence, by weight, can be told. */
  readonly probability: number | undefined;
  /** Those that speak of the checkpoint. */
  readonly lines: readonly JudgedLine[];
}

/**
 * From here on evidence speaks for a fault that a coach has stated: four to one (a judgement). What the coach saw counts already,
 * so that this is a low bar; a value must lie 0.84 of its standard uncertainty beyond the limit.
 */
export const supportedFrom = 0.8;

/**
 * Up to here the numbers speak against a stated fault: nine to one (a judgement). To tell coaches that they did not see what they
 * saw takes more than to agree with them; a value must lie 1.28 standard uncertainties on the other side of the limit.
 */
export const contradictedUpTo = 0.1;

/** From here on a fault that nobody stated is worth a hint, as far from doubt as a contradiction. */
export const remarkableFrom = 1 - contradictedUpTo;

const leastTold = 0.5;

export interface Beholder {
  readonly belief: Belief;
  readonly hand: 'left' | 'right' | undefined;
  readonly registry: Registry;
  /** Where chances that were computed before are kept; good as long as the belief is the same. */
  readonly chances: WeakMap<CompiledEvidence, JudgedLine>;
}

/** The probability is the mean of those of the lines that can be told, by weight: the share of the evidence that is expected to hold. */
export function judge(known: BookFault, at: string | undefined, beholder: Beholder): FaultVerdict {
  const lines = linesAt(known, at, beholder.registry).map((evidence) => judgedLine(evidence, beholder));
  let [told, all, sum] = [0, 0, 0];
  for (const { evidence, probability } of lines) {
    all += evidence.weight;
    if (probability === undefined) continue;
    told += evidence.weight;
    sum += evidence.weight * probability;
  }
  const probability = told > 0 && told >= leastTold * all ? sum / told : undefined;
  return { ...known, at, verdict: verdictOf(probability), probability, lines };
}

/** Whether the book says that the fault can be seen at this checkpoint; a book that names none leaves it open. */
export function isSeenAt({ fault }: BookFault, at: string | undefined): boolean {
  return at === undefined || fault.at.length === 0 || fault.at.some(({ value }) => value === at);
}

export function verdictOf(probability: number | undefined): Verdict {
  if (probability === undefined) return 'cannot tell';
  if (probability >= supportedFrom) return 'supported';
  return probability <= contradictedUpTo ? 'contradicted' : 'cannot tell';
}

/** Evidence of other checkpoints alone says nothing of this one; evidence of none speaks of the whole swing. */
function linesAt(
  { fault }: BookFault,
  at: string | undefined,
  registry: Registry,
): readonly CompiledEvidence[] {
  const lines = evidenceOf(fault, registry).filter(({ weight }) => weight > 0);
  if (at === undefined) return lines;
  return lines.filter(({ compiled }) => {
    const checkpoints = (compiled?.quantities ?? []).flatMap(({ checkpoint }) => checkpoint ?? []);
    return checkpoints.length === 0 || checkpoints.some((checkpoint) => checkpoint === at);
  });
}

function judgedLine(evidence: CompiledEvidence, beholder: Beholder): JudgedLine {
  const { chances } = beholder;
  const kept = chances.get(evidence);
  if (kept !== undefined) return kept;
  const line = lineOf(evidence, beholder);
  chances.set(evidence, line);
  return line;
}

function lineOf(evidence: CompiledEvidence, { belief, hand, registry }: Beholder): JudgedLine {
  const { compiled } = evidence;
  if (compiled === undefined)
    return { evidence, probability: undefined, values: [], missing: [], isMirrored: false };
  const { quantities } = compiled;
  const joint = belief.of(quantities.map(({ id }) => id));
  const chance: Chance = chanceOf(compiled, joint);
  const values = quantities.flatMap((quantity, i) => {
    const mean = joint.means[i]!;
    if (Number.isNaN(mean)) return [];
    const value = mirroredNumber(quantity.id, mean, { hand, registry });
    return [{ quantity, value, u: Math.sqrt(joint.covariance[i * (quantities.length + 1)]!) }];
  });
  const missing = quantities.filter(({ id }) => chance.missing.includes(id));
  const isMirrored = hand === 'left' && quantities.some(({ lateral }) => lateral);
  return { evidence, probability: chance.probability, values, missing, isMirrored };
}
