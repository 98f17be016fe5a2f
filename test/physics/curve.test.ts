// Tests of the smooth monotone curve.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createCurve } from '../../src/physics/curve.ts';
import { between } from './scenarios.ts';

const anyPoints = fc
  .array(fc.tuple(between(0.1, 5), between(-10, 10)), { minLength: 2, maxLength: 8 })
  .map((steps) => {
    let x = 0;
    return steps.map(([width, y]) => [(x += width), y] as const);
  });

describe('createCurve', () => {
  it('passes through its points and is held beyond the ends', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const curve = createCurve(points.map(([x]) => x), points.map(([, y]) => y)); // prettier-ignore
        for (const [x, y] of points) assert.ok(Math.abs(curve(x) - y) < 1e-9);
        assert.equal(curve(points[0]![0] - 1), points[0]![1]);
        assert.equal(curve(points.at(-1)![0] + 1), points.at(-1)![1]);
      }),
    );
  });

  it('never leaves the range between two neighbours', () => {
    fc.assert(
      fc.property(anyPoints, between(0, 1), (points, share) => {
        const curve = createCurve(points.map(([x]) => x), points.map(([, y]) => y)); // prettier-ignore
        for (let i = 1; i < points.length; i++) {
          const [[x0, y0], [x1, y1]] = [points[i - 1]!, points[i]!];
          const y = curve(x0 + share * (x1 - x0));
          assert.ok(y >= Math.min(y0, y1) - 1e-9 && y <= Math.max(y0, y1) + 1e-9);
        }
      }),
    );
  });
});
