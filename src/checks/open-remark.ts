// The check that tells of each open remark once: at the value in the record, or in the review where the record does not show it.
import type { Span } from '../measure/measure.ts';
import { harmless, quote } from '../measure/quote.ts';
import { remarkStandings, nameWords } from '../record/remark-standing.ts';
import { stateOf, type Remark } from '../record/remark.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const review = (state: string): string => `review: 1
of: lesson.swing.yaml
threads:
  - id: r1
    about: delivery.face
    value: 2 deg right
    author: Ida
    state: ${state}
    text: It looks square.`;

const lesson = 'swing: 1\ndelivery: { face: 2 deg right }';

export const openRemark: Check = {
  code: 'open-remark',
  severity: 'hint',
  title: 'Open remark',
  explanation: explain({
    found: 'A colleague remarks something on this value, and nobody has answered yet.',
    matters:
      'Answer it, change the value, or settle it. `swingwright check --reviews` fails as long as one is open.',
    raises: {
      'lesson.swing.yaml': `${lesson}\nclub: hybrid\nstudent: mira.student.yaml\ndate: 2026-06-02`,
      'mira.student.yaml': 'student: 1',
      'lesson.review.yaml': review('open'),
    },
    accepts: { 'lesson.swing.yaml': lesson, 'lesson.review.yaml': review('settled') },
    source: 'the file format of this project.',
  }),
  kinds: ['swing', 'review'],
  find: ({ document, uri, registry, review: beside, record }) => {
    if (document.kind === 'swing' && beside !== undefined)
      return remarkStandings(beside.document, document, registry)
        .filter(({ state }) => state === 'open')
        .flatMap(({ remark, anchor }) =>
          anchor === undefined
            ? []
            : [
                {
                  span: firstLine(anchor.span, document.text),
                  message: messageFor(remark),
                  related: [
                    { uri: beside.uri, span: placeOf(remark, beside.document.text), message: 'The remark' },
                  ],
                },
              ],
        );
    if (document.kind !== 'review') return [];
    const isShown =
      record !== undefined && record.uri.replace(/\.swing\.yaml$/, '') === uri.replace(/\.review\.yaml$/, '');
    const shown = new Set(
      record !== undefined && isShown
        ? remarkStandings(document, record.document, registry).flatMap(({ remark, anchor }) =>
            anchor === undefined ? [] : remark,
          )
        : [],
    );
    return document.remarks
      .filter((remark) => !shown.has(remark) && stateOf(remark) === 'open')
      .map((remark) => ({ span: placeOf(remark, document.text), message: messageFor(remark) }));
  },
};

function messageFor({ author, text }: Remark): string {
  const words = text === undefined || text.trim() === '' ? '' : `: ${quote(harmless(text))}`;
  return `Found an open remark of ${nameWords(author)}${words}; expected an answer to it, or that it is settled.`;
}

function placeOf({ id, about, span }: Remark, text: string): Span {
  return (id ?? about)?.span ?? firstLine(span, text);
}

function firstLine({ start, end }: Span, text: string): Span {
  const feed = text.slice(start, end).search(/\r?\n/);
  return { start, end: feed < 0 ? end : start + feed };
}
