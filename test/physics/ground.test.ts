// Tests of the cut of the arc by the ground against a circle drawn point by point, and of its inverses.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { arcAtStrike } from '../../src/physics/arc.ts';
import {
  cutOfGround,
  depthOfCut,
  lowPointFromDivot,
  radiusFromCut,
  soleHeightAtBall,
  turfDiscrepancy,
} from '../../src/physics/ground.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const anyArc = fc.record({
  radius: between(0.8, 2.5),
  inclination: between(35 * degree, 90 * degree),
  direction: between(-10 * degree, 10 * degree),
});
const anyLowPoint = fc.record({ ahead: between(-0.2, 0.3), depth: between(0.0005, 0.04) });

describe('cutOfGround', () => {
  it('enters and leaves the ground where the circle is as high above its low point as that is deep', () => {
    fc.assert(
      fc.property(anyArc, anyLowPoint, (arc, low) => {
        const cut = cutOfGround(arc, low)!;
        for (const place of [cut.starts, cut.ends]) {
          const along = place - low.ahead;
          const up = arc.radius - Math.sqrt(arc.radius ** 2 - along ** 2);
          assert.ok(Math.abs(up * Math.sin(arc.inclination) - low.depth) < 1e-9);
        }
        assert.ok(Math.abs(cut.ends - cut.starts - cut.length) < 1e-12);
        assert.equal(cut.direction, arc.direction);
      }),
    );
  });

  it('is shorter the shallower the head goes, and none above the ground', () => {
    const arc = { radius: 1.5, inclination: 60 * degree, direction: 0 };
    const length = (depth: number) => cutOfGround(arc, { ahead: 0.1, depth })?.length;
    assert.ok(length(0.01)! > length(0.005)!);
    assert.equal(length(0), 0);
    assert.equal(length(-0.001), undefined);
  });

  it('starts at the ball when the sole is just on the ground there', () => {
    fc.assert(
      fc.property(anyArc, between(0.01, 0.2), (arc, ahead) => {
        const depth = soleHeightAtBall(arc, { ahead, depth: 0 })!;
        const cut = cutOfGround(arc, { ahead, depth })!;
        assert.ok(Math.abs(cut.starts) < 1e-9);
        assert.ok(Math.abs(cut.ends - 2 * ahead) < 1e-9);
      }),
    );
  });
});

describe('inverses of the cut', () => {
  it('find its depth and its radius again', () => {
    fc.assert(
      fc.property(anyArc, anyLowPoint, (arc, low) => {
        const cut = cutOfGround(arc, low)!;
        assert.ok(Math.abs(depthOfCut(arc, cut.length)! - low.depth) < 1e-12);
        const radius = radiusFromCut(cut.length, cut.depth, arc.inclination)!;
        assert.ok(Math.abs(radius / arc.radius - 1) < 1e-9);
      }),
    );
  });

  it('find its low point again when there is no drag', () => {
    fc.assert(
      fc.property(anyArc, anyLowPoint, (arc, low) => {
        assert.ok(Math.abs(lowPointFromDivot(cutOfGround(arc, low)!, 1)! - low.ahead) < 1e-12);
      }),
    );
  });

  it('put the low point beyond the middle of a divot that drag has shortened', () => {
    const divot = { starts: 0.02, length: 0.11 };
    const { value } = turfDiscrepancy.lengthShare;
    assert.ok(lowPointFromDivot(divot)! > divot.starts + divot.length / 2);
    assert.equal(lowPointFromDivot(divot), lowPointFromDivot(divot, value));
  });
});

describe('soleHeightAtBall', () => {
  it('is the drop to the low point less the depth there', () => {
    const arc = { radius: 1.5, inclination: 64 * degree, direction: 0 };
    const strike = arcAtStrike(arc, -6 * degree)!;
    const height = soleHeightAtBall(arc, { ahead: strike.lowPointAhead, depth: 0.004 })!;
    assert.ok(Math.abs(height - (strike.lowPointDepth - 0.004)) < 1e-12);
  });

  it('grows as the low point moves away from the ball', () => {
    const arc = { radius: 1.5, inclination: 60 * degree };
    const at = (ahead: number) => soleHeightAtBall(arc, { ahead, depth: 0.005 })!;
    assert.ok(at(-0.1) > at(-0.05) && at(-0.05) > at(0) && at(0.1) > at(0));
    assert.ok(Math.abs(at(0) + 0.005) < 1e-15);
  });
});

describe('the ground floor', () => {
  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        (radius, inclination, direction, a, b) => {
          const arc = { radius, inclination, direction };
          const usual = { radius: 1.5, inclination: 1, direction: 0 };
          const results = [arc, usual].flatMap((each) => [
            cutOfGround(each, { ahead: a, depth: b }),
            depthOfCut(each, a),
            soleHeightAtBall(each, { ahead: a, depth: b }),
          ]);
          const others = [
            radiusFromCut(a, b, inclination),
            lowPointFromDivot({ starts: a, length: b }, radius),
          ];
          assert.ok(numbersOf([results, others]).every(Number.isFinite));
        },
      ),
      { numRuns: 500 },
    );
  });
});
