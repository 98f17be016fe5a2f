// Tests of the check unreadable-expression.
import { assertMarked, assertNone } from './files.ts';

describe('unreadable-expression', () => {
  it('marks an expression that breaks off', () => {
    assertMarked('unreadable-expression', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: checkpoints.impact.head_height >
#                                            ^ error[unreadable-expression]`,
    });
  });

  it('marks it at its characters in a list, in quotes and in a mapping', () => {
    assertMarked('unreadable-expression', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence:
      - checkpoints.impact.head_height >
#                                      ^ error[unreadable-expression]
      - "checkpoints.impact.head_height >"
#                                       ^ error[unreadable-expression]
      - { expression: 'checkpoints.impact.head_height >', weight: 2 }
#                                                     ^ error[unreadable-expression]`,
    });
  });

  it('takes what is right', () => {
    assertNone('unreadable-expression', {
      'house.faults.yaml':
        'faults: 1\nbook:\n  early-lift:\n    evidence: checkpoints.impact.head_height > 4 cm',
    });
  });
});
