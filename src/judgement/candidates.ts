// The changes that a plan may be made of, from the fault book and the model's levers, each with how far it moves what is wanted; chooses none.
import type { Account } from '../model/account.ts';
import { intervene, type Effect } from '../model/intervention.ts';
import { withFaceHeld } from '../model/held-face.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { differenceFromSI, differenceToSI, fromSI, toSI } from '../measure/units.ts';
import type { FaultChange } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { BookFault } from './book.ts';
import { linksBetween } from './causes.ts';
import { exactnessOf, type Foreseer, type Made } from './foreseer.ts';
import type { Standing } from './goal-standing.ts';
import { predict } from './prediction.ts';
import { proofAgainst, proofOnTheWay } from './proposed-proof.ts';
import { standsAt } from './standing-number.ts';
import { heldIn, leastAhead, roomFor, type Room, type Windows } from './room.ts';
import type { FaultVerdict } from './verdict.ts';

/** A fault that the numbers show and nobody stated. */
export type Unstated = Pick<FaultVerdict, 'fault' | 'uri' | 'at' | 'probability'>;

export interface Candidate extends Made {
  /** 0 at setup, 1 in the backswing, 2 in the downswing. */
  readonly stage: number;
  /** Undefined where nobody measured it and the book says what it is to be. */
  readonly from: number | undefined;
  /** What the next record must show. */
  readonly proof: string;
  /** The fault of the book that it is against; undefined of a lever. */
  readonly against: BookFault | undefined;
  /** Where the record does not state that fault. */
  readonly unstated: Unstated | undefined;
}

export interface Scored {
  readonly candidate: Candidate;
  /** A fault that another one brings about is a consequence. */
  readonly origin: 'cause' | 'consequence' | 'unstated' | 'lever';
  /** How far each wanted quantity moves with this change alone, and how much its variance grows. */
  readonly moves: readonly number[];
  readonly spreads: readonly number[];
  /** How far any other quantity moves with this change alone, SI; 0 where it does not. */
  readonly movesOther: (id: string) => number;
  /** How many steps of a lever. */
  readonly effort: number;
}

export interface Search {
  readonly foreseer: Foreseer;
  readonly unstated: readonly Unstated[];
  readonly windows: Windows;
  readonly throwIfAborted: () => void;
}

const stages = ['setup', 'backswing', 'downswing'];

/** What a player can set out to change and the model reaches: by how much at a time, in the unit shown, and how far before the next lesson. A judgement. */
const levers: readonly (readonly [id: string, step: number, steps: number, stage: number])[] = [
  ['delivery.arc.direction', 1, 6, 0],
  ['checkpoints.impact.lead_shoulder', 2, 3, 2],
  ['checkpoints.impact.shaft_lean', 2, 3, 2],
  ['delivery.attack', 1, 4, 2],
  ['delivery.path', 1, 6, 2],
  ['delivery.face', 1, 6, 2],
  ['delivery.face_to_path', 1, 6, 2],
];

/** @param now how each goal of which the record says enough stands, in whose order effects are given */
export function candidatesFor(search: Search, now: readonly Standing[]): readonly Scored[] {
  return [...fromFaults(search, now), ...fromLevers(search, now)];
}

function fromFaults(search: Search, now: readonly Standing[]): readonly Scored[] {
  const { foreseer, unstated, throwIfAborted } = search;
  const named = foreseer.faults.map(({ fault }) => fault);
  const broughtAbout = new Set(linksBetween(named, foreseer.registry).map(({ to }) => to));
  return foreseer.faults.flatMap((known) =>
    known.fault.changes.flatMap((change): readonly Scored[] => {
      throwIfAborted();
      const found = againstFault(change, known, search);
      if (found === undefined) return [];
      const id = known.fault.id.value;
      const shown = unstated.find(({ fault }) => fault === known.fault);
      const origin = shown !== undefined ? 'unstated' : broughtAbout.has(id) ? 'consequence' : 'cause';
      return scoredOf({ ...found, unstated: shown }, now, foreseer, origin);
    }),
  );
}

