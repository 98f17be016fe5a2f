// How much each entry, assumption, window and step contributes to the variance of a number of a fit; knows no quantity by name.
import type { ReadingRef } from './agreement-result.ts';
import type { Reconciliation } from './reconciliation.ts';
import { rowDot } from './rows.ts';

/** Where part of the variance comes from. Windows are no knowledge of this swing: much of them means that little is known. */
export type Contributor =
  | ({ readonly kind: 'entry' } & ReadingRef)
  | { readonly kind: 'assumption'; readonly id: string; readonly words: string; readonly source: string }
  | { readonly kind: 'window'; readonly id: string; readonly words: string; readonly source: string }
  | { readonly kind: 'step'; readonly rule: string; readonly reason: string };

export interface Share {
  readonly from: Contributor;
  /** Of the variance, 0..1; all shares sum to 1. */
  readonly share: number;
}

const none: ReadonlySet<number> = new Set();

/** A share below this is not worth a line. */
const least = 0.001;

/**
 * The largest first. With g the gradient of the number and y = A⁻¹ g, its variance gᵀ y is the sum of (Jₖ y)²/uₖ² over
 * measurements and (y/u)² over priors.
 *
 * @param without measurements that the number does not rest on.
 */
export function sharesOf(
  at: Reconciliation,
  y: Float64Array,
  variance: number,
  without: ReadonlySet<number> = none,
): readonly Share[] {
  const shares: Share[] = [];
  const { measurements } = at.problem;
  for (let k = 0; k < measurements.length; k++) {
    const { u } = measurements[k]!;
    if (u === Infinity || without.has(k)) continue;
    const share = (rowDot(at.fit.slopes, k, y) / u) ** 2 / variance;
    if (share < least) continue;
    const { id, reading } = at.readings[at.measured[k]!]!;
    shares.push({ from: { kind: 'entry', id, reading }, share });
  }
  shares.push(...sharesOfPriors(at, y, variance));
  return shares.sort((a, b) => b.share - a.share);
}

function sharesOfPriors({ forward }: Reconciliation, y: Float64Array, variance: number): readonly Share[] {
  const shares = new Map<string, Share>();
  const { parameters } = forward;
  for (let j = 0; j < parameters.length; j++) {
    const share = (y[j]! / parameters[j]!.u) ** 2 / variance;
    if (share < least) continue;
    const { key, kind, words, source } = parameters[j]!;
    const from: Contributor = key.startsWith('model:')
      ? { kind: 'step', rule: key.slice('model:'.length), reason: words }
      : { kind: kind === 'window' ? 'window' : 'assumption', id: key, words, source };
    shares.set(key, { from, share: share + (shares.get(key)?.share ?? 0) });
  }
  return [...shares.values()];
}
