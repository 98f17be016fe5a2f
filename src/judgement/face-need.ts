// Which face and path a wanted start, curve or finish needs, where none that is seen with this kind of club brings it; knows no file.
import { heldId, faceIds, pathId } from '../model/held-face.ts';
import { intervene, type Change, type Intervention } from '../model/intervention.ts';
import { mirroredNumber } from '../model/mirror.ts';
import {
  shotWith,
  windowsForGoal,
  type Flown,
  type Interval,
  type Shot,
  type WindowId,
} from '../model/windows.ts';
import type { Situation } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import { changesOf, type Foreseer, type Made } from './foreseer.ts';
import { chanceIn, type Standing, type Wanted } from './goal-standing.ts';
import { fitThen } from './predicted-fit.ts';
import type { Prediction } from './prediction.ts';
import { roomFor, type Room } from './room.ts';
import { leastChance } from './speed-need.ts';
import { isOutside } from '../registry/registry.ts';

/** SI, as this player sees left and right. */
export interface FaceNeed {
  readonly kind: 'face';
  /** Face, path or face-to-path as the goal needs it at the speed and loft of the plan; undefined where the model finds none, or cannot tell. */
  readonly unseen: Unseen | undefined;
  /** What comes nearest to the goal with any face and path that are seen. */
  readonly nearest: { readonly value: number; readonly u: number };
  readonly clubKind: string | undefined;
  /** Whether the goal asks for something else of start, curve or finish, which was to be met too. */
  readonly isBesides: boolean;
}

export interface Unseen {
  readonly quantity: Quantity;
  readonly needed: Interval;
  readonly seen: Room;
}

/** What a goal asks of a ball to its sides, and whose doing that is most (common practice, no source). */
const doers: Readonly<Record<string, readonly WindowId[]>> = {
  'flight.start': ['delivery.face', 'delivery.path', 'delivery.face_to_path'],
  'flight.curve': ['delivery.face_to_path', 'delivery.face', 'delivery.path'],
  'flight.finish': ['delivery.face', 'delivery.face_to_path', 'delivery.path'],
};

/** What one goal needs of face and path, and what comes nearest to it. */
export interface FaceReach {
  readonly wanted: readonly Wanted[];
  readonly unseen: readonly (Unseen & { readonly id: WindowId })[];
  /** With each face and path that might come nearest. */
  readonly tries: readonly Intervention['effects'][];
}

/** Undefined where the goal needs nothing that is not seen, or the record says too little. @param ofGoal all that one goal wants */
export function faceReachFor(
  ofGoal: readonly Wanted[],
  made: readonly Made[],
  prediction: Prediction,
  { account, registry }: Foreseer,
): FaceReach | undefined {
  const wanted = ofGoal.filter(({ quantity }) => doers[quantity.id] !== undefined);
  const fit = fitThen(account, prediction, made);
  const needed = windowsForGoal(account.situation, flightGoalOf(wanted), fit);
  const unseen = [...needed].flatMap(([id, window]) => {
    const quantity = registry.find(id);
    const seen = quantity && unseenWith(quantity, window, account.situation);
    return seen === undefined ? [] : [{ id, quantity: quantity!, needed: window, seen }];
  });
  if (needed.size > 0 && unseen.length === 0) return undefined;
  const shot = shotWith(account.situation, fit);
  const rooms = [pathId, heldId, 'delivery.face_to_path'].flatMap((id) => {
    const quantity = registry.find(id);
    return quantity === undefined ? [] : [roomFor(quantity, account.situation, new Map())];
  });
  const best = shot && nearestOf(wanted, rooms, shot, account.situation);
  if (best === undefined) return undefined;
  const others = changesOf(made, account).filter(({ id }) => id !== pathId && !faceIds.includes(id));
  const set = (id: string, amount: number): Change => ({ id, kind: 'to', amount, u: 0 });
  const tries = turnedTogether(best, rooms).flatMap(
    ({ path, face }) => intervene(account, [...others, set(pathId, path), set(heldId, face)])?.effects ?? [],
  );
  return { wanted, unseen, tries };
}

interface Delivered {
  readonly path: number;
  readonly face: number;
}

