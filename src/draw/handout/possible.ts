// What a body, a club or a ball can be at all, so that nothing else is drawn; knows no handout.
import type { Quantity } from '../../registry/quantity.ts';

/** @param value SI */
export function isPossible({ bounds }: Quantity, value: number): boolean {
  return value >= bounds.min && value <= bounds.max;
}
