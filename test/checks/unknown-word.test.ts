// Tests of the check unknown-word.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-word', () => {
  it('marks a hand that nobody has', () => {
    assertMarked('unknown-word', {
      'mira.student.yaml': `student: 1
hand: lefft
#     ^^^^^ error[unknown-word]`,
    });
  });

  it('takes a left hand', () => {
    assertNone('unknown-word', {
      'mira.student.yaml': `student: 1
hand: left`,
    });
  });

  it('writes the nearest word', () => {
    assertFixedTo(
      'unknown-word',
      {
        'mira.student.yaml': `student: 1
hand: lefft # since school`,
      },
      `student: 1
hand: left # since school`,
    );
  });
});
