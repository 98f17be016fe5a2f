// Holds intervals from the least-squares fit against the GUM and shows where JCGM 101 says that they fail; knows no golf.
import assert from 'node:assert/strict';
import { fit, type Model, type Prior, type Problem } from '../../src/model/least-squares.ts';
import { rowsOf } from '../../src/model/rows.ts';
import { statisticsOf } from '../../src/model/statistics.ts';
import { normals, uniforms } from '../model/draws.ts';

function statistics(problem: Problem) {
  const solution = fit(problem);
  assert.ok(solution && solution.status === 'converged');
  return { ...statisticsOf(problem, solution), parameters: solution.parameters };
}

// JCGM 100:2008 (GUM), H.2, tables H.2 and H.4: five simultaneous readings of V, I and φ.
describe('the fit of five simultaneous readings of GUM H.2', () => {
  const readings = [
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ];
  const means = readings.map((row) => row.reduce((a, b) => a + b, 0) / 5);
  const covariance = readings.map((a, i) =>
    readings.map((b, j) => a.reduce((sum, x, k) => sum + (x - means[i]!) * (b[k]! - means[j]!), 0) / 20),
  );

  /** L⁻¹ of the covariance L Lᵀ: makes three correlated readings three independent ones of unit uncertainty. */
  const [[a], [b, c], [d, e, f]] = choleskyOf(covariance);
  const whitened = [
    [1 / a!, 0, 0],
    [-b! / (a! * c!), 1 / c!, 0],
    [(b! * e! - c! * d!) / (a! * c! * f!), -e! / (c! * f!), 1 / f!],
  ];
  const model: Model = {
    predict: (x) => Float64Array.from(whitened, (row) => row.reduce((sum, w, j) => sum + w * x[j]!, 0)),
    slopes: () => rowsOf(whitened.flat(), 3),
  };
  const priors = means.map((): Prior => ({ mean: 0, u: Infinity, kind: 'evidence' }));
  const measurements = whitened.map((row) => ({
    value: row.reduce((sum, w, j) => sum + w * means[j]!, 0),
    u: 1,
  }));

  it('gives R, X and Z with the published uncertainties', () => {
    const { parameters, variance } = statistics({ model, priors, measurements });
    const [v, i, phi] = parameters as unknown as [number, number, number];
    const z = v / i;
    const gradients = [
      [Math.cos(phi) / i, (-z * Math.cos(phi)) / i, -z * Math.sin(phi)],
      [Math.sin(phi) / i, (-z * Math.sin(phi)) / i, z * Math.cos(phi)],
      [1 / i, -z / i, 0],
    ];
    const values = [z * Math.cos(phi), z * Math.sin(phi), z];
    const published = [
      [127.732, 0.071],
      [219.847, 0.295],
      [254.26, 0.236],
    ] as const;
    for (const [k, [value, u]] of published.entries()) {
      assert.ok(Math.abs(values[k]! - value) < 0.0006, `${values[k]}`);
      const found = Math.sqrt(variance(Float64Array.from(gradients[k]!)));
      assert.ok(Math.abs(found - u) < 0.0006, `${found}, not ${u}`);
    }
  });
});

// JCGM 101:2008, 9.3 (inputs from memory): calibration of a mass in air, where first order misses the products of small terms.
describe('the calibration of a mass of JCGM 101, 9.3', () => {
  const nominal = 100000;
  const mass = ([reference, further, air, weight, against]: readonly number[]): number =>
    (reference! + further!) * (1 + (air! - 1.2) * (1 / weight! - 1 / against!)) - nominal;
  const means = [100000, 1.234, 1.2, 8000, 8000];
  const us = [0.05, 0.02, 0.1 / Math.sqrt(3), 1000 / Math.sqrt(3), 50 / Math.sqrt(3)];

  it('has 0.0539 mg to first order, and 0.0754 mg by Monte Carlo', () => {
    const identity = means.flatMap((_, i) => means.map((_, j) => (i === j ? 1 : 0)));
    const { variance } = statistics({
      model: { predict: (x) => x.slice(), slopes: () => rowsOf(identity, means.length) },
      priors: means.map((mean, j): Prior => ({ mean, u: us[j]!, kind: 'window' })),
      measurements: means.map((value) => ({ value, u: Infinity })),
    });
    const gradient = means.map((mean, j) => {
      const step = us[j]! / 1000;
      const at = (x: number) => mass(means.map((m, k) => (k === j ? x : m)));
      return (at(mean + step) - at(mean - step)) / (2 * step);
    });
    assert.ok(Math.abs(Math.sqrt(variance(Float64Array.from(gradient))) - 0.0539) < 0.00005);

    const [normal, uniform] = [normals(93), uniforms(101)];
    const between = (middle: number, half: number) => middle + half * (2 * uniform() - 1);
    let [sum, squares] = [0, 0];
    const draws = 200000;
    for (let n = 0; n < draws; n++) {
      const drawn = [100000 + 0.05 * normal(), 1.234 + 0.02 * normal()];
      const x = mass([...drawn, between(1.2, 0.1), between(8000, 1000), between(8000, 50)]) - 1.234;
      sum += x;
      squares += x * x;
    }
    const u = Math.sqrt(squares / draws - (sum / draws) ** 2);
    assert.ok(Math.abs(u - 0.0754) < 0.0005, `${u}`);
  });
});

function choleskyOf(matrix: readonly (readonly number[])[]): readonly [number[], number[], number[]] {
  const lower: [number[], number[], number[]] = [[], [], []];
  for (const [i, row] of lower.entries()) {
    for (let j = 0; j <= i; j++) {
      const rest = matrix[i]![j]! - row.slice(0, j).reduce((sum, x, k) => sum + x * lower[j]![k]!, 0);
      row[j] = i === j ? Math.sqrt(rest) : rest / lower[j]![j]!;
    }
  }
  return lower;
}
