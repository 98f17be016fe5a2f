// Tests of the exchange of left and right, over a whole left-handed swing.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { arcAtStrike } from '../../src/physics/arc.ts';
import { smitsSmith } from '../../src/physics/coefficients.ts';
import { fly } from '../../src/physics/flight.ts';
import { representativeHeads } from '../../src/physics/heads.ts';
import { strike } from '../../src/physics/impact.ts';
import { asRightHanded, mirrored, sideways } from '../../src/physics/mirror.ts';
import { anyDelivery, anyHeadKind, between, degree } from './scenarios.ts';

const air = { density: 1.2, kinematicViscosity: 1.5e-5 };

describe('mirrored', () => {
  it('is its own inverse', () => {
    fc.assert(
      fc.property(anyDelivery, (delivery) => {
        const twice = mirrored(mirrored(delivery, sideways.delivery), sideways.delivery);
        for (const [name, value] of Object.entries(delivery)) assert.ok(twice[name as 'path'] === value);
      }),
    );
  });

  it('leaves no negative zero behind', () => {
    assert.ok(Object.is(mirrored({ path: 0, face: 0 }, sideways.delivery).path, 0));
  });
});

describe('asRightHanded', () => {
  it('gives a left-hander’s swing the mirror image of the same right-hander’s flight', () => {
    fc.assert(
      fc.property(anyHeadKind, anyDelivery, (kind, delivery) => {
        const { head } = representativeHeads[kind];
        const right = strike(delivery, head);
        const left = strike(
          asRightHanded('left', mirrored(delivery, sideways.delivery), sideways.delivery),
          head,
        );
        assert.equal(left === undefined, right === undefined);
        if (right === undefined || left === undefined) return;
        const seen = asRightHanded('left', left, ['start', 'spinTilt']);
        const rightFlight = fly(right, { air }, smitsSmith);
        const leftFlight = fly(seen, { air }, smitsSmith);
        assert.equal(leftFlight === undefined, rightFlight === undefined);
        if (rightFlight === undefined || leftFlight === undefined) return;
        assert.ok(Math.abs(leftFlight.finish + rightFlight.finish) < 1e-6 * (1 + rightFlight.carry));
        assert.ok(Math.abs(leftFlight.curve + rightFlight.curve) < 1e-6 * (1 + rightFlight.carry));
        assert.ok(Math.abs(leftFlight.carry - rightFlight.carry) < 1e-6 * (1 + rightFlight.carry));
      }),
    );
  });

  it('gives a left-hander’s downward strike a path to the left of its base line', () => {
    fc.assert(
      fc.property(between(-8 * degree, -degree), between(-5 * degree, 5 * degree), (attack, direction) => {
        const arc = asRightHanded('left', { radius: 1.6, inclination: 1, direction }, sideways.arc);
        const seen = asRightHanded('left', arcAtStrike(arc, attack)!, sideways.arcAtStrike);
        assert.ok(seen.path < direction);
      }),
    );
  });

  it('leaves a right-hander alone', () => {
    const arc = { radius: 1, inclination: 1, direction: 0.1 };
    assert.equal(asRightHanded('right', arc, sideways.arc), arc);
  });
});
