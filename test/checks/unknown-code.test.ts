// Tests of the check unknown-code.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-code', () => {
  it('marks the code in a comment', () => {
    assertMarked(
      'unknown-code',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practise]: deep grass
#                              ^^^^^^^^^^^^^^^^ warning[unknown-code]`,
    );
  });

  it('takes the code of a check', () => {
    assertNone(
      'unknown-code',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practice]: deep grass`,
    );
  });

  it('writes the nearest code', () => {
    assertFixedTo(
      'unknown-code',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practise]: deep grass`,
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practice]: deep grass`,
    );
  });

  it('marks the code in the severities of the workspace', () => {
    assertMarked('unknown-code', {
      'swingwright.yaml': `swingwright: 1
severities:
  outside-practise: off
# ^^^^^^^^^^^^^^^^ warning[unknown-code]`,
    });
  });
});
