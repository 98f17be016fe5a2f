// What a record says of the side to which a ball started or curved, and how clearly; knows no word for a shape.
import type { Value } from '../model/value.ts';
import { relatedEntries, threshold } from './agreement.ts';
import type { RawFinding } from './check.ts';
import type { Subject } from './subject.ts';
import { lowerFirst } from '../measure/quote.ts';

export type Part = 'start' | 'curve';

/**
 * Up to here a shot is called straight; common practice, no source. Spin tilt and face-to-path stand in for the curve where
 * it is neither entered nor derived: 7° of tilt curve the ball by some 5 % of its carry, as the flight model has it.
 */
export const straightness = Object.freeze({
  start: (3 * Math.PI) / 180,
  startInWords: '3 deg of the target line',
  curveOfCarry: 0.05,
  curveInWords: '5 % of the carry',
  spinTilt: (7 * Math.PI) / 180,
  faceToPath: (3 * Math.PI) / 180,
});

export interface Evidence {
  /** 1 right, −1 left. */
  readonly side: 1 | -1;
  /** "by the curve it went 14.0 yd left". */
  readonly by: string;
  readonly related: NonNullable<RawFinding['related']>;
}

/**
 * The clearest witness of where the ball started or curved, if one is more than the threshold from zero. Whoever holds it
 * against `straight`, or takes it from the club instead of the ball, wants it beyond what is called straight too.
 */
export function flownEvidence(
  subject: Subject,
  part: Part,
  against: 'straight' | 'a side',
): Evidence | undefined {
  for (const value of witnesses(subject, part)) {
    if (value.u === null) continue;
    const isEntered = value.kind === 'entered';
    const least = isEntered && against === 'a side' ? 0 : straightTo(value.id, subject);
    if (!(Math.abs(value.value) > Math.max(threshold * value.u, least))) continue;
    return {
      side: value.value > 0 ? 1 : -1,
      by: words(value, part, subject),
      related: related(value, subject),
    };
  }
  return undefined;
}

/** What is entered of the flight itself leaves no word to the others. */
function witnesses({ derivation }: Subject, part: Part): readonly Value[] {
  const at = (id: string): Value | undefined => derivation?.values.get(id);
  const own = at(`flight.${part}`);
  if (part === 'start' || own?.kind === 'entered') return own === undefined ? [] : [own];
  const tilt = at('flight.spin_tilt');
  // A strike off the centre tilts the spin too, so that face and path alone count only where nothing better is known.
  const last = tilt ?? at('delivery.face_to_path');
  return [own, last].filter((value) => value !== undefined);
}

/** How far from zero this witness of start or curve may be, for the shot to be called straight. @param wanted the carry of a goal, if it is of one */
export function straightTo(id: string, { derivation, registry }: Subject, wanted?: number): number {
  switch (id) {
    case 'flight.start':
      return straightness.start;
    case 'flight.spin_tilt':
      return straightness.spinTilt;
    case 'delivery.face_to_path':
      return straightness.faceToPath;
    default: {
      // Without a carry, what holds for every carry.
      const most = registry.find('flight.carry')?.practice?.max ?? Infinity;
      return straightness.curveOfCarry * (wanted ?? derivation?.values.get('flight.carry')?.value ?? most);
    }
  }
}

function words(value: Value, part: Part, subject: Subject): string {
  const quantity = subject.registry.find(value.id)!;
  const shown = subject.show(quantity, value.value, value.u);
  if (value.kind === 'entered' && value.id === `flight.${part}`) return `by the ${part} it went ${shown}`;
  const verb = part === 'start' ? 'starts' : 'curves';
  const side = sideName(value.value);
  if (value.from.some((id) => clubIds.has(id)))
    return `by the club's path and face it ${verb} ${side} (${lowerFirst(quantity.title)} ${shown})`;
  return value.from.includes('flight.finish')
    ? `by start and finish it ${verb} ${side} (${shown})`
    : `by the other entries it ${verb} ${side} (${lowerFirst(quantity.title)} ${shown})`;
}

const clubIds: ReadonlySet<string> = new Set(['delivery.path', 'delivery.face', 'delivery.face_to_path']);

/** More than these are named by the entry's hover. */
const mostRelated = 4;

function related(value: Value, subject: Subject): NonNullable<RawFinding['related']> {
  const foremost = value.from.toSorted((a, b) => (value.shares.get(b) ?? 0) - (value.shares.get(a) ?? 0));
  return relatedEntries(subject, foremost.slice(0, mostRelated));
}

export function sideName(side: number): string {
  return side > 0 ? 'right' : 'left';
}
