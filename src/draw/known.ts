// What a picture asks of an analysis: the number of a quantity, entered or computed, and its row on a scale; knows no picture.
import type { Analysis } from '../analysis/result.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Value } from '../model/value.ts';
import type { Interval } from '../model/windows.ts';
import type { Registry } from '../registry/registry.ts';
import type { IntervalRow } from './interval-rows.tsx';
import type { Hatched } from './picture.tsx';

export type Saying = Pick<IntervalRow, 'name' | 'number'>;

export function valueOf({ derivation }: Analysis, id: string): Value | undefined {
  return derivation?.values.get(id);
}

/** What the other entries say of it. */
export function expectedOf({ derivation }: Analysis, id: string): Value | undefined {
  return derivation?.expected.get(id);
}

export function kindOf({ kind }: Value): 'entered' | 'expected' {
  return kind === 'entered' ? 'entered' : 'expected';
}

/** Title and number of a value, as a picture says them to who cannot see it. */
export function sayingOf({ id, value, u }: Value, registry: Registry): Saying {
  const quantity = registry.find(id);
  return { name: quantity?.title ?? id, number: quantity === undefined ? '' : showValue(quantity, value, u) };
}

/** Title and number of a value, with its dot in the unit of the scale. */
export function rowOf(value: Value, unit: string, registry: Registry): IntervalRow {
  return {
    ...sayingOf(value, registry),
    id: value.id,
    mark: {
      kind: kindOf(value),
      value: fromSI(value.value, unit),
      u: value.u === null ? undefined : differenceFromSI(value.u, unit),
    },
  };
}

/** A window of the quantity, in SI, with its bar in the unit of the scale. */
export function windowRow(
  kind: Hatched,
  name: string,
  id: string,
  { min, max }: Interval,
  unit: string,
  registry: Registry,
): IntervalRow {
  const quantity = registry.find(id);
  const number = quantity === undefined ? '' : showWindow(quantity, min, max);
  return { name, number, mark: { kind, min: fromSI(min, unit), max: fromSI(max, unit) } };
}

/** What is said of a picture to who cannot see it: every row, and what is not known. */
export function wordsOf(sayings: readonly Saying[], missing: readonly string[]): string {
  const said = sayings.map(({ name, number }) => `${name}: ${number}.`);
  return [...said, ...notKnownWords(missing).map((words) => `${words}.`)].join(' ');
}

/** "Not known: …", without its full stop. */
export function notKnownWords(missing: readonly string[]): readonly string[] {
  return missing.length === 0 ? [] : [`Not known: ${missing.join(', ')}`];
}

/** "Not drawn: …", what has no place on the picture and why, without its full stop. */
export function notDrawnWords(left: readonly string[]): readonly string[] {
  return left.length === 0 ? [] : [`Not drawn: ${left.join('; ')}`];
}
