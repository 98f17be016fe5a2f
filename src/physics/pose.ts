// How a player stands at a checkpoint, as joints in space: a figure fitted to what was recorded, the rest as postures usually are; knows no record.
import type { SwingCheckpoint } from './balance-priors.ts';
import type { BodyTableName } from './body-tables.ts';
import { dampedFit } from './damped-fit.ts';
import { halfHeel, usualFlare } from './feet.ts';
import { anchorsOf, type Anchors, type StanceKey } from './pose-anchors.ts';
import { limitsOf, residualsOf, startOf, uncertaintyOf, type PoseProblem } from './pose-fit.ts';
import { posePriors, shaftAtBall } from './pose-priors.ts';
import { differenceOf, isLength, poseKeys, readingOf, type PoseKey, type Seen } from './pose-readings.ts';
import { mirroredSkeleton, settled } from './pose-settling.ts';
import { freedomsOf, type Freedoms } from './freedoms.ts';
import { buildOf, skeletonOf, type Build, type Footing, type Skeleton } from './skeleton.ts';
import { vector, type Vector } from './vector.ts';
import type { Hand } from './mirror.ts';

/** A number, SI, as for a right-handed player, and whether it was written down or the model's. */
export interface Known {
  readonly value: number;
  /** Standard uncertainty, SI; a middling one where it is not known. */
  readonly u?: number | undefined;
  readonly kind: 'entered' | 'expected';
}

export interface Player {
  readonly hand: Hand;
  /** m */
  readonly stature: number;
  readonly table: BodyTableName;
  /** Middle of the grip to the middle of the face, m. */
  readonly clubLever: number;
  /** Of the shaft to the ground, rad. */
  readonly lie: number;
}

export interface Posture {
  readonly checkpoint: SwingCheckpoint;
  readonly known: ReadonlyMap<PoseKey, Known>;
  readonly stance: ReadonlyMap<StanceKey, Known>;
  /** How the same player stood at address, from where the feet have not moved; left out at address itself. */
  readonly address?: Pose | undefined;
}

/** Something recorded that the figure does not show where it was recorded, since a body cannot or another entry forbids it. */
export interface Misfit {
  readonly key: PoseKey | StanceKey;
  readonly asked: number;
  readonly drawn: number;
}

/** In the world frame: x toward the target, y to the left, z up, the ball at the origin; m. */
export interface Pose {
  readonly skeleton: Skeleton;
  readonly anchors: Anchors;
  readonly misfits: readonly Misfit[];
  /** The numbers that it stands by, as for a right-handed player. */
  readonly at: Freedoms;
  readonly footing: Footing;
  /** Height of the lead ear at address, m. */
  readonly earAtAddress: number;
}

/** How near a figure comes to what was recorded before it counts as met: m and rad. */
export const poseTolerance = { length: 0.001, angle: (0.5 * Math.PI) / 180 } as const;

/** Where nothing is said: heels apart as a share of stature, and the ball behind the inside of the lead heel, m. Common practice, no source. */
const usualStance = { width: 0.25, ball: -0.07 } as const;
/** As far as legs can be spread, over stature. Judgement: 46° to each side. */
const widestStance = 0.8;

/**
 * The figure that meets what was recorded and else stands as players usually do at this checkpoint (`posePriors`).
 *
 * Its segments are rigid: lengths from stature (Drillis & Contini 1966, in Winter, figure 4.1), so that only its few freedoms move. They
 * are found by damped least squares: what was recorded weighs as if known to a hundredth of its uncertainty, what the model expects to five times
 * that, usual postures by their spread. Where all of it cannot be met, that is left out without which the rest is met best; it is
 * named among the misfits. Limbs are solved by the law of cosines, so that bones keep their lengths and joints bend their own way.
 *
 * @returns undefined unless stature, lever and lie are positive numbers.
 */
export function poseAt(player: Player, posture: Posture): Pose | undefined {
  const build = buildOf(player.stature, player.table, player.clubLever);
  if (!build || !(player.lie > 0)) return undefined;
  const { checkpoint, address } = posture;
  const { footing, misfits: stanceMisfits } = footingOf(build, player, posture);
  const asked = new Map([...posture.known].filter(([, { value }]) => Number.isFinite(value)));
  const tried: Try = (followed, from) => {
    const numbers = fitted({ build, footing, posture, followed }, from);
    const at = settled(build, footing, freedomsOf(numbers));
    const skeleton = skeletonOf(build, footing, at);
    const earAtAddress = address?.earAtAddress ?? skeleton.joints.leadEar.z;
    const seen = { skeleton, at, earAtAddress, isTop: checkpoint === 'top' };
    return { numbers, seen, misfits: misfitsOf(asked, seen) };
  };
  const { seen, misfits } = bestOf(asked, tried);
  const known = [...posture.stance, ...asked].filter(
    ([key]) => ![...misfits, ...stanceMisfits].some((misfit) => misfit.key === key),
  );
  return {
    skeleton: player.hand === 'left' ? mirroredSkeleton(seen.skeleton) : seen.skeleton,
    anchors: anchorsOf(known.map(([key, { kind }]) => [key, kind])),
    misfits: [...stanceMisfits, ...misfits],
    at: seen.at,
    footing,
    earAtAddress: seen.earAtAddress,
  };
}

