// Tests of where the feet stand relative to the ball.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { feetOf, halfHeel } from '../../src/physics/feet.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

describe('feetOf', () => {
  it('puts the heels a stance apart, the lead one half a heel ahead of its inside', () => {
    fc.assert(
      fc.property(between(0.1, 0.8), between(-0.4, 0.1), (width, ballPosition) => {
        const feet = feetOf({ width, ballPosition })!;
        assert.ok(Math.abs(feet.leadHeel - feet.trailHeel - width) < 1e-12);
        assert.ok(Math.abs(feet.leadHeel + ballPosition - halfHeel.value) < 1e-12);
      }),
    );
  });

  it('spreads the pressure with feet that are turned out', () => {
    const stance = { width: 0.4, ballPosition: -0.1 };
    const square = feetOf({ ...stance, leadFlare: 0, trailFlare: 0 })!;
    const turned = feetOf({ ...stance, leadFlare: 25 * degree, trailFlare: 10 * degree })!;
    assert.equal(square.leadCentre, square.leadHeel);
    assert.ok(turned.leadCentre > square.leadCentre);
    assert.ok(turned.trailCentre < square.trailCentre);
  });

  it('knows no stance without width', () => {
    assert.equal(feetOf({ width: 0, ballPosition: 0 }), undefined);
  });

  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        (width, ballPosition, leadFlare, trailFlare) => {
          assert.ok(numbersOf(feetOf({ width, ballPosition, leadFlare, trailFlare })).every(Number.isFinite));
        },
      ),
    );
  });
});
