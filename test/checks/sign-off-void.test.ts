// Tests of the check sign-off-void.
import { fingerprintOf } from '../../src/record/fingerprint.ts';
import { assertMarked, assertNone } from './files.ts';

const lesson = 'swing: 1\nclub: hybrid\n';
const signature = (by: string, hash: string, time = '2026-06-02T10:00:00Z'): string =>
  `  - by: ${by}\n    time: ${time}\n    hash: ${hash}\n`;
const review = (...signatures: readonly string[]): string =>
  `review: 1\nof: lesson.swing.yaml\nsigned_off:\n${signatures.join('')}`;
const good = fingerprintOf(lesson);

describe('sign-off-void', () => {
  it('marks the hash of other values, in the review', () => {
    assertMarked('sign-off-void', {
      'lesson.review.yaml': `${review(signature('Ida', 'sha256:00'))}#         ^^^^^^^^^ warning[sign-off-void]\n`,
      'lesson.swing.yaml': lesson,
    });
  });

  it('marks the top of the record', () => {
    assertMarked('sign-off-void', {
      'lesson.swing.yaml': `swing: 1\n^^^^^^^^ warning[sign-off-void]\n${lesson.slice(9)}`,
      'lesson.review.yaml': review(signature('Ida', 'sha256:00')),
    });
  });

  it('takes comments, spacing, order and other units', () => {
    for (const text of [lesson, '# new\nclub:   hybrid # the old one\nswing: 1\n'])
      for (const first of ['lesson.swing.yaml', 'lesson.review.yaml'])
        assertNone('sign-off-void', {
          [first]: '',
          'lesson.swing.yaml': text,
          'lesson.review.yaml': review(signature('Ida', good)),
        });
  });

  it('counts only the last signature of each person', () => {
    assertNone('sign-off-void', {
      'lesson.swing.yaml': lesson,
      'lesson.review.yaml': review(
        signature('Ida', good, '2026-06-03T10:00:00Z'),
        signature('Ida', 'sha256:00'),
        signature('Jon', good),
      ),
    });
  });
});
