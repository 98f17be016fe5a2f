// Verdicts and evidence in words, the same in findings, hovers, hints and on the command line; judges nothing.
import { showValue } from '../measure/show.ts';
import type { FaultVerdict, JudgedLine } from '../judgement/verdict.ts';
import { nameWithin } from './agreement.ts';

/** "93 %", and never a certainty: "over 99 %", "under 1 %". */
export function percent(probability: number): string {
  const rounded = Math.round(probability * 100);
  if (rounded >= 100) return 'over 99 %';
  return rounded <= 0 ? 'under 1 %' : `${rounded} %`;
}

/** "supported (93 %)", "cannot tell". */
export function verdictWords({
  verdict,
  probability,
}: Pick<FaultVerdict, 'verdict' | 'probability'>): string {
  return probability === undefined ? verdict : `${verdict} (${percent(probability)})`;
}

/** "pressure in the lead foot at impact 81 % ± 3 %": what is known of the quantities of a line, and what is missing. */
export function numbersOf({ values, missing }: JudgedLine): string {
  const known = values.map(
    ({ quantity, value, u }) => `${nameWithin(quantity)} ${showValue(quantity, value, u)}`,
  );
  return [...known, ...missing.map((quantity) => `no ${nameWithin(quantity)}`)].join(', ');
}

/** Behind what the book says of left and right, as for a right-handed player. */
export function mirroredWords({ isMirrored }: Pick<JudgedLine, 'isMirrored'>): string {
  return isMirrored ? ', mirrored for a left-handed player' : '';
}

/** "at impact", or nothing. */
export function placeWords(at: string | undefined): string {
  return at === undefined ? '' : ` at ${at.replaceAll('_', ' ')}`;
}
