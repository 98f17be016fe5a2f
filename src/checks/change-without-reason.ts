// The check that says which planned change gives no reason.
import type { Check } from './check.ts';
import { explain } from './explain.ts';

export const changeWithoutReason: Check = {
  code: 'change-without-reason',
  severity: 'information',
  title: 'A change without a reason',
  explanation: explain({
    found: 'A change of the plan says not what it is for at `because`.',
    matters:
      'Who reads the plan later, the student first, cannot tell why it was asked for, nor what to look for when it is made.',
    raises: 'swing: 1\nmisses: [heavy]\nplan: [{ change: delivery.attack, to: 3 deg down }]',
    accepts: 'swing: 1\nmisses: [heavy]\nplan: [{ change: delivery.attack, to: 3 deg down, because: heavy }]',
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document }) =>
    document.kind !== 'swing'
      ? []
      : document.plan.flatMap(({ change, because }) =>
          change === undefined || because.length > 0
            ? []
            : [
                {
                  span: change.span,
                  message: `Found a change of \`${change.value}\` without a reason; expected a stated fault, a miss or a goal at \`because\`.`,
                },
              ],
        ),
};
