// Tests of the check effect-both-ways.
import { assertMarked, assertNone } from './files.ts';

describe('effect-both-ways', () => {
  it('marks the second direction of one effect', () => {
    assertMarked('effect-both-ways', {
      'house.faults.yaml': `faults: 1
book:
  open:
    tends_to:
      - { effect: flight.curve, direction: left }
      - { effect: flight.carry, direction: less }
      - { effect: flight.curve, direction: right }
#                 ^^^^^^^^^^^^ warning[effect-both-ways]`,
    });
  });

  it('takes one effect told twice the same way, and directions that are not known', () => {
    assertNone('effect-both-ways', {
      'house.faults.yaml': `faults: 1
book:
  open: { tends_to: [{ effect: flight.curve, direction: left }, { effect: flight.curve, direction: left }, { effect: flight.curve }] }
  closed: { tends_to: [{ effect: flight.curve, direction: right }, { effect: flight.curl, direction: left }, { effect: flight.curl, direction: right }] }`,
    });
  });
});
