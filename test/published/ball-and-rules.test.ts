// Checks of the ball against the rules of golf.
import assert from 'node:assert/strict';
import { ruleBall } from '../../src/physics/ball.ts';

describe('the ball (R&A / USGA Equipment Rules, part 4)', () => {
  it('weighs 1.620 oz, 45.93 g', () => {
    assert.ok(Math.abs(ruleBall.mass - 1.62 * 0.028349523125) < 1e-7);
  });

  it('is 1.680 in across, 42.67 mm', () => {
    assert.ok(Math.abs(2 * ruleBall.radius - 1.68 * 0.0254) < 1e-7);
  });
});
