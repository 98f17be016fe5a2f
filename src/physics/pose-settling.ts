// Brings a figure within the reach of its own limbs, and mirrors one; knows no entries.
import { minus, unit } from './limbs.ts';
import { type Freedoms } from './freedoms.ts';
import { skeletonOf, type Build, type Footing, type Frame, type Joints, type Skeleton } from './skeleton.ts';
import type { Vector } from './vector.ts';

/** Each round brings the ends nearer, as projections on two spheres in turn do. */
const mostRounds = 400;
const near = 1e-9;

/** The same figure with the hips no further from the feet than legs are long, and the grip no further from the shoulders than arms are. */
export function settled(build: Build, footing: Footing, start: Freedoms): Freedoms {
  let at = start;
  for (let round = 0; round < mostRounds; round++) {
    const { joints, short } = skeletonOf(build, footing, at);
    const [leg, arm] = [worse(short.leadLeg, short.trailLeg), worse(short.leadArm, short.trailArm)];
    if (Math.abs(leg) < near && Math.abs(arm) < near) return at;
    if (Math.abs(leg) >= near) {
      const way =
        leg === short.leadLeg
          ? minus(joints.leadAnkle, joints.leadHip)
          : minus(joints.trailAnkle, joints.trailHip);
      const { x, y, z } = unit(way);
      at = {
        ...at,
        pelvisX: at.pelvisX + leg * x,
        pelvisY: at.pelvisY + leg * y,
        pelvisZ: at.pelvisZ + leg * z,
      };
    } else {
      const way =
        arm === short.leadArm
          ? minus(joints.leadShoulder, joints.leadHand)
          : minus(joints.trailShoulder, joints.trailHand);
      const { x, y, z } = unit(way);
      at = { ...at, handsX: at.handsX + arm * x, handsY: at.handsY + arm * y, handsZ: at.handsZ + arm * z };
    }
  }
  return at;
}

function worse(a: number, b: number): number {
  return Math.abs(a) >= Math.abs(b) ? a : b;
}

/** Left and right exchanged: y changes its sign. What is on the lead side stays there. */
export function mirroredSkeleton({ joints, pelvis, chest, head, clubToe, short }: Skeleton): Skeleton {
  const other = ({ x, y, z }: Vector): Vector => ({ x, y: 0 - y, z });
  const frame = ({ side, front, up }: Frame): Frame => ({
    side: other(side),
    front: other(front),
    up: other(up),
  });
  return {
    joints: Object.fromEntries(
      Object.entries(joints).map(([name, place]) => [name, other(place)]),
    ) as unknown as Joints,
    pelvis: frame(pelvis),
    chest: frame(chest),
    head: frame(head),
    clubToe: other(clubToe),
    short,
  };
}
