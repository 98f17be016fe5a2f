// Tests of the check change-changes-nothing.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const head = `swing: 1
misses: [heavy]
checkpoints: { address: { stance_width: 47 cm ± 1 cm } }
delivery: { path: 5 deg right ± 1 deg, face: 1 deg right ± 1 deg }
plan:
`;

describe('change-changes-nothing', () => {
  it('marks a value that is there, in any unit, and one that nobody can tell from it', () => {
    const analysis = assertMarked(
      'change-changes-nothing',
      `${head}  - { change: checkpoints.address.stance_width, to: 0.47 m, because: heavy }
#                                                   ^^^^^^ information[change-changes-nothing]
  - { change: delivery.path, to: 4.5 deg right, because: heavy }
#                                ^^^^^^^^^^^^^ information[change-changes-nothing]`,
    );
    assert.match(
      messageOf(analysis, 'change-changes-nothing'),
      /`0\.47 m`, where it stands already at 47\.0 cm ± 1\.0 cm/,
    );
  });

  it('marks a window in which it lies, and a value that only follows from what was entered', () => {
    assertMarked(
      'change-changes-nothing',
      `${head}  - { change: delivery.path, to: 0..6 deg right, because: heavy }
#                                ^^^^^^^^^^^^^^ information[change-changes-nothing]
  - { change: delivery.face_to_path, to: 4 deg left, because: heavy }
#                                        ^^^^^^^^^^ information[change-changes-nothing]`,
    );
  });

  it('takes what can be told from where it stands, and what nobody measured', () => {
    assertNone(
      'change-changes-nothing',
      `${head}  - { change: delivery.path, to: 3 deg right, because: heavy }
  - { change: checkpoints.impact.shaft_lean, to: 5 deg forward, because: heavy }
  - { change: checkpoints.address.stance_width, to: 40..44 cm, because: heavy }`,
    );
  });
});
