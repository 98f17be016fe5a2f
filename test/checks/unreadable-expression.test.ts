// Tests of the check unreadable-expression.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

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

  it('says what is to come behind its end', () => {
    const said = (evidence: string): string =>
      messageOf(
        analyseFiles({ 'house.faults.yaml': `faults: 1\nbook: { early-lift: { evidence: "${evidence}" } }` }),
        'unreadable-expression',
      );
    assert.match(said('delivery.path >'), /ends with `>`; expected a value or a condition behind it\.$/);
    assert.match(said('not'), /ends with `not`; expected a value or a condition behind it\.$/);
    assert.match(
      said('(delivery.path > 3 deg'),
      /ends with `3 deg`; expected a closing bracket behind it\.$/,
    );
  });

  it('takes what is right', () => {
    assertNone('unreadable-expression', {
      'house.faults.yaml':
        'faults: 1\nbook:\n  early-lift:\n    evidence: checkpoints.impact.head_height > 4 cm',
    });
  });

  it('marks a brace in a message that nothing closes', () => {
    assertMarked('unreadable-expression', {
      'swingwright.yaml': `swingwright: 1
checks:
  open: { when: delivery.face > 1 deg, message: "Face {delivery.face and {delivery.path}." }
#                                                     ^^^^^^^^^^^^^^^^^^ error[unreadable-expression]
  shut: { when: delivery.face < 1 deg, message: "Face {delivery.face" }
#                                                     ^^^^^^^^^^^^^^ error[unreadable-expression]`,
    });
  });
});
