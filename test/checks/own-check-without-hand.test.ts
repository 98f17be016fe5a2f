// Tests of the check own-check-without-hand, and of own checks where no hand is known.
import assert from 'node:assert/strict';
import { analyseFiles, codesOf } from './files.ts';

function codesWith(when: string, student?: string, more = ''): readonly string[] {
  return codesOf(
    analyseFiles({
      'lesson.swing.yaml': `swing: 1\n${student === undefined ? '' : 'student: a.student.yaml\n'}delivery: { path: 6 deg right by radar }\n`,
      ...(student === undefined ? {} : { 'a.student.yaml': student }),
      'swingwright.yaml': `swingwright: 1\nchecks: { far: { when: "${when}", message: "Found {delivery.path}." } }\n${more}`,
    }),
  ).filter((code) => code.startsWith('own'));
}

describe('own-check-without-hand', () => {
  it('tells of a check that holds for one hand only, where no hand is known', () => {
    assert.deepEqual(codesWith('delivery.path > 5 deg'), ['own-check-without-hand']);
    assert.deepEqual(codesWith('delivery.path < -5 deg'), ['own-check-without-hand']);
    assert.deepEqual(codesWith('delivery.path > 5 deg', 'student: 1\nname: A'), ['own-check-without-hand']);
  });

  it('is not needed where both hands say the same', () => {
    assert.deepEqual(codesWith('abs(delivery.path) > 5 deg'), ['own/far']);
    assert.deepEqual(codesWith('abs(delivery.path) > 8 deg'), []);
    assert.deepEqual(codesWith('delivery.path > 5 deg or delivery.path < -5 deg'), ['own/far']);
  });

  it('is not needed where the hand is known', () => {
    assert.deepEqual(codesWith('delivery.path > 5 deg', 'student: 1\nhand: right'), ['own/far']);
    assert.deepEqual(codesWith('delivery.path < -5 deg', 'student: 1\nhand: left'), ['own/far']);
    assert.deepEqual(codesWith('delivery.path > 5 deg', 'student: 1\nhand: left'), []);
  });

  it('is silent where the check itself is off', () => {
    assert.deepEqual(codesWith('delivery.path > 5 deg', undefined, 'severities: { own/far: off }'), []);
  });
});
