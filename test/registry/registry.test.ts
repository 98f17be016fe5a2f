// Holds the choice of a standard uncertainty: what was stated, else the method's, else the quantity's own.
import assert from 'node:assert/strict';
import { differenceToSI } from '../../src/measure/units.ts';
import type { Method, Quantity } from '../../src/registry/quantity.ts';
import { builtIn, findQuantity, registryWith, standardUncertainty } from '../../src/registry/registry.ts';

function quantity(id: string): Quantity {
  const found = findQuantity(id);
  assert.ok(found, id);
  return found;
}

const unstated = { stated: undefined, method: undefined, estimate: false };
const head = quantity('checkpoints.top.head');
const path = quantity('delivery.path');

describe('standard uncertainty', () => {
  it('takes what was stated, whatever the method', () => {
    const found = standardUncertainty(path, { stated: 0.01, method: 'eye', estimate: false }, 1);
    assert.deepEqual(found, { u: 0.01, origin: 'stated' });
  });

  it('divides what was stated by the coverage of the workspace', () => {
    assert.equal(standardUncertainty(path, { ...unstated, stated: 0.01 }, 2).u, 0.005);
  });

  it('does not double what was stated beside an estimate', () => {
    assert.equal(standardUncertainty(path, { stated: 0.01, method: 'eye', estimate: true }, 1).u, 0.01);
  });

  it("prefers the method's figure for the quantity to that for the dimension", () => {
    const found = standardUncertainty(path, { ...unstated, method: 'alignment stick' }, 1);
    assert.deepEqual(found, { u: differenceToSI(1.5, 'deg'), origin: 'method' });
    const radar = standardUncertainty(path, { ...unstated, method: 'radar' }, 1);
    assert.deepEqual(radar, { u: path.uncertainty.by.radar, origin: 'method' });
  });

  it("falls back on the method's figure for the dimension", () => {
    const found = standardUncertainty(head, { ...unstated, method: 'tape' }, 1);
    assert.deepEqual(found, { u: builtIn.findMethod('tape')?.uncertainty.length?.u, origin: 'method' });
  });

  it('falls back on the quantity where there is no method, or none that measures such a thing', () => {
    const own = { u: head.uncertainty.otherwise, origin: 'quantity' };
    assert.deepEqual(standardUncertainty(head, unstated, 1), own);
    assert.deepEqual(standardUncertainty(head, { ...unstated, method: 'stopwatch' }, 1), own);
    assert.deepEqual(standardUncertainty(head, { ...unstated, method: 'radar' }, 1), own);
    assert.deepEqual(standardUncertainty(head, { ...unstated, method: 'crystal ball' }, 1), own);
  });

  it('doubles the default for an estimate, by method or not', () => {
    for (const method of ['video', undefined]) {
      const sure = standardUncertainty(head, { ...unstated, method }, 1);
      const unsure = standardUncertainty(head, { ...unstated, method, estimate: true }, 1);
      assert.equal(unsure.u, 2 * sure.u);
    }
  });

  it('leaves the coverage of the workspace out of every default', () => {
    assert.equal(standardUncertainty(head, unstated, 2).u, standardUncertainty(head, unstated, 1).u);
  });

  it("puts a workspace's own figure for a method above the table", () => {
    const own: Method = {
      name: 'video',
      meaning: 'our camera',
      uncertainty: { length: { u: 0.01, source: 'swingwright.yaml' } },
    };
    const found = standardUncertainty(
      head,
      { ...unstated, method: 'video' },
      1,
      registryWith({ methods: [own] }),
    );
    assert.deepEqual(found, { u: 0.01, origin: 'method' });
  });

  it('takes a look at an angle as wide as 70.8 % within 5 degrees makes it (n 116, at the elbow)', () => {
    const elbow = quantity('checkpoints.top.lead_elbow_bend');
    const { u } = standardUncertainty(elbow, { ...unstated, method: 'eye' }, 1);
    // 1.0537 is the normal quantile of (1 + 0.708)/2, from memory of the table of Φ.
    assert.ok(Math.abs(u - differenceToSI(5 / 1.0537, 'deg')) < differenceToSI(0.1, 'deg'));
  });
});
