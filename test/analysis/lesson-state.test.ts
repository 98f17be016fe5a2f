// A lesson says what conflicts in it, whether its plan is still open, and which proofs are due.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { lessonStates } from '../../src/analysis/lesson-state.ts';
import type { FileState } from '../../src/analysis/result.ts';

const plan = `plan:
  - { change: checkpoints.address.stance_width, to: 45 cm, proof: checkpoints.impact.lead_pressure > 75 % }
  - { change: delivery.attack, to: 2 deg down, proof: ground.divot.depth < 6 mm }
  - { change: delivery.path }
`;

/** One line a lesson: conflicts, planned changes, what is due. */
function states(...texts: readonly string[]): string[] {
  const lessons = texts.map((text, place) => {
    const uri = `file:///${place}.swing.yaml`;
    const file = (at: string): FileState =>
      at === uri ? { kind: 'text', text: `swing: 1\n${text}` } : { kind: 'missing' };
    return { uri, date: `2026-01-0${place + 1}`, club: 'driver', analysis: analyse(uri, { file }) };
  });
  return lessonStates(lessons).map(
    ({ errors, conflicts, plan: open, due }) =>
      `${errors} ${conflicts.length} ${open.length} ${due.map(({ words }) => words).join('; ')}`,
  );
}

const both = 'checkpoints.impact.lead_pressure > 75 %; ground.divot.depth < 6 mm';

describe('the state of lessons', () => {
  it('counts errors, and conflicts that were not accepted', () => {
    const text =
      'delivery:\n  path: 5 deg right ± 1 deg\n  face: 1 deg right ± 1 deg\n  face_to_path: 8 deg right ± 1 deg\n';
    assert.deepEqual(states(text), ['0 1 0 ']);
    const accepted = text
      .split('\n')
      .map((line) => (line.startsWith('  ') ? `${line} # accept[face-to-path-against-face]: why` : line));
    assert.deepEqual(states(accepted.join('\n')), ['0 0 0 ']);
    assert.deepEqual(
      states('club: [1]\ndelivery: { path: 5 kg }\n')[0]!.split(' ').slice(1).join(' '),
      '0 0 ',
    );
  });

  it('keeps a plan open until a later lesson has one, with its proofs due until they are measured', () => {
    assert.deepEqual(states(plan), [`0 0 3 ${both}`]);
    assert.deepEqual(states(plan, 'delivery: { path: }\n'), [`0 0 3 ${both}`, `0 0 0 ${both}`]);
    assert.deepEqual(states(plan, 'checkpoints: { impact: { lead_pressure: 80 % } }\n'), [
      '0 0 3 ground.divot.depth < 6 mm',
      '0 0 0 ground.divot.depth < 6 mm',
    ]);
    assert.deepEqual(states(plan, plan), ['0 0 0 ', `0 0 3 ${both}`]);
  });

  it('asks of each later lesson what it has not measured itself', () => {
    const measured = 'checkpoints: { impact: { lead_pressure: 80 % } }\nground: { divot: { depth: 4 mm } }\n';
    assert.deepEqual(states(plan, measured, ''), ['0 0 3 ', '0 0 0 ', `0 0 0 ${both}`]);
  });
});
