// The check that says which change of a fault book is told both as a step and as a value.
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const book = (how: string): string => `faults: 1
book:
  trail-side:
    changes:
      - { change: checkpoints.address.stance_width, ${how} }`;

export const changeInTwoWays: Check = {
  code: 'change-in-two-ways',
  severity: 'warning',
  title: 'A change with a step and a value',
  explanation: explain({
    found: 'A change of the fault book says both how far to go, at `by`, and where to end, at `to`.',
    matters:
      'From where a student stands the two most likely lead to different places; only the step is looked at.',
    raises: { 'house.faults.yaml': book('by: 5 cm narrower, to: 40 cm') },
    accepts: { 'house.faults.yaml': book('by: 5 cm narrower') },
    source: 'the file format of this project.',
  }),
  kinds: ['faults'],
  find: ({ document }) => {
    if (document.kind !== 'faults') return [];
    return [...document.faults.values()].flatMap(({ changes }) =>
      changes.flatMap(({ change, byWords, toWords }) =>
        byWords === undefined || toWords === undefined
          ? []
          : [
              {
                span: change.span,
                message: `Found both ${quote(`by: ${byWords}`)} and ${quote(`to: ${toWords}`)} for ${quote(change.value)}; expected one of them.`,
              },
            ],
      ),
    );
  },
};
