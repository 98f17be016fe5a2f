// How much room a figure takes on a picture, the same at every checkpoint of a record, so that nothing jumps from one to the next.
import type { Analysis } from '../analysis/result.ts';
import { vector } from '../physics/vector.ts';
import type { View } from '../physics/pose-anchors.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import { cameraOf, unitsForStature } from './figure-camera.ts';
import { checkpointsWithEntries, standOf } from './figure-pose.ts';
import type { Place } from './geometry.ts';

export interface Field {
  readonly width: number;
  /** Where the ground is, from the top. */
  readonly ground: number;
  /** The place under the ball. */
  readonly origin: Place;
}

/** Of title and target above all that is drawn. */
const head = 30;
/** Joints lie inside of what is drawn round them: a head above its ear, a shoe round its sole. */
const round = { above: 42, aside: 30 };
/** So that what stands below the figure has room. */
const leastWidth = 270;

/** Round the figures at all checkpoints by their entries, and round this one as it stands. */
export function fieldOf(analysis: Analysis, view: View, checkpoint: Checkpoint): Field {
  const steps = new Set<Checkpoint>(['address', ...checkpointsWithEntries(analysis)]);
  const stands = [
    standOf(analysis, checkpoint),
    ...[...steps].map((step) => standOf(analysis, step, 'entered')),
  ];
  const places = stands.flatMap(({ pose, stature, hand }) => {
    const { see } = cameraOf(view, { origin: { x: 0, y: 0 }, scale: unitsForStature / stature, hand });
    return [vector(0, 0, 0), ...Object.values(pose.skeleton.joints)].map(see);
  });
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  const [left, right] = [Math.min(...xs) - round.aside, Math.max(...xs) + round.aside];
  const spare = Math.max(0, leastWidth - (right - left));
  const ground = Math.round(head + round.above - Math.min(...ys));
  return {
    width: Math.round(right - left + spare),
    ground,
    origin: { x: Math.round(spare / 2 - left), y: ground },
  };
}
