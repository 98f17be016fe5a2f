// What a coach usually measures with a student, and by which method, as earlier records show; makes up no habit of its own.
import type { Entry, SwingRecord } from '../record/document.ts';
import { checkpoints, type Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Lesson } from './lessons.ts';

/** So many of the last records show a habit. */
const lookedAt = 5;

/** Where nothing was measured yet: what says most about a strike with few numbers. Judgement. */
const firstEntries = [
  'checkpoints.address.stance_width',
  'checkpoints.address.ball_position',
  'checkpoints.impact.shaft_lean',
  'delivery.club_speed',
  'delivery.attack',
  'delivery.path',
  'delivery.face',
  'flight.start',
  'flight.curve',
  'flight.carry',
];

/** The parts of a record that hold what is measured at a lesson. */
const parts = ['conditions.', 'checkpoints.', 'delivery.', 'ground.', 'strike.', 'flight.'];

/** Ids that stand in half or more of the last records with this club; of any club where there is none with it. */
export function usualEntries(lessons: readonly Lesson[], club: string | undefined): readonly string[] {
  const same = lessons.filter((lesson) => lesson.club === club);
  const last = (same.length > 0 ? same : lessons).slice(-lookedAt);
  const counts = new Map<string, number>();
  for (const { analysis } of last.toReversed())
    for (const id of recordOf(analysis.document)?.entries.keys() ?? [])
      counts.set(id, (counts.get(id) ?? 0) + 1);
  const usual = [...counts].filter(([, count]) => 2 * count >= last.length).map(([id]) => id);
  return usual.length > 0 ? usual : firstEntries;
}

export function isOfLesson(id: string): boolean {
  return parts.some((part) => id.startsWith(part));
}

/**
 * The method that was used last, by the newest record first, for this quantity, else for the same one at another checkpoint.
 */
export function usualMethods(records: readonly SwingRecord[]): (quantity: Quantity) => string | undefined {
  const byId = new Map<string, string>();
  const byKey = new Map<string, string>();
  for (const { entries } of records) {
    for (const entry of entries.values()) {
      const method = methodOf(entry);
      if (method === undefined) continue;
      if (!byId.has(entry.id)) byId.set(entry.id, method);
      const key = keyOf(entry.quantity);
      if (!byKey.has(key)) byKey.set(key, method);
    }
  }
  return (quantity) => byId.get(quantity.id) ?? byKey.get(keyOf(quantity));
}

function methodOf({ readings }: Entry): string | undefined {
  return readings.find(({ measure }) => measure.method !== undefined)?.measure.method;
}

function keyOf({ section, checkpoint, key, id }: Quantity): string {
  return checkpoint === undefined ? id : `${section} ${key}`;
}

function recordOf(document: Lesson['analysis']['document']): SwingRecord | undefined {
  return document.kind === 'swing' ? document : undefined;
}

/** The order of a swing: conditions, checkpoint by checkpoint, delivery, ground, strike, flight; within each as given, each once. */
export function inOrder(ids: Iterable<string>, registry: Registry): readonly string[] {
  const known = [...new Set(ids)].flatMap((id) => registry.find(id) ?? []);
  const place = ({ id, checkpoint }: Quantity): number =>
    100 * parts.findIndex((part) => id.startsWith(part)) +
    (checkpoint === undefined ? 0 : checkpoints.indexOf(checkpoint));
  return known.toSorted((a, b) => place(a) - place(b)).map(({ id }) => id);
}
