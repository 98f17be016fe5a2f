// Tests of the check remark-stated-twice.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('remark-stated-twice', () => {
  it('marks the second of one id', () => {
    assertMarked('remark-stated-twice', {
      'lesson.review.yaml': `review: 1
threads:
  - id: r1
  - id: r1
#       ^^ warning[remark-stated-twice]
`,
    });
  });

  it('writes an id that nobody has', () => {
    assertFixedTo(
      'remark-stated-twice',
      { 'lesson.review.yaml': 'review: 1\nthreads: [{ id: a }, { id: a-2 }, { id: a }]\n' },
      'review: 1\nthreads: [{ id: a }, { id: a-2 }, { id: a-3 }]\n',
    );
  });

  it('takes different ids, and remarks without one', () => {
    assertNone('remark-stated-twice', {
      'lesson.review.yaml': 'review: 1\nthreads: [{ id: a }, { id: b }, { text: x }, {}]\n',
    });
  });
});
