// Tests of the centre of mass along the target line: what moving a landmark must do, and what is said to be assumed.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { balancePriors, type SwingCheckpoint } from '../../src/physics/balance-priors.ts';
import { bodyTables, segmentCounts, type BodyTableName } from '../../src/physics/body-tables.ts';
import { segmentLengths, wholeBodyCentre, type PlacedSegment } from '../../src/physics/body.ts';
import {
  centreOfMassAlongTarget,
  centreWeights,
  missingForCentreOfMass,
  type Landmarks,
} from '../../src/physics/centre-of-mass.ts';
import { vector } from '../../src/physics/vector.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const anyTable = fc.constantFrom<BodyTableName>('female', 'male', 'winter');
const anyCheckpoint = fc.constantFrom(...(Object.keys(balancePriors) as SwingCheckpoint[]));
const anyBody = fc.record({
  pelvis: between(-0.3, 0.3),
  sternum: between(-0.4, 0.2),
  head: between(-0.5, 0.1),
  hands: between(-1, 0.5),
  leadKnee: between(-0.15, 0.1),
  shoulderTurn: between(-100 * degree, 100 * degree),
});
const feet = { leadHeel: 0.1, trailHeel: -0.35 };

function centre(body: Landmarks, table: BodyTableName = 'male', checkpoint: SwingCheckpoint = 'address') {
  return centreOfMassAlongTarget(body, feet, table, 1.75, checkpoint)!;
}

describe('centreWeights', () => {
  it('sum to the whole body', () => {
    for (const { head, chest, pelvis, hands, knee, ankle } of Object.values(centreWeights)) {
      assert.ok(Math.abs(head + chest + pelvis + hands + 2 * (knee + ankle) - 1) < 1e-12);
    }
  });
});

