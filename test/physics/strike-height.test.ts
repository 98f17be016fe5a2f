// Tests of where the face meets the ball, against a face and a ball drawn as line and circle, and of the word for it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { soleHeightAtBall, cutOfGround } from '../../src/physics/ground.ts';
import {
  faces,
  soleHeightFromStrike,
  strikeFromEdge,
  strikeHeight,
  wordForStrike,
} from '../../src/physics/strike-height.ts';
import { anyHeadKind, anyNumber, between, degree, numbersOf } from './scenarios.ts';

const ballRadius = 0.021336;

describe('strikeFromEdge', () => {
  it('meets the ball where a line from the edge touches the circle', () => {
    fc.assert(
      fc.property(between(-0.02, 0.02), between(0, 60 * degree), (edgeHeight, loft) => {
        const along = strikeFromEdge({ edgeHeight, loft, ballRadius })!;
        // Up the face from the edge; the ball's middle is then one radius away along the normal.
        const height = edgeHeight + along * Math.cos(loft) + ballRadius * Math.sin(loft);
        assert.ok(Math.abs(height - ballRadius) < 1e-12);
      }),
    );
  });

  it('tops a ball with an edge that comes in above the point of contact', () => {
    assert.ok(strikeFromEdge({ edgeHeight: 0.02, loft: 20 * degree, ballRadius })! < 0);
  });

  it('meets nothing with a face that lies flat', () => {
    assert.equal(strikeFromEdge({ edgeHeight: 0, loft: Math.PI / 2, ballRadius }), undefined);
  });
});

describe('strikeHeight', () => {
  it('is undone by soleHeightFromStrike', () => {
    fc.assert(
      fc.property(
        anyHeadKind,
        between(-0.02, 0.03),
        between(5 * degree, 55 * degree),
        between(0, 0.05),
        (kind, soleHeight, loft, ballHeight) => {
          const at = { loft, ballRadius, ballHeight };
          const height = strikeHeight({ ...at, soleHeight }, faces[kind])!;
          const again = soleHeightFromStrike({ ...at, height }, faces[kind])!;
          assert.ok(Math.abs(again - soleHeight) < 1e-12);
        },
      ),
    );
  });

  it('is lower on the face the higher the sole comes in and higher the higher the ball is teed', () => {
    const at = { soleHeight: 0, ballHeight: 0, loft: 25 * degree, ballRadius };
    const level = strikeHeight(at, faces.iron)!;
    assert.ok(strikeHeight({ ...at, soleHeight: 0.005 }, faces.iron)! < level);
    assert.ok(strikeHeight({ ...at, ballHeight: 0.01 }, faces.iron)! > level);
  });
});

describe('wordForStrike', () => {
  const arc = { radius: 1.5, inclination: 60 * degree, direction: 0 };

  function wordFor(ahead: number, depth: number) {
    const soleHeight = soleHeightAtBall(arc, { ahead, depth })!;
    const height = strikeHeight({ soleHeight, ballHeight: 0, loft: 25 * degree, ballRadius }, faces.iron)!;
    return wordForStrike(height, cutOfGround(arc, { ahead, depth })?.starts);
  }

  // Common practice, no source.
  it('calls an iron centred that bottoms out 8 cm ahead of the ball and 3 mm in the turf', () => {
    assert.equal(wordFor(0.08, 0.003), 'centred');
  });

  it('calls a strike thin that is low on the face because the low point is too high', () => {
    assert.equal(wordFor(0.08, -0.006), 'thin');
  });

  it('calls a strike thin whose low point is far back and not in the ground', () => {
    assert.equal(wordFor(-0.12, -0.001), 'thin');
  });

  it('calls a strike heavy whose low point is behind the ball and in the ground', () => {
    assert.equal(wordFor(-0.05, 0.006), 'heavy');
  });

  it('calls a strike heavy that is too deep', () => {
    assert.equal(wordFor(0.08, 0.02), 'heavy');
  });

  it('calls a strike high that is above the middle of the face without taking ground', () => {
    assert.equal(wordForStrike(0.014, undefined), 'high');
  });
});

describe('the strike-height floor', () => {
  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (a, loft, radius, b) => {
        const results = [
          strikeFromEdge({ edgeHeight: a, loft, ballRadius: radius }),
          strikeHeight({ soleHeight: a, ballHeight: b, loft, ballRadius: radius }, faces.iron),
          soleHeightFromStrike({ height: a, ballHeight: b, loft, ballRadius: radius }, faces.iron),
        ];
        assert.ok(numbersOf(results).every(Number.isFinite));
        assert.equal(wordForStrike(a, b) === undefined, !Number.isFinite(a));
      }),
    );
  });
});
