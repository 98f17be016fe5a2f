// The posture of a record's player at a checkpoint: entries and computed values, fitted; knows no picture.
import type { Analysis } from '../analysis/result.ts';
import { bodyTableNamed } from '../model/context.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { rememberedByText } from '../model/remembered.ts';
import type { Value } from '../model/value.ts';
import { midGripToHead } from '../physics/body.ts';
import type { StanceKey } from '../physics/pose-anchors.ts';
import { poseAt, type Known, type Player, type Pose, type Posture } from '../physics/pose.ts';
import { poseKeys, type PoseKey } from '../physics/pose-readings.ts';
import { checkpoints, type Checkpoint } from '../registry/quantity.ts';
import { valueOf } from './known.ts';

/** What a figure is drawn from. */
export interface Stand {
  readonly checkpoint: Checkpoint;
  readonly pose: Pose;
  readonly hand: 'left' | 'right';
  readonly stature: number;
  /** What was recorded or computed at this checkpoint and of the stance, by key. */
  readonly values: ReadonlyMap<PoseKey | StanceKey, Value>;
  /** What nobody said of player and club, in words. */
  readonly supposed: readonly string[];
}

/** Where the student's file or the club does not say. Judgement: a middle stature, and a middle iron. */
const usual = { stature: 1.72, clubLength: 0.94, lie: 1.08 } as const;

const stanceKeys: readonly StanceKey[] = [
  'stance_width',
  'ball_position',
  'lead_foot_flare',
  'trail_foot_flare',
  'stance_direction',
];

/** `entered`: by entries alone, which changes only where somebody types at that checkpoint. */
type Basis = 'all' | 'entered';

const kept = new WeakMap<Analysis, Map<string, Stand>>();

/** The same for the same analysis, since both views ask for it, and every checkpoint for the address. */
export function standOf(analysis: Analysis, checkpoint: Checkpoint, by: Basis = 'all'): Stand {
  const known = kept.get(analysis) ?? new Map<string, Stand>();
  kept.set(analysis, known);
  const key = `${checkpoint} ${by}`;
  const stand = known.get(key) ?? standAt(analysis, checkpoint, by);
  known.set(key, stand);
  return stand;
}

/** The checkpoints of which anything was entered, in their order. */
export function checkpointsWithEntries({ document }: Analysis): readonly Checkpoint[] {
  if (document.kind !== 'swing') return [];
  const ids = [...document.entries.values()]
    .filter(({ readings }) => readings.length > 0)
    .map(({ id }) => id);
  return checkpoints.filter((at) => ids.some((id) => id.startsWith(`checkpoints.${at}.`)));
}

function standAt(analysis: Analysis, checkpoint: Checkpoint, by: Basis): Stand {
  const { registry, student } = analysis.subject;
  const said = student?.document.hand?.value;
  const hand = said ?? 'right';
  const values = new Map<PoseKey | StanceKey, Value>();
  const take = <K extends PoseKey | StanceKey>(keys: readonly K[], at: Checkpoint): ReadonlyMap<K, Known> => {
    const taken = new Map<K, Known>();
    for (const key of keys) {
      const value = valueOf(analysis, `checkpoints.${at}.${key}`);
      if (value === undefined || (by === 'entered' && value.kind !== 'entered')) continue;
      values.set(key, value);
      taken.set(key, {
        value: mirroredNumber(value.id, value.value, { hand, registry }),
        u: value.u ?? undefined,
        kind: value.kind === 'entered' ? 'entered' : 'expected',
      });
    }
    return taken;
  };
  const posture = {
    checkpoint,
    known: take(poseKeys, checkpoint),
    stance: take(stanceKeys, 'address'),
    address: checkpoint === 'address' ? undefined : standOf(analysis, 'address', by).pose,
  };
  const [stature, length, lie] = ['student.stature', 'club.length', 'club.lie'].map(
    (id) => valueOf(analysis, id)?.value,
  );
  const size = within(stature, 0.8, 2.4);
  const lever = midGripToHead(within(length, 0.5, 1.4) ?? usual.clubLength)!;
  const player = {
    hand,
    stature: size ?? usual.stature,
    table: bodyTableNamed(student?.document.bodyTable?.value) ?? ('winter' as const),
    clubLever: lever,
    lie: within(lie, 0.7, 1.4) ?? usual.lie,
  };
  return {
    checkpoint,
    pose: poses(textOf(player, posture), () => poseAt(player, posture)!),
    hand,
    stature: player.stature,
    values,
    supposed: [
      ...(said === undefined ? ['a right-handed player'] : []),
      ...(size === undefined ? ['a stature of 1.72 m'] : []),
      ...(length === undefined ? ['a middle iron'] : []),
    ],
  };
}

/** Much of a record can change without a posture, whose fit takes a few milliseconds; as many as two open records have, by all and by entries. */
const poses = rememberedByText<Pose>(4 * checkpoints.length);

/** The posture at address hangs on what was known there alone. */
function textOf(player: Player, { checkpoint, known, stance, address }: Posture): string {
  return JSON.stringify([player, checkpoint, [...known], [...stance], address?.skeleton]);
}

function within(value: number | undefined, least: number, most: number): number | undefined {
  return value !== undefined && value >= least && value <= most ? value : undefined;
}
