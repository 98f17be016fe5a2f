// The check that says which remark of a review is about something that the record does not hold.
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import { anchorsOf } from '../record/anchor.ts';
import { remarkStandings } from '../record/remark-standing.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { sentenceOf } from './from-problems.ts';

const review = (about: string): string => `review: 1
of: lesson.swing.yaml
threads:
  - { id: r1, about: ${about}, author: Ida, text: It looks square. }`;

const lesson = 'swing: 1\ndelivery: { face: 2 deg right }';

export const remarkAboutNothing: Check = {
  code: 'remark-about-nothing',
  severity: 'warning',
  title: 'Remark about nothing',
  explanation: explain({
    found: 'The record has no entry of the name that a remark is about.',
    matters: 'The entry was taken out or the name is misspelt; the remark is shown at the top of the record.',
    raises: { 'lesson.review.yaml': review('delivery.fase'), 'lesson.swing.yaml': lesson },
    accepts: { 'lesson.review.yaml': review('delivery.face'), 'lesson.swing.yaml': lesson },
    source: 'the file format of this project.',
  }),
  kinds: ['review'],
  find: (subject) => {
    const { document, record, registry } = subject;
    if (document.kind !== 'review' || record === undefined) return [];
    const known = [...anchorsOf(record.document).keys()];
    return remarkStandings(document, record.document, registry)
      .filter(
        ({ anchor, state, remark }) =>
          anchor === undefined && state !== 'settled' && remark.about !== undefined,
      )
      .map(({ remark }, at) => {
        const { value, span } = remark.about!;
        // A guess costs a look at every entry.
        const nearest = at < mostGuesses ? findNearest(value, known) : undefined;
        const named = { span, ...(nearest === undefined ? {} : { nearest }) };
        return {
          span,
          message: sentenceOf({
            ...named,
            found: `a remark about ${quote(value)}`,
            expected: 'an entry of the record, or that the remark is settled',
          }),
          related: [{ uri: record.uri, span: { start: 0, end: 0 }, message: 'The record' }],
          fixes: writeNearest(named, subject),
        };
      });
  },
};

const mostGuesses = 50;
