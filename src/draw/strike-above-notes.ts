// What is said beside the strike from above, where its numbers alone could be read wrongly; draws nothing.
import type { Analysis } from '../analysis/result.ts';
import { goalWindowsOf } from '../analysis/windows.ts';
import { togetherWords } from '../checks/window-words.ts';
import { lowerFirst } from '../measure/quote.ts';
import { showValue } from '../measure/show.ts';
import type { GoalWindow, WindowId } from '../model/windows.ts';
import { valueOf } from './known.ts';

export function strikeNotes(analysis: Analysis): readonly string[] {
  return [togetherIn(analysis), betweenIn(analysis)].filter((note) => note !== undefined);
}

/** The windows that the first goal asks for; undefined where the record has no goal. */
export function firstGoalWindows({
  document,
  ...analysis
}: Analysis): ReadonlyMap<WindowId, GoalWindow> | undefined {
  if (document.kind !== 'swing' || document.goals[0] === undefined) return undefined;
  return goalWindowsOf({ document, ...analysis }, document.goals[0]);
}

/** A swing within each of the windows is not yet the goal. */
function togetherIn(analysis: Analysis): string | undefined {
  const windows = [...(firstGoalWindows(analysis) ?? [])].flatMap(([id, window]) => {
    const quantity = analysis.subject.registry.find(id);
    return quantity === undefined ? [] : [{ ...window, quantity }];
  });
  const words = togetherWords(windows, ({ title }) => lowerFirst(title));
  return words === undefined ? undefined : `Of what the goal asks, ${words}`;
}

/**
 * Face to path is what all entries together say, path and face are drawn as entered: where the two are apart by more than one
 * standard uncertainty, nobody could tell why the numbers do not add up.
 */
export function betweenIn(analysis: Analysis): string | undefined {
  const [path, face, between] = ['delivery.path', 'delivery.face', 'delivery.face_to_path'].map((id) =>
    valueOf(analysis, id),
  );
  if (path?.kind !== 'entered' || face?.kind !== 'entered') return undefined;
  if (between === undefined || between.kind === 'entered') return undefined;
  const entered = face.value - path.value;
  if (Math.abs(entered - between.value) <= (between.u ?? 0)) return undefined;
  const quantity = analysis.subject.registry.find('delivery.face_to_path');
  if (quantity === undefined) return undefined;
  const shown = showValue(quantity, entered, Math.hypot(path.u ?? 0, face.u ?? 0) || null);
  return `Face to path is what all entries together say; path and face as entered would make it ${shown}`;
}