function againstFault(change: FaultChange, known: BookFault, search: Search): Candidate | undefined {
  const { foreseer, windows } = search;
  const { account } = foreseer;
  const { quantity } = change;
  if (quantity === undefined) return undefined;
  const from = standsAt(quantity.id, account);
  const asked = askedOf(change, quantity, from, foreseer);
  const aim = asked && heldIn(roomFor(quantity, account.situation, windows), from, asked);
  if (aim === undefined) return undefined;
  const to = roundedBy(quantity, aim, aim - (from ?? 0));
  if (from !== undefined && !isMeasurable(quantity, from, to, foreseer)) return undefined;
  const proof = proofAgainst(known, foreseer, { quantity, to }) ?? proofOnTheWay(quantity, to, account);
  if (proof === undefined) return undefined;
  const stage = Math.max(0, stages.indexOf(change.when ?? 'downswing'));
  const because = [known.fault.id.value];
  const u = exactnessOf(quantity, from, to);
  return { quantity, to, u, because, stage, from, proof, against: known, unstated: undefined };
}

/** Undefined where the record is there already, or where it takes a number that it does not have. */
function askedOf(
  { by, to }: FaultChange,
  { id }: Quantity,
  from: number | undefined,
  { account: { situation } }: Foreseer,
): number | undefined {
  if (by !== undefined)
    return from === undefined ? undefined : from + mirroredNumber(id, by.difference, situation);
  const target = to?.target;
  if (target === undefined) return undefined;
  const ends = target.kind === 'measure' ? [target.value, target.value] : [target.from, target.to];
  const [a, b] = ends.map((end) => mirroredNumber(id, end, situation)) as [number, number];
  const isThere = from !== undefined && from >= Math.min(a, b) && from <= Math.max(a, b);
  return isThere ? undefined : (a + b) / 2;
}

function scoredOf(
  candidate: Candidate,
  now: readonly Standing[],
  foreseer: Foreseer,
  origin: Scored['origin'],
): readonly Scored[] {
  const { outlooks } = predict([candidate], foreseer);
  const effects = now.map(({ wanted }) => outlooks.get(wanted.quantity.id));
  // A goal that nobody could tell any more is not brought nearer.
  if (effects.some((effect) => effect?.value === null)) return [];
  const moves = effects.map((effect) => effect?.difference ?? 0);
  if (moves.every((move) => move === 0)) return [];
  const spreads = effects.map((effect, i) => (effect === undefined ? 0 : effect.u! ** 2 - now[i]!.u! ** 2));
  const movesOther = (id: string): number => outlooks.get(id)?.difference ?? 0;
  return [{ candidate, origin, moves, spreads, movesOther, effort: 0 }];
}

/** Each once through the model; more or less of it in proportion. What is not measured is no lever: nobody could tell that it moved. */
function fromLevers(
  { foreseer, windows, throwIfAborted }: Search,
  now: readonly Standing[],
): readonly Scored[] {
  const { account } = foreseer;
  return leversIn(foreseer, windows).flatMap(({ quantity, from, step, stage, room, aims }): Scored[] => {
    throwIfAborted();
    const { id } = quantity;
    const unit = differenceToSI(step, quantity.unit);
    // The flight does not answer in proportion: it is asked on the side where the changes will lie.
    const probe = 2 * unit * (from > (room.min + room.max) / 2 ? -1 : 1);
    const set = {
      id,
      kind: 'to',
      amount: from + probe,
      u: exactnessOf(quantity, from, from + probe),
    } as const;
    const effects = intervene(account, withFaceHeld(account, [set]))?.effects;
    const seen = now.map(({ wanted }) => effects?.get(wanted.quantity.id));
    const low = effects?.get(lowPointId);
    const before = low && lowPointBefore(low, effects?.get(attackId), account);
    if (effects === undefined || seen.some((effect) => effect?.value === null)) return [];
    const spreads = seen.map((effect, i) => (effect === undefined ? 0 : effect.u! ** 2 - now[i]!.u! ** 2));
    return aims.flatMap((to): Scored[] => {
      if (!isMeasurable(quantity, from, to, foreseer)) return [];
      const share = (to - from) / probe;
      const moves = seen.map((effect) => share * (effect?.difference ?? 0));
      if (!servesOf(quantity, now, moves)) return [];
      if (isStrikeSpent(share * (low?.difference ?? 0), before, now, foreseer)) return [];
      const proof = proofOnTheWay(quantity, to, account);
      if (proof === undefined) return [];
      const u = exactnessOf(quantity, from, to);
      const found = {
        quantity,
        to,
        u,
        because: [],
        stage,
        from,
        proof,
        against: undefined,
        unstated: undefined,
      };
      const movesOther = (other: string): number => share * (effects.get(other)?.difference ?? 0);
      return [{ candidate: found, origin: 'lever', moves, spreads, movesOther, effort: Math.abs(2 * share) }];
    });
  });
}

