// The check that says which remark of a review is about a value that has changed since.
import { quote } from '../measure/quote.ts';
import { remarkStandings } from '../record/remark-standing.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const review = (value: string): string => `review: 1
of: lesson.swing.yaml
threads:
  - { id: r1, about: delivery.face, value: ${value}, author: Ida, text: It looks square. }`;

const lesson = 'swing: 1\ndelivery: { face: 2 deg right }';

export const remarkOutOfStep: Check = {
  code: 'remark-out-of-step',
  severity: 'information',
  title: 'Remark out of step',
  explanation: explain({
    found: 'The value that a remark is about is another one than when the remark was made.',
    matters: 'It may have been answered by that. Reply to it or settle it; a settled remark is silent.',
    raises: { 'lesson.review.yaml': review('1 deg right'), 'lesson.swing.yaml': lesson },
    accepts: { 'lesson.review.yaml': review('2° right'), 'lesson.swing.yaml': lesson },
    source: 'the file format of this project.',
  }),
  kinds: ['review'],
  find: ({ document, record, registry }) => {
    if (document.kind !== 'review' || record === undefined) return [];
    return remarkStandings(document, record.document, registry).flatMap(
      ({ remark: { about, value }, anchor, state, isChanged, isTaken, then = '', now = '' }) => {
        if (!isChanged || state === 'settled' || anchor === undefined || value === undefined) return [];
        const stands = now === '' ? 'nothing stands there now' : `${quote(now)} stands there now`;
        return [
          {
            span: value.span,
            message: `Found a remark about ${quote(then)}; ${stands}${isTaken ? ', as suggested' : ''}, and expected is a reply or that it is settled.`,
            related: [
              {
                uri: record.uri,
                span: anchor.span,
                message: `What stands at ${quote(about?.value ?? '')} now`,
              },
            ],
          },
        ];
      },
    );
  },
};
