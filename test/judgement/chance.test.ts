// How probable an expression is, against closed forms of the normal distribution.
import assert from 'node:assert/strict';
import { chanceInAll, chanceOf } from '../../src/judgement/chance.ts';
import { compileExpression } from '../../src/judgement/expression.ts';
import { normalBelow } from '../../src/model/quantiles.ts';

function chance(text: string, means: readonly number[], covariance: readonly number[]): number | undefined {
  const { expression } = compileExpression(text);
  assert.ok(expression, text);
  const joint = { means: Float64Array.from(means), covariance: Float64Array.from(covariance) };
  return chanceOf(expression, joint).probability;
}

function near(found: number | undefined, expected: number, within: number): void {
  assert.ok(found !== undefined && Math.abs(found - expected) <= within, `${found} is not ${expected}`);
}

describe('the chance of an expression', () => {
  it('of one linear comparison is that of the normal distribution (table of Φ: 0.8413 at 1, 0.9750 at 1.96)', () => {
    near(chance('flight.carry > 148 m', [150], [4]), 0.8413, 5e-5);
    near(chance('flight.carry < 148 m', [150], [4]), 1 - 0.8413, 5e-5);
    near(chance('not (flight.carry < 146.08 m)', [150], [4]), 0.975, 5e-5);
  });

  it('of a difference takes the correlation of its sides', () => {
    // var(a − b) = 4 + 9 − 2 · 5 = 3; without the covariance it would be 13.
    near(
      chance('flight.total - flight.carry > 1 m', [13, 10], [9, 5, 5, 4]),
      normalBelow(2 / Math.sqrt(3)),
      1e-12,
    );
    near(
      chance('flight.total - flight.carry > 1 m', [13, 10], [9, 0, 0, 4]),
      normalBelow(2 / Math.sqrt(13)),
      1e-12,
    );
  });

  it('of what has no uncertainty is certain', () => {
    assert.equal(chance('flight.carry > 1 m', [2], [0]), 1);
    assert.equal(chance('flight.carry - flight.carry > 0 m', [2], [4]), 0);
    assert.equal(chance('1 < 2', [], []), 1);
  });

  it('of a band is not that of two independent halves', () => {
    const u = 5;
    const expected = normalBelow((5 - 3.5) / u) - normalBelow((2 - 3.5) / u);
    near(chance('2 m < flight.carry < 5 m', [3.5], [u * u]), expected, 5e-3);
    near(chance('flight.carry > 2 m and flight.carry < 5 m', [3.5], [u * u]), expected, 5e-3);
  });

  it('of a size takes both signs', () => {
    const expected = normalBelow(-(2 - 0.5) / 3) + normalBelow(-(2 + 0.5) / 3);
    near(chance('abs(flight.curve) > 2 m', [0.5], [9]), expected, 5e-3);
  });

  it('of two correlated conditions is that of the quadrant: 1/4 + asin ρ / 2π (Sheppard 1899)', () => {
    for (const rho of [-0.9, -0.5, 0, 0.3, 0.8, 1]) {
      const expected = 1 / 4 + Math.asin(rho) / (2 * Math.PI);
      const found = chance('flight.carry > 10 m and flight.total > 12 m', [10, 12], [4, 6 * rho, 6 * rho, 9]);
      near(found, expected, 8e-3);
    }
  });

  it('of a product of independent numbers is that of its distribution', () => {
    // Both positive or both negative, with Φ of the distance of each from zero.
    const [p, q] = [normalBelow(0.5), normalBelow(1)];
    near(
      chance('flight.carry * flight.total > 0 m * 1 m', [1, 3], [4, 0, 0, 9]),
      p * q + (1 - p) * (1 - q),
      8e-3,
    );
  });

  it('of the opposite is the rest', () => {
    const [a, b] = ['abs(flight.curve) > 2 m', 'abs(flight.curve) <= 2 m'].map((text) =>
      chance(text, [1], [4]),
    );
    near(a! + b!, 1, 1e-12);
  });

  it('cannot be told where a value is missing and matters, and names it', () => {
    const { expression } = compileExpression('flight.carry > 10 m and flight.total > 12 m');
    const joint = (carry: number) => ({
      means: Float64Array.of(carry, NaN),
      covariance: Float64Array.of(1, 0, 0, 0),
    });
    assert.deepEqual(chanceOf(expression!, joint(20)), { probability: undefined, missing: ['flight.total'] });
    // Whatever the total: the carry decides.
    assert.equal(chanceOf(expression!, joint(0)).probability, 0);
  });

  it('is the same number every time', () => {
    const once = () => chance('abs(flight.curve) > 2 m', [1], [4]);
    assert.equal(once(), once());
  });
});

describe('the chance of several windows at once', () => {
  const above = { min: 0, max: Infinity };
  const joint = (correlation: number) => ({
    means: Float64Array.of(0, 0),
    covariance: Float64Array.of(1, correlation, correlation, 1),
  });

  it('is 1/4 + asin(ρ)/2π for the quadrant of two normal quantities (Sheppard 1899, from memory)', () => {
    for (const correlation of [-0.9, -0.5, 0, 0.5, 0.9])
      near(
        chanceInAll(joint(correlation), [above, above]),
        0.25 + Math.asin(correlation) / (2 * Math.PI),
        0.01,
      );
  });

  it('is the closed form for one, and that of one for two that are the same', () => {
    const one = { means: Float64Array.of(0.3), covariance: Float64Array.of(4) };
    near(chanceInAll(one, [{ min: -1, max: 2 }]), normalBelow(0.85) - normalBelow(-0.65), 1e-12);
    const both = { means: Float64Array.of(0.3, 0.3), covariance: Float64Array.of(4, 4, 4, 4) };
    const twice = chanceInAll(both, [
      { min: -1, max: 2 },
      { min: -1, max: 2 },
    ]);
    near(twice, normalBelow(0.85) - normalBelow(-0.65), 0.01);
    assert.equal(chanceInAll(one, []), 1);
  });
});
