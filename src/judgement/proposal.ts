// Searches the changes that bring goals inside their windows: few, early in the swing, and causes before levers; knows no file.
import { intervene } from '../model/intervention.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { differenceToSI, fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { beliefOf } from './belief.ts';
import { linksBetween } from './causes.ts';
import { exactnessOf, type Foreseer, type Made } from './foreseer.ts';
import { chanceIn, chanceOfAll, standingOf, type Standing, type Wanted } from './goal-standing.ts';
import { predict, type Prediction } from './prediction.ts';

export interface Proposal {
  readonly changes: readonly Candidate[];
  readonly prediction: Prediction;
  readonly standings: readonly Standing[];
  /** Of all goals at once. */
  readonly chance: number;
}

export interface Candidate extends Made {
  /** 0 at setup, 1 in the backswing, 2 in the downswing. */
  readonly stage: number;
  readonly from: number;
  /** What the next record must show. */
  readonly proof: string;
  /** A sentence for the reader. */
  readonly why: string;
}

export interface Search {
  readonly foreseer: Foreseer;
  readonly wanted: readonly Wanted[];
  readonly mostChanges: number;
  readonly throwIfAborted: () => void;
}

const stages = ['setup', 'backswing', 'downswing'];

/** What a player can set out to change and the model reaches: by how much at a time, in the unit shown. A judgement. */
const levers: readonly (readonly [id: string, step: number, stage: number])[] = [
  ['delivery.arc.direction', 1, 0],
  ['checkpoints.impact.lead_shoulder', 2, 2],
  ['checkpoints.impact.shaft_lean', 2, 2],
  ['delivery.attack', 1, 2],
  ['delivery.path', 1, 2],
  ['delivery.face_to_path', 1, 2],
];
const mostSteps = 4;

/** A change must better the chance of all goals by this much to be worth a student's attention. */
const worth = 0.05;
/** So likely each, and a goal counts as brought inside. */
const enough = 0.5;
/** Sets that are run through the whole model in the end. */
const mostTried = 3;

/**
 * First each candidate alone through the whole model, then all sets of few by adding up how far each moves what is wanted, and the
 * best of each size through the whole model again. The smallest set that brings every goal inside is taken; where none does, the
 * one that betters the chances most, as long as each change in it is worth it. Undefined where nothing helps.
 */
export function propose(search: Search): Proposal | undefined {
  const { foreseer, wanted, mostChanges } = search;
  const player = foreseer.account.situation;
  const belief = beliefOf(foreseer.account, foreseer.hand);
  const known = wanted.filter((one) => standingOf(one, belief, player).value !== undefined);
  if (known.length === 0) return undefined;
  const now = known.map((one) => standingOf(one, belief, player));
  const scored = [...fromFaults(search, known), ...fromLevers(search, known)];
  const scoreOf = (set: readonly Scored[]): number =>
    now.reduce((sum, { wanted: one, value, u }, i) => {
      const moved = set.reduce((total, { moves }) => total + moves[i]!, value!);
      return sum + Math.log(Math.max(1e-9, chanceIn(one, moved, u!))) - 1e-3 * distance(one, moved, u!);
    }, 0) - set.reduce((sum, one) => sum + handicapOf(one), 0);
  let best: { set: readonly Scored[]; score: number }[] = [{ set: [], score: scoreOf([]) }];
  let found: Proposal | undefined;
  let last = chanceOfAll(known, belief, player);
  for (let size = 1; size <= mostChanges; size++) {
    const larger = best.flatMap(({ set }) =>
      scored
        .filter(({ candidate }) =>
          set.every(
            (one) => one.candidate.quantity.id !== candidate.quantity.id && !isTwin(one.candidate, candidate),
          ),
        )
        .map((one) => ({ set: [...set, one], score: scoreOf([...set, one]) })),
    );
    best = larger.sort((a, b) => b.score - a.score).slice(0, 40);
    let grown: Proposal | undefined;
    for (const { set } of best.slice(0, mostTried)) {
      search.throwIfAborted();
      const one = proposalOf(
        set.map(({ candidate }) => candidate),
        known,
        foreseer,
      );
      if (grown === undefined || one.chance > grown.chance) grown = one;
    }
    if (grown === undefined || grown.chance < last + worth) continue;
    [found, last] = [grown, grown.chance];
    if (grown.standings.every(({ chance }) => (chance ?? 0) >= enough)) break;
  }
  return found;
}

/** The path and the direction of the arc are one thing to a student, and the same goes for lean, shoulder and attack. */
function isTwin({ quantity: a }: Candidate, { quantity: b }: Candidate): boolean {
  const families = [
    ['delivery.arc.direction', 'delivery.path'],
    ['checkpoints.impact.lead_shoulder', 'checkpoints.impact.shaft_lean', 'delivery.attack'],
  ];
  return families.some((family) => family.includes(a.id) && family.includes(b.id));
}

