// Which quantities a shot may hold, by short key or full id; knows neither records nor files of shots.
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';

const shotSections: readonly string[] = ['flight', 'delivery', 'strike'];

/** In a shot the section may be left out: `carry` for `flight.carry`. */
export function findShotQuantity(key: string, registry: Registry): Quantity | undefined {
  for (const section of shotSections) {
    const quantity = registry.find(`${section}.${key}`);
    if (quantity !== undefined) return quantity;
  }
  const quantity = registry.find(key);
  return quantity !== undefined && shotSections.includes(quantity.section) ? quantity : undefined;
}

/** Whether the workspace declares one of this name in a way that cannot be read. */
export function isBrokenShotQuantity(key: string, { broken }: Registry): boolean {
  return broken.has(key) || shotSections.some((section) => broken.has(`${section}.${key}`));
}

/** Every way to name a quantity of a shot, short keys first. */
export function shotKeys({ quantities }: Registry): readonly string[] {
  const known = quantities.filter(({ section }) => shotSections.includes(section));
  return [...known.map(({ id, section }) => id.slice(section.length + 1)), ...known.map(({ id }) => id)];
}
