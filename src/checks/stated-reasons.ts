// What a plan may name as a reason of a change: stated faults, misses and keys of goals, for the check and for whoever proposes one.
import type { Subject } from './subject.ts';

/** Each once: the faults of the record first, then its misses, then the keys of its goals and of the student's. */
export function statedReasons({ document, student }: Subject): readonly string[] {
  if (document.kind !== 'swing') return [];
  const goals = [...document.goals, ...(student?.document.goals ?? [])];
  return [
    ...new Set([
      ...document.faults.map(({ fault }) => fault.value),
      ...document.misses.map(({ miss }) => miss.value),
      ...goals.flatMap(({ keys }) => keys),
    ]),
  ];
}
