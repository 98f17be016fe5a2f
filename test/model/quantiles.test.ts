// Holds the distributions against the standard library of numerics that the tests install for that purpose.
import assert from 'node:assert/strict';
import chiSquaredCdf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquaredOracle from '@stdlib/stats-base-dists-chisquare-quantile';
import normalOracle from '@stdlib/stats-base-dists-normal-quantile';
import studentOracle from '@stdlib/stats-base-dists-t-quantile';
import {
  chiSquaredQuantile,
  chiSquaredTail,
  normalBelow,
  normalQuantile,
  studentBelow,
  studentQuantile,
} from '../../src/model/quantiles.ts';

const probabilities = [1e-12, 1e-6, 0.0001, 0.01, 0.02425, 0.3, 0.5, 0.7, 0.975, 0.9999, 1 - 1e-9];
const freedoms = [0.4, 1, 2, 3.5, 10, 57.3, 400];

function assertNear(actual: number, expected: number, relative: number, words: string): void {
  assert.ok(
    Math.abs(actual - expected) <= relative * Math.max(1e-12, Math.abs(expected)),
    `${words}: ${actual}, not ${expected}`,
  );
}

describe('quantiles', () => {
  it('of the normal distribution agree with @stdlib', () => {
    // The oracle itself is off by 5e-7 at 1e-12, where tables have −7.034483825.
    for (const p of probabilities) assertNear(normalQuantile(p), normalOracle(p, 0, 1), 1e-6, `p ${p}`);
    assertNear(normalQuantile(1e-12), -7.034483825301131, 1e-12, 'R 4, qnorm(1e-12), from memory');
  });

  it('of Student’s distribution agree with @stdlib', () => {
    for (const freedom of freedoms.filter((f) => f >= 1)) {
      for (const p of probabilities.filter((q) => q >= 1e-6)) {
        assertNear(
          studentQuantile(p, freedom),
          studentOracle(p, freedom),
          1e-7,
          `p ${p}, ${freedom} degrees`,
        );
      }
    }
  });

  it('of χ² agree with @stdlib', () => {
    for (const freedom of freedoms) {
      for (const p of probabilities.filter((q) => q >= 1e-4)) {
        assertNear(
          chiSquaredQuantile(p, freedom),
          chiSquaredOracle(p, freedom),
          1e-7,
          `p ${p}, ${freedom} degrees`,
        );
      }
    }
  });

  it('undo the probabilities that they are asked for', () => {
    for (const p of probabilities) {
      assertNear(normalBelow(normalQuantile(p)), p, 1e-9, 'normal');
      assertNear(studentBelow(studentQuantile(p, 7), 7), p, 1e-6, 'Student');
    }
  });

  it('are infinite at the ends and never without a number', () => {
    assert.deepEqual([normalQuantile(0), normalQuantile(1)], [-Infinity, Infinity]);
    assert.deepEqual([studentQuantile(0, 3), studentQuantile(1, 3)], [-Infinity, Infinity]);
    assert.deepEqual([chiSquaredQuantile(0, 3), chiSquaredQuantile(1, 3)], [0, Infinity]);
    assert.deepEqual([chiSquaredTail(0, 3), chiSquaredTail(Infinity, 3)], [1, 0]);
  });
});

describe('the tail of χ²', () => {
  it('agrees with @stdlib', () => {
    for (const freedom of freedoms) {
      for (const x of [0.001, 0.5, 3, 12, 80, 700]) {
        const difference = Math.abs(1 - chiSquaredTail(x, freedom) - chiSquaredCdf(x, freedom));
        assert.ok(difference < 1e-12, `χ² ${x}, ${freedom} degrees: ${difference} apart`);
      }
    }
  });
});
