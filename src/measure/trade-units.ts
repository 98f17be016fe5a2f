// The units in which the trade writes a thing, by the unit that its quantity is shown in; knows no quantity.
import type { Notation } from './measure.ts';
import { findUnit } from './units.ts';

/** Common practice, no source: a stance is said in inches and never in miles, a carry in yards and never in millimetres. */
const rows: readonly (readonly string[])[] = [
  ['mm', 'cm', 'in'],
  ['cm', 'mm', 'in'],
  ['in', 'cm', 'mm'],
  ['m', 'yd', 'ft'],
  ['deg'],
  ['m/s', 'mph', 'km/h'],
  ['rpm'],
  ['s', 'ms'],
  ['ms', 's'],
  ['g', 'oz'],
  ['kg', 'lb'],
  ['g cm²', 'kg m²'],
  ['°C', '°F'],
  ['hPa', 'inHg', 'mmHg'],
];

/** The quantity's own unit first. A quantity shown in a unit of no row has only that one; shares and ratios have none. */
export function tradeUnits({ unit, dimension }: Notation): readonly string[] {
  if (dimension === 'fraction' || dimension === 'ratio') return [];
  const own = findUnit(unit)?.name ?? unit;
  return rows.find(([first]) => first === own) ?? [own];
}
