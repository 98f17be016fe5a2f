// Tests of the check expression-not-allowed.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('expression-not-allowed', () => {
  it('marks what no expression may hold', () => {
    assertMarked('expression-not-allowed', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: flight.carry > 5 m && flight.total > 6 m
#                                ^^ error[expression-not-allowed]`,
    });
  });

  it('marks it at its characters in a list, in quotes and in a mapping', () => {
    assertMarked('expression-not-allowed', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence:
      - flight.carry > 5 m && flight.total > 6 m
#                          ^^ error[expression-not-allowed]
      - "flight.carry > 5 m && flight.total > 6 m"
#                           ^^ error[expression-not-allowed]
      - { expression: 'flight.carry > 5 m && flight.total > 6 m', weight: 2 }
#                                         ^^ error[expression-not-allowed]`,
    });
  });

  it('takes what is right', () => {
    assertNone('expression-not-allowed', {
      'house.faults.yaml':
        'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m and flight.total > 6 m',
    });
  });

  it('writes what was likely meant', () => {
    assertFixedTo(
      'expression-not-allowed',
      {
        'house.faults.yaml':
          'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m && flight.total > 6 m # seen often',
      },
      'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m and flight.total > 6 m # seen often',
    );
  });
});
