// Where the balls of a record come down: its shots, or the one flight that is known, with an ellipse of 95 %; draws nothing.
import type { Analysis } from '../analysis/result.ts';
import { valueOf } from './known.ts';

export interface Landing {
  /** m along the target line, m right of it. */
  readonly ahead: number;
  readonly right: number;
}

export interface Landings {
  /** Shots that lie far from the others are left out, as in their means. */
  readonly places: readonly Landing[];
  readonly ellipse: {
    readonly ahead: number;
    readonly right: number;
    /** Semi-axes of 95 %, m. */
    readonly long: number;
    readonly short: number;
    /** Of the long one, rad right of the target line. */
    readonly direction: number;
  };
}

/** √χ²(0.95; 2): 95 % of a normal distribution in the plane lie within so many standard deviations (JCGM 102:2011, 6.5.2). */
const within95 = 2.4477;

/** Undefined where nothing says how far and how far to the side. One flight has its measuring uncertainty, shots have their spread. */
export function landingsOf(analysis: Analysis): Landings | undefined {
  return ofShots(analysis) ?? ofFlight(analysis);
}

function ofShots({ subject }: Analysis): Landings | undefined {
  const { shots, summary } = subject.shots ?? {};
  const ellipse = summary?.ellipse;
  if (shots === undefined || summary === undefined || ellipse === undefined) return undefined;
  const { ahead, right, long, short, direction, factor95 } = ellipse;
  const far = new Set(summary.outliers);
  const places = shots.flatMap(({ measures }, place) => {
    const landing = far.has(place) ? undefined : landingOf((id) => measures.get(id)?.value);
    return landing ?? [];
  });
  return { places, ellipse: { ahead, right, long: long * factor95, short: short * factor95, direction } };
}

function ofFlight(analysis: Analysis): Landings | undefined {
  const landing = landingOf((id) => valueOf(analysis, id)?.value);
  if (landing === undefined) return undefined;
  const [along, across] = ['flight.carry', 'flight.finish'].map(
    (id) => within95 * (valueOf(analysis, id)?.u ?? 0),
  );
  const isLong = along! >= across!;
  return {
    places: [landing],
    ellipse: {
      ...landing,
      long: isLong ? along! : across!,
      short: isLong ? across! : along!,
      direction: isLong ? 0 : Math.PI / 2,
    },
  };
}

/** How far the ball went, m, where nothing says how far to the side. */
export function carryAlone(analysis: Analysis): number | undefined {
  const carry = valueOf(analysis, 'flight.carry')?.value;
  return carry !== undefined && carry > 0 && landingsOf(analysis) === undefined ? carry : undefined;
}

/** The finish is how far to the side; the carry is the way to where it comes down. */
function landingOf(of: (id: string) => number | undefined): Landing | undefined {
  const [carry, finish, start, curve] = ['flight.carry', 'flight.finish', 'flight.start', 'flight.curve'].map(
    of,
  );
  if (carry === undefined || !(carry > 0)) return undefined;
  const right = finish ?? sideOf(carry, start, curve);
  if (right === undefined || Math.abs(right) > carry) return undefined;
  return { ahead: Math.sqrt(carry * carry - right * right), right };
}

/** finish = carry · sin(start + asin(curve/carry)). */
function sideOf(carry: number, start: number | undefined, curve: number | undefined): number | undefined {
  if (start === undefined || curve === undefined || Math.abs(curve) > carry) return undefined;
  return carry * Math.sin(start + Math.asin(curve / carry));
}
