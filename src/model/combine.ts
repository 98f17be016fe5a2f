// Combines several readings of one quantity into one observation; knows nothing of rules or of where readings come from.
import type { Observation } from './value.ts';

export interface WeighedReading {
  /** SI, signed. */
  readonly value: number;
  /** Standard uncertainty, SI, > 0. */
  readonly u: number;
  readonly doubtful: boolean;
}

/** How much wider a reading is taken once somebody has marked it doubtful (judgement: it keeps a ninth of its weight). */
export const doubtfulFactor = 3;

/**
 * The inverse-variance weighted mean. Where readings scatter more than their uncertainties allow, its uncertainty is
 * enlarged by the Birge ratio √(χ²/(n − 1)) (Birge 1932, Phys. Rev. 40:207; the scale factor S of the Particle Data
 * Group's reviews, which likewise never shrinks it). A reading without a finite value and a positive uncertainty is left
 * out; undefined when none is left.
 */
export function combineReadings(id: string, readings: readonly WeighedReading[]): Observation | undefined {
  const usable = readings
    .filter((r) => Number.isFinite(r.value) && Number.isFinite(r.u) && r.u > 0)
    .map((r) => ({ value: r.value, u: r.doubtful ? r.u * doubtfulFactor : r.u }));
  if (usable.length === 0) return undefined;
  // Weights relative to the sharpest reading, so that extreme uncertainties neither overflow nor vanish.
  const sharpest = Math.min(...usable.map((r) => r.u));
  let weights = 0;
  let sum = 0;
  for (const r of usable) {
    const weight = (sharpest / r.u) ** 2;
    weights += weight;
    sum += weight * r.value;
  }
  const value = sum / weights;
  const chiSquared = usable.reduce((total, r) => total + ((r.value - value) / r.u) ** 2, 0);
  const birge = usable.length > 1 ? Math.sqrt(chiSquared / (usable.length - 1)) : 1;
  const u = (sharpest / Math.sqrt(weights)) * Math.max(1, birge);
  return Number.isFinite(value) && Number.isFinite(u) && u > 0 ? { id, value, u } : undefined;
}
