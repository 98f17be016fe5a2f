// Tests of the arc's geometry, against a circle drawn point by point.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { arcAtStrike, attackFromLowPoint, directionFromPath } from '../../src/physics/arc.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const anyArc = fc.record({
  radius: between(0.5, 3),
  inclination: between(20 * degree, 90 * degree),
  direction: between(-15 * degree, 15 * degree),
});

/** A point of the circle in the world frame, its low point at the origin. */
function pointOn(arc: { radius: number; inclination: number; direction: number }, angle: number): number[] {
  const along = arc.radius * Math.sin(angle);
  const up = arc.radius * (1 - Math.cos(angle));
  // The plane rises away from the ball toward the player, who stands to the left of the line.
  const level = up * Math.cos(arc.inclination);
  return [
    along * Math.cos(arc.direction) + level * Math.sin(arc.direction),
    -along * Math.sin(arc.direction) + level * Math.cos(arc.direction),
    up * Math.sin(arc.inclination),
  ];
}

describe('arcAtStrike', () => {
  it('agrees with the tangent of a circle drawn in the inclined plane', () => {
    fc.assert(
      fc.property(anyArc, between(-0.5, 0.5), (arc, angle) => {
        const step = 1e-6;
        const before = pointOn(arc, angle - step);
        const after = pointOn(arc, angle + step);
        const [vx, vy, vz] = after.map((x, i) => x - before[i]!) as [number, number, number];
        const attack = Math.atan2(vz, Math.hypot(vx, vy));
        const strike = arcAtStrike(arc, attack)!;
        assert.ok(Math.abs(strike.angle - angle) < 1e-7);
        assert.ok(Math.abs(strike.path - Math.atan2(-vy, vx)) < 1e-7);
        assert.ok(Math.abs(strike.lowPointDepth - pointOn(arc, angle)[2]!) < 1e-7);
      }),
    );
  });

  it('puts the low point ahead of the ball and the path to the right of the base line in a downward strike', () => {
    fc.assert(
      fc.property(anyArc, between(-15 * degree, -0.1 * degree), (arc, attack) => {
        const strike = arcAtStrike(arc, attack);
        if (strike === undefined) return;
        assert.ok(strike.lowPointAhead > 0);
        assert.ok(strike.lowPointDepth > 0);
        assert.ok(strike.path >= arc.direction - 1e-12);
      }),
    );
  });

  it('has a path along the base line where the plane stands upright', () => {
    const strike = arcAtStrike({ radius: 1.6, inclination: Math.PI / 2, direction: 0.02 }, -0.1)!;
    assert.ok(Math.abs(strike.path - 0.02) < 1e-15);
  });

  it('knows no strike that is steeper than its plane', () => {
    assert.equal(arcAtStrike({ radius: 1.6, inclination: 0.5, direction: 0 }, 0.51), undefined);
    assert.equal(arcAtStrike({ radius: 1.6, inclination: 0.5, direction: 0 }, -0.5), undefined);
  });

  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (radius, inclination, direction, attack) => {
        const strike = arcAtStrike({ radius, inclination, direction }, attack);
        assert.ok(numbersOf(strike).every(Number.isFinite));
      }),
    );
  });
});

describe('attackFromLowPoint', () => {
  it('undoes the low point of arcAtStrike', () => {
    fc.assert(
      fc.property(anyArc, between(-15 * degree, 15 * degree), (arc, attack) => {
        const strike = arcAtStrike(arc, attack);
        if (strike === undefined) return;
        assert.ok(Math.abs(attackFromLowPoint(arc, strike.lowPointAhead)! - attack) < 1e-9);
      }),
    );
  });

  it('knows no attack for a low point a radius away', () => {
    assert.equal(attackFromLowPoint({ radius: 1.5, inclination: 1 }, 1.5), undefined);
  });
});

describe('directionFromPath', () => {
  it('undoes the path of arcAtStrike', () => {
    fc.assert(
      fc.property(anyArc, between(-10 * degree, 10 * degree), (arc, attack) => {
        const strike = arcAtStrike(arc, attack);
        if (strike === undefined) return;
        assert.ok(Math.abs(directionFromPath(arc, attack, strike.path)! - arc.direction) < 1e-12);
      }),
    );
  });
});
