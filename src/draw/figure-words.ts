// What a figure says in words: labels beside it, what is not known, and what could not be drawn where it was recorded; knows no shapes.
import { upperFirst } from '../measure/quote.ts';
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { Value } from '../model/value.ts';
import { isSeen, type Anchor, type StanceKey, type View } from '../physics/pose-anchors.ts';
import type { Misfit } from '../physics/pose.ts';
import { poseKeys, type PoseKey } from '../physics/pose-readings.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Place } from './geometry.ts';
import type { Stand } from './figure-pose.ts';
import { sayingOf, wordsOf } from './known.ts';
import type { Label } from './label-column.tsx';
import type { WindowStanding } from '../judgement/template.ts';
import { taughtOf } from './figure-windows.tsx';
import { lowerFirst } from '../measure/quote.ts';

/** What a figure is hardly told without, face-on and down the line. */
const chief: Readonly<Record<View, readonly PoseKey[]>> = {
  face_on: ['head', 'sternum', 'pelvis', 'lead_shoulder', 'hands', 'spine_tilt', 'shaft_lean'],
  down_the_line: ['forward_bend', 'hand_depth', 'pelvis_depth', 'head_height', 'shaft_inclination'],
};

export function missingOf({ values, checkpoint }: Stand, view: View, registry: Registry): readonly string[] {
  // At address the head is by definition as high as it was at address.
  const keys = chief[view].filter((key) => key !== 'head_height' || checkpoint !== 'address');
  return titlesMissing(keys, values, checkpoint, registry);
}

function titlesMissing(
  keys: readonly (PoseKey | StanceKey)[],
  values: Stand['values'],
  checkpoint: Checkpoint,
  registry: Registry,
): readonly string[] {
  return keys.flatMap((key) => {
    const title = values.has(key) ? undefined : registry.find(`checkpoints.${checkpoint}.${key}`)?.title;
    return title === undefined ? [] : [lowerFirst(title)];
  });
}

export function labelOf(
  value: Value,
  at: Place | undefined,
  standing: WindowStanding | undefined,
  registry: Registry,
): Label {
  return {
    ...sayingOf(value, registry),
    id: value.id,
    kind: value.kind === 'entered' ? 'entered' : 'expected',
    taught: taughtOf(standing),
    at,
  };
}

/** What the feet from above are hardly told without, at address alone. */
export function missingOfStance({ values, checkpoint }: Stand, registry: Registry): readonly string[] {
  return checkpoint === 'address' ? titlesMissing(stanceChief, values, checkpoint, registry) : [];
}

const stanceChief: readonly StanceKey[] = [
  'stance_width',
  'ball_position',
  'lead_foot_flare',
  'trail_foot_flare',
];

/** Nobody measures a figure: where it stands is told to some 5 cm or 5°, and so is what was recorded beside it. */
const roughly = { length: 0.05, angle: 0.09 };

/** "Ball position drawn at its limit, 120 cm behind, not 200 cm behind", and of the body as near as it comes. */
export function misfitWords(
  { pose, values, hand }: Stand,
  view: View,
  { subject: { registry } }: Analysis,
): readonly string[] {
  return pose.misfits.flatMap(({ key, drawn }: Misfit) => {
    const value = values.get(key);
    const quantity = value && registry.find(value.id);
    if (!value || !quantity || !isSeen(key, view)) return [];
    const u = quantity.dimension === 'angle' ? roughly.angle : roughly.length;
    const rough = (number: number): string => showValue(quantity, number, u).split(' ± ')[0]!;
    const shown = rough(mirroredNumber(value.id, drawn, { hand, registry }));
    const where = poseKeys.some((one) => one === key) ? 'as near as a body comes,' : 'at its limit,';
    return [`${quantity.title} drawn ${where} ${shown}, not ${rough(value.value)}`];
  });
}

/** All of it, to who cannot see it. */
export function figureWords(
  labels: readonly Label[],
  missing: readonly string[],
  misfits: readonly string[],
  { supposed }: Stand,
): string {
  const further = [...misfits, ...(supposed.length > 0 ? [drawnAs(supposed)] : [])];
  return [wordsOf(labels, missing), ...further.map((one) => `${one}.`)].join(' ');
}

export function drawnAs(supposed: readonly string[]): string {
  return `Drawn as ${supposed.join(', ')}`;
}

/** Values of a checkpoint that have no place on a figure, in the order of the registry. */
export function placelessValues(
  { derivation, subject: { registry } }: Analysis,
  stand: Stand,
  shown: ReadonlySet<string>,
): readonly Value[] {
  const prefix = `checkpoints.${stand.checkpoint}.`;
  return registry.quantities.flatMap(({ id }) => {
    const value = id.startsWith(prefix) && !shown.has(id) ? derivation?.values.get(id) : undefined;
    const isElsewhere = [...stand.values.values()].some((one) => one.id === id);
    return value?.kind === 'entered' && !isElsewhere && Number.isFinite(value.value) ? [value] : [];
  });
}

/** The values of which this view shows something. */
export function seenValues(
  { values }: Stand,
  view: View,
): readonly (readonly [PoseKey | StanceKey, Value])[] {
  return [...values].filter(([key]) => isSeen(key, view));
}

export const anchorWords: Readonly<Record<Anchor, string>> = {
  entered: 'recorded',
  expected: 'expected',
  guessed: 'as usual, not recorded',
};

/** "Lead arm parallel back". */
export function checkpointTitle(checkpoint: Checkpoint): string {
  return upperFirst(checkpoint.replaceAll('_', ' '));
}