describe('centreOfMassAlongTarget', () => {
  it('moves as far as body and feet are moved together', () => {
    fc.assert(
      fc.property(anyBody, anyTable, anyCheckpoint, between(-0.5, 0.5), (body, table, checkpoint, by) => {
        const moved = {
          ...body,
          pelvis: body.pelvis + by,
          sternum: body.sternum + by,
          head: body.head + by,
          hands: body.hands + by,
        };
        const movedFeet = { leadHeel: feet.leadHeel + by, trailHeel: feet.trailHeel + by };
        const before = centreOfMassAlongTarget(body, feet, table, 1.75, checkpoint)!;
        const after = centreOfMassAlongTarget(moved, movedFeet, table, 1.75, checkpoint)!;
        assert.ok(Math.abs(after.value - before.value - by) < 1e-12);
      }),
    );
  });

  it('moves in proportion to each landmark, and with it', () => {
    fc.assert(
      fc.property(
        anyBody,
        anyTable,
        fc.constantFrom('pelvis', 'sternum', 'head', 'hands', 'leadKnee'),
        between(0.01, 0.2),
        (body, table, name, by) => {
          const at = (times: number) =>
            centre({ ...body, [name]: body[name as keyof typeof body] + times * by }, table).value;
          assert.ok(at(1) > at(0));
          assert.ok(Math.abs(at(2) - at(1) - (at(1) - at(0))) < 1e-12);
        },
      ),
    );
  });

  it('agrees with the sum over the segments of Winter’s table for a body that stands as it assumes', () => {
    // Side by side, seen face-on, every segment placed by hand; Winter's trunk runs from the hip to the shoulder.
    const lengths = segmentLengths(1.75)!;
    const [pelvis, shoulders, hands, ear] = [-0.1, -0.16, 0.05, -0.17];
    const hip = 0.25 * lengths.hipBreadth;
    const half = 0.2;
    const x = (place: number) => vector(place, 0, 0);
    const arm = lengths.upperArm + lengths.forearm + 0.5 * lengths.hand;
    const limbs = ([1, -1] as const).flatMap((side): PlacedSegment[] => {
      const shoulder = shoulders + side * half;
      const along = (length: number) => shoulder + (length / arm) * (hands - shoulder);
      const [elbow, wrist] = [along(lengths.upperArm), along(lengths.upperArm + lengths.forearm)];
      const ankle = side > 0 ? feet.leadHeel : feet.trailHeel;
      const joint = pelvis + side * hip;
      const knee = joint + (lengths.thigh / (lengths.thigh + lengths.shank)) * (ankle - joint);
      return [
        { segment: 'upperArm', proximal: x(shoulder), distal: x(elbow) },
        { segment: 'forearm', proximal: x(elbow), distal: x(wrist) },
        { segment: 'hand', proximal: x(hands), distal: x(hands) },
        { segment: 'thigh', proximal: x(joint), distal: x(knee) },
        { segment: 'shank', proximal: x(knee), distal: x(ankle) },
        { segment: 'foot', proximal: x(ankle), distal: x(ankle) },
      ];
    });
    const summed = wholeBodyCentre('winter', [
      { segment: 'head', proximal: x(shoulders), distal: x(ear) },
      { segment: 'trunk', proximal: x(pelvis), distal: x(shoulders) },
      ...limbs,
    ])!;
    const sternum = shoulders + 0.1 * (pelvis - shoulders);
    // The lead ear is half a head's breadth ahead of the middle of the head.
    const body = { pelvis, sternum, hands, head: ear + 0.065, shoulderTurn: 0 };
    assert.ok(Math.abs(summed.share - 1) < 1e-12);
    assert.ok(Math.abs(centre(body, 'winter').value - summed.centre.x) < 1e-12);
  });

  it('names what it assumed and is less certain for it', () => {
    const whole = {
      pelvis: -0.1,
      sternum: -0.13,
      head: -0.12,
      hands: 0.02,
      leadKnee: -0.02,
      shoulderTurn: 0,
    };
    assert.deepEqual(centre(whole).assumed, []);
    let before = centre(whole).u;
    for (const name of ['shoulderTurn', 'leadKnee', 'hands', 'head'] as const) {
      const part = centre({ ...whole, [name]: undefined });
      assert.deepEqual(part.assumed, [name]);
      assert.ok(part.u > before);
    }
    before = centre({ pelvis: -0.1, sternum: -0.13 }).u;
    const shoulderOnly = centre({ pelvis: -0.1, leadShoulder: 0.06 });
    assert.ok(shoulderOnly.assumed.includes('sternum'));
    assert.ok(shoulderOnly.u > before);
  });

  it('gives none without a pelvis, or without chest and shoulder, and says so', () => {
    assert.equal(centreOfMassAlongTarget({ sternum: 0, head: 0 }, feet, 'male', 1.75, 'top'), undefined);
    assert.equal(centreOfMassAlongTarget({ pelvis: 0 }, feet, 'male', 1.75, 'top'), undefined);
    assert.deepEqual(missingForCentreOfMass({ head: 0 }), ['pelvis', 'sternum']);
    assert.deepEqual(missingForCentreOfMass({ pelvis: 0, leadShoulder: 0 }), []);
  });

  it('hardly depends on the table in an upright stance', () => {
    const body = { pelvis: -0.1, sternum: -0.13, head: -0.1, hands: 0.02, leadKnee: 0, shoulderTurn: 0 };
    const values = (Object.keys(bodyTables) as BodyTableName[]).map((table) => centre(body, table).value);
    assert.equal(Object.keys(segmentCounts).length, 8);
    assert.ok(Math.max(...values) - Math.min(...values) < 0.01);
  });

  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(
        fc.record({
          pelvis: anyNumber,
          sternum: anyNumber,
          head: anyNumber,
          hands: anyNumber,
          leadShoulder: anyNumber,
          leadKnee: anyNumber,
          shoulderTurn: anyNumber,
        }),
        fc.record({ leadHeel: anyNumber, trailHeel: anyNumber }),
        anyNumber,
        anyCheckpoint,
        fc.boolean(),
        (body, anyFeet, stature, checkpoint, withSternum) => {
          const given = withSternum ? body : { ...body, sternum: undefined };
          const result = centreOfMassAlongTarget(given, anyFeet, 'female', stature, checkpoint);
          assert.ok(numbersOf(result).every(Number.isFinite));
        },
      ),
      { numRuns: 300 },
    );
  });
});
