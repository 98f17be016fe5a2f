// The two cameras that look at a figure, level and far away, so that lengths and angles are true to scale; knows no figure.
import type { View } from '../physics/pose-anchors.ts';
import type { Vector } from '../physics/vector.ts';
import type { Camera } from './figure-shape.ts';
import type { Place } from './geometry.ts';

export interface Lens {
  /** Where the place on the ground under the ball is on the picture. */
  readonly origin: Place;
  /** Units of the picture for a metre. */
  readonly scale: number;
  readonly hand: 'left' | 'right';
}

/** Units of the picture for one stature: whoever stands there is as tall on every picture. */
export const unitsForStature = 280;

/** Face-on looks across the target line at the player, down the line along it toward the target. */
export function cameraOf(view: View, { origin, scale, hand }: Lens): Camera {
  const sign = hand === 'left' ? -1 : 1;
  const right = ({ x, y }: Vector): number => (view === 'face_on' ? sign * x : 0 - y);
  return {
    see: (at) => ({ x: origin.x + scale * right(at), y: origin.y - scale * at.z }),
    turn: (direction) => ({ x: scale * right(direction), y: 0 - scale * direction.z }),
    farness: ({ x, y }) => (view === 'face_on' ? sign * y : x),
  };
}

/** The same turned round about a vertical through its origin: who plays the other way round, as in a mirror. */
export function mirrored({ see, turn, farness }: Camera, { x: about }: Place): Camera {
  return {
    see: (at) => {
      const { x, y } = see(at);
      return { x: 2 * about - x, y };
    },
    turn: (direction) => {
      const { x, y } = turn(direction);
      return { x: 0 - x, y };
    },
    farness,
  };
}
