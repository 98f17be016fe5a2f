// Tests of the check unknown-direction.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-direction', () => {
  it('marks a mistyped direction', () => {
    assertMarked(
      'unknown-direction',
      `swing: 1
delivery:
  attack: 3 deg dwon
#               ^^^^ error[unknown-direction]`,
    );
  });

  it('takes a known direction', () => {
    assertNone(
      'unknown-direction',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });

  it('writes the nearest direction', () => {
    assertFixedTo(
      'unknown-direction',
      `swing: 1
delivery:
  attack: 3 deg dwon by eye`,
      `swing: 1
delivery:
  attack: 3 deg down by eye`,
    );
  });
});
