// What a player keeps without being told to: a face that points where it did while the path is changed; knows no plan and no belief.
import type { Change } from './intervention.ts';

export const faceIds: readonly string[] = ['delivery.face', 'delivery.face_to_path'];

/** As set out: face-to-path gives way, to the same face as before. It is kept as exactly as the path is changed (a judgement). */
export function withFaceHeld(changes: readonly Change[]): readonly Change[] {
  const path = changes.find(({ id }) => id === 'delivery.path');
  if (path === undefined || changes.some(({ id }) => faceIds.includes(id))) return changes;
  return [...changes, { id: 'delivery.face', kind: 'kept', amount: 0, u: path.u }];
}
