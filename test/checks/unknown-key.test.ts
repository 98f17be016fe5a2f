// Tests of the check unknown-key.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-key', () => {
  it('marks a mistyped key', () => {
    assertMarked(
      'unknown-key',
      `swing: 1
delivery:
  atack: 3 deg down
# ^^^^^ warning[unknown-key]`,
    );
  });

  it('takes a known key', () => {
    assertNone(
      'unknown-key',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });

  it('writes the nearest key', () => {
    assertFixedTo(
      'unknown-key',
      `swing: 1
delivery:
  atack: 3 deg down # steep`,
      `swing: 1
delivery:
  attack: 3 deg down # steep`,
    );
  });
});
