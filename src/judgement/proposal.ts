// Searches the changes that bring goals inside their windows: few, early in the swing, and causes before levers; knows no file.
import { beliefAsItStands } from './standing-number.ts';
import { candidatesFor, type Candidate, type Scored, type Search } from './candidates.ts';
import type { Foreseer } from './foreseer.ts';
import { chanceIn, chanceOfAll, standingOf, type Standing, type Wanted } from './goal-standing.ts';
import { goalsReached, isHarmed, nearOf, outsideBy, type Near } from './nearness.ts';
import { predict, type Prediction } from './prediction.ts';
import { proofWithin } from './proposed-proof.ts';

export type { Candidate, Unstated } from './candidates.ts';

export interface ProposedChange extends Candidate {
  /** What it is there for: to bring a goal inside its window, or to keep one there that the rest of the plan would lead out. */
  readonly serves: { readonly wanted: Wanted; readonly how: 'brings' | 'keeps' };
}

export interface Proposal {
  readonly changes: readonly ProposedChange[];
  readonly prediction: Prediction;
  /** Of every goal; those of which the record says too little have no value. */
  readonly standings: readonly Standing[];
  /** Of all goals at once of which the record says enough. */
  readonly chance: number;
}

export interface Wish extends Search {
  readonly wanted: readonly Wanted[];
  readonly mostChanges: number;
}

// What follows is judgement: how much of a goal counts, and how many sets are tried.
/** One more change must bring so much of a goal to be worth a student's attention. */
const worth = 0.15;
/** Less than this of a goal is not what a change is there for. */
const leastGain = 0.02;
/** Sets of each size that are run through the whole model in the end. */
const mostTried = 3;
/** Sets that the whole model refuses, for a goal that they lead away from, before a size is given up: a reserve by judgement. */
const mostRefused = 6;
/** Sets of each size that larger ones are made from. */
const mostKept = 40;

/** What a change must make up for, in goals: the fault book comes before levers, causes before consequences, early before late. */
const handicaps = { cause: 0, consequence: 0.03, unstated: 0.05, lever: 0.1 } as const;
const handicapOfStage = 0.03;
const handicapOfEffort = 0.01;

interface Rated {
  readonly set: readonly Scored[];
  readonly score: number;
}

interface Grown {
  readonly proposal: Proposal;
  readonly goals: number;
  readonly rank: number;
  readonly isDone: boolean;
}

/**
 * First each candidate alone through the whole model, then all sets of few by adding up how far each moves what is wanted, and the
 * best of each size through the whole model again. The smallest set that brings every goal inside is taken; where none does, the
 * one that brings most, as long as each change in it is worth it. No goal that stands is given away for another. Undefined where
 * every goal stands already, and where nothing helps.
 */
export function propose(wish: Wish): Proposal | undefined {
  const { foreseer, wanted, mostChanges } = wish;
  const player = foreseer.account.situation;
  const belief = beliefAsItStands(foreseer.account, foreseer.hand);
  const now = wanted.map((one) => standingOf(one, belief, player)).filter(({ value }) => value !== undefined);
  if (now.every(standsAlready)) return undefined;
  const scored = candidatesFor(wish, now);
  let best: readonly Rated[] = [{ set: [], score: 0 }];
  let found: Proposal | undefined;
  let last = goalsReached(
    now.map((one) => nearOf(one, one)),
    now,
  );
  for (let size = 1; size <= mostChanges; size++) {
    best = best
      .flatMap(({ set }) =>
        scored
          .filter((one) => set.every((other) => !isTwin(other, one)))
          .map((one) => ({ set: [...set, one], score: scoreOf([...set, one], now) })),
      )
      .sort((a, b) => b.score - a.score)
      .slice(0, mostKept);
    let grown: Grown | undefined;
    let tried = 0;
    for (const { set } of distinct(best).slice(0, mostRefused + mostTried)) {
      if (tried === mostTried) break;
      wish.throwIfAborted();
      const one = grownOf(set, now, wish);
      if (one !== undefined) tried++;
      if (one !== undefined && (grown === undefined || one.rank > grown.rank)) grown = one;
    }
    if (grown === undefined || grown.goals < last + worth) continue;
    [found, last] = [grown.proposal, grown.goals];
    if (grown.isDone) break;
  }
  if (found === undefined) return undefined;
  return withProofs(withReasons(found, now, foreseer), now, foreseer);
}

/** The same changes found in another order are one set. */
function distinct(rated: readonly Rated[]): readonly Rated[] {
  const keyOf = ({ set }: Rated): string =>
    set
      .map(({ candidate: { quantity, to } }) => `${quantity.id} ${to}`)
      .sort()
      .join();
  return [...new Map(rated.toReversed().map((one) => [keyOf(one), one])).values()].toReversed();
}

/** The path and the direction of the arc are one thing to a student, and the same goes for lean, shoulder and attack. */
function isTwin({ candidate: { quantity: a } }: Scored, { candidate: { quantity: b } }: Scored): boolean {
  const families = [
    ['delivery.arc.direction', 'delivery.path'],
    ['delivery.face', 'delivery.face_to_path'],
    ['checkpoints.impact.lead_shoulder', 'checkpoints.impact.shaft_lean', 'delivery.attack'],
  ];
  return a.id === b.id || families.some((family) => family.includes(a.id) && family.includes(b.id));
}

/**
 * How near each goal comes with these changes, their effects added up. A quantity that one of them sets stays there, whatever the
 * others would make of it: what they do by way of it is taken out, else a steeper attack would count for the path once more.
 */
