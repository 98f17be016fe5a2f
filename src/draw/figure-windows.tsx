// The windows that are taught toward, behind the marks of a figure: bands for offsets, sectors for angles; knows no template file.
import { isForOtherClub, standingsOf, type WindowStanding } from '../judgement/template.ts';
import type { Analysis } from '../analysis/result.ts';
import { showWindow } from '../measure/show.ts';
import type { StanceKey, View } from '../physics/pose-anchors.ts';
import { poseKeys, type PoseKey } from '../physics/pose-readings.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import { vector } from '../physics/vector.ts';
import type { Stand } from './figure-pose.ts';
import type { Camera } from './figure-shape.ts';
import { fixed, ringSector, type Place } from './geometry.ts';
import type { Label } from './label-column.tsx';
import { areaStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** The template's windows at a checkpoint, by the key below it; none of a template for other clubs. */
export function windowsAt(analysis: Analysis, checkpoint: Checkpoint): ReadonlyMap<string, WindowStanding> {
  const { template, derivation, student, club } = analysis.subject;
  if (template === undefined || derivation === undefined) return new Map();
  if (isForOtherClub(template.document, club?.kind?.value)) return new Map();
  const prefix = `checkpoints.${checkpoint}.`;
  return new Map(
    standingsOf(template.document, derivation, student?.document.hand?.value)
      .filter(({ id, edges }) => id.startsWith(prefix) && edges !== undefined)
      .map((standing) => [standing.id.slice(prefix.length), standing]),
  );
}

/** As a label says it. */
export function taughtOf(standing: WindowStanding | undefined): Label['taught'] {
  if (standing?.edges === undefined) return undefined;
  const { edges, window, state } = standing;
  return `${state === 'not known' ? 'taught' : state} ${showWindow(window.quantity, edges.from, edges.to)}`;
}

export function FigureWindows({
  windows,
  stand,
  view,
  camera,
  picture,
  theme,
}: {
  readonly windows: ReadonlyMap<string, WindowStanding>;
  readonly stand: Stand;
  readonly view: View;
  readonly camera: Camera;
  readonly picture: string;
  readonly theme: Theme;
}): Picture {
  return (
    <g data-part="windows">
      {poseKeys.flatMap((key) => {
        const edges = windows.get(key)?.edges;
        const d = edges && areaOf(key, edges, stand, view, camera);
        return d === undefined
          ? []
          : [
              <path
                key={key}
                d={d}
                {...areaStyle('taught', picture, theme)}
                fill-opacity="0.6"
                data-window={key}
              />,
            ];
      })}
    </g>
  );
}

/** Half the breadth of a band, m: it shows on both sides of a mark, and leaves the body to be seen. */
const bandHalf = 0.05;

type Edges = { readonly from: number; readonly to: number };

function areaOf(
  key: PoseKey | StanceKey,
  { from, to }: Edges,
  { pose, hand }: Stand,
  view: View,
  camera: Camera,
): string | undefined {
  const { joints } = pose.skeleton;
  const side = hand === 'left' ? -1 : 1;
  const unit = Math.abs(camera.turn(vector(0, 0, 1)).y);
  const band = (joint: keyof typeof joints, x: (value: number) => number): string => {
    const { y, z } = joints[joint];
    return box(camera.see(vector(x(from), y, z + bandHalf)), camera.see(vector(x(to), y, z - bandHalf)));
  };
  const plain = (value: number): number => value;
  /** On the picture 0 is up and right positive. */
  const fan = (centre: Place, length: number, angle: (value: number) => number): string =>
    ringSector(centre, [angle(from), angle(to)], [0.25 * length * unit, length * unit]);
  if (view === 'face_on') {
    if (key === 'head') return band('leadEar', plain);
    if (key === 'sternum') return band('sternum', plain);
    if (key === 'pelvis') return band('pelvis', plain);
    if (key === 'lead_shoulder') return band('leadShoulder', plain);
    if (key === 'hands') return band('grip', plain);
    if (key === 'lead_knee') return band('leadKnee', (value) => joints.leadAnkle.x + value);
    if (key === 'shaft_lean') return fan(camera.see(joints.clubHead), 1.05, (value) => side * value);
    if (key === 'spine_tilt') return fan(camera.see(joints.pelvis), 0.75, (value) => -side * value);
    return undefined;
  }
  if (key === 'forward_bend') return fan(camera.see(joints.pelvis), 0.75, (value) => side * value);
  if (key === 'shaft_inclination' && joints.clubHead.z < joints.grip.z) {
    return fan(camera.see(joints.clubHead), 1.05, (value) => side * (value - Math.PI / 2));
  }
  if (key === 'hand_depth' || key === 'pelvis_depth') {
    const { x, z } = joints[key === 'hand_depth' ? 'grip' : 'pelvis'];
    const at = (value: number): number => side * (pose.at.toeLine + value);
    return box(camera.see(vector(x, at(from), z + bandHalf)), camera.see(vector(x, at(to), z - bandHalf)));
  }
  if (key === 'head_height') {
    const { y } = joints.leadEar;
    return box(
      camera.see(vector(0, y + 0.14, pose.earAtAddress + from)),
      camera.see(vector(0, y - 0.14, pose.earAtAddress + to)),
    );
  }
  return undefined;
}

function box(a: Place, b: Place): string {
  return `M ${fixed(a.x)} ${fixed(a.y)} L ${fixed(b.x)} ${fixed(a.y)} L ${fixed(b.x)} ${fixed(b.y)} L ${fixed(a.x)} ${fixed(b.y)} Z`;
}
