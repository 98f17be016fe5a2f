// What may follow in the half-written size of an effect: its unit, `per`, then so much of the cause and the unit of that; knows no file.
import { unitsOf } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { unique, type Habit } from './completion-habits.ts';
import type { Proposal } from './completion-item.ts';
import { continueMeasure, isInNumber, uncertainty, type Continuation } from './completion-measure.ts';

/** `causes`: what the fault may be measured by, the likeliest first. */
export function continueSize(
  value: string,
  at: number,
  quantity: Quantity,
  habit: Habit,
  causes: readonly Quantity[],
): Continuation | undefined {
  const measured = (text: string): Continuation | undefined =>
    continueMeasure(text, at, quantity, habit, 'size', () => undefined);
  const before = value.slice(0, at);
  // Before a number nothing can follow, and where one has its unit already none is said again.
  if (
    /^\s*\d/.test(value.slice(at)) ||
    isInNumber(value, at) ||
    (/\d\s*$/.test(before) && /^\s+(?!per\s|±|\+-)\S/.test(value.slice(at)))
  )
    return undefined;
  const per = /(?<=^|\s)per\s+/i.exec(before);
  const found = measured(value);
  if (per === null) {
    const isUnitWritten = /\d\s*[^\s\d]\S*\s+$/.test(before.slice(0, found?.start));
    if (found === undefined || !isUnitWritten || /\sper\s/i.test(value.slice(at))) return found;
    return { ...found, proposals: [...found.proposals, forSoMuch] };
  }
  const from = per.index + per[0].length;
  const sign = before.slice(from).search(/±|\+-/);
  // The uncertainty behind the cause is that of the effect, as if nothing stood between.
  if (sign !== -1)
    return measured(
      value.slice(0, per.index) + ' '.repeat(from + sign - per.index) + value.slice(from + sign),
    );
  const cause = before.slice(from);
  const number = /^[\d.,]*\s*/.exec(cause)![0];
  const unit = cause.slice(number.length);
  if (/\S\s/.test(unit)) {
    const isStated = /±|\+-/.test(value);
    return isStated
      ? undefined
      : { start: at - /\S*$/.exec(unit)![0].length, end: at, proposals: [uncertainty] };
  }
  const lead = /\d$/.test(number) && unit === '' ? ' ' : '';
  const names = causes.flatMap(({ unit: usual, dimension }) => [
    usual,
    ...unitsOf(dimension).map(({ name }) => name),
  ]);
  return {
    start: from + number.length,
    end: at + /^[^\s±]*/.exec(value.slice(at))![0].length,
    proposals: unique(names)
      .filter((name) => name !== '')
      .map((name) => ({ label: name, text: lead + name, kind: 'unit', detail: 'unit of the cause' })),
  };
}

const forSoMuch: Proposal = {
  label: 'per',
  text: 'per ',
  kind: 'word',
  detail: 'for so much of the cause',
  again: true,
};
