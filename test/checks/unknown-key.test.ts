// Tests of the check unknown-key.
import assert from 'node:assert/strict';
import { analyseFiles, assertFixedTo, assertMarked, assertNone, messageOf } from './files.ts';

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

  it('names the near key and three others', () => {
    const message = messageOf(analyseFiles('swing: 1\ndelivery: { atack: 3 deg down }'), 'unknown-key');
    assert.match(message, /perhaps meant as `attack`; expected `attack`(, `\w+`){3}, …\.$/);
  });
});
