// The words of every caution about an injured part of the body; finds none itself.
import type { Caution, Fault, Injury } from '../record/document.ts';

/** What the fault book does about a fault: its changes and its drills. */
export function helpAgainst({ id, title }: Fault): string {
  return `What helps against "${title ?? id.value}"`;
}

/**
 * `what` is the change or the help that loads, and `student` the name, where there is one. The words of the two parts may differ: "the
 * lower back" is loaded, "back" is noted.
 */
export function cautionMessage(
  what: string,
  loaded: Caution,
  injuries: readonly Injury[],
  student: string | undefined,
): string {
  const whose = student === undefined ? "the student's file" : `${student}'s file`;
  const parts = [...new Set(injuries.map(({ part }) => part.value))];
  const isSame = parts.length === 1 && parts[0] === loaded.part.value;
  const noted = isSame
    ? `which ${whose} notes as injured`
    : `and ${whose} notes ${parts.join(' and ')} as injured`;
  return `${what} loads the ${loaded.part.value}, ${noted}: stop if it hurts. This is no medical advice; see a physician or physiotherapist.`;
}
