// Holds the least-squares fit and its statistics to what they promise, on simulated data and at the limits.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  fit,
  type Measurement,
  type Model,
  type Prior,
  type Problem,
} from '../../src/model/least-squares.ts';
import { rowsOf } from '../../src/model/rows.ts';
import { statisticsOf } from '../../src/model/statistics.ts';
import { distanceFromUniform, normals } from './draws.ts';

function linear(rows: readonly (readonly number[])[]): Model {
  return {
    predict: (x) => Float64Array.from(rows, (row) => row.reduce((sum, a, j) => sum + a * x[j]!, 0)),
    slopes: () => rowsOf(rows.flat(), rows[0]?.length ?? 1),
  };
}

const flat: Prior = { mean: 0, u: Infinity, kind: 'evidence' };
const rows = [
  [1, 0, 0],
  [0, 1, 0],
  [1, 1, 0],
  [1, -2, 0.5],
  [0, 0.3, 1],
  [0, 0, 2],
  [1, 1, 1],
];
const us = [1, 2, 0.5, 1, 3, 0.1, 1];

function judged(problem: Problem) {
  const solution = fit(problem);
  assert.ok(solution);
  return { solution, statistics: statisticsOf(problem, solution) };
}

function assertNear(actual: number, expected: number, within = 1e-9): void {
  assert.ok(
    Math.abs(actual - expected) <= within * Math.max(1, Math.abs(expected)),
    `${actual}, not ${expected}`,
  );
}

describe('the fit of a linear problem', () => {
  const normal = normals(20261125);
  const priors: readonly Prior[] = [
    { mean: 3, u: 2, kind: 'evidence' },
    flat,
    { mean: -1, u: 0.5, kind: 'evidence' },
  ];
  const simulated = (): Problem => {
    const truth = priors.map((prior) =>
      prior.u < Infinity ? prior.mean + prior.u * normal() : 40 * normal(),
    );
    const measurements = rows.map((row, i) => ({
      value: row.reduce((sum, a, j) => sum + a * truth[j]!, 0) + us[i]! * normal(),
      u: us[i]!,
    }));
    return { model: linear(rows), priors, measurements };
  };

  it('has as many degrees of freedom as measurements and informative priors less parameters', () => {
    assertNear(judged(simulated()).statistics.freedom, 7 + 2 - 3);
  });

  it('gives p and normalised residuals that are distributed as they should be when nothing is wrong', () => {
    const ps: number[] = [];
    const squares = rows.map(() => 0);
    for (let n = 0; n < 2000; n++) {
      const { statistics } = judged(simulated());
      ps.push(statistics.p);
      for (const [i, judgement] of statistics.judgements.entries())
        squares[i]! += judgement.normalised! ** 2 / 2000;
    }
    // Kolmogorov: 1.63/√n is exceeded once in a hundred; √(2/2000) is the standard error of a mean square of 1.
    assert.ok(distanceFromUniform(ps) < 1.63 / Math.sqrt(2000), `${distanceFromUniform(ps)}`);
    for (const square of squares) assert.ok(Math.abs(square - 1) < 4 * Math.sqrt(2 / 2000), `${square}`);
  });

  it('keeps p uniform when some of the priors are windows, to which χ² is blind', () => {
    const ps: number[] = [];
    for (let n = 0; n < 2000; n++) {
      const problem = simulated();
      const windowed = problem.priors.map((prior): Prior => ({ ...prior, kind: 'window' }));
      ps.push(judged({ ...problem, priors: windowed }).statistics.p);
    }
    // Not exactly χ² with a broken number of degrees of freedom, but close to it.
    assert.ok(distanceFromUniform(ps) < 0.06, `${distanceFromUniform(ps)}`);
  });

  it('implies for each measurement what a fit without it gives', () => {
    const problem = simulated();
    const { statistics } = judged(problem);
    for (const [i, judgement] of statistics.judgements.entries()) {
      const measurements = problem.measurements.map((m, k) => (k === i ? { ...m, u: Infinity } : m));
      const without = judged({ ...problem, measurements }).statistics.judgements[i]!;
      assert.ok(judgement.implied && without.implied);
      assertNear(judgement.implied.value, without.implied.value, 1e-7);
      assertNear(judgement.implied.u, without.implied.u, 1e-7);
    }
  });
});

