// What the windows that one goal asks for have to do with one another, in words; shared by editor, pictures and command line, computes nothing.
import { showValue } from '../measure/show.ts';
import type { GoalWindow } from '../model/windows.ts';
import type { Quantity } from '../registry/quantity.ts';

/** Of several windows of one goal: a number in each of them is not yet the goal. */
export const notAllTogether =
  'each holds for some values of the others, not for all of them; their middles go together';

export interface NamedWindow extends GoalWindow {
  readonly quantity: Quantity;
}

/** "club path 1.2 deg right, face direction 0.4 deg right". */
export function middlesOf(windows: readonly NamedWindow[], name: (quantity: Quantity) => string): string {
  return windows
    .map((window) => `${name(window.quantity)} ${showValue(window.quantity, window.middle)}`)
    .join(', ');
}

/** Undefined of one window, which stands for itself. */
export function togetherWords(
  windows: readonly NamedWindow[],
  name: (quantity: Quantity) => string,
): string | undefined {
  return windows.length < 2 ? undefined : `${notAllTogether}: ${middlesOf(windows, name)}`;
}
