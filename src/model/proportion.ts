// The interval of a probability of which so many trials showed a share; knows nothing of what was tried.
import { normalQuantile } from './quantiles.ts';

export interface ProportionInterval {
  readonly min: number;
  readonly max: number;
}

/**
 * (p̂ + z²/2n ± z √(p̂ (1 − p̂)/n + z²/4n²))/(1 + z²/n), p̂ = hits/n, z the quantile of 97.5 % (Wilson 1927, J. Am. Stat. Assoc.
 * 22:209). Trials are taken as independent. Undefined of no trials.
 */
export function wilsonInterval(hits: number, trials: number): ProportionInterval | undefined {
  if (!(trials > 0) || !(hits >= 0) || hits > trials) return undefined;
  const z = normalQuantile(0.975);
  const share = hits / trials;
  const middle = share + (z * z) / (2 * trials);
  const half = z * Math.sqrt((share * (1 - share)) / trials + ((z / trials) * z) / (4 * trials));
  const scale = 1 + (z * z) / trials;
  // At both ends the formula is exact, and rounding must not say otherwise.
  return {
    min: hits === 0 ? 0 : (middle - half) / scale,
    max: hits === trials ? 1 : (middle + half) / scale,
  };
}
