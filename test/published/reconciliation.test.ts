// Holds the least-squares fit and its judgement of measurements against published data reconciliations; knows no golf.
import assert from 'node:assert/strict';
import { fit, type Measurement, type Model, type Prior } from '../../src/model/least-squares.ts';
import { rowsOf } from '../../src/model/rows.ts';
import { statisticsOf } from '../../src/model/statistics.ts';
import { chiSquaredQuantile } from '../../src/model/quantiles.ts';

/** Streams as linear functions of the free ones, each measured. */
function reconciled(rows: readonly (readonly number[])[], measurements: readonly Measurement[]) {
  const size = rows[0]!.length;
  const priors = Array.from({ length: size }, (): Prior => ({ mean: 0, u: Infinity, kind: 'evidence' }));
  const model: Model = {
    predict: (x) => Float64Array.from(rows, (row) => row.reduce((sum, a, j) => sum + a * x[j]!, 0)),
    slopes: () => rowsOf(rows.flat(), size),
  };
  const problem = { model, priors, measurements };
  const solution = fit(problem);
  assert.ok(solution && solution.status === 'converged');
  const statistics = statisticsOf(problem, solution);
  const halfWidths = rows.map((row) => 1.96 * Math.sqrt(statistics.variance(Float64Array.from(row))));
  return { values: [...solution.predictions], halfWidths, statistics };
}

function assertNear(actual: number, expected: number, within: number): void {
  assert.ok(Math.abs(actual - expected) <= within, `${actual}, not ${expected} ± ${within}`);
}

// Narasimhan & Jordache 2000, example 1-1: exchanger with bypass; balances 1−2−3, 2−4, 3−5, 4+5−6.
describe('the exchanger with bypass of Narasimhan & Jordache', () => {
  const rows = [
    [1, 1],
    [1, 0],
    [0, 1],
    [1, 0],
    [0, 1],
    [1, 1],
  ];
  const measured = [101.91, 64.45, 34.65, 64.2, 36.44, 98.88];
  const reconcile = (values: readonly number[]) =>
    reconciled(
      rows,
      values.map((value) => ({ value, u: 1 })),
    );

  it('is reconciled to the published flows', () => {
    const { values, statistics } = reconcile(measured);
    for (const [i, expected] of [100.22, 64.5, 35.72, 64.5, 35.72, 100.22].entries()) {
      assertNear(values[i]!, expected, 0.005);
    }
    // Computed from the published data with NumPy: the global test is 6.4075 with 4 degrees of freedom.
    assertNear(statistics.chiSquared, 6.4075, 0.0001);
    assertNear(statistics.freedom, 4, 1e-9);
  });

  it('shows +4 on stream 2 by the largest normalised residual', () => {
    const { statistics } = reconcile(measured.map((value, i) => (i === 1 ? value + 4 : value)));
    assertNear(statistics.chiSquared, 16.674, 0.001);
    const normalised = statistics.judgements.map((judgement) => Math.abs(judgement.normalised ?? 0));
    assert.equal(normalised.indexOf(Math.max(...normalised)), 1);
    assertNear(normalised[1]!, 3.205, 0.001);
  });
});

// VDI 2048 part 1, worked example: FDKEL+FDKELL−SPL−SPLL+0.4V, SPL+SPLL−V−HK−A7−A6−A5, A7+A6+A5−HDNK. Given are values
// and half widths of 95 % intervals (1.96 standard uncertainties).
describe('the feed water and steam balance of VDI 2048', () => {
  // Free: FDKEL, SPL, SPLL, V, A7, A6, A5; the three balances give FDKELL, HK and HDNK.
  const rows = [
    [1, 0, 0, 0, 0, 0, 0],
    [-1, 1, 1, -0.4, 0, 0, 0],
    [0, 1, 0, 0, 0, 0, 0],
    [0, 0, 1, 0, 0, 0, 0],
    [0, 0, 0, 1, 0, 0, 0],
    [0, 1, 1, -1, -1, -1, -1],
    [0, 0, 0, 0, 1, 0, 0],
    [0, 0, 0, 0, 0, 1, 0],
    [0, 0, 0, 0, 0, 0, 1],
    [0, 0, 0, 0, 1, 1, 1],
  ];
  const values = [46.241, 45.668, 44.575, 44.319, 0.525, 69.978, 10.364, 3.744, 4.391, 18.498];
  const halfWidths = [0.8, 0.79, 0.535, 0.532, 0.105, 0.854, 0.168, 0.058, 0.058, 0.205];
  const reconcile = (widths: readonly number[]) =>
    reconciled(
      rows,
      values.map((value, i) => ({ value, u: widths[i]! / 1.96 })),
    );

  it('fails the global test, and FDKEL fits worst', () => {
    const { statistics } = reconcile(halfWidths);
    assertNear(statistics.chiSquared, 24.48, 0.05);
    assertNear(statistics.freedom, 3, 1e-9);
    assert.ok(statistics.chiSquared > 7.815);
    assertNear(chiSquaredQuantile(0.95, 3), 7.815, 0.001);
    const normalised = statistics.judgements.map((judgement) => Math.abs(judgement.normalised ?? 0));
    // The two feed flows stand in one balance only and differ in nothing but their widths: they tie.
    assertNear(normalised[0]!, Math.max(...normalised), 1e-6);
  });

  it('is reconciled to the published values and half widths once the feed flows are taken as ± 2.5', () => {
    const outcome = reconcile([2.5, 2.5, ...halfWidths.slice(2)]);
    const expected = [44.6918, 44.1188, 44.6385, 44.3818, 0.524194, 69.997, 10.364, 3.744, 4.391, 18.499];
    for (const [i, value] of expected.entries()) assertNear(outcome.values[i]!, value, 0.0006);
    const widths = [1.78991, 1.78991, 0.471702, 0.469808, 0.104563, 0.566796];
    for (const [i, width] of widths.entries()) assertNear(outcome.halfWidths[i]!, width, width * 2e-5);
  });
});
