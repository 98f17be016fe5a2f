// Lines through generated points, of which the truth is known: right on average, as sure as they say, and none out of noise alone.
import assert from 'node:assert/strict';
import { studentBelow } from '../../src/model/quantiles.ts';
import { straightLine, type Point } from '../../src/model/straight-line.ts';
import { normals } from './draws.ts';

const places = [0, 1, 2, 3, 4, 5];

function drawn(slope: number, normal: () => number, at: readonly number[] = places): readonly Point[] {
  return at.map((x) => ({ x: x + 0.5 * normal(), ux: 0.5, y: 2 + slope * x + 0.8 * normal(), uy: 0.8 }));
}

describe('a straight line', () => {
  it('is not pulled toward zero by uncertain places', () => {
    const normal = normals(11);
    const slopes = Array.from({ length: 400 }, () => straightLine(drawn(3, normal))?.slope ?? NaN);
    const mean = slopes.reduce((sum, slope) => sum + slope, 0) / slopes.length;
    // An ordinary line has 3 · 2.917/(2.917 + 0.25) = 2.76 on average.
    assert.ok(Math.abs(mean - 3) < 0.12, String(mean));
  });

  it('holds the truth as often as it says', () => {
    const normal = normals(12);
    let within = 0;
    for (let i = 0; i < 500; i++) {
      const { slope, u } = straightLine(drawn(3, normal))!;
      if (Math.abs(slope - 3) <= u) within++;
    }
    // 68 of a hundred; to first order in the uncertainty of x, which is a fair part of the spread of x here.
    assert.ok(within > 0.62 * 500 && within < 0.76 * 500, String(within));
  });

  it('is sure of the wrong direction at most once in twenty where there is none', () => {
    const normal = normals(13);
    let sure = 0;
    for (let i = 0; i < 600; i++) {
      const line = straightLine(drawn(0, normal, [0, 2, 4, 6]));
      if (line === undefined) continue;
      const u = line.u * Math.max(1, Math.sqrt(line.chiSquared / line.freedom));
      if (studentBelow(line.slope / u, line.freedom) >= 0.95) sure++;
    }
    assert.ok(sure <= 0.05 * 600, String(sure));
  });

  it('is none of two points, and none where x may well be the same everywhere', () => {
    const normal = normals(14);
    assert.equal(straightLine(drawn(3, normal).slice(0, 2)), undefined);
    const still = [0.1, -0.2, 0, 0.3].map((x, i) => ({ x, ux: 0.5, y: i, uy: 0.1 }));
    assert.equal(straightLine(still), undefined);
  });

  it('is none where a number is missing', () => {
    assert.equal(straightLine(drawn(3, () => NaN)), undefined);
  });
});
