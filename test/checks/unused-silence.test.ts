// Tests of the check unused-silence.
import assert from 'node:assert/strict';
import { analyseFiles, assertFixedTo, assertMarked, assertNone, codesOf } from './files.ts';

describe('unused-silence', () => {
  it('marks a comment that silences nothing', () => {
    assertMarked(
      'unused-silence',
      `swing: 1
delivery:
  attack: 4 deg down # accept[outside-practice]: deep grass
#                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[unused-silence]`,
    );
  });

  it('takes a comment that silences something', () => {
    assertNone(
      'unused-silence',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practice]: deep grass`,
    );
  });

  it('removes the comment and the spaces before it', () => {
    assertFixedTo(
      'unused-silence',
      `swing: 1
delivery:
  attack: 4 deg down # accept[outside-practice]: deep grass
  path: 1 deg right`,
      `swing: 1
delivery:
  attack: 4 deg down
  path: 1 deg right`,
    );
  });

  it('removes the whole line of a comment that stands alone', () => {
    assertFixedTo(
      'unused-silence',
      'swing: 1\r\ndelivery:\r\n  # accept[outside-practice]: deep grass\r\n  attack: 4 deg down\r\n',
      'swing: 1\r\ndelivery:\r\n  attack: 4 deg down\r\n',
    );
  });

  it('marks and removes one code of several', () => {
    const text =
      'swing: 1\ndelivery:\n  attack: 20 deg down # accept[bare-number, outside-practice]: deep grass';
    assertFixedTo('unused-silence', text, text.replace('bare-number, ', ''));
    const last = text.replace('bare-number, outside-practice', 'outside-practice , bare-number');
    assertFixedTo('unused-silence', last, last.replace(', bare-number', ''));
  });

  it('marks a comment on what cannot be accepted', () => {
    const text = 'swing: 1\ndelivery: 41 m/s # accept[wrong-shape]: so what';
    const codes = codesOf(analyseFiles(text));
    assert.deepEqual(codes, ['wrong-shape', 'unused-silence']);
  });

  it('marks a severity that turns off what cannot be turned off', () => {
    assertMarked('unused-silence', {
      'swingwright.yaml': `swingwright: 1
severities:
  yaml-syntax: off
# ^^^^^^^^^^^ warning[unused-silence]
  no-value-yet: off`,
    });
  });

  it('says nothing of a comment on a finding that the workspace has turned off', () => {
    assertNone('unused-silence', {
      'lesson.swing.yaml':
        'swing: 1\ndelivery:\n  attack: 20 deg down # accept[outside-practice]: deep grass',
      'swingwright.yaml': 'swingwright: 1\nseverities: { outside-practice: off }',
    });
  });
});
