// Holds the least-squares fit against certified and published non-linear problems; knows no golf.
import assert from 'node:assert/strict';
import { fit, type Measurement, type Model, type Prior } from '../../src/model/least-squares.ts';
import { rowsOf } from '../../src/model/rows.ts';
import { statisticsOf } from '../../src/model/statistics.ts';

function assertNear(actual: number, expected: number, relative: number): void {
  assert.ok(Math.abs(actual - expected) <= relative * Math.abs(expected), `${actual}, not ${expected}`);
}

// NIST StRD, Misra1a: y = b1 (1 − exp(−b2 x)).
describe('Misra1a of the NIST reference data', () => {
  const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
  const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
  const model: Model = {
    predict: ([b1, b2]) => Float64Array.from(x, (t) => b1! * (1 - Math.exp(-b2! * t))),
    slopes: ([b1, b2]) =>
      rowsOf(
        x.flatMap((t) => [1 - Math.exp(-b2! * t), b1! * t * Math.exp(-b2! * t)]),
        2,
      ),
  };
  const flat: Prior = { mean: 0, u: Infinity, kind: 'evidence' };
  const problem = {
    model,
    priors: [flat, flat],
    measurements: y.map((value): Measurement => ({ value, u: 1 })),
  };

  for (const [words, start] of [
    ['far', [500, 0.0001]],
    ['near', [250, 0.0005]],
  ] as const) {
    it(`is solved to the certified values from the ${words} start`, () => {
      const solution = fit(problem, { start: Float64Array.from(start), tolerance: 1e-10 });
      assert.ok(solution && solution.status === 'converged');
      assertNear(solution.parameters[0]!, 2.3894212918e2, 1e-9);
      assertNear(solution.parameters[1]!, 5.5015643181e-4, 1e-9);
      const { chiSquared, freedom, variance } = statisticsOf(problem, solution);
      assertNear(chiSquared, 1.2455138894e-1, 1e-9);
      assertNear(freedom, 12, 1e-9);
      // Certified standard deviations of the estimates, NIST StRD; from memory.
      const scale = Math.sqrt(chiSquared / freedom);
      assertNear(scale * Math.sqrt(variance(Float64Array.of(1, 0))), 2.7070075241, 1e-6);
      assertNear(scale * Math.sqrt(variance(Float64Array.of(0, 1))), 7.2668688436e-6, 1e-6);
    });
  }
});
