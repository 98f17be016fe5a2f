// Tests of the check dimensions-do-not-match.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('dimensions-do-not-match', () => {
  it('marks a number without a unit beside a length', () => {
    assertMarked('dimensions-do-not-match', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: flight.carry > 5
#                            ^ error[dimensions-do-not-match]`,
    });
  });

  it('marks it at its characters in a list, in quotes and in a mapping', () => {
    assertMarked('dimensions-do-not-match', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence:
      - flight.carry > 5
#                      ^ error[dimensions-do-not-match]
      - "flight.carry > 5"
#                       ^ error[dimensions-do-not-match]
      - { expression: 'flight.carry > 5', weight: 2 }
#                                     ^ error[dimensions-do-not-match]`,
    });
  });

  it('takes what is right', () => {
    assertNone('dimensions-do-not-match', {
      'house.faults.yaml': 'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m',
    });
  });

  it('writes what was likely meant', () => {
    assertFixedTo(
      'dimensions-do-not-match',
      { 'house.faults.yaml': 'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 # seen often' },
      'faults: 1\nbook:\n  early-lift:\n    evidence: flight.carry > 5 m # seen often',
    );
  });
});
