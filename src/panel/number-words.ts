// A number on a slider as people read it, as the rest of the project writes it, and how it lies to its windows; knows no unit table.
import type { Lever, LeverBand } from '../language/what-if.ts';

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

const names: Readonly<Record<LeverBand['of'], string>> = {
  template: 'Template',
  goal: 'Goal',
  plan: 'Plan',
  practice: 'Seen in practice',
};

const ofThem: Readonly<Record<LeverBand['of'], string>> = {
  template: "the template's window",
  goal: "the goal's window",
  plan: "the plan's window",
  practice: 'what is seen in practice',
};

/** "Template 36..42 cm: inside", "Plan 41 cm". */
export function bandWords(lever: Pick<Lever, 'step'>, band: LeverBand, value: number): string {
  const place = placeIn(lever, band, value);
  return `${names[band.of]} ${band.words}${place === '' ? '' : `: ${place}`}`;
}

/** "2.5 deg right, inside the template's window, outside the goal's window", for who hears the slider. */
export function spokenWords(
  lever: Pick<Lever, 'unit' | 'decimals' | 'sides' | 'step' | 'bands'>,
  value: number,
): string {
  const places = lever.bands.flatMap((band) => {
    const place = placeIn(lever, band, value);
    if (place === '') return [];
    return [place === 'as planned' ? place : `${place} ${ofThem[band.of]}`];
  });
  return [numberWords(lever, value), ...places].join(', ');
}

/** Of one number that is planned: met to half a step, or nothing to say. */
function placeIn({ step }: Pick<Lever, 'step'>, { of, min, max }: LeverBand, value: number): string {
  if (of === 'plan' && min === max) return Math.abs(value - min) <= step / 2 ? 'as planned' : '';
  // A number on the very edge is inside, whatever its last binary digit is.
  const leeway = step / 1000;
  return value >= min - leeway && value <= max + leeway ? 'inside' : 'outside';
}
