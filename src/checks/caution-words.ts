// The words of every caution about an injured part of the body; finds none itself.
import type { Caution, Injury } from '../record/document.ts';

/** `student` is the name, where there is one. The words of the two may differ: "the lower back" is loaded, "back" is noted. */
export function cautionMessage(
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
  return `Loads the ${loaded.part.value}, ${noted}: stop if it hurts. This is no medical advice; see a physician or physiotherapist.`;
}
