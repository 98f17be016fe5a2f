// The numbers that say how a figure stands, by name; knows no joints.

/** What may move. Places in m, angles in rad; turns are closed positive, as everywhere for a right-handed player. */
export const freedoms = [
  'pelvisX',
  'pelvisY',
  'pelvisZ',
  'pelvisTurn',
  'pelvisList',
  'spineTilt',
  'forwardBend',
  'shoulderTurn',
  'shoulderSlant',
  'girdle',
  'neckTilt',
  'neckBend',
  'handsX',
  'handsY',
  'handsZ',
  'shaftAside',
  'shaftAcross',
  'leadKneeOut',
  'trailKneeOut',
  'leadElbowOut',
  'trailElbowOut',
  'toeLine',
] as const;
export type Freedom = (typeof freedoms)[number];
export type Freedoms = Readonly<Record<Freedom, number>>;

/** The freedoms by name, of numbers in their order. */
export function freedomsOf(numbers: ArrayLike<number>): Freedoms {
  const at = {} as Record<Freedom, number>;
  for (let i = 0; i < freedoms.length; i++) at[freedoms[i]!] = numbers[i]!;
  return at;
}
