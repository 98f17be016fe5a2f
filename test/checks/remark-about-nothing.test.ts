// Tests of the check remark-about-nothing.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

const review = (about: string, more = ''): string => `review: 1
of: lesson.swing.yaml
threads:
  - about: ${about}
    id: r1${more}
`;
const lesson = 'swing: 1\ndelivery: { face: 2 deg right }\nfaults: [{ fault: low-hands }]\n';

describe('remark-about-nothing', () => {
  it('marks what the record does not hold', () => {
    assertMarked('remark-about-nothing', {
      'lesson.review.yaml': review('delivery.path\n#          ^^^^^^^^^^^^^ warning[remark-about-nothing]'),
      'lesson.swing.yaml': lesson,
    });
  });

  it('writes the nearest', () => {
    assertFixedTo(
      'remark-about-nothing',
      { 'lesson.review.yaml': review('delivery.fase'), 'lesson.swing.yaml': lesson },
      review('delivery.face'),
    );
  });

  it('takes a quantity, a key and an item by what it is about, and what is settled', () => {
    for (const about of ['delivery.face', 'delivery', 'faults.low-hands', 'swing'])
      assertNone('remark-about-nothing', {
        'lesson.review.yaml': review(about),
        'lesson.swing.yaml': lesson,
      });
    assertNone('remark-about-nothing', {
      'lesson.review.yaml': review('delivery.path', '\n    state: settled'),
      'lesson.swing.yaml': lesson,
    });
  });
});
