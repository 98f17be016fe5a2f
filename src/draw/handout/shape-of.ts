// In which drawing of a handout a quantity is seen: on the figure, at the strike from above or from the front; draws nothing.
import type { Quantity } from '../../registry/quantity.ts';
import { isOnFigure } from './figure-change.tsx';

export type Shape = 'figure' | 'above' | 'front';

const fromAbove: readonly string[] = ['delivery.path', 'delivery.face', 'delivery.face_to_path'];
const fromFront: readonly string[] = ['delivery.attack', 'delivery.low_point.ahead'];

/** Undefined where none of them shows it. */
export function shapeOf(quantity: Quantity): Shape | undefined {
  if (isOnFigure(quantity)) return 'figure';
  if (fromAbove.includes(quantity.id)) return 'above';
  return fromFront.includes(quantity.id) ? 'front' : undefined;
}
