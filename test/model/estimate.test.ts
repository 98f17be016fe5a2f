// Tests of the propagation of values and slopes.
import assert from 'node:assert/strict';
import { baseEstimate, propagate, type Base } from '../../src/model/estimate.ts';

const base = (key: string, u: number): Base => ({ key, u });

describe('propagate', () => {
  it('adds independent uncertainties in quadrature', () => {
    const x = baseEstimate(10, base('x', 3));
    const y = baseEstimate(20, base('y', 4));
    const [sum] = propagate(
      ([a, b]) => [a! + b!],
      [x, y],
      () => [],
    )!;
    assert.equal(sum!.value, 30);
    assert.ok(Math.abs(sum!.u - 5) < 1e-9);
  });

  it('counts a shared cause once: x − x is certain', () => {
    const x = baseEstimate(10, base('x', 3));
    const [twice] = propagate(
      ([a]) => [2 * a!],
      [x],
      () => [],
    )!;
    const [nothing] = propagate(
      ([a, b]) => [a! - 2 * b!],
      [twice!, x],
      () => [],
    )!;
    assert.ok(nothing!.u < 1e-9);
  });

  it('adds the inexactness of the step itself', () => {
    const x = baseEstimate(10, base('x', 3));
    const [y] = propagate(
      ([a]) => [a!],
      [x],
      () => [base('step', 4)],
    )!;
    assert.ok(Math.abs(y!.u - 5) < 1e-9);
  });

  it('takes a slope from one side at the edge of the range', () => {
    const x = baseEstimate(1, base('x', 0.1));
    const [y] = propagate(
      ([a]) => (a! > 1 ? undefined : [3 * a!]),
      [x],
      () => [],
    )!;
    assert.ok(Math.abs(y!.u - 0.3) < 1e-9);
  });

  it('cuts the step where half an uncertainty leads out of the range on both sides', () => {
    const x = baseEstimate(0, base('x', 100));
    const [y] = propagate(
      ([a]) => (Math.abs(a!) > 1 ? undefined : [3 * a!]),
      [x],
      () => [],
    )!;
    assert.ok(Math.abs(y!.u - 300) < 1e-6);
  });

  it('gives nothing where the value, a slope or an uncertainty is not finite', () => {
    const x = baseEstimate(0, base('x', 1));
    assert.equal(
      propagate(
        ([a]) => [1 / a!],
        [x],
        () => [],
      ),
      undefined,
    );
    assert.equal(
      propagate(
        ([a]) => (a === 0 ? [0] : undefined),
        [x],
        () => [],
      ),
      undefined,
    );
    assert.equal(
      propagate(
        ([a]) => [a!],
        [x],
        () => [base('step', Infinity)],
      ),
      undefined,
    );
  });

  it('takes slopes that are known instead of differences', () => {
    const x = baseEstimate(5, base('x', 1));
    const [y] = propagate(
      ([a]) => [a!],
      [x],
      () => [],
      () => [[7]],
    )!;
    assert.equal(y!.value, 5);
    assert.equal(y!.u, 7);
  });
});
