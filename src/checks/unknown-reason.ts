// The check that says which reason of a planned change is neither a stated fault nor a miss nor a goal.
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { sentenceOf } from './from-problems.ts';
import { statedReasons } from './stated-reasons.ts';

export const unknownReason: Check = {
  code: 'unknown-reason',
  severity: 'warning',
  title: 'A reason that nothing states',
  explanation: explain({
    found:
      'A reason at `because` is neither a fault nor a miss that the record states, nor one of the goals (`shape`, `carry`, `contact` and so on).',
    matters: 'The plan treats something that nobody has said is there.',
    raises: 'swing: 1\nmisses: [heavy]\nplan: [{ change: delivery.attack, to: 3 deg down, because: [thin] }]',
    accepts:
      'swing: 1\nmisses: [heavy]\nplan: [{ change: delivery.attack, to: 3 deg down, because: [heavy] }]',
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const { document } = subject;
    if (document.kind !== 'swing') return [];
    const stated = new Set(statedReasons(subject));
    return document.plan.flatMap(({ because }) =>
      because.flatMap(({ value, span }) => {
        if (stated.has(value)) return [];
        const nearest = findNearest(value, [...stated]);
        const named = { span, ...(nearest === undefined ? {} : { nearest }) };
        const expected = 'a stated fault, a miss or a goal of this record';
        return [
          {
            span,
            message: sentenceOf({
              ...named,
              found: `the reason ${quote(value)}, which nothing states`,
              expected,
            }),
            fixes: writeNearest(named, subject),
          },
        ];
      }),
    );
  },
};
