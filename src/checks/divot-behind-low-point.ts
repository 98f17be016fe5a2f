// The check that says where a divot starts farther behind than the low point allows.
import { baseEstimate, propagate } from '../model/estimate.ts';
import type { Estimate } from '../model/estimate.ts';
import { arcAtStrike } from '../physics/arc.ts';
import { misfits } from './agreement.ts';
import type { Expectation } from './agreement.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

export const divotBehindLowPoint: Check = {
  code: 'divot-behind-low-point',
  severity: 'warning',
  title: 'Divot starts too far behind the low point',
  explanation: explain({
    found: 'The divot starts farther behind than the low point and the depth of the cut allow.',
    matters:
      'An arc that is lowest well ahead of the ball reaches the ground late; drag of the turf moves a divot ahead, never back.',
    raises: `delivery:
  low_point: { ahead: 12 cm ahead by motion capture }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot: { starts: 20 cm behind by tape, depth: 5 mm by ruler }`,
    accepts: `delivery:
  low_point: { ahead: 12 cm ahead by motion capture }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot: { starts: 2 cm ahead by tape, depth: 5 mm by ruler }`,
    source:
      'the same circle cut at the depth d: the cut starts R sin θ behind the low point, with R (1 − cos θ) sin i = d.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const entered = subject.derivation?.values.get(startId)?.value;
    const expected = expectedStart(subject);
    if (entered === undefined || expected === undefined || entered >= expected.value) return [];
    return misfits(subject, startId, expected);
  },
};

const startId = 'ground.divot.starts';
const lowPointId = 'delivery.low_point.ahead';
const cutIds = ['ground.divot.depth', 'delivery.arc.radius', 'delivery.arc.inclination'] as const;
const lengthId = 'ground.divot.length';

/**
 * How far the near edge of a real divot lies from the cut of a circle, as a standard uncertainty in m: turf tears, and its
 * drag shortens and shifts the cut. Judgement: no measured divots were found.
 */
const turf = 0.02;

/** From the low point, or the attack where none is entered, and the cut's depth; else from the low point and its length. */
function expectedStart(subject: Subject): Expectation | undefined {
  return (
    expectation(subject, [lowPointId, ...cutIds], ([ahead, ...cut]) => startOfCut(ahead, cut)) ??
    expectation(subject, ['delivery.attack', ...cutIds], ([attack, ...cut]) =>
      startOfCut(lowPointOf(attack!, cut), cut),
    ) ??
    expectation(subject, [lowPointId, lengthId], ([ahead, length]) => [ahead! - length! / 2])
  );
}

function lowPointOf(attack: number, [, radius, inclination]: readonly number[]): number | undefined {
  return arcAtStrike({ radius: radius!, inclination: inclination!, direction: 0 }, attack)?.lowPointAhead;
}

function startOfCut(
  lowPoint: number | undefined,
  [depth, radius, inclination]: readonly number[],
): readonly number[] | undefined {
  const reach = cutReach(depth!, radius!, inclination!);
  return lowPoint === undefined || reach === undefined ? undefined : [lowPoint - reach];
}

/**
 * How far behind the low point a circle enters the ground: R sin θ with R (1 − cos θ) sin i = d; all in m and rad.
 * Undefined where the circle does not reach so deep.
 */
function cutReach(depth: number, radius: number, inclination: number): number | undefined {
  const cosine = 1 - depth / (radius * Math.sin(inclination));
  return depth >= 0 && cosine > 0 && cosine <= 1 ? radius * Math.sqrt(1 - cosine * cosine) : undefined;
}

/** To first order, the entries taken as independent (JCGM 100:2008, eq. 10), with the turf's share. */
function expectation(
  subject: Subject,
  ids: readonly string[],
  compute: (inputs: readonly number[]) => readonly number[] | undefined,
): Expectation | undefined {
  const inputs: Estimate[] = [];
  for (const id of ids) {
    const value = subject.derivation?.values.get(id);
    // What is derived may rest on the divot itself or share entries with the rest.
    if (value === undefined || value.u === null || value.kind !== 'entered') return undefined;
    inputs.push(baseEstimate(value.value, { key: id, u: value.u }));
  }
  const estimate = propagate(compute, inputs, () => [{ key: 'turf', u: turf }])?.[0];
  return estimate && { value: estimate.value, u: estimate.u, from: ids, assumed: [] };
}
