// Tests of the check unknown-function.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-function', () => {
  it('marks a name that is no function', () => {
    assertMarked('unknown-function', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: abz(flight.curve) > 5 m
#             ^^^ error[unknown-function]`,
    });
  });

  it('marks it at its characters in a list, in quotes and in a mapping', () => {
    assertMarked('unknown-function', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence:
      - abz(flight.curve) > 5 m
#       ^^^ error[unknown-function]
      - "abz(flight.curve) > 5 m"
#        ^^^ error[unknown-function]
      - { expression: 'abz(flight.curve) > 5 m', weight: 2 }
#                      ^^^ error[unknown-function]`,
    });
  });

  it('takes what is right', () => {
    assertNone('unknown-function', {
      'house.faults.yaml': 'faults: 1\nbook:\n  early-lift:\n    evidence: abs(flight.curve) > 5 m',
    });
  });

  it('writes what was likely meant', () => {
    assertFixedTo(
      'unknown-function',
      {
        'house.faults.yaml':
          'faults: 1\nbook:\n  early-lift:\n    evidence: abz(flight.curve) > 5 m # seen often',
      },
      'faults: 1\nbook:\n  early-lift:\n    evidence: abs(flight.curve) > 5 m # seen often',
    );
  });
});
