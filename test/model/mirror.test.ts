// Tests that a left-hander's swing is a right-hander's in a mirror, once and everywhere.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { derive } from '../../src/model/derive.ts';
import type { Situation, Value } from '../../src/model/value.ts';
import { findQuantity } from '../../src/registry/registry.ts';
import { anyPlausible, deliveryIds, situationOf } from './situations.ts';

const isLateral = (id: string): boolean => findQuantity(id)?.lateral ?? false;

/** The other player, everything on the other side of the target line; written anew here, not taken from the model. */
function inMirror(situation: Situation): Situation {
  return {
    ...situation,
    hand: situation.hand === 'left' ? 'right' : 'left',
    windBearing: situation.windBearing === undefined ? undefined : -situation.windBearing,
    observations: new Map(
      [...situation.observations].map(([id, o]) => [id, isLateral(id) ? { ...o, value: -o.value } : o]),
    ),
  };
}

function assertMirrored(one: ReadonlyMap<string, Value>, other: ReadonlyMap<string, Value>): void {
  assert.deepEqual([...one.keys()], [...other.keys()]);
  for (const [id, value] of one) {
    const twin = other.get(id)!;
    const sign = isLateral(id) ? -1 : 1;
    assert.ok(Math.abs(value.value - sign * twin.value) <= 1e-12 * (1 + Math.abs(value.value)), id);
    assert.deepEqual({ ...twin, value: 0 }, { ...value, value: 0 });
  }
}

describe('handedness', () => {
  it('mirrors the whole derivation, and nothing else', () => {
    fc.assert(
      fc.property(anyPlausible, (situation) => {
        const one = derive(situation);
        const other = derive(inMirror(situation));
        assertMirrored(one.values, other.values);
        assertMirrored(one.expected, other.expected);
        assert.deepEqual(other.missing, one.missing);
      }),
      { numRuns: 60 },
    );
  });

  it('drifts a left-hander’s ball with the wind as everybody’s', () => {
    const straight = { 'delivery.face': 0, 'delivery.path': 0, 'conditions.wind': 6 };
    const situation = situationOf(deliveryIds, straight, { hand: 'left', windBearing: Math.PI / 2 });
    assert.ok(derive(situation).values.get('flight.curve')!.value > 5);
  });
});
