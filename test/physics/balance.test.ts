// Tests of the pressure under the feet: its inverses, its signs, and priors that leave no pressure impossible.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { balancePriors, type SwingCheckpoint } from '../../src/physics/balance-priors.ts';
import {
  accelerationFromPressure,
  centreOfPressure,
  centreOfPressureFrom,
  leadPressure,
  pendulumOf,
} from '../../src/physics/balance.ts';
import { centreOfMassAlongTarget } from '../../src/physics/centre-of-mass.ts';
import { feetOf } from '../../src/physics/feet.ts';
import { anyNumber, between, numbersOf } from './scenarios.ts';

const feet = feetOf({ width: 0.45, ballPosition: -0.08 })!;

describe('leadPressure', () => {
  it('is all or nothing above the middle of one foot and half in between', () => {
    assert.equal(leadPressure(feet.leadCentre, feet), 1);
    assert.equal(leadPressure(feet.trailCentre, feet), 0);
    assert.ok(Math.abs(leadPressure((feet.leadCentre + feet.trailCentre) / 2, feet)! - 0.5) < 1e-12);
  });

  it('is undone by centreOfPressureFrom, and the acceleration by the pressure', () => {
    fc.assert(
      fc.property(between(-0.4, 0.3), between(-3, 3), (centreOfMass, acceleration) => {
        const { k } = pendulumOf(1.8)!;
        const place = centreOfPressure(centreOfMass, acceleration, k)!;
        const share = leadPressure(place, feet)!;
        assert.ok(Math.abs(centreOfPressureFrom(share, feet)! - place) < 1e-12);
        assert.ok(Math.abs(accelerationFromPressure(centreOfMass, share, feet, k)! - acceleration) < 1e-9);
      }),
    );
  });

  it('falls when the upper body is further behind, and when the body is pushed toward the target', () => {
    // Common practice, no source; the push by Newton's second law.
    const { k } = pendulumOf(1.75)!;
    const share = (sternum: number, acceleration: number) => {
      const body = { pelvis: 0.04, sternum, leadShoulder: 0.1, hands: 0.08 };
      const centre = centreOfMassAlongTarget(body, feet, 'male', 1.75, 'impact')!;
      return leadPressure(centreOfPressure(centre.value, acceleration, k)!, feet)!;
    };
    assert.ok(share(-0.12, 0) < share(-0.06, 0));
    assert.ok(share(-0.06, 0.5) < share(-0.06, 0));
  });

  it('is about half in an even stance', () => {
    // Common practice, no source: a lesson's address with the ball inside the lead heel.
    const body = { pelvis: -0.1, sternum: -0.12, head: -0.1, hands: 0.01, leadKnee: -0.01 };
    const centre = centreOfMassAlongTarget(body, feet, 'female', 1.7, 'address')!;
    assert.ok(Math.abs(leadPressure(centre.value, feet)! - 0.5) < 0.05);
  });
});

describe('pendulumOf', () => {
  it('sways a little slower from foot to foot than from toe to heel, and slower in tall players', () => {
    assert.ok(pendulumOf(1.75)!.k > pendulumOf(1.75, 'front_to_back')!.k);
    assert.ok(pendulumOf(1.9)!.k > pendulumOf(1.7)!.k);
  });
});

describe('balance priors', () => {
  const names = Object.keys(balancePriors) as SwingCheckpoint[];
  const { k } = pendulumOf(1.75)!;
  const span = feet.leadCentre - feet.trailCentre;

  it('make the pressure sharp at address: 2 % of the body’s weight', () => {
    const { value, u } = balancePriors.address.acceleration;
    assert.equal(value, 0);
    assert.ok((k * u) / span < 0.02);
  });

  it('leave the pressure open by a quarter of the weight and more from downswing to follow-through', () => {
    const open = [
      'lead_arm_parallel_down',
      'shaft_parallel_down',
      'impact',
      'shaft_parallel_through',
    ] as const;
    for (const name of open) assert.ok((k * balancePriors[name].acceleration.u) / span > 0.25);
  });

  it('have a positive uncertainty for everything', () => {
    for (const name of names) {
      const { discrepancy, ...priors } = balancePriors[name];
      assert.ok(discrepancy > 0);
      assert.ok(Object.values(priors).every(({ value, u }) => Number.isFinite(value) && u > 0));
    }
  });
});

describe('the balance floor', () => {
  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        (a, b, k, leadCentre, trailCentre) => {
          const any = { leadCentre, trailCentre };
          const results = [
            pendulumOf(a),
            pendulumOf(a, 'front_to_back', b),
            centreOfPressure(a, b, k),
            leadPressure(a, any),
            centreOfPressureFrom(a, any),
            accelerationFromPressure(a, b, any, k),
          ];
          assert.ok(numbersOf(results).every(Number.isFinite));
        },
      ),
    );
  });
});
