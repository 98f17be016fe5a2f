// Wind over the ground: its direction and how it grows with height; knows nothing of the ball.

/** Wind as a weather report gives it: the speed at a reference height, growing with the logarithm of the height. */
export interface LogarithmicProfile {
  /** Height at which the speed holds, m. */
  readonly reference: number;
  /** Roughness length of the ground, m. */
  readonly roughness: number;
}

export interface Wind {
  /** m/s */
  readonly speed: number;
  /** Where it comes FROM, rad, counter-clockwise seen from above from the target line: 0 is straight into the
   * player's face as he looks at the target, +π/2 is from the left, π from behind, −π/2 from the right. */
  readonly from: number;
  /** `openGround` if left out. */
  readonly heightProfile?: LogarithmicProfile | 'uniform';
}

/**
 * Speed at 10 m over short grass. The height is the World Meteorological Organization's; the roughness 0.03 m is its
 * class of open flat ground with grass (Guide to Instruments and Methods of Observation, part I, chapter 5; from memory).
 */
export const openGround: LogarithmicProfile = { reference: 10, roughness: 0.03 };

/** The share of the wind's speed at a height (m): ln(1 + z/z₀)/ln(1 + z_ref/z₀), so that it is 0 on the ground. */
export function windAt(wind: Wind, height: number): number {
  const profile = wind.heightProfile ?? openGround;
  if (profile === 'uniform') return 1;
  if (!(height > 0)) return 0;
  return Math.log(1 + height / profile.roughness) / Math.log(1 + profile.reference / profile.roughness);
}
