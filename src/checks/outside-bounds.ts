// The check that says which numbers physics, anatomy or the Rules do not allow.
import { showWindow } from '../measure/show.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { readingsOutside, targetsOutside } from './reach.ts';
import type { Outlier } from './reach.ts';
import type { Subject } from './subject.ts';

export const outsideBounds: Check = {
  code: 'outside-bounds',
  severity: 'error',
  title: 'Outside what is possible',
  explanation: explain({
    found: 'The number lies outside what physics, anatomy or the Rules of golf allow for this quantity.',
    matters: 'Most likely a unit, a digit or a direction slipped; what follows from it cannot be trusted.',
    raises: `delivery:
  attack: 75 deg down`,
    accepts: `delivery:
  attack: 7.5 deg down`,
    source: 'the bounds of each quantity in the registry, each with its own source, which the message names.',
  }),
  kinds: ['swing', 'student', 'template', 'faults'],
  find: (subject) => [
    ...readingsOutside(subject, ({ bounds }) => bounds).map((outlier) => findingOf(outlier, subject)),
    ...targetsOutside(subject, ({ bounds }) => bounds).map((outlier) => findingOf(outlier, subject)),
  ],
};

function findingOf({ quantity, value, span }: Outlier, subject: Subject): RawFinding {
  const { min, max, source } = quantity.bounds;
  const possible = showWindow(quantity, min, max);
  const found = `${quantity.title} ${subject.show(quantity, value)}`;
  return { span, message: `${found} is outside what is possible; expected ${possible} (${source}).` };
}
