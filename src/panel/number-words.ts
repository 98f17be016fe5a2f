// A number on a slider as people read it, as the rest of the project writes it; knows no unit table.
import type { Lever } from '../language/what-if.ts';

/** "2.5 deg right", "-3 °C", "41 m/s". */
export function numberWords(
  { unit, decimals, sides }: Pick<Lever, 'unit' | 'decimals' | 'sides'>,
  value: number,
): string {
  const size = Math.abs(value).toFixed(decimals);
  if (Number(size) === 0) return unit === '' ? '0' : `0 ${unit}`;
  const side = sides[value > 0 ? 0 : 1];
  const number = side === '' && value < 0 ? `-${size}` : size;
  return [number, unit, side].filter((word) => word !== '').join(' ');
}
