// Tests of the check change-of-derived.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import { assertMarked, assertNone, messageOf } from './files.ts';

const workspace = {
  'ansa.student.yaml': 'student: 1\nhand: right\n',
  'swingwright.yaml': `swingwright: 1
derived:
  delivery.openness:
    is: 2 * delivery.face_to_path
    title: Openness
    like: delivery.face_to_path
`,
};
const record = (plan: string): string => `swing: 1
student: ansa.student.yaml
delivery: { path: 3 deg left ± 0.5 deg, face: 1 deg right ± 0.5 deg }
goals: [{ start: 1 deg left..1 deg right }]
plan:
${plan}`;

describe('change-of-derived', () => {
  it('marks a change of what the workspace computes, and names what it follows from', () => {
    const analysis = assertMarked('change-of-derived', {
      'lesson.swing.yaml': record(`  - { change: delivery.openness, to: 2 deg right, because: start }
#             ^^^^^^^^^^^^^^^^^ warning[change-of-derived]`),
      ...workspace,
    });
    assert.match(messageOf(analysis, 'change-of-derived'), /a change of `delivery\.face_to_path`, which it/);
    assert.deepEqual(forecastOf(analysis.subject, analysis.account)!.changes, []);
  });

  it('takes a change of what it follows from, of which the forecast says what becomes of it, and proofs of it', () => {
    const analysis = assertNone('change-of-derived', {
      'lesson.swing.yaml': record(
        '  - { change: delivery.face_to_path, to: 1 deg right ± 0.5 deg, because: start, proof: delivery.openness < 4 deg }',
      ),
      ...workspace,
    });
    const moved = forecastOf(analysis.subject, analysis.account)!.whole.outlooks.get('delivery.openness')!;
    assert.equal(moved.origin, 'model');
    // Twice what it follows from: 2° and not 8°.
    assert.ok(Math.abs(moved.value! - (2 * Math.PI) / 180) < 1e-9);
    assert.deepEqual(
      analysis.subject.proofs.map(({ state }) => state),
      ['not met'],
    );
  });
});
