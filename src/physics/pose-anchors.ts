// Which parts of a figure an entry holds in place, in the view in which it can be seen; knows no numbers.
import type { PoseKey } from './pose-readings.ts';

export const parts = [
  'head',
  'trunk',
  'pelvis',
  'leadArm',
  'trailArm',
  'hands',
  'leadLeg',
  'trailLeg',
  'leadFoot',
  'trailFoot',
  'club',
] as const;
export type Part = (typeof parts)[number];

export type View = 'face_on' | 'down_the_line';

/** Held by an entry, by what the model makes of other entries, or by usual postures alone. */
export type Anchor = 'entered' | 'expected' | 'guessed';
export type Anchors = Readonly<Record<View, Readonly<Record<Part, Anchor>>>>;

/** What is recorded of the stance, beside what a checkpoint has. */
export type StanceKey =
  'stance_width' | 'ball_position' | 'lead_foot_flare' | 'trail_foot_flare' | 'stance_direction';

type Holds = Readonly<Partial<Record<View, readonly Part[]>>>;

const both = (...held: readonly Part[]): Holds => ({ face_on: held, down_the_line: held });
const faceOn = (...held: readonly Part[]): Holds => ({ face_on: held });
const downTheLine = (...held: readonly Part[]): Holds => ({ down_the_line: held });

const holding: Readonly<Record<PoseKey | StanceKey, Holds>> = {
  head: faceOn('head'),
  sternum: faceOn('trunk'),
  pelvis: faceOn('pelvis'),
  lead_shoulder: faceOn('trunk'),
  hands: faceOn('hands'),
  lead_knee: faceOn('leadLeg'),
  shoulder_turn: both('trunk'),
  pelvis_turn: both('pelvis'),
  shoulder_tilt: faceOn('trunk'),
  spine_tilt: faceOn('trunk'),
  forward_bend: downTheLine('trunk'),
  lead_arm: both('leadArm'),
  lead_elbow_bend: both('leadArm'),
  trail_elbow_bend: both('trailArm'),
  lead_wrist_hinge: both('club'),
  shaft_lean: faceOn('club'),
  shaft_inclination: downTheLine('club'),
  hand_depth: downTheLine('hands'),
  pelvis_depth: downTheLine('pelvis'),
  head_height: both('head'),
  shoulder_direction: both('trunk'),
  stance_width: faceOn('leadFoot', 'trailFoot'),
  ball_position: faceOn('leadFoot'),
  lead_foot_flare: both('leadFoot'),
  trail_foot_flare: both('trailFoot'),
  stance_direction: downTheLine('leadFoot', 'trailFoot'),
};

/** The first of these that holds the part in that view. */
export function holderOf(
  part: Part,
  view: View,
  keys: Iterable<PoseKey | StanceKey>,
): PoseKey | StanceKey | undefined {
  for (const key of keys) if (holding[key][view]?.includes(part)) return key;
  return undefined;
}

const rank: Readonly<Record<Anchor, number>> = { guessed: 0, expected: 1, entered: 2 };

/** Whether something recorded can be seen in a view. */
export function isSeen(key: PoseKey | StanceKey, view: View): boolean {
  return holding[key][view] !== undefined;
}

/** Each part is as sure as the surest entry that holds it. */
export function anchorsOf(
  known: Iterable<readonly [PoseKey | StanceKey, Exclude<Anchor, 'guessed'>]>,
): Anchors {
  const none = () => Object.fromEntries(parts.map((part) => [part, 'guessed'])) as Record<Part, Anchor>;
  const anchors = { face_on: none(), down_the_line: none() };
  for (const [key, kind] of known) {
    for (const view of ['face_on', 'down_the_line'] as const) {
      for (const part of holding[key][view] ?? []) {
        if (rank[kind] > rank[anchors[view][part]]) anchors[view][part] = kind;
      }
    }
  }
  return anchors;
}
