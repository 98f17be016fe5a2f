// The check that says which planned change is of a quantity that the workspace computes from others.
import { quote, quoteList } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const workspace = `swingwright: 1
derived:
  checkpoints.top.trunk_twist:
    is: checkpoints.top.shoulder_turn - checkpoints.top.pelvis_turn
    title: Twist of the trunk
    like: checkpoints.top.shoulder_turn`;
const record = (change: string): string =>
  `swing: 1\nmisses: [short]\nplan: [{ change: ${change}, to: 50 deg closed, because: short }]`;

export const changeOfDerived: Check = {
  code: 'change-of-derived',
  severity: 'warning',
  title: 'A change of what is only computed',
  explanation: explain({
    found: 'The plan changes a quantity that the workspace file derives from others by a formula.',
    matters:
      'The same value comes about in many ways, so that nothing can be foreseen of it. A change of one of the quantities in the formula moves it with them; a proof may ask for it.',
    raises: {
      'lesson.swing.yaml': record('checkpoints.top.trunk_twist'),
      'swingwright.yaml': workspace,
    },
    accepts: {
      'lesson.swing.yaml': record('checkpoints.top.shoulder_turn'),
      'swingwright.yaml': workspace,
    },
    source: 'the workspace file.',
  }),
  kinds: ['swing'],
  find: ({ document, own }) => {
    if (document.kind !== 'swing') return [];
    return document.plan.flatMap(({ change }) => {
      const inputs = change && own.derived.get(change.value);
      if (change === undefined || inputs === undefined) return [];
      return [
        {
          span: change.span,
          message: `Found a change of ${quote(change.value)}, which is only computed; expected a change of ${quoteList(inputs)}, which it follows from.`,
        },
      ];
    });
  },
};