/** Face and path as they are, and turned as far as is seen to either side with the same angle between them, for an open face has more loft. */
function turnedTogether({ path, face }: Delivered, [paths, faces]: readonly Room[]): readonly Delivered[] {
  const least = Math.max(paths!.min - path, faces!.min - face);
  const most = Math.min(paths!.max - path, faces!.max - face);
  return [0, least, most].map((turn) => ({ path: path + turn, face: face + turn }));
}

/**
 * Undefined where the goal has a chance, as planned or with a face and path that are seen. What is seen is a judgement of the trade and no limit:
 * nobody says that it cannot be.
 */
export function faceNeeded(
  { wanted, value, chance = 1 }: Standing,
  reach: () => FaceReach | undefined,
  { account: { situation } }: Foreseer,
): FaceNeed | undefined {
  const ids = doers[wanted.quantity.id];
  if (ids === undefined || value === undefined || chance >= leastChance) return undefined;
  const found = reach();
  const tries = (found?.tries ?? []).flatMap((effects) => {
    const { value: there, u } = effects.get(wanted.quantity.id) ?? { value: null, u: null };
    return there === null || u === null ? [] : [{ value: there, u, chance: chanceIn(wanted, there, u) }];
  });
  if (found === undefined || tries.length === 0) return undefined;
  const nearest = tries.reduce((best, one) => (one.chance > best.chance ? one : best));
  if (nearest.chance >= leastChance) return undefined;
  const unseen = ids.flatMap((id) => found.unseen.find((one) => one.id === id) ?? [])[0];
  return {
    kind: 'face',
    unseen,
    nearest,
    clubKind: situation.clubKind,
    isBesides: found.wanted.length > 1,
  };
}

/** What is seen with this kind of club, where nothing of the window lies within it. */
export function unseenWith(
  quantity: Quantity,
  { min, max }: Interval,
  situation: Situation,
): Room | undefined {
  const seen = roomFor(quantity, situation, new Map());
  return min > seen.max || max < seen.min ? seen : undefined;
}

function flightGoalOf(wanted: readonly Wanted[]): Readonly<Record<keyof Flown, Interval | undefined>> {
  const of = (id: string): Interval | undefined => wanted.find(({ quantity }) => quantity.id === id);
  return { start: of('flight.start'), curve: of('flight.curve'), finish: of('flight.finish') };
}

/** Steps to each side of the middle at first, and halvings of the step from there on: the last is 1/96 of a room's width. Judgement. */
const steps = 3;
const halvings = 4;

/** The path and face in their rooms with which all that is wanted is missed by least, in units of how exactly each is read. */
function nearestOf(
  wanted: readonly Wanted[],
  rooms: readonly Room[],
  shot: Shot,
  player: Situation,
): Delivered | undefined {
  const [paths, faces, between] = rooms;
  if (paths === undefined || faces === undefined || between === undefined) return undefined;
  const middleOf = ({ min, max }: Room): number => (min + max) / 2;
  const missedAt = (path: number, face: number): number => {
    const isSeen = !isOutside(path, paths) && !isOutside(face, faces) && !isOutside(face - path, between);
    const flown = isSeen && shot(mirroredNumber(pathId, path, player), mirroredNumber(heldId, face, player));
    if (!flown) return Infinity;
    return wanted.reduce((sum, { quantity, min, max }) => {
      const key = quantity.id.slice('flight.'.length) as keyof Flown;
      const value = mirroredNumber(quantity.id, flown[key], player);
      return sum + (Math.max(0, min - value, value - max) / quantity.uncertainty.otherwise) ** 2;
    }, 0);
  };
  let best = { path: middleOf(paths), face: middleOf(faces), missed: Infinity };
  const look = (reach: number, stepPath: number, stepFace: number): void => {
    const { path, face } = best;
    for (let i = -reach; i <= reach; i++)
      for (let j = -reach; j <= reach; j++) {
        const at = { path: path + i * stepPath, face: face + j * stepFace };
        const missed = missedAt(at.path, at.face);
        if (missed < best.missed) best = { ...at, missed };
      }
  };
  let [stepPath, stepFace] = [paths, faces].map(({ min, max }) => (max - min) / 2 / steps) as [
    number,
    number,
  ];
  look(steps, stepPath, stepFace);
  for (let n = 0; n < halvings && best.missed > 0; n++) {
    [stepPath, stepFace] = [stepPath / 2, stepFace / 2];
    look(1, stepPath, stepFace);
  }
  return best.missed < Infinity ? best : undefined;
}
