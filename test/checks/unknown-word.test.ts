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

  it('marks names of checks and relations by one rule', () => {
    assertMarked('unknown-word', {
      'swingwright.yaml': `swingwright: 1
relations:
  R 11: { says: delivery.face ≈ delivery.path ± 1 deg }
# ^^^^ error[unknown-word]
  r-11: { says: delivery.face ≈ delivery.path ± 1 deg }
checks:
  A b: { when: delivery.face > 1 deg, message: Open. }
# ^^^ error[unknown-word]
  a-b: { when: delivery.face > 1 deg, message: Open. }`,
    });
  });
});
