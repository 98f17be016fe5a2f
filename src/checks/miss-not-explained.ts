// The check that says which of the student's misses no stated fault explains.
import { quoteList } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const book = `faults: 1
book:
  low-point-back:
    title: Low point behind the ball
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]`;

export const missNotExplained: Check = {
  code: 'miss-not-explained',
  severity: 'hint',
  title: 'Miss that no stated fault explains',
  explanation: explain({
    found:
      'The student complains of a miss to which no stated fault tends, by itself or through another one.',
    matters:
      'A plan that mends the stated faults would leave the miss as it is. The links are what the fault book believes; what physics says of them is another matter.',
    raises: {
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: low-point-back }]\nmisses: [slice]',
      'house.faults.yaml': book,
    },
    accepts: {
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: low-point-back }]\nmisses: [heavy]',
      'house.faults.yaml': book,
    },
    source: 'the effects in the fault book; what each miss is, in schemas/QUANTITIES.md.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    (subject.judgement?.misses ?? [])
      // One that is stated twice is told of once.
      .filter(({ miss, by }, at, all) => by.length === 0 && all.findIndex((one) => one.miss === miss) === at)
      .map(({ miss, stated, unstated, contradicted }) => {
        const inBook =
          unstated.length === 0
            ? 'the fault book has no other that does'
            : `the fault book has ${quoteList(unstated)}`;
        const against =
          contradicted.length === 0 ? '' : `the numbers speak against ${quoteList(contradicted)}, and `;
        return {
          span: stated.miss.span,
          message: `No stated fault explains the miss \`${miss}\`; ${against}${contradicted.length === 0 ? inBook.replace('no other', 'none') : inBook}.`,
        };
      }),
};
