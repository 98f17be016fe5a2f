// Tests of the check remark-out-of-step.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const review = (value: string, more = ''): string => `review: 1
of: lesson.swing.yaml
threads:
  - id: r1
    about: delivery.face
    value: ${value}
    author: Ida${more}
`;
const lesson = '# above\nswing: 1\ndelivery:\n  face: 2 right   # bare\n';

describe('remark-out-of-step', () => {
  it('marks the value that has changed since, and says both with units', () => {
    const analysis = assertMarked('remark-out-of-step', {
      'lesson.review.yaml': review('1 right\n#          ^^^^^^^ information[remark-out-of-step]'),
      'lesson.swing.yaml': lesson,
    });
    assert.match(messageOf(analysis, 'remark-out-of-step'), /`1 deg right`.*`2 deg right`/);
  });

  it('takes the same value in another unit or form, and edits above it', () => {
    for (const value of ['2 deg right', '2° right', '"2 deg right"', "'{ value: 2 deg right }'", '2 right'])
      assertNone('remark-out-of-step', { 'lesson.review.yaml': review(value), 'lesson.swing.yaml': lesson });
  });

  it('says that what stands there now is what was suggested', () => {
    const files = {
      'lesson.review.yaml': review('1 deg right', '\n    suggests: 2 deg right'),
      'lesson.swing.yaml': lesson,
    };
    assert.match(messageOf(analyseFiles(files), 'remark-out-of-step'), /as suggested/);
  });

  it('is silent on what is settled, and where there is no record', () => {
    assertNone('remark-out-of-step', {
      'lesson.review.yaml': review('1 deg right', '\n    replies: [{ author: Ida, state: settled }]'),
      'lesson.swing.yaml': lesson,
    });
    assertNone('remark-out-of-step', review('1 deg right'));
  });
});
