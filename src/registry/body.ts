// Finds parts of the body by their words and says whether two of them meet; knows nothing of what loads or hurts them.
import { bodyParts } from './generated.ts';
import type { BodyPart } from './quantity.ts';

export const bodySides = ['lead', 'trail', 'left', 'right', 'both'] as const;
export type BodySide = (typeof bodySides)[number];

export interface BodyPlace {
  readonly part: BodyPart;
  /** Undefined where no side is named: then either may be meant. */
  readonly side: BodySide | undefined;
}

const byWord: ReadonlyMap<string, BodyPart> = new Map(
  bodyParts.flatMap((part) => [part.name, ...part.also].map((word) => [word, part] as const)),
);
const byName: ReadonlyMap<string, BodyPart> = new Map(bodyParts.map((part) => [part.name, part]));

/** Every way to name a part, each side by its word, for proposals. */
export const bodyWords: readonly string[] = bodyParts.flatMap(({ name, sides }) => [
  name,
  ...(sides ? [`lead ${name}`, `trail ${name}`, `left ${name}`, `right ${name}`] : []),
]);

/** "lower back", "lead wrist", "both knees"; undefined where no such part is known. */
export function findBodyPlace(words: string): BodyPlace | undefined {
  const plain = words.trim().toLowerCase().replace(/\s+/g, ' ');
  const whole = byWord.get(plain);
  if (whole !== undefined) return { part: whole, side: undefined };
  const [first = '', ...rest] = plain.split(' ');
  const side = bodySides.find((known) => known === first);
  const part = byWord.get(rest.join(' '));
  return side === undefined || part?.sides !== true ? undefined : { part, side };
}

/**
 * True where the two are the same part, or one belongs to the other, and their sides may be the same: a side that is not named
 * may be either, and so may lead and trail while the hand is not known.
 */
export function meets(a: BodyPlace, b: BodyPlace, hand: 'left' | 'right' | undefined): boolean {
  if (!belongs(a.part, b.part) && !belongs(b.part, a.part)) return false;
  const [one, other] = [bodySide(a, hand), bodySide(b, hand)];
  return one === undefined || other === undefined || one === other;
}

function belongs(part: BodyPart, to: BodyPart): boolean {
  if (part === to) return true;
  const outer = part.within === undefined ? undefined : byName.get(part.within);
  return outer !== undefined && belongs(outer, to);
}

/** True where both name a side, and no hand makes them the same; undefined hands are told apart only by like words. */
export function areSidesApart(one: BodySide, other: BodySide, hand: 'left' | 'right' | undefined): boolean {
  if (one === 'both' || other === 'both') return false;
  const isByHand = (side: BodySide): boolean => side === 'lead' || side === 'trail';
  if (isByHand(one) === isByHand(other)) return one !== other;
  return hand !== undefined && sideFor(one, hand) !== sideFor(other, hand);
}

/** Left or right; the lead side is the one nearer the target, left for a right-handed player. */
function bodySide(
  { side, part }: BodyPlace,
  hand: 'left' | 'right' | undefined,
): 'left' | 'right' | undefined {
  if (side === undefined || side === 'both' || !part.sides) return undefined;
  return sideFor(side, hand);
}

function sideFor(
  side: Exclude<BodySide, 'both'>,
  hand: 'left' | 'right' | undefined,
): 'left' | 'right' | undefined {
  if (side === 'left' || side === 'right') return side;
  if (hand === undefined) return undefined;
  return (side === 'lead') === (hand === 'right') ? 'left' : 'right';
}
