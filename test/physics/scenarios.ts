// Random but playable blows, launches and weather for the property tests of this folder; holds no expectations.
import fc from 'fast-check';
import type { HeadKind } from '../../src/physics/heads.ts';

export const degree = Math.PI / 180;

export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

export const anyHeadKind = fc.constantFrom<HeadKind>('driver', 'fairway', 'hybrid', 'iron', 'wedge');

export const anyDelivery = fc.record({
  speed: between(10, 60),
  path: between(-15 * degree, 15 * degree),
  attack: between(-10 * degree, 8 * degree),
  face: between(-15 * degree, 15 * degree),
  loft: between(3 * degree, 55 * degree),
  across: between(-0.03, 0.03),
  height: between(-0.015, 0.015),
});

export const anyLaunch = fc.record({
  ballSpeed: between(5, 85),
  launchAngle: between(3 * degree, 60 * degree),
  start: between(-20 * degree, 20 * degree),
  spin: between(0, 1000),
  spinTilt: between(-40 * degree, 40 * degree),
});

export const anyAir = fc.record({
  density: between(0.8, 1.4),
  kinematicViscosity: between(1.2e-5, 2e-5),
});

export const anyWind = fc.record({ speed: between(0, 12), from: between(-Math.PI, Math.PI) });

/** Any double at all: what a careless caller may hand in. */
export const anyNumber = fc.oneof(
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, Infinity, -Infinity, 1e-300, 1e300, Math.PI / 2, -Math.PI / 2),
);

/** Every number found in a result, however deep. */
export function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersOf);
  return [];
}
