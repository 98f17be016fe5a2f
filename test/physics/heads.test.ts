// Tests of the representative heads: plausible rigid bodies, and honest about where they come from.
import assert from 'node:assert/strict';
import { pointHead, representativeHeads } from '../../src/physics/heads.ts';

describe('representativeHeads', () => {
  for (const [kind, { head, massUncertainty, restitutionUncertainty, source }] of Object.entries(
    representativeHeads,
  )) {
    it(`gives the ${kind} inertias that a rigid body can have`, () => {
      const { vertical, heelToe, frontBack } = head.inertia;
      assert.ok(vertical < heelToe + frontBack);
      assert.ok(heelToe < vertical + frontBack);
      assert.ok(frontBack < vertical + heelToe);
    });

    it(`says how uncertain the ${kind} is and where it comes from`, () => {
      assert.ok(massUncertainty > 0 && restitutionUncertainty > 0);
      assert.match(source, /judgement/);
    });
  }

  it('gets heavier from the driver to the wedge', () => {
    const masses = Object.values(representativeHeads).map(({ head }) => head.mass);
    assert.deepEqual(
      masses,
      masses.toSorted((a, b) => a - b),
    );
  });
});

describe('pointHead', () => {
  it('cannot turn', () => {
    assert.deepEqual(Object.values(pointHead(0.2).inertia), [Infinity, Infinity, Infinity]);
  });
});
