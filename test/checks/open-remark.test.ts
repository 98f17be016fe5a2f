// Tests of the check open-remark.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const review = (more: string, of = 'lesson.swing.yaml'): string => `review: 1
of: ${of}
threads:
  - id: r1
${more}`;
const lesson = 'swing: 1\ndelivery:\n  face: 2 deg right\n';
const onFace = review('    about: delivery.face\n    author: Ida\n    text: It looks square.\n');

describe('open-remark', () => {
  it('marks the value in the record', () => {
    const analysis = assertMarked('open-remark', {
      'lesson.swing.yaml': `${lesson}# ^^^^^^^^^^^^^^^^^ hint[open-remark]\n`,
      'lesson.review.yaml': onFace,
    });
    assert.match(messageOf(analysis, 'open-remark'), /`Ida`: `It looks square\.`/);
    assert.equal(
      analysis.findings.find(({ code }) => code === 'open-remark')?.related[0]?.range.start.line,
      3,
    );
    assertNone('open-remark', { 'lesson.review.yaml': onFace, 'lesson.swing.yaml': lesson });
  });

  it('marks the remark where the record cannot show it', () => {
    const mark = '#       ^^ hint[open-remark]\n';
    assertMarked('open-remark', {
      'lesson.review.yaml': review(`${mark}    about: delivery.path\n`),
      'lesson.swing.yaml': lesson,
    });
    assertMarked('open-remark', {
      'by-ida.review.yaml': review(`${mark}    about: delivery.face\n`),
      'lesson.swing.yaml': lesson,
    });
    assertMarked('open-remark', {
      'lesson.review.yaml': review(`${mark}    text: All in all good.\n`),
      'lesson.swing.yaml': lesson,
    });
  });

  it('is silent on what is answered or settled', () => {
    for (const state of ['answered', 'settled'])
      assertNone('open-remark', {
        'lesson.swing.yaml': lesson,
        'lesson.review.yaml': review(`    about: delivery.face\n    state: ${state}\n`),
      });
  });

  it('leaves a review alone that is of another record', () => {
    assertNone('open-remark', {
      'lesson.swing.yaml': lesson,
      'lesson.review.yaml': review('    about: delivery.face\n', 'other.swing.yaml'),
      'other.swing.yaml': lesson,
    });
  });

  it('shows nothing that could steer an editor', () => {
    const analysis = analyseFiles({
      'lesson.swing.yaml': lesson,
      'lesson.review.yaml': review(
        '    about: delivery.face\n    author: "\\u202eadI\\e[2J"\n    text: "`a`\\n\\u2066b"\n',
      ),
    });
    const message = messageOf(analysis, 'open-remark');
    // eslint-disable-next-line no-control-regex
    assert.doesNotMatch(message, /[\u0000-\u001f\u202a-\u202e\u2066-\u2069]/);
    assert.equal(message.split('`').length, 5);
  });
});
