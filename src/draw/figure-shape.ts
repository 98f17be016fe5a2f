// The outlines of a body seen from one side, from its joints: how broad each part is, and which lies before which; knows no colours.
import type { Part } from '../physics/pose-anchors.ts';
import type { Frame, Skeleton } from '../physics/skeleton.ts';
import { add, scale, vector, type Vector } from '../physics/vector.ts';
import { girths, headLevels, hipLevels, trunkLevels, type Level } from './figure-girths.ts';
import type { Place } from './geometry.ts';
import { bodyOutline, openThrough, taperedOutline, type Girth } from './outline.ts';

/** A camera: where a place in space is on the picture, and how far from the camera. */
export interface Camera {
  readonly see: (at: Vector) => Place;
  readonly farness: (at: Vector) => number;
  /** A direction on the picture, in units of the picture for a metre. */
  readonly turn: (direction: Vector) => Place;
}

export interface Shape {
  readonly part: Part;
  /** One closed outline or several that overlap. */
  readonly outlines: readonly string[];
  /** Fine lines that hint at what lies under the skin. */
  readonly hints: readonly string[];
  readonly farness: number;
}

/** Every part, the farthest first. */
export function shapesOf(skeleton: Skeleton, stature: number, camera: Camera): readonly Shape[] {
  const { joints } = skeleton;
  const unit = lengthOf(camera.turn(vector(0, 0, 1))) * stature;
  const piece = (from: Vector, to: Vector, of: keyof typeof girths): string =>
    taperedOutline(
      camera.see(from),
      camera.see(to),
      girths[of].map(([share, half]) => [share, half * unit]),
    );
  const shape = (
    part: Part,
    near: readonly Vector[],
    outlines: readonly string[],
    hints: readonly string[] = [],
  ): Shape => ({
    part,
    outlines,
    hints,
    farness: near.reduce((sum, at) => sum + camera.farness(at), 0) / near.length,
  });
  const trunk = trunkOf(skeleton, stature, camera);
  const leg = (side: 'lead' | 'trail'): Shape[] => {
    const [hip, knee, ankle] = [joints[`${side}Hip`], joints[`${side}Knee`], joints[`${side}Ankle`]];
    const [heel, ball, toe] = [joints[`${side}Heel`], joints[`${side}Ball`], joints[`${side}Toe`]];
    const lifted = (at: Vector, height: number): Vector => add(at, vector(0, 0, height * stature));
    const back = lifted(mix(heel, ball, 0.24), 0.0215);
    const front = lifted(ball, 0.019);
    return [
      shape(
        `${side}Foot`,
        [ankle, toe],
        [
          piece(back, front, 'sole'),
          piece(front, lifted(mix(toe, ball, 0.35), 0.012), 'toes'),
          piece(ankle, mix(back, front, 0.55), 'instep'),
        ],
      ),
      shape(`${side}Leg`, [knee, ankle], [piece(hip, knee, 'thigh'), piece(knee, ankle, 'shank')]),
    ];
  };
  const arm = (side: 'lead' | 'trail'): Shape => {
    const [shoulder, elbow] = [joints[`${side}Shoulder`], joints[`${side}Elbow`]];
    const [wrist, hand] = [joints[`${side}Wrist`], joints[`${side}Hand`]];
    return shape(
      `${side}Arm`,
      [elbow, wrist],
      [piece(shoulder, elbow, 'upperArm'), piece(elbow, wrist, 'forearm'), piece(wrist, hand, 'hand')],
    );
  };
  const { leadHand, trailHand, gripEnd, clubHead } = joints;
  const beyond = (hand: Vector, other: Vector): Vector => mix(hand, other, -0.45);
  return [
    ...leg('trail'),
    ...leg('lead'),
    shape('pelvis', [joints.pelvis], [bodyOutline(trunk.hips)], trunk.belt),
    shape(
      'trunk',
      [joints.shoulders, joints.pelvis],
      [
        bodyOutline(trunk.girths),
        piece(joints.leadShoulder, joints.trailShoulder, 'yoke'),
        piece(joints.neck, mix(joints.neck, joints.head, 0.75), 'neck'),
      ],
      trunk.ribs,
    ),
    shape('head', [joints.head], headOf(skeleton, stature, camera)),
    arm('trail'),
    arm('lead'),
    shape('club', [gripEnd, clubHead], []),
    shape(
      'hands',
      [leadHand, trailHand],
      [piece(beyond(leadHand, trailHand), beyond(trailHand, leadHand), 'fists')],
    ),
  ].sort((a, b) => b.farness - a.farness);
}