interface Tried {
  readonly numbers: Float64Array;
  readonly seen: Seen;
  readonly misfits: readonly Misfit[];
}

/** @param from where to begin instead of at the usual posture. */
type Try = (followed: ReadonlyMap<PoseKey, Known>, from?: Float64Array) => Tried;

/** Of so many that are met worst, each is left out for a try. */
const candidates = 3;

/** Leaves out, one after another, that without which the rest is met best; each try goes on from where the last one stands. */
function bestOf(asked: ReadonlyMap<PoseKey, Known>, tried: Try): Tried {
  let followed = asked;
  let best = tried(followed);
  for (;;) {
    const worst = worstOf(best.misfits, followed);
    if (worst.length === 0) return best;
    const without = worst.slice(0, candidates).map(({ key }) => {
      const rest = new Map([...followed].filter(([one]) => one !== key));
      const then = tried(rest, best.numbers);
      return { rest, then, off: worstOf(then.misfits, rest)[0]?.off ?? 0 };
    });
    const least = without.reduce((a, b) => (b.off < a.off ? b : a));
    [followed, best] = [least.rest, least.then];
  }
}

function fitted(problem: PoseProblem, from: Float64Array | undefined): Float64Array {
  const limits = limitsOf(problem);
  // First roughly: far from the solution a sharp fit finds its way only slowly.
  const near = from ?? dampedFit(residualsOf(problem, 30), startOf(problem), limits, 12);
  return dampedFit(residualsOf(problem, 1), near, limits, 40);
}

function misfitsOf(asked: ReadonlyMap<PoseKey, Known>, seen: Seen): readonly Misfit[] {
  return poseKeys.flatMap((key) => {
    const known = asked.get(key);
    if (known === undefined) return [];
    const drawn = readingOf(key, seen);
    const off = Math.abs(differenceOf(key, drawn, known.value));
    const tolerance = isLength(key) ? poseTolerance.length : poseTolerance.angle;
    return off <= tolerance ? [] : [{ key, asked: known.value, drawn }];
  });
}

/** Of those that were followed, by how many uncertainties each is missed, the worst first. */
function worstOf(
  misfits: readonly Misfit[],
  followed: ReadonlyMap<PoseKey, Known>,
): readonly { readonly key: PoseKey; readonly off: number }[] {
  return misfits
    .flatMap(({ key, asked, drawn }) => {
      const name = key as PoseKey;
      const known = followed.get(name);
      if (known === undefined) return [];
      return [{ key: name, off: Math.abs(differenceOf(name, drawn, asked)) / uncertaintyOf(name, known) }];
    })
    .sort((a, b) => b.off - a.off);
}

function footingOf(
  build: Build,
  { lie }: Player,
  { checkpoint, stance }: Posture,
): { readonly footing: Footing; readonly misfits: readonly Misfit[] } {
  const prior = posePriors[checkpoint];
  const misfits: Misfit[] = [];
  const take = (key: StanceKey, usual: number, least: number, most: number): number => {
    const asked = stance.get(key)?.value;
    if (asked === undefined || Number.isNaN(asked)) return usual;
    const drawn = Math.min(most, Math.max(least, asked));
    if (drawn !== asked) misfits.push({ key, asked, drawn });
    return drawn;
  };
  const turn = Math.PI / 2;
  const width = take('stance_width', usualStance.width * build.stature, 0.02, widestStance * build.stature);
  const ball = take('ball_position', usualStance.ball, -1.2, 1.2);
  const leadHeelX = halfHeel.value - ball;
  const footing: Footing = {
    leadHeelX,
    trailHeelX: leadHeelX - width,
    leadFlare: take('lead_foot_flare', usualFlare.lead.value, -turn, turn),
    trailFlare: take('trail_foot_flare', usualFlare.trail.value, -turn, turn),
    stanceDirection: take('stance_direction', 0, -1, 1),
    trailHeelLift: prior.trailHeelLift,
    trailFootTurn: prior.trailFootTurn,
    gaze: prior.gaze,
    shaft: prior.shaft ?? atBall(checkpoint, lie),
    toe: prior.toe,
  };
  return { footing, misfits };
}

/** From the grip to the head where the head is at the ball. */
function atBall(checkpoint: SwingCheckpoint, lie: number): Vector {
  const { lean, belowLie } = shaftAtBall[checkpoint === 'impact' ? 'impact' : 'address'];
  const slope = Math.min(1.5, Math.max(0.3, lie - belowLie));
  return vector(-Math.tan(lean), -1 / Math.tan(slope), -1);
}
