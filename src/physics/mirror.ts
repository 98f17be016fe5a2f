// Left and right exchanged, so that everything else may be written for a right-handed player only.

export type Hand = 'left' | 'right';

/** The sideways numbers of each shape of this floor; everything else stays as it is. */
export const sideways = {
  arc: ['direction'],
  arcAtStrike: ['path'],
  delivery: ['path', 'face'],
  launch: ['start', 'spinTilt'],
  flight: ['finish', 'curve'],
  landing: ['heading'],
  wind: ['from'],
  pathPoint: ['right'],
} as const;

/** The same object with those of its numbers negated. */
export function mirrored<T extends object, K extends keyof T>(object: T, names: readonly K[]): T {
  const copy: T = { ...object };
  for (const name of names) {
    const value: unknown = object[name];
    // Adding zero keeps −0 out of what people read.
    if (typeof value === 'number') (copy as Record<K, unknown>)[name] = 0 - value;
  }
  return copy;
}

/**
 * The object as for a right-handed player: mirrored for a left-hander, itself for a right-hander. Its own inverse, so
 * the same call takes a left-hander's inputs in and the results out again.
 */
export function asRightHanded<T extends object, K extends keyof T>(
  hand: Hand,
  object: T,
  names: readonly K[],
): T {
  return hand === 'right' ? object : mirrored(object, names);
}
