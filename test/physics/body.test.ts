// Tests of segments, centres of mass and levers of the body: what a table must add up to and what changes with size.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  bodyTables,
  lengthShares,
  segmentCounts,
  type BodyTableName,
  type SegmentName,
} from '../../src/physics/body-tables.ts';
import {
  armLength,
  midGripToHead,
  segmentCentre,
  segmentLengths,
  segmentMass,
  wholeBodyCentre,
} from '../../src/physics/body.ts';
import { vector } from '../../src/physics/vector.ts';
import { anyNumber, between, numbersOf } from './scenarios.ts';

const tableNames = Object.keys(bodyTables) as BodyTableName[];
const segmentNames = Object.keys(segmentCounts) as SegmentName[];
const anyTable = fc.constantFrom(...tableNames);
const anySegment = fc.constantFrom(...segmentNames);
const anyPoint = fc.record({ x: between(-2, 2), y: between(-2, 2), z: between(-2, 2) });
const anyPlaced = fc.record({ segment: anySegment, proximal: anyPoint, distal: anyPoint });

describe('body tables', () => {
  for (const name of tableNames) {
    it(`shares out the whole body in the ${name} table`, () => {
      const sum = segmentNames.reduce(
        (total, segment) => total + segmentCounts[segment] * bodyTables[name].segments[segment].mass,
        0,
      );
      assert.ok(Math.abs(sum - 1) < 1.5e-4);
    });
  }
});

describe('segmentLengths', () => {
  it('grows every length with the stature', () => {
    const [short, tall] = [segmentLengths(1.6)!, segmentLengths(2)!];
    for (const name of Object.keys(lengthShares) as (keyof typeof lengthShares)[]) {
      assert.ok(Math.abs(tall[name] / short[name] - 1.25) < 1e-12);
    }
  });

  it('stacks shank and ankle to the knee and thigh to the hip within 1 mm per metre', () => {
    const { ankleHeight, shank, kneeHeight, thigh, hipHeight } = segmentLengths(1)!;
    assert.ok(Math.abs(ankleHeight + shank - kneeHeight) < 1e-3);
    assert.ok(Math.abs(kneeHeight + thigh - hipHeight) < 1e-3);
  });
});

describe('segmentCentre', () => {
  it('lies between the ends', () => {
    fc.assert(
      fc.property(anyTable, anySegment, anyPoint, anyPoint, (table, segment, proximal, distal) => {
        const centre = segmentCentre(table, segment, proximal, distal)!;
        for (const axis of ['x', 'y', 'z'] as const) {
          const [low, high] = [
            Math.min(proximal[axis], distal[axis]),
            Math.max(proximal[axis], distal[axis]),
          ];
          assert.ok(centre[axis] >= low - 1e-12 && centre[axis] <= high + 1e-12);
        }
      }),
    );
  });
});

describe('wholeBodyCentre', () => {
  it('moves as far as the body is moved', () => {
    fc.assert(
      fc.property(
        anyTable,
        fc.array(anyPlaced, { minLength: 1, maxLength: 14 }),
        anyPoint,
        (table, placed, by) => {
          const moved = placed.map(({ segment, proximal, distal }) => ({
            segment,
            proximal: vector(proximal.x + by.x, proximal.y + by.y, proximal.z + by.z),
            distal: vector(distal.x + by.x, distal.y + by.y, distal.z + by.z),
          }));
          const [before, after] = [wholeBodyCentre(table, placed)!, wholeBodyCentre(table, moved)!];
          assert.ok(Math.abs(after.centre.x - before.centre.x - by.x) < 1e-9);
          assert.ok(Math.abs(after.centre.z - before.centre.z - by.z) < 1e-9);
          assert.equal(after.share, before.share);
        },
      ),
    );
  });

  it('says how much of the body it was given', () => {
    const at = { proximal: vector(0, 0, 1), distal: vector(0, 0, 0) };
    const centre = wholeBodyCentre('male', [
      { segment: 'thigh', ...at },
      { segment: 'shank', ...at },
    ])!;
    assert.ok(Math.abs(centre.share - 0.1849) < 1e-12);
  });

  it('has no centre without a segment', () => {
    assert.equal(wholeBodyCentre('male', []), undefined);
  });
});

describe('armLength', () => {
  it('grows with the stature and shrinks with a bent elbow', () => {
    fc.assert(
      fc.property(between(1.2, 2.2), between(0.05, 1.5), (stature, bend) => {
        assert.ok(armLength(stature + 0.05)! > armLength(stature)!);
        assert.ok(armLength(stature, bend)! < armLength(stature)!);
      }),
    );
  });

  it('reaches past the wrist and not as far as the fingertips and a hand more', () => {
    const { upperArm, forearm, hand } = segmentLengths(1.75)!;
    assert.ok(armLength(1.75)! > upperArm + forearm);
    assert.ok(armLength(1.75)! < upperArm + forearm + hand);
  });
});

describe('midGripToHead', () => {
  it('is 10 cm shorter than the club', () => {
    assert.ok(Math.abs(midGripToHead(0.95)! - 0.85) < 1e-12);
    assert.equal(midGripToHead(0.1), undefined);
  });
});

describe('the body floor', () => {
  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(anyTable, anySegment, anyNumber, anyNumber, (table, segment, a, b) => {
        const ends = [vector(a, b, a), vector(b, a, b)] as const;
        const results = [
          segmentLengths(a),
          segmentMass(table, segment, a),
          segmentCentre(table, segment, ...ends),
          wholeBodyCentre(table, [{ segment, proximal: ends[0], distal: ends[1] }]),
          armLength(a, b),
          midGripToHead(a),
        ];
        assert.ok(numbersOf(results).every(Number.isFinite));
      }),
    );
  });
});