describe('a problem that lacks rank', () => {
  const priors = [flat, flat, flat];

  it('is solved where it is determined and says which sums are not', () => {
    const measurements: Measurement[] = [
      { value: 5, u: 1 },
      { value: 5.5, u: 1 },
      { value: 2, u: 1 },
    ];
    const model = linear([
      [1, 1, 0],
      [1, 1, 0],
      [0, 0, 1],
    ]);
    const { solution, statistics } = judged({ model, priors, measurements });
    assert.equal(solution.status, 'converged');
    assertNear(solution.parameters[0]! + solution.parameters[1]!, 5.25);
    assert.equal(statistics.rank, 2);
    assertNear(statistics.freedom, 1);
    assert.equal(statistics.variance(Float64Array.of(1, 0, 0)), Infinity);
    assertNear(statistics.variance(Float64Array.of(1, 1, 0)), 0.5);
    assert.equal(statistics.judgements[2]!.normalised, undefined);
  });

  it('without any measurement has nothing to judge', () => {
    const { statistics } = judged({ model: linear([]), priors, measurements: [] });
    assert.deepEqual(
      [statistics.chiSquared, statistics.freedom, statistics.p, statistics.rank],
      [0, 0, 1, 0],
    );
  });
});

describe('the fit of any problem', () => {
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });

  it('ends, and never gives what is not a number', () => {
    const problem = fc.record({
      rows: fc.array(fc.array(fc.oneof(number, fc.constant(0)), { minLength: 3, maxLength: 3 }), {
        maxLength: 6,
      }),
      values: fc.array(number, { minLength: 6, maxLength: 6 }),
      means: fc.array(number, { minLength: 3, maxLength: 3 }),
      us: fc.array(fc.oneof(fc.constant(Infinity), fc.double({ min: 1e-3, max: 1e4, noNaN: true })), {
        minLength: 3,
        maxLength: 3,
      }),
    });
    fc.assert(
      fc.property(problem, (drawn) => {
        const model: Model = {
          predict: (x) =>
            Float64Array.from(
              drawn.rows,
              (row) =>
                Math.sinh(Math.max(-5, Math.min(5, row[0]! * x[0]!))) + row[1]! * x[1]! + row[2]! * x[2]!,
            ),
          slopes: (x) =>
            rowsOf(
              drawn.rows.flatMap((row) => {
                const inner = row[0]! * x[0]!;
                return [Math.abs(inner) < 5 ? row[0]! * Math.cosh(inner) : 0, row[1]!, row[2]!];
              }),
              3,
            ),
        };
        const priors = drawn.us.map((u, j): Prior => ({ mean: drawn.means[j]!, u, kind: 'evidence' }));
        const measurements = drawn.rows.map((_, i): Measurement => ({ value: drawn.values[i]!, u: 1 }));
        const solution = fit({ model, priors, measurements }, { limit: 60 });
        assert.ok(solution && solution.evaluations <= 60);
        const { judgements, ...statistics } = statisticsOf({ model, priors, measurements }, solution);
        const numbers = [
          ...solution.parameters,
          statistics.chiSquared,
          statistics.freedom,
          statistics.p,
        ].concat(
          judgements.flatMap((j) => [
            j.residual,
            j.redundancy,
            j.normalised ?? 0,
            j.implied?.value ?? 0,
            j.implied?.u ?? 0,
          ]),
        );
        assert.ok(numbers.every(Number.isFinite), `${numbers.join(' ')}`);
      }),
    );
  });

  it('gives none where the model has no number at the start', () => {
    const model: Model = { predict: () => undefined, slopes: () => undefined };
    assert.equal(fit({ model, priors: [flat], measurements: [{ value: 1, u: 1 }] }), undefined);
  });

  it('stays where the model still holds when the best fit lies beyond', () => {
    const model: Model = {
      predict: ([x]) => (x! > 0 ? Float64Array.of(Math.log(x!)) : undefined),
      slopes: ([x]) => rowsOf([1 / x!], 1),
    };
    const priors: Prior[] = [{ mean: 1, u: 0.5, kind: 'evidence' }];
    const solution = fit({ model, priors, measurements: [{ value: -30, u: 0.01 }] });
    assert.ok(
      solution && solution.parameters[0]! > 0 && solution.parameters[0]! < 1e-4,
      `${solution?.parameters[0]} ${solution?.evaluations}`,
    );
  });
});
