// The line through points uncertain in both directions, against the data that its authors and others have worked on.
import assert from 'node:assert/strict';
import { straightLine } from '../../src/model/straight-line.ts';

/**
 * Pearson's data with York's weights (York 1966, Can. J. Phys. 44, 1079, table II; printed again by Lybanon 1984, Am. J. Phys. 52, 22).
 * The result, from memory, as in York et al. 2004, Am. J. Phys. 72, 367, and in Lybanon 1984: slope −0.4805 ± 0.058, intercept
 * 5.4799, weighted sum of squares 11.866.
 */
const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
const wx = [1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1];
const wy = [1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500];

describe('the straight line through uncertain points', () => {
  const points = x.map((value, i) => ({
    x: value,
    ux: 1 / Math.sqrt(wx[i]!),
    y: y[i]!,
    uy: 1 / Math.sqrt(wy[i]!),
  }));

  it("is that of Pearson's data with York's weights", () => {
    const line = straightLine(points)!;
    assert.ok(Math.abs(line.slope + 0.480533407) < 1e-7, String(line.slope));
    assert.ok(Math.abs(line.intercept - 5.47991022) < 1e-6, String(line.intercept));
    assert.ok(Math.abs(line.u - 0.058) < 1e-3, String(line.u));
    assert.ok(Math.abs(line.chiSquared - 11.8663531941) < 1e-5, String(line.chiSquared));
    assert.equal(line.freedom, 8);
  });

  it('is the same line when x and y change places', () => {
    const turned = straightLine(points.map(({ x, ux, y, uy }) => ({ x: y, ux: uy, y: x, uy: ux })))!;
    assert.ok(Math.abs(turned.slope - 1 / straightLine(points)!.slope) < 1e-6);
  });
});
