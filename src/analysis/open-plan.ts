// Which plan a student is working on at a lesson, and which quantities would show whether it worked; judges nothing.
import type { PlannedChange } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import type { Lesson } from './lessons.ts';
import { clubOf, isSameClub, type NamedClub } from './same-club.ts';

export interface OpenPlan {
  readonly from: Lesson;
  readonly changes: readonly PlannedChange[];
}

/** A lesson that is there or that is to come. */
export interface Moment {
  readonly date: string | undefined;
  readonly club: NamedClub;
}

export function hasPlan({ analysis: { document } }: Lesson): boolean {
  return document.kind === 'swing' && (document.plan.length > 0 || document.predicted.size > 0);
}

/** Lessons of one day have no order, and one without a date has none with any other. */
export function isLater({ date }: Pick<Moment, 'date'>, than: Pick<Moment, 'date'>): boolean {
  return date !== undefined && than.date !== undefined && date > than.date;
}

/** The plan of the last lesson with the same club, before this moment, that made one. `lessons` are one student's, the oldest first. */
export function openPlanOf(lessons: readonly Lesson[], at: Moment): OpenPlan | undefined {
  const from = lessons.findLast(
    (lesson) => hasPlan(lesson) && isLater(at, lesson) && isSameClub(clubOf(lesson), at.club),
  );
  if (from?.analysis.document.kind !== 'swing') return undefined;
  return { from, changes: from.analysis.document.plan };
}

/** The ids of all quantities that the changes and their proofs name, each once, in the order written. */
export function provingIds(changes: readonly PlannedChange[], registry: Registry): readonly string[] {
  const words = changes.flatMap(({ change, proof }) => [change?.value ?? '', proof?.value ?? '']);
  const ids = words.flatMap((text) => text.match(/[a-z_]+(?:\.[a-z_]+)+/g) ?? []);
  return [...new Set(ids)].filter((id) => registry.find(id) !== undefined);
}
