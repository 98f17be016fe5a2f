// Which code a conflict among entries goes by: the ids that are blamed and those that must take part; the first that suits wins.
import type { Conflict } from '../model/agreement-result.ts';

interface ConflictKind {
  readonly code: string;
  /** Whether a conflict with this entry to blame is of the kind. */
  readonly isAbout: (conflict: Conflict) => boolean;
  /** Where nobody can tell which of several is off, the one that comes first here is the one to mark. */
  readonly blamed: readonly string[];
}

const face = 'delivery.face';
const path = 'delivery.path';
const faceToPath = 'delivery.face_to_path';
const attack = 'delivery.attack';
const direction = 'delivery.arc.direction';
const loft = 'delivery.delivered_loft';
const lean = 'checkpoints.impact.shaft_lean';
const lowPoint = 'delivery.low_point.ahead';
const start = 'ground.divot.starts';

const generalCode = 'entry-does-not-fit';

/** In the order of the table of checks. */
export const conflictKinds: readonly ConflictKind[] = [
  {
    code: 'rival-readings',
    isAbout: ({ id, outvotedBy, rivals }) =>
      outvotedBy.includes(id) || rivals.some((rival) => rival.id === id),
    blamed: [],
  },
  kind('face-to-path-against-face', [faceToPath, face, path], [[faceToPath], [face, path]]),
  kind('path-against-arc', [path, direction], [[path], [direction]]),
  kind(
    'low-point-against-attack',
    [lowPoint, 'delivery.low_point.depth', attack],
    [[lowPoint, 'delivery.low_point.depth'], [attack]],
  ),
  {
    code: 'divot-behind-low-point',
    isAbout: ({ id, value, implied, outvotedBy }) =>
      (id === start && value < implied) || (id === lowPoint && value > implied && outvotedBy.includes(start)),
    blamed: [start, lowPoint],
  },
  kind('loft-against-lean', [loft, lean, 'club.loft'], [[loft], [lean, 'club.loft']]),
  kind(
    'ball-speed-against-club-speed',
    ['flight.speed_ratio', 'flight.ball_speed', 'delivery.club_speed'],
    [['flight.ball_speed', 'flight.speed_ratio'], ['delivery.club_speed']],
  ),
  kind(
    'finish-against-curve',
    ['flight.finish', 'flight.curve', 'flight.start'],
    [['flight.finish'], ['flight.curve', 'flight.start']],
  ),
  { code: generalCode, isAbout: () => true, blamed: [] },
];

/** A conflict among `together`, one of each, with one of `blamed` to blame. */
function kind(
  code: string,
  blamed: readonly string[],
  together: readonly (readonly string[])[],
): ConflictKind {
  return {
    code,
    blamed,
    isAbout: ({ id, outvotedBy, rivals }) => {
      const involved = new Set([id, ...outvotedBy, ...rivals.map((rival) => rival.id)]);
      return blamed.includes(id) && together.every((ids) => ids.some((other) => involved.has(other)));
    },
  };
}
