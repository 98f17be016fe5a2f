// Tests of the check unknown-quantity.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-quantity', () => {
  it('marks a name that is no quantity', () => {
    assertMarked('unknown-quantity', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: flight.cary > 5 m
#             ^^^^^^^^^^^ error[unknown-quantity]`,
    });
  });

  it('marks it at its characters in a list, in quotes and in a mapping', () => {
    assertMarked('unknown-quantity', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence:
      - flight.cary > 5 m
#       ^^^^^^^^^^^ error[unknown-quantity]
      - "flight.cary > 5 m"
#        ^^^^^^^^^^^ error[unknown-quantity]
      - { expression: 'flight.cary > 5 m', weight: 2 }
#                      ^^^^^^^^^^^ error[unknown-quantity]`,
    });
  });

  it('takes what is right', () => {
    assertNone('unknown-quantity', {
      'house.faults.yaml': 'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m',
    });
  });

  it('writes what was likely meant', () => {
    assertFixedTo(
      'unknown-quantity',
      {
        'house.faults.yaml': 'faults: 1\nbook:\n  early-lift:\n    evidence: flight.cary > 5 m # seen often',
      },
      'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m # seen often',
    );
  });
});
