// A figure keeps its bones, meets what was recorded or says that it does not, and bends as a body bends.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { balancePriors, type SwingCheckpoint } from '../../src/physics/balance-priors.ts';
import { lengthShares } from '../../src/physics/body-tables.ts';
import { bendOf, minus } from '../../src/physics/limbs.ts';
import { poseAt, type Known, type Player, type Pose } from '../../src/physics/pose.ts';
import { isLength, poseKeys, type PoseKey } from '../../src/physics/pose-readings.ts';
import type { StanceKey } from '../../src/physics/pose-anchors.ts';
import { dot, norm } from '../../src/physics/vector.ts';
import { halfShoulders } from '../../src/physics/trunk.ts';
import { checkpoints } from '../../src/registry/quantity.ts';

const degree = Math.PI / 180;
const stature = 1.74;
const player: Player = { hand: 'right', stature, table: 'female', clubLever: 0.84, lie: 62 * degree };
const stance = new Map<StanceKey, Known>();

function entered(numbers: Readonly<Partial<Record<PoseKey, number>>>): ReadonlyMap<PoseKey, Known> {
  return new Map(
    Object.entries(numbers).map(([key, value]) => [key as PoseKey, { value, kind: 'entered' as const }]),
  );
}

function posed(
  checkpoint: SwingCheckpoint,
  numbers: Readonly<Partial<Record<PoseKey, number>>> = {},
  who: Player = player,
): Pose {
  const address = poseAt(who, { checkpoint: 'address', known: entered({}), stance });
  const pose = poseAt(who, { checkpoint, known: entered(numbers), stance, address });
  assert.ok(pose);
  return pose;
}

/** Drillis & Contini 1966, in Winter, figure 4.1: shares of stature, written out here once more. */
const bones = [
  ['leadHip', 'leadKnee', 0.245],
  ['trailHip', 'trailKnee', 0.245],
  ['leadKnee', 'leadAnkle', 0.246],
  ['trailKnee', 'trailAnkle', 0.246],
  ['leadShoulder', 'leadElbow', 0.186],
  ['trailShoulder', 'trailElbow', 0.186],
  ['leadElbow', 'leadWrist', 0.146],
  ['trailElbow', 'trailWrist', 0.146],
  ['leadWrist', 'leadHand', 0.108 / 2],
  ['trailWrist', 'trailHand', 0.108 / 2],
] as const;

function assertBody({ skeleton: { joints, short } }: Pose): void {
  for (const [from, to, share] of bones) {
    const length = norm(minus(joints[to], joints[from]));
    assert.ok(Math.abs(length - share * stature) < 0.001, `${from} to ${to}: ${length}`);
  }
  const trunk = norm(minus(joints.shoulders, joints.pelvis));
  const bare = (lengthShares.shoulderHeight - lengthShares.hipHeight) * stature;
  assert.ok(Math.abs(trunk - bare) < 0.051, 'the girdle moves no more than 5 cm on the trunk');
  const breadth = norm(minus(joints.leadShoulder, joints.trailShoulder));
  assert.ok(Math.abs(breadth - 2 * halfShoulders(stature)) < 0.001);
  assert.ok(Math.abs(norm(minus(joints.clubHead, joints.grip)) - player.clubLever) < 0.001);
  for (const left of Object.values(short)) assert.ok(Math.abs(left) < 0.001, `short by ${left}`);
  for (const { x, y, z } of Object.values(joints)) {
    assert.ok(Number.isFinite(x + y + z));
    assert.ok(Math.abs(x) < 5 && Math.abs(y) < 5 && Math.abs(z) < 5);
  }
}

