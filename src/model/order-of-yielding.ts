// In which order steps whose results are set are made to hold by an input that gives way; moves nothing.
import { behind, type Layout, type PlacedStep } from './forward-layout.ts';

/** A step comes after those whose input that gives way it hangs on: it must hold where they have moved things. */
export function inOrder(
  yielding: ReadonlyMap<PlacedStep, number>,
  layout: Pick<Layout, 'steps'>,
): readonly (readonly [PlacedStep, number])[] {
  const open = [...yielding];
  const ordered: (readonly [PlacedStep, number])[] = [];
  while (open.length > 0) {
    const first = open.findIndex(([step]) =>
      open.every(
        ([other, input]) => other === step || !step.inputs.some((node) => behind(layout, node).has(input)),
      ),
    );
    ordered.push(...open.splice(Math.max(0, first), 1));
  }
  return ordered;
}
