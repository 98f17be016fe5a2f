// Tests of the wind's growth with height.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { openGround, windAt } from '../../src/physics/wind.ts';
import { between } from './scenarios.ts';

const wind = { speed: 5, from: 0 };

describe('windAt', () => {
  it('is nothing on the ground and whole at the height of its report', () => {
    assert.equal(windAt(wind, 0), 0);
    assert.equal(windAt(wind, openGround.reference), 1);
  });

  it('grows with the height', () => {
    fc.assert(
      fc.property(between(0, 60), between(0.1, 5), (height, step) => {
        assert.ok(windAt(wind, height + step) > windAt(wind, height));
      }),
    );
  });

  it('is the same everywhere where it is said to be', () => {
    assert.equal(windAt({ ...wind, heightProfile: 'uniform' }, 0), 1);
  });
});
