// The check that says which effect of a fault is believed to go both ways at once.
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const book = (second: string): string => `faults: 1
book:
  open-face:
    evidence: delivery.face > 4 deg
    tends_to:
      - { effect: flight.curve, direction: right }
      - { effect: ${second} }`;

export const effectBothWays: Check = {
  code: 'effect-both-ways',
  severity: 'warning',
  title: 'An effect that goes both ways',
  explanation: explain({
    found: 'A fault of the book tends to move one quantity in one direction, and in the other as well.',
    matters: 'It would explain a miss and its opposite, so that it explains neither.',
    raises: { 'house.faults.yaml': book('flight.curve, direction: left') },
    accepts: { 'house.faults.yaml': book('flight.start, direction: left') },
    source: 'the file format of this project.',
  }),
  kinds: ['faults'],
  find: ({ document, uri }) => {
    if (document.kind !== 'faults') return [];
    return [...document.faults.values()].flatMap(({ id, tendsTo }) =>
      tendsTo.flatMap(({ effect, quantity, sign }, at) => {
        const before = tendsTo
          .slice(0, at)
          .find((one) => one.quantity?.id === quantity?.id && one.sign !== undefined && one.sign !== sign);
        if (quantity === undefined || sign === undefined || before === undefined) return [];
        return [
          {
            span: effect.span,
            message: `Found ${quote(effect.value)} going both ways with ${quote(id.value)}; expected one direction for one effect.`,
            related: [{ uri, span: before.effect.span, message: 'The other direction' }],
          },
        ];
      }),
    );
  },
};
