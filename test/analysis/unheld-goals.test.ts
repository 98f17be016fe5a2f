// A shape that nothing can be held against is told, with the reason, rather than passed over.
import assert from 'node:assert/strict';
import { unheldGoals } from '../../src/analysis/unheld-goals.ts';
import { analyseFiles } from '../checks/files.ts';

const record = `swing: 1
student: ansa.student.yaml
club: hybrid
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 3 deg left, face: 0 deg }
checkpoints: { impact: { shaft_lean: 5 deg forward } }
`;
const bag = 'bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }';

function unheldIn(text: string, student: string): readonly string[] {
  const { subject, account } = analyseFiles({
    'lesson.swing.yaml': text,
    'ansa.student.yaml': `student: 1\n${student}${bag}`,
  });
  return unheldGoals(subject, account).map(({ shape, reason }) => `${shape.value}: ${reason}`);
}

describe('goals that nothing is held against', () => {
  it('are shapes while nobody says which hand plays', () => {
    assert.match(
      unheldIn(`${record}goals: [{ shape: draw }]`, '')[0] ?? '',
      /^draw: nobody says which hand plays/,
    );
    assert.deepEqual(unheldIn(`${record}goals: [{ shape: draw }]`, 'hand: left\n'), []);
  });

  it('are shapes while nobody knows how far the ball carries', () => {
    const bare =
      'swing: 1\nstudent: ansa.student.yaml\ndelivery: { path: 3 deg left }\ngoals: [{ shape: draw }]';
    assert.match(unheldIn(bare, 'hand: right\n')[0] ?? '', /^draw: how far the ball carries is not known/);
  });

  it('are none where all that the shape says stands in numbers', () => {
    const bare = 'swing: 1\nstudent: ansa.student.yaml\ndelivery: { path: 3 deg left }\n';
    assert.deepEqual(unheldIn(`${bare}goals: [{ shape: draw, curve: 5 m left }]`, 'hand: right\n'), []);
    assert.deepEqual(unheldIn(`${bare}goals: [{ shape: push draw, curve: 5 m left }]`, 'hand: right\n'), []);
    assert.equal(unheldIn(`${bare}goals: [{ shape: draw, start: 1 deg right }]`, 'hand: right\n').length, 1);
  });

  it('are none where start and curve stand in numbers', () => {
    const goals = 'goals: [{ shape: draw, start: 1 deg right, curve: 5 m left }]';
    assert.deepEqual(unheldIn(`${record}${goals}`, ''), []);
  });
});
