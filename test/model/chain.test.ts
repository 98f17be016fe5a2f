// Tests of which step gives what, and of what would have to be entered; no numbers.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { chainFrom, needsOf } from '../../src/model/chain.ts';
import { priorsFor } from '../../src/model/priors.ts';
import { rules } from '../../src/model/rules.ts';
import { findQuantity } from '../../src/registry/registry.ts';
import { everything } from './situations.ts';

const assumed = priorsFor({ clubKind: 'iron', windBearing: undefined }).map((p) => p.id);
const isEnterable = (id: string): boolean => findQuantity(id) !== undefined;

function closure(entered: readonly string[]): Set<string> {
  const atHand = new Set([...entered, ...assumed]);
  return new Set([...atHand, ...chainFrom(rules, atHand).keys()]);
}

const anyEntries = fc.subarray([...everything.keys()]);

describe('chainFrom', () => {
  it('gives each id only from ids that were given before it', () => {
    fc.assert(
      fc.property(anyEntries, (entered) => {
        const given = new Set([...entered, ...assumed]);
        for (const [id, rule] of chainFrom(rules, given)) {
          assert.ok(rule.outputs.some((output) => output === id));
          assert.ok(!given.has(id));
          for (const other of rule.inputs) assert.ok(given.has(other), `${id} before ${other}`);
          given.add(id);
        }
      }),
    );
  });

  it('leaves nothing ungiven that some step could give', () => {
    fc.assert(
      fc.property(anyEntries, (entered) => {
        const given = closure(entered);
        for (const rule of rules) {
          if (rule.inputs.every((id) => given.has(id))) assert.ok(rule.outputs.every((id) => given.has(id)));
        }
      }),
    );
  });
});

describe('needsOf', () => {
  it('names the arc’s radius for the low point where attack and inclination are there', () => {
    const needs = needsOf(rules, closure(['delivery.attack', 'delivery.arc.inclination']), isEnterable);
    assert.deepEqual(needs.get('delivery.low_point.ahead'), ['delivery.arc.radius']);
  });

  it('names the one missing cause of a launch rather than each of its five numbers', () => {
    const entered = ['delivery.club_speed', 'delivery.attack', 'delivery.path', 'delivery.face'];
    assert.deepEqual(needsOf(rules, closure(entered), isEnterable).get('flight.carry'), [
      'delivery.delivered_loft',
    ]);
    assert.deepEqual(
      needsOf(rules, closure([...entered, 'club.loft']), isEnterable).get('flight.apex')?.length,
      1,
    );
  });

  it('gives sets that suffice, of which nothing can be left out, and that never hold the id itself', () => {
    fc.assert(
      fc.property(anyEntries, (entered) => {
        const needs = needsOf(rules, closure(entered), isEnterable);
        for (const [id, ids] of needs) {
          assert.ok(ids.length > 0 && !ids.includes(id) && ids.every(isEnterable));
          assert.ok(closure([...entered, ...ids]).has(id), id);
          for (const left of ids) {
            assert.ok(!closure([...entered, ...ids.filter((other) => other !== left)]).has(id), id);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never asks for two or more where one or two would do', () => {
    const all = [...everything.keys()];
    fc.assert(
      fc.property(anyEntries, (entered) => {
        const needs = needsOf(rules, closure(entered), isEnterable);
        const open = all.filter((id) => !entered.includes(id));
        for (const one of open) {
          const given = closure([...entered, one]);
          for (const [id, ids] of needs) {
            if (id !== one && given.has(id))
              assert.equal(ids.length, 1, `${id} by ${one}, not ${ids.join()}`);
          }
        }
        for (const [i, one] of open.entries()) {
          for (const other of open.slice(i + 1)) {
            const given = closure([...entered, one, other]);
            for (const [id, ids] of needs) {
              if (id !== one && id !== other && given.has(id))
                assert.ok(ids.length <= 2, `${id} by ${one}, ${other}`);
            }
          }
        }
      }),
      { numRuns: 15 },
    );
  });

  it('has needs for whatever is derivable and not given', () => {
    fc.assert(
      fc.property(anyEntries, (entered) => {
        const given = closure(entered);
        const needs = needsOf(rules, given, isEnterable);
        for (const rule of rules)
          for (const id of rule.outputs) assert.ok(given.has(id) !== needs.has(id), id);
      }),
    );
  });
});
