// Tests of the check side-against-part.
import assert from 'node:assert/strict';
import { cautionsOf } from '../../src/checks/plan-loads-injury.ts';
import { analyseFiles, assertMarked, assertNone } from './files.ts';

const record =
  'swing: 1\nstudent: ansa.student.yaml\nfaults_from: house.faults.yaml\nfaults: [{ fault: stands-up }]\n';
const book = 'faults: 1\nbook: { stands-up: { cautions: [lower back] } }\n';

describe('side-against-part', () => {
  const student = (injury: string, hand = 'right'): string =>
    `student: 1\nhand: ${hand}\ninjuries:\n  - ${injury}\n`;

  it('marks a side that the part is not on, with this hand', () => {
    assertMarked('side-against-part', {
      'a.student.yaml': `${student('{ part: lead wrist, side: right }')}#                             ^^^^^ warning[side-against-part]\n`,
    });
    for (const [injury, hand] of [
      ['{ part: lead wrist, side: right }', 'left'],
      ['{ part: lead wrist, side: lead }', 'right'],
      ['{ part: wrist, side: right }', 'right'],
      ['{ part: left wrist, side: both }', 'right'],
    ] as const)
      assertNone('side-against-part', { 'a.student.yaml': student(injury, hand) });
  });

  it('leaves the caution on both sides', () => {
    for (const loaded of ['left wrist', 'right wrist']) {
      const { subject } = analyseFiles({
        'a.swing.yaml': record,
        'ansa.student.yaml': student('{ part: lead wrist, side: right }'),
        'house.faults.yaml': book.replace('lower back', loaded),
      });
      assert.equal(cautionsOf({ id: '', because: ['stands-up'] }, subject).length, 1, loaded);
    }
  });
});
