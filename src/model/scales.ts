// How far apart two values of a quantity must lie to matter: the natural step of each unknown; knows no entries.
import type { Registry } from '../registry/registry.ts';

const degree = Math.PI / 180;

/** For what no record has a place for; judgement, about the inexactness of the step that gives it. */
const inner: Readonly<Record<string, number>> = {
  'club.shaft_kick': 1.5 * degree,
  'club.lever': 0.015,
  'body.arm_length': 0.03,
  'linkage.hub_along': 0.5,
  'linkage.hub_up': 0.5,
  'delivery.centre_loft': 1 * degree,
  'strike.sole_height': 0.004,
  'conditions.ground_give': 0.2,
  'flight.run': 2,
};

/** How far a quantity goes from one end of what is seen in practice to the other, or of what is possible; SI. */
export function rangeOf(id: string, registry: Registry): number {
  const quantity = registry.find(id);
  const range = quantity?.practice ?? quantity?.bounds;
  return range ? range.max - range.min : 4 * scaleOf(id, registry);
}

/** The default standard uncertainty of the quantity, SI: what somebody without an instrument gets it to. */
export function scaleOf(id: string, registry: Registry): number {
  return inner[id] ?? registry.find(id)?.uncertainty.otherwise ?? 1;
}