/** Knees before the line from hip to ankle, as the toes point; elbows not before the line from shoulder to hand as the chest faces. */
function assertAnatomical({ skeleton: { joints, chest } }: Pose): void {
  for (const side of ['lead', 'trail'] as const) {
    const [hip, knee, ankle] = [joints[`${side}Hip`], joints[`${side}Knee`], joints[`${side}Ankle`]];
    const middle = { x: (hip.x + ankle.x) / 2, y: (hip.y + ankle.y) / 2, z: (hip.z + ankle.z) / 2 };
    const toes = minus(joints[`${side}Toe`], joints[`${side}Heel`]);
    if (bendOf(hip, knee, ankle) > 0.05) assert.ok(dot(minus(knee, middle), toes) > -1e-3, `${side} knee`);
    const [shoulder, elbow, hand] = [
      joints[`${side}Shoulder`],
      joints[`${side}Elbow`],
      joints[`${side}Hand`],
    ];
    const bend = bendOf(shoulder, elbow, hand);
    assert.ok(bend >= 0 && bend < 170 * degree);
    const half = {
      x: (shoulder.x + hand.x) / 2,
      y: (shoulder.y + hand.y) / 2,
      z: (shoulder.z + hand.z) / 2,
    };
    // Straight out in front the elbow may hang square to the chest: it never lies before the arm and above it at once.
    const off = minus(elbow, half);
    const size = norm(off);
    if (bend > 0.1) {
      assert.ok(dot(off, chest.front) < 0.8 * size || dot(off, chest.up) < 0.3 * size, `${side} elbow`);
    }
  }
}

