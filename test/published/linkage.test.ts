// Checks of the two-lever linkage against values computed outside this implementation.
import assert from 'node:assert/strict';
import { instantaneousCentreAhead, linkageAtStrike } from '../../src/physics/linkage.ts';

const degree = Math.PI / 180;

// Arm 0.64 m, shaft 0.85 m, 40 m/s, plane 58°, ratio 2.2. Computed: from the model's description, not from nature.
// Shoulder ahead m, lean °, attack °, low point ahead m.
const rows = [
  [0.12, 3, -3.204, 0.087],
  [0.12, 8, -4.668, 0.127],
  [0.12, 14, -6.475, 0.175],
  [0, 8, -2.355, 0.064],
] as const;

describe('two-lever linkage', () => {
  for (const [shoulderAhead, lean, attack, ahead] of rows) {
    const given = {
      shoulderAhead,
      shaftLean: lean * degree,
      inclination: 58 * degree,
      armLength: 0.64,
      shaftLength: 0.85,
      clubSpeed: 40,
      releaseRatio: 2.2,
    };
    it(`strikes at ${attack}° with the shoulder ${shoulderAhead} m ahead and ${lean}° of lean, as computed`, () => {
      const strike = linkageAtStrike(given)!;
      assert.ok(Math.abs(strike.attack / degree - attack) < 5e-4);
      assert.ok(Math.abs(strike.lowPointAhead - ahead) < 5e-4);
    });

    it(`rolls out 15 to 20 % beyond the instantaneous centre with ${lean}° of lean, shoulder at ${shoulderAhead} m`, () => {
      // Rule of thumb of the model, computed.
      const strike = linkageAtStrike(given)!;
      const centre = instantaneousCentreAhead(strike.handsAhead, shoulderAhead, 2.2)!;
      const ratio = strike.lowPointAhead / centre;
      assert.ok(ratio > 1.15 && ratio < 1.2);
    });
  }
});
