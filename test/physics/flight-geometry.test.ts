// Tests of start, curve, carry and finish, each from the others.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { curveFrom, finishFrom, finishWithin, startFrom } from '../../src/physics/flight-geometry.ts';
import { anyNumber, between } from './scenarios.ts';

const anyCarry = between(10, 300);
const anyStart = between(-0.5, 0.5);
const anyShare = between(-0.5, 0.5);

describe('flight geometry', () => {
  it('adds the start and the curve of a straightforward slice', () => {
    // 200 m at 2° right ends 6.98 m right; the same with 10 m of curve to the right about 10 m further.
    assert.ok(Math.abs(finishFrom((2 * Math.PI) / 180, 0, 200)! - 6.9799) < 1e-4);
    assert.ok(Math.abs(finishFrom((2 * Math.PI) / 180, 10, 200)! - 16.965) < 1e-2);
  });

  it('takes the curve back out of start and finish', () => {
    fc.assert(
      fc.property(anyCarry, anyStart, anyShare, (carry, start, share) => {
        const finish = finishFrom(start, share * carry, carry)!;
        assert.ok(Math.abs(curveFrom(start, finish, carry)! - share * carry) < 1e-9 * carry);
        assert.ok(Math.abs(startFrom(share * carry, finish, carry)! - start) < 1e-9);
      }),
    );
  });

  it('knows nothing where the ball would have to land further to the side than it flew', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, (start, across, carry) => {
        for (const result of [finishFrom(start, across, carry), curveFrom(start, across, carry)]) {
          if (Number.isFinite(start)) assert.ok(result === undefined || Math.abs(result) <= carry);
        }
      }),
    );
  });

  it('lies within what the windows of start, curve and carry allow, and reaches both ends', () => {
    const [start, curve, carry] = [
      { min: -0.1, max: 0.05 },
      { min: -20, max: 8 },
      { min: 90, max: 150 },
    ];
    const { min, max } = finishWithin(start, curve, carry);
    const steps = [0, 0.2, 0.5, 0.8, 1];
    const at = (window: { min: number; max: number }, share: number): number =>
      window.min + share * (window.max - window.min);
    const seen = steps.flatMap((a) =>
      steps.flatMap((b) => steps.map((c) => finishFrom(at(start, a), at(curve, b), at(carry, c))!)),
    );
    assert.ok(Math.abs(Math.min(...seen) - min) < 1e-9 && Math.abs(Math.max(...seen) - max) < 1e-9);
    // What starts and curves left comes down left, whatever it carries.
    const left = { min: -Infinity, max: 0 };
    assert.equal(finishWithin(left, left, { min: 0, max: 400 }).max, 0);
  });
});
