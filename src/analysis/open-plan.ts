// Which plan a student is working on at a lesson, and which quantities would show whether it worked; judges nothing.
import type { PlannedChange } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { hasPlan } from './courses.ts';
import type { Lesson } from './lessons.ts';

export interface OpenPlan {
  readonly from: Lesson;
  readonly changes: readonly PlannedChange[];
}

/** The plan of the last lesson with this club, before this record, that made one. */
export function openPlanOf(
  lessons: readonly Lesson[],
  {
    uri,
    date,
    club,
  }: {
    readonly uri: string | undefined;
    readonly date: string | undefined;
    readonly club: string | undefined;
  },
): OpenPlan | undefined {
  const earlier = lessons.filter(
    (lesson) =>
      lesson.uri !== uri &&
      lesson.club === club &&
      lesson.date !== undefined &&
      (date === undefined || lesson.date < date),
  );
  for (const from of earlier.toReversed()) {
    const { document } = from.analysis;
    if (document.kind === 'swing' && hasPlan(from)) return { from, changes: document.plan };
  }
  return undefined;
}

/** The ids of all quantities that the changes and their proofs name, each once, in the order written. */
export function provingIds(changes: readonly PlannedChange[], registry: Registry): readonly string[] {
  const words = changes.flatMap(({ change, proof }) => [change?.value ?? '', proof?.value ?? '']);
  const ids = words.flatMap((text) => text.match(/[a-z_]+(?:\.[a-z_]+)+/g) ?? []);
  return [...new Set(ids)].filter((id) => registry.find(id) !== undefined);
}
