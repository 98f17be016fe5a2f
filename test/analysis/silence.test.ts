// Tests of which findings a comment silences: those of its code that begin on its line.
import assert from 'node:assert/strict';
import { analyseFiles, codesOf } from '../checks/files.ts';

function codesIn(text: string): readonly string[] {
  return codesOf(analyseFiles(text));
}

describe('a silence', () => {
  it('covers its own line', () => {
    assert.deepEqual(
      codesIn('swing: 1\ndelivery:\n  attack: 20 deg down # accept[outside-practice]: deep grass'),
      [],
    );
  });

  it('covers the next line when it stands alone', () => {
    assert.deepEqual(
      codesIn('swing: 1\ndelivery:\n  # accept[outside-practice]: deep grass\n  attack: 20 deg down'),
      [],
    );
  });

  it('covers neither another line nor another code', () => {
    assert.deepEqual(
      codesIn('swing: 1\ndelivery: # accept[outside-practice]: deep grass\n  attack: 20 deg down'),
      ['unused-silence', 'outside-practice'],
    );
    assert.deepEqual(
      codesIn('swing: 1\ndelivery:\n  attack: 20 deg down # accept[bare-number]: deep grass'),
      ['outside-practice', 'unused-silence'],
    );
  });

  it('covers a reference that leads nowhere', () => {
    assert.deepEqual(
      codesIn('swing: 1\nstudent: nobody.student.yaml # accept[missing-reference]: still to come'),
      [],
    );
  });

  it('counts lines the same with either line break', () => {
    const text =
      'swing: 1\r\ndelivery:\r\n  # accept[outside-practice]: deep grass\r\n  attack: 20 deg down\r\n';
    assert.deepEqual(codesIn(text), []);
  });
});