interface TrunkShape {
  readonly hips: readonly Girth[];
  readonly girths: readonly Girth[];
  readonly ribs: readonly string[];
  readonly belt: readonly string[];
}

function trunkOf({ joints, pelvis, chest }: Skeleton, stature: number, camera: Camera): TrunkShape {
  const way = add(joints.neck, scale(joints.pelvis, -1));
  const bare = lengthOf3(way) - 0.02 * stature;
  const up = chest.up;
  const frameAt = (along: number): Frame => turned(pelvis, chest, Math.min(1, Math.max(0, along)), up);
  const middle = ({ along, before }: Level, frame: Frame): Vector =>
    add(add(joints.pelvis, scale(up, along * bare)), scale(frame.front, before * stature));
  const girth = (one: Level): Girth => {
    const frame = frameAt(one.along);
    return { at: camera.see(middle(one, frame)), half: halfOf(one, frame, stature, camera) };
  };
  const band = (one: Level, dip: number): string => {
    const frame = frameAt(one.along);
    return nearHalf(one, frame, middle(one, frame), stature, camera, scale(up, dip * stature));
  };
  return {
    hips: hipLevels.map(girth),
    girths: trunkLevels.map(girth),
    ribs: [band(trunkLevels[3]!, 0.028)],
    belt: [band(hipLevels[3]!, -0.012)],
  };
}

/** The half of a level's rim that faces the camera; its front is drawn up or down by `dip`, as the ribs part and the hips dip. */
function nearHalf(
  { side, deep }: Level,
  frame: Frame,
  middle: Vector,
  stature: number,
  camera: Camera,
  dip: Vector,
): string {
  const rim = (angle: number): Vector => {
    const [across, out] = [Math.cos(angle), Math.sin(angle)];
    const at = add(scale(frame.side, across * side * stature), scale(frame.front, out * deep * stature));
    return add(add(middle, at), scale(dip, out > 0 ? out * out : 0));
  };
  // The rim is nearest where its outward side looks at the camera; a quarter round to each side of it is seen.
  const toward = Math.atan2(
    camera.farness(add(middle, frame.front)) - camera.farness(middle),
    camera.farness(add(middle, frame.side)) - camera.farness(middle),
  );
  const nearest = Math.atan2(deep * Math.sin(toward), side * Math.cos(toward)) + Math.PI;
  return openThrough(
    Array.from({ length: 9 }, (_, i) => camera.see(rim(nearest + ((i - 4) / 4) * 0.47 * Math.PI))),
  );
}

function headOf({ joints, head }: Skeleton, stature: number, camera: Camera): readonly string[] {
  const outline = headLevels.map((one) => {
    const middle = add(
      add(joints.head, scale(head.up, one.along * stature)),
      scale(head.front, one.before * stature),
    );
    return { at: camera.see(middle), half: halfOf(one, head, stature, camera) };
  });
  const unit = lengthOf(camera.turn(vector(0, 0, 1))) * stature;
  const nose = (up: number, before: number): Place =>
    camera.see(add(add(joints.head, scale(head.up, up * stature)), scale(head.front, before * stature)));
  const bridge = taperedOutline(nose(0.014, 0.055), nose(-0.012, 0.063), [
    [0, 0.006 * unit],
    [1, 0.009 * unit],
  ]);
  return [bodyOutline(outline), bridge];
}

/** Half of how broad an ellipse looks, square to its line on the picture. */
function halfOf({ side, deep }: Level, frame: Frame, stature: number, camera: Camera): number {
  const along = camera.turn(frame.up);
  const size = lengthOf(along);
  const across = size > 1e-6 ? { x: -along.y / size, y: along.x / size } : { x: 1, y: 0 };
  const [one, other] = [camera.turn(frame.side), camera.turn(frame.front)];
  const on = (a: Place): number => a.x * across.x + a.y * across.y;
  return Math.hypot(on(one) * side, on(other) * deep) * stature;
}

/** Between two frames: turned from the one to the other. */
function turned(from: Frame, to: Frame, share: number, up: Vector): Frame {
  const side = add(scale(from.side, 1 - share), scale(to.side, share));
  const front = add(scale(from.front, 1 - share), scale(to.front, share));
  const one = 1 / Math.max(1e-6, lengthOf3(side));
  const other = 1 / Math.max(1e-6, lengthOf3(front));
  return { side: scale(side, one), front: scale(front, other), up };
}

function mix(a: Vector, b: Vector, share: number): Vector {
  return add(scale(a, 1 - share), scale(b, share));
}

function lengthOf({ x, y }: Place): number {
  return Math.hypot(x, y);
}

function lengthOf3({ x, y, z }: Vector): number {
  return Math.hypot(x, y, z);
}
