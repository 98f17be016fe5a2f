// Tests of the check no-value-yet.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('no-value-yet', () => {
  it('marks the empty place after a key', () => {
    assertMarked(
      'no-value-yet',
      `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
delivery:
  attack:
#        | hint[no-value-yet]`,
    );
  });

  it('says at the first key what a record still waits for', () => {
    const analysis = assertMarked(
      'no-value-yet',
      `swing: 1
^^^^^ hint[no-value-yet]
date: 2026-05-14`,
    );
    assert.match(messageOf(analysis, 'no-value-yet'), /`student`.*`club`/);
  });

  it('takes a key with a value', () => {
    assertNone(
      'no-value-yet',
      `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
delivery:
  attack: 3 deg down`,
    );
  });
});