const lowPointId = 'delivery.low_point.ahead';
const attackId = 'delivery.attack';

/**
 * A low point ahead of the ball is not given away for a few metres, nor led back farther than is usual where it is ahead already.
 * Where a goal asks for the strike, that goal sees to it.
 */
function isStrikeSpent(
  move: number,
  before: number | undefined,
  now: readonly Standing[],
  { account: { situation } }: Foreseer,
): boolean {
  const least = leastAhead(situation);
  if (least === undefined || before === undefined || !(before > 0) || !(move < 0)) return false;
  if (now.some(({ wanted }) => wanted.quantity.id === lowPointId)) return false;
  return before + move < Math.min(least, before);
}

/** Where nobody measured it, it lies as far ahead as the attack says: a club that moves level is at its lowest. */
function lowPointBefore(low: Effect, attack: Effect | undefined, account: Account): number | undefined {
  if (low.difference === null) return undefined;
  if (low.value !== null) return low.value - low.difference;
  const now = standsAt(attackId, account);
  if (now === undefined || !attack?.difference) return undefined;
  return (now * low.difference) / attack.difference;
}

interface Lever {
  readonly quantity: Quantity;
  readonly from: number;
  readonly step: number;
  readonly stage: number;
  readonly room: Room;
  readonly aims: readonly number[];
}

/** A face that was measured is set itself: with the path beside it the two add up, where face-to-path would turn the face with the path. */
function leversIn({ account, registry }: Foreseer, windows: Windows): readonly Lever[] {
  const measuredIn = (id: string): number | undefined => {
    const value = account.derivation.values.get(id);
    return value === undefined || value.kind === 'expected' ? undefined : standsAt(id, account);
  };
  return levers.flatMap(([id, step, steps, stage]): Lever[] => {
    const quantity = registry.find(id);
    const from = measuredIn(id);
    if (quantity === undefined || from === undefined) return [];
    if (id === 'delivery.face_to_path' && measuredIn('delivery.face') !== undefined) return [];
    const room = roomFor(quantity, account.situation, windows);
    const first = Math.round(differenceFromSI(from, quantity.unit) / step);
    const aims = Array.from({ length: 2 * steps + 1 }, (_, n) =>
      toSI((first + n - steps) * step, quantity.unit),
    ).filter((to) => heldIn(room, from, to) === to);
    return [{ quantity, from, step, stage, room, aims }];
  });
}

/** What the model could change, were it known well enough for anybody to tell that it was changed. */
export function unsureLevers(foreseer: Foreseer, windows: Windows): readonly Quantity[] {
  return leversIn(foreseer, windows).flatMap(({ quantity, from, aims }) =>
    aims.length > 0 && aims.every((to) => !isMeasurable(quantity, from, to, foreseer)) ? [quantity] : [],
  );
}

/** What turns the club to a side is there for goals that lie at a side, and what leads it down or forward for the others. */
function servesOf(quantity: Quantity, now: readonly Standing[], moves: readonly number[]): boolean {
  return now.some(({ wanted }, i) => wanted.quantity.lateral === quantity.lateral && moves[i] !== 0);
}

/** Two readings as sure as that of this record differ by this much of their uncertainty by chance alone. */
const ofTwoReadings = Math.SQRT2;

/** Whether the usual measurement could tell that the change was made. */
function isMeasurable(quantity: Quantity, from: number, to: number, { account }: Foreseer): boolean {
  const value = account.derivation.values.get(quantity.id);
  const u = value === undefined || value.kind === 'expected' ? undefined : value.u;
  return Math.abs(to - from) >= ofTwoReadings * (u ?? quantity.uncertainty.otherwise) * (1 - 1e-9);
}

/** In numbers that a player can keep in mind: a quarter of the change is round enough. */
function roundedBy({ unit }: Quantity, aim: number, change: number): number {
  const quarter = Math.abs(differenceFromSI(change, unit)) / 4;
  const power = 10 ** Math.floor(Math.log10(Math.max(quarter, 1e-9)));
  const step = quarter >= 5 * power ? 5 * power : power;
  return toSI(Number((Math.round(fromSI(aim, unit) / step) * step).toPrecision(12)), unit);
}
