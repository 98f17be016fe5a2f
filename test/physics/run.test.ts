// Tests of bounce and run.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { grounds, run } from '../../src/physics/run.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

function landing(speed: number, descent: number, backSpin: number) {
  return {
    carry: 200,
    finish: 0,
    descent,
    landing: { speed, heading: 0, spin: Math.abs(backSpin), backSpin },
  };
}

describe('run', () => {
  it('gets a flat drive further along the ground than a steep pitch', () => {
    const drive = run(landing(28, 38 * degree, 220), grounds.medium)!;
    const pitch = run(landing(22, 50 * degree, 700), grounds.medium)!;
    assert.ok(drive.distance > pitch.distance && pitch.distance > -5);
  });

  it('runs further on firmer ground', () => {
    const distances = (['soft', 'medium', 'firm'] as const).map(
      (firmness) => run(landing(28, 40 * degree, 220), grounds[firmness])!.distance,
    );
    assert.deepEqual(
      distances,
      distances.toSorted((a, b) => a - b),
    );
  });

  it('rolls out a ball on a table top by its friction alone', () => {
    // So steep and slow that nothing bounces: 5/7 of the speed over the ground is left, then v²/(2 · 5/7 ρ g).
    const out = run(landing(0.1, 45 * degree, 0), { give: 0, friction: 10, rollingResistance: 0.1 })!;
    const rolling = (5 / 7) * 0.1 * Math.SQRT1_2;
    const sliding = (5 / 7) ** 2 * 0.1 * Math.SQRT1_2 + (2 / 7) * (5 / 7) * 0.1 * Math.SQRT1_2;
    assert.equal(out.bounces, 0);
    assert.ok(Math.abs(rolling - sliding) < 1e-12);
    assert.ok(Math.abs(out.distance - rolling ** 2 / (2 * (5 / 7) * 0.1 * 9.80665)) < 1e-9);
  });

  it('comes back with enough back spin', () => {
    assert.ok(run(landing(15, 70 * degree, 1200), grounds.soft)!.distance < 0);
  });

  it('adds to the carry along the landing’s heading', () => {
    const straight = run(landing(28, 40 * degree, 220), grounds.medium)!;
    assert.ok(Math.abs(straight.total - 200 - straight.distance) < 1e-9);
    const aside = landing(28, 40 * degree, 220);
    const turned = run({ ...aside, landing: { ...aside.landing, heading: 0.3 } }, grounds.medium)!;
    assert.ok(turned.total < straight.total);
  });

  it('comes to rest for every landing', () => {
    fc.assert(
      fc.property(
        between(1, 50),
        between(degree, 89 * degree),
        between(-500, 1500),
        (speed, descent, spin) => {
          const out = run(landing(speed, descent, spin), grounds.medium)!;
          assert.ok(numbersOf(out).every(Number.isFinite));
          assert.ok(Math.abs(out.distance) < 200);
        },
      ),
    );
  });

  it('gives finite numbers or none for any landing', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, (speed, descent, spin) => {
        assert.ok(numbersOf(run(landing(speed, descent, spin), grounds.medium)).every(Number.isFinite));
      }),
    );
  });
});
