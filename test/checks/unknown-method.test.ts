// Tests of the check unknown-method.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-method', () => {
  it('marks a mistyped method', () => {
    assertMarked(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by rdar
#                       ^^^^ warning[unknown-method]`,
    );
  });

  it('takes a method of the registry', () => {
    assertNone(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by motion capture`,
    );
  });

  it('writes the nearest method', () => {
    assertFixedTo(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by rdar # new`,
      `swing: 1
delivery:
  attack: 3 deg down by radar # new`,
    );
  });
});
