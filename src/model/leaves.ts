// What a coach can measure and be asked for, the handiest first; knows no steps.

/**
 * Never what only follows from others, such as a speed ratio or a face-to-path: to ask for the one and then for the other would
 * lead in a circle.
 */
export const leaves = [
  'delivery.face',
  'delivery.path',
  'delivery.attack',
  'delivery.club_speed',
  'checkpoints.impact.shaft_lean',
  'delivery.delivered_loft',
  'club.loft',
  'club.lie',
  'club.length',
  'delivery.arc.direction',
  'delivery.arc.inclination',
  'delivery.arc.radius',
  'flight.start',
  'flight.carry',
  'flight.curve',
  'student.stature',
  'student.hand',
] as const;

const places: ReadonlyMap<string, number> = new Map(leaves.map((id, place) => [id, place]));

export function isLeaf(id: string): boolean {
  return places.has(id);
}

/** In the order in which a coach would measure them. */
export function inOrderOfMeasuring(ids: readonly string[]): readonly string[] {
  return ids.toSorted((a, b) => (places.get(a) ?? places.size) - (places.get(b) ?? places.size));
}
