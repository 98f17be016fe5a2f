// Tests of the check caution.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

describe('caution', () => {
  const house = `faults: 1
book:
  stands-up:
    cautions: [lower back, lead knee]`;
  const record = 'swing: 1\nstudent: ansa.student.yaml\nfaults_from: house.faults.yaml\nfaults:\n';
  const files = (injuries: string, hand = 'right') => ({
    'lesson.swing.yaml': `${record}  - { fault: stands-up }`,
    'house.faults.yaml': house,
    'ansa.student.yaml': `student: 1\nname: Ansa\nhand: ${hand}\ninjuries: ${injuries}`,
  });

  it('marks a stated fault whose changes load an injured part, in words that clear nobody', () => {
    const analysis = assertMarked('caution', {
      ...files('[{ part: lower back }]'),
      'lesson.swing.yaml': `${record}  - { fault: stands-up }
#            ^^^^^^^^^ information[caution]`,
    });
    assert.equal(
      messageOf(analysis, 'caution'),
      'What helps against "stands-up" loads the lower back, which Ansa\'s file notes as injured: stop if it hurts. This is no medical advice; see a physician or physiotherapist.',
    );
  });

  it('names what is noted where its words differ', () => {
    assert.match(
      messageOf(analyseFiles(files('[{ part: back }]')), 'caution'),
      /lower back, and Ansa's file notes back as injured/,
    );
  });

  it('says which of two faults it is about, by the title of each', () => {
    const { findings } = analyseFiles({
      ...files('[{ part: lower back }]'),
      'lesson.swing.yaml': `${record}  - { fault: stands-up }\n  - { fault: sways }`,
      'house.faults.yaml': `${house}\n  sways:\n    title: Sways off the ball\n    cautions: [lower back]`,
    });
    assert.deepEqual(
      findings.filter(({ code }) => code === 'caution').map(({ message }) => /"(.*?)"/.exec(message)?.[1]),
      ['stands-up', 'Sways off the ball'],
    );
  });

  it('takes the side of the student’s hand', () => {
    assertNone('caution', files('[{ part: right knee }]', 'right'));
    assert.notEqual(messageOf(analyseFiles(files('[{ part: right knee }]', 'left')), 'caution'), '');
    assert.notEqual(messageOf(analyseFiles(files('[{ part: knee, side: left }]', 'right')), 'caution'), '');
    assert.notEqual(messageOf(analyseFiles(files('[{ part: knee }]', 'right')), 'caution'), '');
  });

  it('says nothing of other parts or of faults that are not stated', () => {
    assertNone('caution', files('[{ part: neck }]'));
    assertNone('caution', { ...files('[{ part: back }]'), 'lesson.swing.yaml': record });
  });
});
