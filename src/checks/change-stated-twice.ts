// The check that says which quantity one plan changes more than once.
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

export const changeStatedTwice: Check = {
  code: 'change-stated-twice',
  severity: 'warning',
  title: 'Two changes of one quantity',
  explanation: explain({
    found: 'The plan changes the same quantity more than once.',
    matters:
      'A quantity ends at one value; a student cannot follow both, and what the plan leads to is computed from the last one alone.',
    raises: `swing: 1
misses: [heavy]
plan:
  - { change: delivery.attack, to: 3 deg down, because: heavy }
  - { change: delivery.attack, to: 1 deg up, because: heavy }`,
    accepts: `swing: 1
misses: [heavy]
plan:
  - { change: delivery.attack, to: 3 deg down, because: heavy }
  - { change: checkpoints.address.ball_position, to: 6 cm behind, because: heavy }`,
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document, uri }) => {
    if (document.kind !== 'swing') return [];
    return document.plan.flatMap(({ change, quantity }, at) => {
      const first = document.plan.findIndex((one) => one.quantity !== undefined && one.quantity === quantity);
      const earlier = document.plan[first]?.change;
      if (change === undefined || earlier === undefined || first === at) return [];
      return [
        {
          span: change.span,
          message: `Found another change of ${quote(change.value)}; expected one change of each quantity.`,
          related: [{ uri, span: earlier.span, message: 'The first change of it' }],
        },
      ];
    });
  },
};
