// What a plan leads to, through the model and through beliefs, how goals stand, and what is proposed.
import assert from 'node:assert/strict';
import { forecastOf, proposalOf } from '../../src/analysis/plan.ts';
import { blockEdits } from '../../src/checks/block-edits.ts';
import { predictedText } from '../../src/checks/forecast-words.ts';
import { planText } from '../../src/checks/proposal-words.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { analyseFiles, applied } from '../checks/files.ts';

const student = (hand: 'left' | 'right'): string => `student: 1
hand: ${hand}
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`;
const book = `faults: 1
book:
  trail-side:
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to:
      - { effect: delivery.low_point.ahead, direction: behind, size: 1 cm ± 0.5 cm }
      - { effect: delivery.face_to_path, direction: right, size: 1 deg }
    changes: [{ change: checkpoints.address.stance_width, by: 5 cm narrower }]`;
const files = (rest: string, hand: 'left' | 'right' = 'right') => ({
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
faults_from: house.faults.yaml
checkpoints: { address: { stance_width: 46 cm }, impact: { shaft_lean: 5 deg forward ± 2 deg, lead_pressure: 60 % } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down ± 0.5 deg, path: 3 deg ${hand === 'right' ? 'left' : 'right'} ± 0.5 deg, face: 0 deg ± 0.5 deg, arc: { radius: 1.6 m, inclination: 58 deg } }
faults: [{ fault: trail-side }]
${rest}`,
  'ansa.student.yaml': student(hand),
  'house.faults.yaml': book,
});
const narrower = 'plan: [{ change: checkpoints.address.stance_width, to: 41 cm, because: trail-side }]';

function foreseen(rest: string, hand: 'left' | 'right' = 'right') {
  const { subject, account } = analyseFiles(files(rest, hand));
  return forecastOf(subject, account)!;
}

describe('a plan', () => {
  it('leads through a belief where only that reaches, and says so', () => {
    const { outlooks } = foreseen(narrower).whole;
    const lowPoint = outlooks.get('delivery.low_point.ahead')!;
    assert.equal(lowPoint.origin, 'belief');
    assert.ok(Math.abs(lowPoint.difference! - 0.01) < 1e-9);
    // 1 cm ± 0.5 cm, for a change of 5 cm that is made to a quarter, from a width that is known to so much.
    const { account } = analyseFiles(files(narrower));
    const width = account!.derivation.values.get('checkpoints.address.stance_width')!.u! / 0.05;
    assert.ok(Math.abs(lowPoint.uDifference! - 0.01 * Math.hypot(0.5, 0.25, width)) < 1e-6);
    assert.equal(outlooks.get('flight.curve')!.origin, 'belief');
  });

  it('takes back as much of a fault as the change goes of what the book asks for', () => {
    const half = narrower.replace('41 cm', '43.5 cm');
    const lowPoint = foreseen(half).whole.outlooks.get('delivery.low_point.ahead')!;
    assert.ok(Math.abs(lowPoint.difference! - 0.005) < 1e-9);
    assert.equal(foreseen(narrower.replace('41 cm', '50 cm')).whole.outlooks.size, 0);
  });

  it('leads through the model where that reaches, each change alone and all together', () => {
    const two = `plan:
  - { change: delivery.attack, to: 1 deg down, because: trail-side }
  - { change: checkpoints.address.stance_width, to: 41 cm, because: trail-side }`;
    const { changes, whole } = foreseen(two);
    const [attack, stance] = changes.map(({ prediction }) =>
      prediction.outlooks.get('delivery.low_point.ahead')!,
    );
    assert.equal(attack!.origin, 'model');
    // −R sin(attack)/sin i, from 3° down to 1° down.
    assert.ok(Math.abs(attack!.difference! + (1.6 * (Math.sin(0.05236) - Math.sin(0.01745))) / 0.848) < 2e-3);
    const together = whole.outlooks.get('delivery.low_point.ahead')!;
    assert.equal(together.origin, 'belief');
    assert.ok(Math.abs(together.difference! - attack!.difference! - stance!.difference!) < 1e-3);
  });

  it('keeps the face while the path is changed, unless the plan or a belief says something of it', () => {
    const path = '{ change: delivery.path, to: 0 deg ± 0.3 deg, because: trail-side }';
    const { outlooks, kept } = foreseen(`plan: [${path}]`).whole;
    assert.deepEqual(
      kept.map(({ quantity: { id }, difference }) => [id, difference]),
      [['delivery.face', 0]],
    );
    const toPath = outlooks.get('delivery.face_to_path')!;
    // Face − path, with the path from 3° left to 0° and the face where it was.
    assert.ok(Math.abs(toPath.difference! + 0.05236) < 3e-3, `${toPath.difference}`);
    assert.ok(Math.abs(outlooks.get('flight.start')!.difference!) < 0.35 * 0.05236);
    assert.ok(outlooks.get('flight.curve')!.difference! < -5);
    const both = foreseen(
      `plan: [${path}, { change: delivery.face_to_path, to: 3 deg right, because: trail-side }]`,
    );
    assert.deepEqual(both.whole.kept, []);
    const open = files(`plan: [${path}]`);
    const believed = analyseFiles({
      ...open,
      'house.faults.yaml': book.replace(
        'stance_width, by: 5 cm narrower',
        'stance_width, by: 5 cm narrower }, { change: delivery.path, by: 3 deg right',
      ),
    });
    const { whole } = forecastOf(believed.subject, believed.account)!;
    assert.deepEqual(whole.kept, []);
    const turned = whole.outlooks.get('delivery.face_to_path')!;
    assert.equal(turned.origin, 'belief');
    assert.ok(Math.abs(turned.difference! + 0.01745) < 2e-3, `${turned.difference}`);
  });

  it('starts from one number of what nobody entered: the one that stands in the record', () => {
    const plan = 'plan: [{ change: delivery.attack, to: 1 deg down, because: trail-side }]\n';
    const { account, subject } = analyseFiles(
      files(`${plan}goals: [{ carry: 178 m, finish: 8 m left..8 m right }]`),
    );
    const { goals, whole } = forecastOf(subject, account)!;
    assert.equal(goals.length, 2);
    for (const { now, then } of goals) {
      const { id } = now.wanted.quantity;
      const stands = account!.derivation.values.get(id)!;
      assert.notEqual(stands.kind, 'entered');
      assert.ok(Math.abs(now.value! - stands.value) < 1e-9, id);
      const { value, difference } = whole.outlooks.get(id)!;
      assert.ok(Math.abs(value! - difference! - now.value!) < 1e-9, id);
      assert.ok(Math.abs(then.value! - value!) < 1e-9, id);
    }
  });

  it('is mirrored for a left-handed player, whom a book turns round', () => {
    const [right, left] = [foreseen(narrower), foreseen(narrower, 'left')];
    const of = ({ whole }: typeof right): number => whole.outlooks.get('delivery.face_to_path')!.difference!;
    assert.ok(of(right) < 0);
    assert.ok(Math.abs(of(right) + of(left)) < 1e-9);
  });
});

describe('a proposal', () => {
  const goals = 'goals: [{ start: 1 deg left..1 deg right, curve: 4 m left..4 m right }]';
  const { subject, account, document } = analyseFiles(files(goals));
  const proposal = proposalOf(subject, account, () => {})!;

  it('brings goals nearer with at most three changes, setup first', () => {
    const { goals: now } = forecastOf(subject, account)!;
    const before = now.reduce((product, goal) => product * goal.now.chance!, 1);
    assert.ok(proposal.chance > before + 0.05);
    assert.ok(proposal.changes.length <= 3);
    const stages = proposal.changes.map(({ stage }) => stage);
    assert.deepEqual(stages, stages.toSorted());
  });

  it('is kept in the record as a block that reads back, with reasons and proofs that nothing finds fault with', () => {
    const record = document as SwingRecord;
    const text = predictedText(proposal.prediction, [], 1);
    const edits = blockEdits('', record, [
      ['plan', planText(proposal.changes)],
      ['predicted', text],
    ]);
    const kept = applied(record.text, edits);
    assert.ok(kept.startsWith(record.text));
    const again = analyseFiles({ ...files(goals), 'lesson.swing.yaml': kept });
    const codes = again.findings.map(({ code }) => code).filter((code) => code !== 'no-value-yet');
    assert.deepEqual(
      codes.filter((code) => !analyseFiles(files(goals)).findings.some((one) => one.code === code)),
      [],
    );
    const { plan, predicted } = again.document as SwingRecord;
    assert.equal(plan.length, proposal.changes.length);
    assert.equal(predicted.size, text.split('\n').length - 2);
    const [first] = predicted.values();
    assert.ok(['model', 'belief'].includes(first!.readings[0]!.measure.method!));
  });

  it('takes the place of an earlier one and leaves the rest of the file as it is', () => {
    const earlier = analyseFiles(files(`${goals}\n${narrower}\nnotes: kept`)).document as SwingRecord;
    const kept = applied(earlier.text, blockEdits('', earlier, [['plan', planText(proposal.changes)]]));
    assert.ok(kept.endsWith('\nnotes: kept'));
    assert.equal(kept.split('plan:').length, 2);
  });

  it('can be stopped', () => {
    assert.throws(
      () =>
        proposalOf(subject, account, () => {
          throw new Error('stopped');
        }),
      /stopped/,
    );
  });

  it('is none without goals', () => {
    const without = analyseFiles(files(''));
    assert.equal(
      proposalOf(without.subject, without.account, () => {}),
      undefined,
    );
  });
});