function proposalOf(changes: readonly Candidate[], wanted: readonly Wanted[], foreseer: Foreseer): Proposal {
  const ordered = changes.toSorted((a, b) => a.stage - b.stage);
  const prediction = predict(ordered, foreseer);
  const { belief } = prediction;
  const player = foreseer.account.situation;
  const standings = wanted.map((one) => standingOf(one, belief, player));
  return { changes: ordered, prediction, standings, chance: chanceOfAll(wanted, belief, player) };
}

function distance({ min, max }: Wanted, value: number, u: number): number {
  return Math.max(min - value, value - max, 0) / Math.max(u, 1e-9);
}

/** What a candidate must make up for: the fault book comes before levers, causes before consequences, early before late. By judgement. */
function handicapOf({ candidate, origin }: Scored): number {
  return 0.01 * candidate.stage + { cause: 0, consequence: 0.02, lever: 0.03 }[origin];
}

interface Scored {
  readonly candidate: Candidate;
  /** A fault that another one brings about is a consequence. */
  readonly origin: 'cause' | 'consequence' | 'lever';
  /** How far each wanted quantity moves with this change alone. */
  readonly moves: readonly number[];
}

function fromFaults({ foreseer, throwIfAborted }: Search, wanted: readonly Wanted[]): readonly Scored[] {
  const { faults, account, registry } = foreseer;
  const named = faults.map(({ fault }) => fault);
  const broughtAbout = new Set(linksBetween(named, registry).map(({ to }) => to));
  return named.flatMap((fault) =>
    fault.changes.flatMap((change): Scored[] => {
      throwIfAborted();
      const { quantity, by, to } = change;
      const now = quantity && account.derivation.values.get(quantity.id)?.value;
      if (quantity === undefined || now === undefined) return [];
      const target = to?.target;
      const aim =
        by !== undefined
          ? now + mirroredNumber(quantity.id, by.difference, account.situation)
          : target?.kind === 'measure'
            ? mirroredNumber(quantity.id, target.value, account.situation)
            : undefined;
      if (aim === undefined) return [];
      const stage = Math.max(0, stages.indexOf(change.when ?? 'downswing'));
      const because = fault.id.value;
      const origin = broughtAbout.has(because) ? 'consequence' : 'cause';
      const why = `the fault book says that it helps against "${fault.title ?? because}"`;
      const found = candidate({ quantity, from: now, aim, stage, because, why });
      const { outlooks } = predict([found], foreseer);
      const moves = wanted.map((one) => outlooks.get(one.quantity.id)?.difference ?? 0);
      return moves.some((move) => move !== 0) ? [{ candidate: found, moves, origin }] : [];
    }),
  );
}

/** Each once through the model; more or less of it in proportion. */
function fromLevers({ foreseer, throwIfAborted }: Search, wanted: readonly Wanted[]): readonly Scored[] {
  const { account, registry } = foreseer;
  return levers.flatMap(([id, step, stage]) => {
    throwIfAborted();
    const quantity = registry.find(id);
    const now = account.derivation.values.get(id)?.value;
    if (quantity === undefined || now === undefined) return [];
    const unit = differenceToSI(step, quantity.unit);
    const effects = intervene(account, [{ id, kind: 'by', amount: unit, u: 0 }])?.effects;
    const moves = wanted.map((one) => effects?.get(one.quantity.id)?.difference ?? 0);
    const moved = wanted.find((_, i) => moves[i] !== 0);
    if (moved === undefined) return [];
    const range = quantity.practice ?? quantity.bounds;
    const counts = Array.from({ length: mostSteps }, (_, n) => n + 1).flatMap((n) => [n, -n]);
    return counts.flatMap((n): Scored[] => {
      const aim = now + n * unit;
      if (aim < range.min || aim > range.max) return [];
      const why = `the model says that it moves ${moved.quantity.title.toLowerCase()}`;
      const found = candidate({ quantity, from: now, aim, stage, because: moved.key, why });
      return [{ candidate: found, moves: moves.map((move) => n * move), origin: 'lever' }];
    });
  });
}

interface Sketch {
  readonly quantity: Quantity;
  readonly from: number;
  readonly aim: number;
  readonly stage: number;
  readonly because: string;
  readonly why: string;
}

/** In round numbers of the unit shown. */
function candidate({ quantity, from, aim, stage, because, why }: Sketch): Candidate {
  const { unit, decimals } = quantity;
  const to = toSI(Number(fromSI(aim, unit).toFixed(decimals)), unit);
  const proof = proofOf(quantity, from, to);
  return { quantity, to, u: exactnessOf(quantity, from, to), because: [because], stage, from, proof, why };
}

/** What the next record must show of a change: that half of the way was gone, as an expression. */
export function proofOf({ id, unit, decimals }: Quantity, from: number, to: number): string {
  const half = Number(fromSI((from + to) / 2, unit).toFixed(decimals + 1));
  return `${id} ${to > from ? '>' : '<'} ${half}${unit === '' ? '' : ` ${unit}`}`;
}
