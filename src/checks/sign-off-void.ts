// The check that says which signature under a record is of other values than the record has now, in the review and at the top of the record.
import { anchorsOf } from '../record/anchor.ts';
import { nameWords, signatureStandings } from '../record/remark-standing.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { lastNameIn } from '../record/reference.ts';

const review = (hash: string): string => `review: 1
of: lesson.swing.yaml
signed_off:
  - { by: Ida, time: 2026-06-02T10:00:00Z, hash: "${hash}" }`;

const lesson = 'swing: 1\nclub: hybrid';

export const signOffVoid: Check = {
  code: 'sign-off-void',
  severity: 'warning',
  title: 'Sign-off void',
  explanation: explain({
    found:
      'The record says something else than when it was signed off. Comments, spacing, order and units do not count.',
    matters: 'Whoever signed has not seen what it says now. Only the last signature of each person counts.',
    raises: { 'lesson.review.yaml': review('sha256:00'), 'lesson.swing.yaml': lesson },
    accepts: {
      'lesson.review.yaml': review('sha256:9c0fa02bb75f5227f4ce48442d97b77a2fa7d269b53931ea35fe94528a7ecca1'),
      'lesson.swing.yaml': lesson,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing', 'review'],
  find: ({ uri, document, record, review }) => {
    if (document.kind === 'review' && record !== undefined)
      return signatureStandings(document, record.document)
        .filter(({ isVoid }) => isVoid)
        .map(({ signature: { by, hash, span } }) => ({
          span: (hash ?? by)?.span ?? span,
          message: messageFor(by?.value),
          related: [{ uri: record.uri, span: { start: 0, end: 0 }, message: 'The record' }],
        }));
    if (document.kind !== 'swing' || review === undefined) return [];
    return signatureStandings(review.document, document)
      .filter(({ isVoid }) => isVoid)
      .map(({ signature: { by, hash, span } }) => ({
        span: anchorsOf(document).get('swing')?.span ?? { start: 0, end: 0 },
        message: messageFor(by?.value),
        related: [
          {
            uri: review.uri,
            span: (hash ?? by)?.span ?? span,
            message: `The signature in the review of ${lastNameIn(uri)}`,
          },
        ],
      }));
  },
};

function messageFor(by: string | undefined): string {
  return `Found values that have changed since ${nameWords(by)} signed the record off; expected them as they were then, or signed off again.`;
}
