// Checks of the inverted pendulum against published worked values, and of its priors against what was seen of golfers.
import assert from 'node:assert/strict';
import { balancePriors } from '../../src/physics/balance-priors.ts';
import { accelerationFromPressure, centreOfPressure, pendulumOf } from '../../src/physics/balance.ts';
import { feetOf } from '../../src/physics/feet.ts';

describe('inverted pendulum', () => {
  it('is 0.91175 m high with k 0.11130 s² at 1.75 m', () => {
    // Winter 1995; M. Duarte, notes on biomechanics: 70 kg, 1.75 m, g 9.8 m/s², sway front to back.
    const pendulum = pendulumOf(1.75, 'front_to_back', 9.8)!;
    assert.ok(Math.abs(pendulum.height - 0.91175) < 5e-6);
    assert.ok(Math.abs(pendulum.k - 0.1113) < 5e-6);
  });

  it('keeps the pressure below the centre of mass while nothing is accelerated', () => {
    // Winter 1995: CoM − CoP = k · acceleration.
    assert.equal(centreOfPressure(0.07, 0, 0.1113), 0.07);
    assert.ok(Math.abs(0.07 - centreOfPressure(0.07, 1, 0.1113)! - 0.1113) < 1e-12);
  });
});

describe('acceleration at impact', () => {
  it('allows a pressure that has run back at impact, as well as one that has run forward', () => {
    // Ball & Best 2007: two styles among 62 golfers, at every level of skill. Their middle values, 65 and 25 % by judgement.
    const feet = feetOf({ width: 0.45, ballPosition: -0.05 })!;
    const { value, u } = balancePriors.impact.acceleration;
    const { k } = pendulumOf(1.78)!;
    for (const share of [0.65, 0.25, 0.9]) {
      const needed = accelerationFromPressure(-0.05, share, feet, k)!;
      assert.ok(Math.abs(needed - value) < 2 * u);
    }
  });
});
