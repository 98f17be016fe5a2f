// Holds the propagation of uncertainty against the worked example of correlated inputs in the GUM; knows no golf.
import assert from 'node:assert/strict';
import { estimateOf, propagate, type Base, type Estimate } from '../../src/model/estimate.ts';

// JCGM 100:2008 (GUM), H.2, table H.2: five simultaneous readings of V, I and φ.
const volts = [5.007, 4.994, 5.005, 4.99, 4.999];
const amperes = [19.663, 19.639, 19.64, 19.685, 19.678].map((milli) => milli / 1000);
const radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

const mean = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0) / xs.length;

/** Covariance of two means. */
function covariance(xs: readonly number[], ys: readonly number[]): number {
  const [mx, my] = [mean(xs), mean(ys)];
  const n = xs.length;
  return xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i]! - my), 0) / (n * (n - 1));
}

/** Three means as functions of three independent unit variables: the Cholesky factor of their covariance. */
function correlated(series: readonly (readonly number[])[]): readonly Estimate[] {
  const bases = series.map((_, k): Base => ({ key: `z${k}`, u: 1 }));
  const lower: number[][] = series.map(() => []);
  for (let i = 0; i < series.length; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = covariance(series[i]!, series[j]!);
      for (let k = 0; k < j; k++) rest -= lower[i]![k]! * lower[j]![k]!;
      lower[i]![j] = i === j ? Math.sqrt(rest) : rest / lower[j]![j]!;
    }
  }
  return series.map((xs, i) =>
    estimateOf(mean(xs), new Map(lower[i]!.map((slope, k) => [bases[k]!, slope]))),
  );
}

const impedance = ([v, i, phi]: readonly number[]): readonly number[] => [
  (v! / i!) * Math.cos(phi!),
  (v! / i!) * Math.sin(phi!),
  v! / i!,
];

describe('propagation through a function of correlated inputs', () => {
  it('gives R, X and Z of GUM H.2 with their uncertainties', () => {
    const outputs = propagate(impedance, correlated([volts, amperes, radians]), () => []);
    assert.ok(outputs);
    // GUM H.2, table H.4.
    const published = [
      [127.732, 0.071],
      [219.847, 0.295],
      [254.26, 0.236],
    ] as const;
    for (const [k, [value, u]] of published.entries()) {
      assert.ok(Math.abs(outputs[k]!.value - value) < 0.0006, `${outputs[k]!.value}`);
      assert.ok(Math.abs(outputs[k]!.u - u) < 0.0006, `${outputs[k]!.u}`);
    }
  });

  it('gives the larger uncertainty of R when the same inputs are taken as independent', () => {
    const independent = [volts, amperes, radians].map((xs, k) =>
      estimateOf(mean(xs), new Map([[{ key: `z${k}`, u: Math.sqrt(covariance(xs, xs)) }, 1]])),
    );
    const outputs = propagate(impedance, independent, () => []);
    // GUM H.2.4: u(R) would be 0.195 Ω.
    assert.ok(outputs && Math.abs(outputs[0]!.u - 0.195) < 0.0006, `${outputs?.[0]?.u}`);
  });

  it('keeps the correlation of the outputs, so that R² + X² = Z² has no uncertainty left', () => {
    const outputs = propagate(impedance, correlated([volts, amperes, radians]), () => []);
    assert.ok(outputs);
    const closed = propagate(
      ([r, x, z]) => [Math.hypot(r!, x!) - z!],
      outputs,
      () => [],
    );
    assert.ok(closed && closed[0]!.u < 1e-6, `${closed?.[0]?.u}`);
  });
});
