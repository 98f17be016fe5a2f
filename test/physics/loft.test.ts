// Tests of the loft at the strike and of the obliquity.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { deliveredLoft, loftFromOpening, obliquity, shaftKicks } from '../../src/physics/loft.ts';
import { cross, directionOf, dot, scale, add, vector } from '../../src/physics/vector.ts';
import { anyDelivery, anyNumber, between, degree } from './scenarios.ts';

describe('deliveredLoft', () => {
  it('takes a forward lean off the club’s loft and adds the kick', () => {
    const loft = deliveredLoft({ clubLoft: 30 * degree, shaftLean: 8 * degree, kick: 1.5 * degree });
    assert.ok(Math.abs(loft - 23.5 * degree) < 1e-12);
  });

  it('says of every kick how uncertain it is and that it is judgement', () => {
    for (const kick of Object.values(shaftKicks)) {
      assert.ok(kick.u > 0);
      assert.match(kick.source, /judgement/);
    }
  });
});

describe('loftFromOpening', () => {
  it('agrees with turning the face about the shaft, for small openings', () => {
    fc.assert(
      fc.property(between(-3 * degree, 3 * degree), between(50 * degree, 70 * degree), (opening, lie) => {
        const shaft = vector(0, Math.cos(lie), Math.sin(lie));
        const normal = directionOf(0, 20 * degree);
        // Rodrigues' rotation; opening turns the face clockwise as seen down the shaft.
        const turned = add(
          add(scale(normal, Math.cos(-opening)), scale(cross(shaft, normal), Math.sin(-opening))),
          scale(shaft, dot(shaft, normal) * (1 - Math.cos(opening))),
        );
        const face = Math.atan2(-turned.y, turned.x);
        const added = Math.asin(turned.z) - 20 * degree;
        const expected = loftFromOpening(face, lie)!;
        // What is left is of second order in the opening.
        assert.ok(Math.abs(added - expected) < 1.5 * opening ** 2 + 1e-12);
      }),
    );
  });

  it('knows nothing for a club without a lie', () => {
    assert.equal(loftFromOpening(0.1, 0), undefined);
    assert.equal(loftFromOpening(Number.NaN, 1), undefined);
  });
});

describe('obliquity', () => {
  it('is loft less attack where path and face agree', () => {
    fc.assert(
      fc.property(anyDelivery, ({ path, attack, loft }) => {
        const angle = obliquity({ path, attack, face: path, loft });
        assert.ok(Math.abs(angle - Math.abs(loft - attack)) < 1e-9);
      }),
    );
  });

  it('never is below the difference in the vertical plane, nor above the sum of both differences', () => {
    fc.assert(
      fc.property(anyDelivery, (blow) => {
        const angle = obliquity(blow);
        assert.ok(angle >= Math.abs(blow.loft - blow.attack) - 1e-9);
        assert.ok(angle <= Math.abs(blow.loft - blow.attack) + Math.abs(blow.face - blow.path) + 1e-9);
      }),
    );
  });

  it('lies between none and a straight angle, or is no number for what is no number', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (path, attack, face, loft) => {
        const angle = obliquity({ path, attack, face, loft });
        const sound = [path, attack, face, loft].every(Number.isFinite);
        assert.ok(!sound || (angle >= 0 && angle <= Math.PI));
      }),
    );
  });
});
