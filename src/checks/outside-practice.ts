// The check that says which numbers are possible but not seen on a lesson tee.
import { withArticle } from '../measure/article.ts';
import { showWindow } from '../measure/show.ts';
import { practiceWith } from '../registry/registry.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { isOutside, readingsOutside } from './reach.ts';

export const outsidePractice: Check = {
  code: 'outside-practice',
  severity: 'information',
  title: 'Outside what is usual',
  explanation: explain({
    found:
      'The number is possible, but outside what is seen on a lesson tee with this kind of club, children and tall adults included.',
    matters: 'It may well be right; a second look costs little.',
    raises: `delivery:
  attack: 20 deg down`,
    accepts: `delivery:
  attack: 4 deg down`,
    source:
      'the window seen in practice of each quantity in the registry, most of them common practice without a source.',
  }),
  kinds: ['swing', 'student'],
  find: (subject) =>
    readingsOutside(subject, practiceWith).flatMap(({ quantity, value, span, clubKind }) => {
      const practice = practiceWith(quantity, clubKind);
      if (practice === undefined || isOutside(value, quantity.bounds)) return [];
      const usual = showWindow(quantity, practice.min, practice.max);
      const club =
        practice === quantity.practice || clubKind === undefined ? '' : ` with ${withArticle(clubKind)}`;
      const found = `${quantity.title} ${subject.show(quantity, value)}`;
      return [{ span, message: `${found} is unusual${club}; seen in practice: ${usual}.` }];
    }),
};
