// Tests of the check goal-out-of-reach.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const student = {
  'ansa.student.yaml': `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`,
};
const head = `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
`;
const plan = 'plan:\n  - { change: delivery.face_to_path, to: 0 deg ± 1 deg, because: carry }';

describe('goal-out-of-reach', () => {
  it('marks a carry that needs more club speed than the plan has, and says how much', () => {
    const analysis = assertMarked('goal-out-of-reach', {
      'lesson.swing.yaml': `${head}goals:
  - carry: 215 m
#          ^^^^^ information[goal-out-of-reach]
${plan}`,
      ...student,
    });
    assert.match(
      messageOf(analysis, 'goal-out-of-reach'),
      /^Out of reach: carry 215 m needs \d\d m\/s ± \d+ m\/s of club speed; this plan gives 41\.0 m\/s ± 0\.5 m\/s\.$/,
    );
  });

  it('says nothing of what may be reached, nor without a plan', () => {
    assertNone('goal-out-of-reach', {
      'lesson.swing.yaml': `${head}goals: [{ carry: 170 m }]\n${plan}`,
      ...student,
    });
    assertNone('goal-out-of-reach', { 'lesson.swing.yaml': `${head}goals: [{ carry: 260 m }]`, ...student });
  });

  it('says of what nobody reaches how far the fastest players come', () => {
    for (const [goal, words] of [
      [
        'carry: 240 m',
        /carry 240 m needs \d\d m\/s ± \d+ m\/s of club speed; the fastest seen with a hybrid is 55\.0 m\/s, which gives carry 2\d\d m, and this plan gives 41\.0 m\/s ± 0\.5 m\/s\.$/,
      ],
      [
        'carry: 300 yd',
        /no club speed that anybody reaches gives carry 300 yd; the fastest seen with a hybrid is 55\.0 m\/s/,
      ],
      ['carry: 490 m', /no club speed that anybody reaches gives carry 490 m/],
      ['total: 400 m', /no club speed that anybody reaches gives total distance 400 m/],
      [
        'ball_speed: 70 m/s',
        /ball speed 70\.0 m\/s needs 5\d\.\d m\/s ± \d\.\d m\/s of club speed; this plan/,
      ],
    ] as const) {
      const analysis = analyseFiles({
        'lesson.swing.yaml': `${head}goals: [{ ${goal} }]\n${plan}`,
        ...student,
      });
      assert.match(messageOf(analysis, 'goal-out-of-reach'), words);
    }
  });
});