function reachedWith(set: readonly Scored[], now: readonly Standing[]): readonly Near[] {
  const kept = set.map((one) => shareUndone(one, set));
  return now.map((one, i) => {
    const { wanted, value, u } = one;
    const moved = set.reduce((sum, { moves }, s) => sum + moves[i]! * (1 - kept[s]!), value!);
    const variance = set.reduce((sum, { spreads }) => sum + spreads[i]!, u! ** 2);
    const chance = chanceIn(wanted, moved, Math.sqrt(Math.max(variance, 0.01 * u! ** 2)));
    return nearOf({ chance, value: moved }, one);
  });
}

/** How much of a change's own way the others would go for it, in proportion. */
function shareUndone(one: Scored, set: readonly Scored[]): number {
  const { quantity, from, to } = one.candidate;
  if (from === undefined || from === to) return 0;
  const moved = set.reduce((sum, other) => (other === one ? sum : sum + other.movesOther(quantity.id)), 0);
  return moved / (to - from);
}

/** A goal far off gives no chance to compare by, but a change that leads toward it may be half of what it takes. */
function scoreOf(set: readonly Scored[], now: readonly Standing[]): number {
  const then = reachedWith(set, now);
  const away = now.reduce((sum, one, i) => sum + Math.min(20, outsideBy(one, then[i]!.value)), 0);
  const harmed = now.filter((one, i) => isHarmed(one, then[i]!)).length;
  return rankOf(then, now) - handicapOf(set) - 0.005 * away - harmed;
}

function rankOf(then: readonly Near[], now: readonly Standing[]): number {
  return goalsReached(then, now) + (then.every(({ stands }) => stands) ? 0.5 : 0);
}

function handicapOf(set: readonly Scored[]): number {
  return set.reduce(
    (sum, { candidate, origin, effort }) =>
      sum + handicaps[origin] + handicapOfStage * candidate.stage + handicapOfEffort * effort,
    0,
  );
}

function grownOf(set: readonly Scored[], now: readonly Standing[], wish: Wish): Grown | undefined {
  const { foreseer, wanted } = wish;
  const open = now.find((one) => !standsAlready(one))!.wanted;
  const changes = set
    .map(({ candidate }): ProposedChange => ({
      ...candidate,
      because: candidate.against === undefined ? [open.key] : candidate.because,
      serves: { wanted: open, how: 'brings' },
    }))
    .toSorted((a, b) => a.stage - b.stage);
  const { prediction, standings, chance } = outcomeOf(changes, wanted, foreseer);
  const then = now.map((one) => standings.find((each) => each.wanted === one.wanted)!);
  // A goal that nobody could tell any more is not brought inside.
  if (then.some(({ value }) => value === undefined)) return undefined;
  const reached = then.map((one, i) => nearOf(one, now[i]!));
  if (now.some((one, i) => isHarmed(one, reached[i]!))) return undefined;
  return {
    proposal: { changes, prediction, standings, chance },
    goals: goalsReached(reached, now),
    rank: rankOf(reached, now) - handicapOf(set),
    isDone: reached.every(({ stands }) => stands),
  };
}

function standsAlready(now: Standing): boolean {
  return nearOf(now, now).stands;
}

function outcomeOf(changes: readonly Candidate[], wanted: readonly Wanted[], foreseer: Foreseer) {
  const prediction = predict(changes, foreseer);
  const { belief } = prediction;
  const player = foreseer.account.situation;
  const standings = wanted.map((one) => standingOf(one, belief, player));
  return { prediction, standings, chance: chanceOfAll(wanted, belief, player) };
}

/** By leaving each out in turn: the goal that loses most without it, first of those that do not stand, which alone are a reason. */
function withReasons(found: Proposal, now: readonly Standing[], foreseer: Foreseer): Proposal {
  const wanted = now.map((one) => one.wanted);
  const nearIn = (standings: readonly Standing[]): readonly number[] =>
    now.map((one) => {
      const then = standings.find((each) => each.wanted === one.wanted);
      return nearOf(then ?? { chance: undefined, value: undefined }, one).near;
    });
  const all = nearIn(found.standings);
  const places = [...now.keys()];
  const changes = found.changes.map((change): ProposedChange => {
    const others = found.changes.filter((other) => other !== change);
    const without = nearIn(others.length === 0 ? now : outcomeOf(others, wanted, foreseer).standings);
    const gain = (i: number): number => all[i]! - without[i]!;
    const best = (of: readonly number[]): number => of.reduce((a, b) => (gain(b) > gain(a) ? b : a));
    const open = best(places.filter((i) => !standsAlready(now[i]!)));
    const strongest = best(places);
    const isKeeper = gain(open) < leastGain && gain(strongest) > gain(open);
    const because = change.against === undefined ? [wanted[open]!.key] : change.because;
    const serves = isKeeper
      ? ({ wanted: wanted[strongest]!, how: 'keeps' } as const)
      : ({ wanted: wanted[open]!, how: 'brings' } as const);
    return { ...change, because, serves };
  });
  return { ...found, changes };
}

/** None of them asks for more than the whole of the proposal is predicted to bring. */
function withProofs(found: Proposal, now: readonly Standing[], foreseer: Foreseer): Proposal {
  const changes = found.changes.map((change): ProposedChange => {
    const proof = proofWithin(change.proof, found.prediction, now, foreseer);
    return { ...change, proof };
  });
  return { ...found, changes };
}
