// The check that says which numbers are possible but not seen on a lesson tee.
import { withArticle } from '../measure/article.ts';
import { inBrackets } from './proof-words.ts';
import { proofAsks } from '../judgement/proof.ts';
import { practiceFor } from '../judgement/room.ts';
import { compileExpression } from '../judgement/expression.ts';
import { lowerFirst, quote } from '../measure/quote.ts';
import { showWindow } from '../measure/show.ts';
import { isOutside, practiceWith } from '../registry/registry.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { boxOf, readerOf, readingsOutside, targetsOutside, type Outlier } from './reach.ts';
import type { Subject } from './subject.ts';

export const outsidePractice: Check = {
  code: 'outside-practice',
  severity: 'information',
  title: 'Outside what is usual',
  explanation: explain({
    found:
      'The number, measured or aimed at, is possible, but outside what is seen on a lesson tee with this kind of club, children and tall adults included.',
    matters: 'It may well be right; a second look costs little.',
    raises: `delivery:
  attack: 20 deg down`,
    accepts: `delivery:
  attack: 4 deg down`,
    source:
      'the window seen in practice of each quantity in the registry, most of them common practice without a source.',
  }),
  kinds: ['swing', 'student', 'faults'],
  find: (subject) => {
    // What a coach's template wants is the coach's.
    const targets = subject.document.kind === 'template' ? [] : targetsOutside(subject, practiceFor);
    const outliers = [...readingsOutside(subject, practiceFor), ...targets];
    return [...outliers.flatMap((one) => findingOf(one, subject)), ...proofsOutside(subject)];
  },
};

function findingOf(
  { quantity, value, span, clubKind }: Outlier & { readonly clubKind: string | undefined },
  subject: Subject,
): readonly RawFinding[] {
  const practice = practiceFor(quantity, readerOf(subject, clubKind));
  if (practice === undefined || isOutside(value, quantity.bounds)) return [];
  const usual = showWindow(quantity, practice.min, practice.max);
  const club =
    practiceWith(quantity, clubKind) === quantity.practice || clubKind === undefined
      ? ''
      : ` with ${withArticle(clubKind)}`;
  const found = `${quantity.title} ${subject.show(quantity, value)}`;
  return [{ span, message: `${found} is unusual${club}; seen in practice: ${usual}.` }];
}

/** What no usual swing meets, though some possible one does. */
function proofsOutside(subject: Subject): readonly RawFinding[] {
  const { document, registry, club } = subject;
  if (document.kind !== 'swing') return [];
  const clubKind = club?.kind?.value;
  const reader = readerOf(subject, clubKind);
  return document.plan.flatMap(({ proof }) => {
    const expression = proof && compileExpression(proof.value, registry).expression;
    if (proof === undefined || expression === undefined) return [];
    const { quantities, over } = expression;
    const usual = boxOf(quantities, (quantity) => practiceFor(quantity, reader) ?? quantity.bounds);
    if (over(usual) !== 0 || !Number.isNaN(over(boxOf(quantities)))) return [];
    const seen = quantities.flatMap((quantity) => {
      const practice = practiceFor(quantity, reader);
      const title = lowerFirst(quantity.title);
      return practice === undefined ? [] : [`${title} ${showWindow(quantity, practice.min, practice.max)}`];
    });
    const swing = clubKind === undefined ? 'usual swing' : `usual swing with ${withArticle(clubKind)}`;
    return [
      {
        span: proof.span,
        message: `The proof ${quote(proof.value)}${inBrackets(proofAsks(proof.value, registry))} is met by no ${swing}; seen in practice: ${seen.join(', ')}.`,
      },
    ];
  });
}
