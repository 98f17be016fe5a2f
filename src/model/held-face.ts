// What a player keeps without being told to: a face that points where it did while the path moves; knows no plan and no belief.
import type { Account } from './account.ts';
import { intervene, type Change } from './intervention.ts';

/** What is held while `pathId` moves. */
export const heldId = 'delivery.face';
export const pathId = 'delivery.path';

export const faceIds: readonly string[] = [heldId, 'delivery.face_to_path'];

/** Who turns the whole set-up turns the face with it. */
const turnsAll: readonly string[] = [
  'checkpoints.address.stance_direction',
  'checkpoints.address.shoulder_direction',
];

/** Whether who changes the quantity says nothing of where the face points. */
export function isFaceFree(id: string): boolean {
  return !faceIds.includes(id) && !turnsAll.includes(id);
}

/** A face is kept to a quarter of how far the path goes: a judgement, as for every change. */
const exactness = 0.25;

/**
 * The changes, and besides a face that is kept where they move the path, by themselves or by way of attack or arc, and say nothing of
 * the face: face-to-path gives way. A planned path keeps it as exactly as it is changed itself.
 */
export function withFaceHeld(
  account: Pick<Account, 'outcome' | 'situation'>,
  changes: readonly Change[],
): readonly Change[] {
  if (changes.length === 0 || changes.some(({ id }) => !isFaceFree(id))) return changes;
  const path = intervene(account, changes)?.effects.get(pathId);
  if (path === undefined || path.difference === 0) return changes;
  const planned = changes.find(({ id }) => id === pathId);
  const u = planned?.u ?? exactness * Math.abs(path.difference ?? path.u ?? 0);
  return [...changes, { id: heldId, kind: 'kept', amount: 0, u }];
}
