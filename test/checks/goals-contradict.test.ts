// Tests of the check goals-contradict.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const student = (hand: string): { 'ansa.student.yaml': string } => ({
  'ansa.student.yaml': `student: 1\nhand: ${hand}\nbag: { hybrid: { kind: hybrid }, driver: { kind: driver } }`,
});
const head = 'swing: 1\nstudent: ansa.student.yaml\nclub: hybrid\ngoals:\n';

describe('goals-contradict', () => {
  it('marks a draw and a fade, each with a link to the other', () => {
    const analysis = assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { shape: draw, carry: 178 m }
#            ^^^^ warning[goals-contradict]
  - { shape: fade }
#            ^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
    assert.match(messageOf(analysis, 'goals-contradict'), /`shape: draw` beside `shape: fade`/);
    const found = analysis.findings.filter(({ code }) => code === 'goals-contradict');
    assert.deepEqual(
      found.map(({ related }) => related.map(({ range }) => range)),
      [[found[1]!.range], [found[0]!.range]],
    );
  });

  it('marks windows without a number in common, and starts to either side', () => {
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { carry: 150..160 m, start: 4 deg left }
#            ^^^^^^^^^^ warning[goals-contradict]
#                               ^^^^^^^^^^ warning[goals-contradict]
  - { carry: 160..180 m }
#            ^^^^^^^^^^ warning[goals-contradict]
  - { start: 4 deg right }
#            ^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
  });

  it('leaves a goal that cannot be to the check that says so', () => {
    assertNone('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { carry: 1e9 m }\n  - { carry: 150 m }`,
      ...student('right'),
    });
  });

  it('takes numbers that meet within how exactly they are read', () => {
    assertNone('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { carry: 170 m }\n  - { carry: 178 m }`,
      ...student('right'),
    });
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { carry: 170 m ± 1 m }
#            ^^^^^^^^^^^ warning[goals-contradict]
  - { carry: 178 m ± 1 m }
#            ^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
  });

  it('holds a shape against the curve of another goal for the hand that plays, and for no unknown one', () => {
    const goals = `${head}  - { shape: draw }\n  - { curve: 10..15 m right }`;
    assertNone('goals-contradict', { 'lesson.swing.yaml': goals, ...student('left') });
    assertNone('goals-contradict', { 'lesson.swing.yaml': goals });
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { shape: draw }
#            ^^^^ warning[goals-contradict]
  - { curve: 10..15 m right }
#            ^^^^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
  });

  it('holds a straight shot against a curve and a start of another goal, whichever hand plays', () => {
    // 5 % of 178 m are 8.9 m.
    const goals = (curve: string): string =>
      `${head}  - { shape: straight, carry: 178 m ± 1 m }\n  - { curve: ${curve} right }`;
    assertNone('goals-contradict', { 'lesson.swing.yaml': goals('8..15 m'), ...student('left') });
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { shape: straight, carry: 178 m ± 1 m }
#            ^^^^^^^^ warning[goals-contradict]
  - { curve: 10..15 m right }
#            ^^^^^^^^^^^^^^ warning[goals-contradict]`,
    });
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { shape: straight fade }
#            ^^^^^^^^^^^^^ warning[goals-contradict]
  - { start: 4..6 deg left }
#            ^^^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('left'),
    });
  });

  it('marks strikes that exclude one another', () => {
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { contact: ball before turf }
#              ^^^^^^^^^^^^^^^^ warning[goals-contradict]
  - { contact: on the rise }
#              ^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
  });

  it('leaves goals for different clubs alone, and holds one without a club against all', () => {
    const bag = 'bag: { hybrid: { kind: hybrid }, driver: { kind: driver } }\n';
    assertNone('goals-contradict', {
      'ansa.student.yaml': `student: 1\n${bag}goals:\n  - { shape: draw, club: hybrid }\n  - { shape: fade, club: driver }`,
    });
    assertMarked('goals-contradict', {
      'ansa.student.yaml': `student: 1\n${bag}goals:
  - { shape: draw, club: hybrid }
#            ^^^^ warning[goals-contradict]
  - { shape: fade }
#            ^^^^ warning[goals-contradict]`,
    });
  });

  it('marks a finish where no ball lands that starts and curves as asked', () => {
    const one = (goal: string): string =>
      `swing: 1\nstudent: ansa.student.yaml\nclub: hybrid\ngoals:\n  - ${goal}`;
    // 140 m · sin 5° = 12.2 m right of the target line before it curves farther right.
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${one('{ start: 5 deg right..7 deg right, curve: 2 m right..6 m right, finish: 3 m left..3 m right, carry: 140 m }')}
#            ^^^^^^^^^^^^^^^^^^^^^^^^ warning[goals-contradict]
#                                             ^^^^^^^^^^^^^^^^^^^^ warning[goals-contradict]
#                                                                           ^^^^^^^^^^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
    assertNone('goals-contradict', {
      'lesson.swing.yaml': one(
        '{ start: 5 deg right..7 deg right, curve: 10 m left..6 m right, finish: 3 m left..3 m right, carry: 140 m }',
      ),
      ...student('right'),
    });
  });

  it('marks a total distance far short of the carry, in one goal or in two', () => {
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { total: 120 m, carry: 150 m }
#            ^^^^^ warning[goals-contradict]
#                          ^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
    assertMarked('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { total: 100..120 m }
#            ^^^^^^^^^^ warning[goals-contradict]
  - { carry: 150..160 m }
#            ^^^^^^^^^^ warning[goals-contradict]`,
      ...student('right'),
    });
    // A wedge may spin back.
    assertNone('goals-contradict', {
      'lesson.swing.yaml': `${head}  - { total: 90..92 m, carry: 95..97 m }`,
      ...student('right'),
    });
  });

  it('marks a shape against a finish on the other side, for the hand that plays', () => {
    const goals = `${head}  - { shape: pull draw }
#            ^^^^^^^^^ warning[goals-contradict]
  - { finish: 5 m right..10 m right }
#             ^^^^^^^^^^^^^^^^^^^^^ warning[goals-contradict]`;
    assertMarked('goals-contradict', { 'lesson.swing.yaml': goals, ...student('right') });
    const bare = `${head}  - { shape: pull draw }\n  - { finish: 5 m right..10 m right }`;
    assertNone('goals-contradict', { 'lesson.swing.yaml': bare, ...student('left') });
    assertNone('goals-contradict', { 'lesson.swing.yaml': bare });
    assertNone('goals-contradict', {
      'lesson.swing.yaml': bare.replace('pull draw', 'draw'),
      ...student('right'),
    });
  });
});