describe('a figure', () => {
  it('stands at every checkpoint with nothing recorded', () => {
    for (const checkpoint of checkpoints) {
      const pose = posed(checkpoint);
      assertBody(pose);
      assertAnatomical(pose);
      assert.deepEqual(pose.misfits, []);
      assert.ok(Object.values(pose.anchors.face_on).every((anchor) => anchor === 'guessed'));
    }
  });

  it('is what is usual there', () => {
    // Common practice, no source.
    const { joints } = posed('address').skeleton;
    assert.ok(joints.neck.x < joints.pelvis.x, 'the spine leans a little away from the target');
    assert.ok(joints.trailHand.z < joints.leadHand.z, 'the trail hand is the lower one');
    assert.ok(norm(joints.clubHead) < 0.05, 'the club is at the ball');
    const top = posed('top').skeleton.joints;
    assert.ok(bendOf(top.trailShoulder, top.trailElbow, top.trailHand) > 60 * degree);
    assert.ok(bendOf(top.leadShoulder, top.leadElbow, top.leadHand) < 35 * degree);
    assert.ok(top.leadShoulder.y < top.trailShoulder.y && top.grip.z > top.shoulders.z);
    const impact = posed('impact').skeleton.joints;
    assert.ok(impact.leadHip.y > impact.trailHip.y, 'the hips are open');
    assert.ok(impact.grip.x > impact.clubHead.x, 'the handle leads');
    assert.ok(impact.trailHeel.z > impact.leadHeel.z);
  });

  it('has each recorded landmark where it was recorded', () => {
    const asked = {
      head: -0.15,
      sternum: -0.09,
      pelvis: -0.05,
      hands: 0.03,
      spine_tilt: 8 * degree,
      forward_bend: 33 * degree,
      hand_depth: -0.12,
      pelvis_depth: 0.21,
    };
    const pose = posed('address', asked);
    const { joints } = pose.skeleton;
    assert.deepEqual(pose.misfits, []);
    assertBody(pose);
    const near = (a: number, b: number): void => assert.ok(Math.abs(a - b) < 0.001, `${a} is not ${b}`);
    near(joints.leadEar.x, asked.head);
    near(joints.sternum.x, asked.sternum);
    near(joints.pelvis.x, asked.pelvis);
    near(joints.grip.x, asked.hands);
    near(joints.grip.y - pose.at.toeLine, asked.hand_depth);
    near(joints.pelvis.y - pose.at.toeLine, asked.pelvis_depth);
    const trunk = minus(joints.neck, joints.pelvis);
    near(Math.atan2(-trunk.x, trunk.z), asked.spine_tilt);
    near(Math.atan2(-trunk.y, trunk.z), asked.forward_bend);
    assert.equal(pose.anchors.face_on.head, 'entered');
    assert.equal(
      pose.anchors.down_the_line.head,
      'guessed',
      'an offset along the target line is not seen there',
    );
  });

  it('turns the shaft as it was recorded, however it is counted', () => {
    for (const lean of [250 * degree, -110 * degree]) {
      const { skeleton, misfits } = posed('top', { shaft_lean: lean });
      const { grip, clubHead } = skeleton.joints;
      assert.deepEqual(misfits, []);
      const off = Math.atan2(grip.x - clubHead.x, grip.z - clubHead.z) - lean;
      assert.ok(Math.abs(off - 2 * Math.PI * Math.round(off / (2 * Math.PI))) < 0.5 * degree);
    }
  });

  it('bends elbow and wrist by what was recorded', () => {
    const pose = posed('lead_arm_parallel_down', {
      lead_wrist_hinge: 95 * degree,
      trail_elbow_bend: 80 * degree,
      lead_elbow_bend: 20 * degree,
    });
    const { joints } = pose.skeleton;
    assert.deepEqual(pose.misfits, []);
    assert.ok(
      Math.abs(bendOf(joints.trailShoulder, joints.trailElbow, joints.trailHand) - 80 * degree) <
        0.5 * degree,
    );
    assert.ok(
      Math.abs(bendOf(joints.leadShoulder, joints.leadElbow, joints.leadHand) - 20 * degree) < 0.5 * degree,
    );
  });

  it('mirrors for a left-handed player', () => {
    const numbers = { sternum: -0.06, shoulder_turn: 0.5 };
    const [right, left] = [posed('top', numbers), posed('top', numbers, { ...player, hand: 'left' })];
    for (const [name, { x, y, z }] of Object.entries(right.skeleton.joints)) {
      assert.deepEqual(left.skeleton.joints[name as keyof typeof left.skeleton.joints], { x, y: 0 - y, z });
    }
  });

  it('keeps to what a body can where an entry cannot be, and says so', () => {
    const pose = posed('impact', { pelvis: 1.4, sternum: -0.05, shaft_lean: 0.1 });
    assertBody(pose);
    assert.deepEqual(
      pose.misfits.map(({ key, asked }) => [key, asked]),
      [['pelvis', 1.4]],
    );
    assert.equal(pose.anchors.face_on.pelvis, 'guessed');
    assert.ok(Math.abs(pose.skeleton.joints.sternum.x - -0.05) < 0.001);
  });

  it('holds together whatever is entered', function () {
    this.timeout(60_000);
    const one = fc.record({
      key: fc.constantFrom(...poseKeys),
      value: fc.oneof(
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.constantFrom(0, 1e300, -1e300, NaN, Infinity, 0.5, -0.5),
      ),
    });
    fc.assert(
      fc.property(
        fc.constantFrom(...checkpoints),
        fc.array(one, { maxLength: 6 }),
        fc.oneof(fc.double({ min: -1, max: 3, noNaN: true }), fc.constantFrom(0, 1e300, NaN)),
        (checkpoint, list, width) => {
          const known = entered(Object.fromEntries(list.map(({ key, value }) => [key, value])));
          const feet = new Map<StanceKey, Known>([['stance_width', { value: width, kind: 'entered' }]]);
          const address = poseAt(player, { checkpoint: 'address', known: new Map(), stance: feet });
          const pose = poseAt(player, { checkpoint, known, stance: feet, address });
          assert.ok(pose);
          assertBody(pose);
          assertAnatomical(pose);
          for (const { drawn } of pose.misfits) assert.ok(Number.isFinite(drawn));
        },
      ),
      { numRuns: 120 },
    );
  });

  it('meets small departures from what is usual, several at once', function () {
    this.timeout(60_000);
    const free = ['pelvis', 'head', 'hands', 'forward_bend', 'pelvis_turn', 'pelvis_depth'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom('address', 'top', 'lead_arm_parallel_down', 'finish' as const),
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
        (checkpoint, shares) => {
          const at = posed(checkpoint);
          const { joints } = at.skeleton;
          const usual = {
            pelvis: joints.pelvis.x,
            head: joints.leadEar.x,
            hands: joints.grip.x,
            forward_bend: at.at.forwardBend,
            pelvis_turn: at.at.pelvisTurn,
            pelvis_depth: joints.pelvis.y - at.at.toeLine,
          };
          const asked = Object.fromEntries(
            free.map((key, i) => [key, usual[key] + shares[i]! * (isLength(key) ? 0.02 : 0.05)]),
          );
          assert.deepEqual(posed(checkpoint as SwingCheckpoint, asked).misfits, []);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('takes its turn of the shoulders from what balance takes', () => {
    const { at } = posed('finish');
    assert.ok(Math.abs(at.shoulderTurn - balancePriors.finish.shoulderTurn.value) < 0.25);
  });

  it('is none without a stature or a club', () => {
    const address = { checkpoint: 'address', known: entered({}), stance } as const;
    for (const who of [{ stature: 0 }, { stature: NaN }, { clubLever: -1 }, { lie: 0 }]) {
      assert.equal(poseAt({ ...player, ...who }, address), undefined);
    }
  });
});
