// Tests of the check proof-already-met.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const head = `swing: 1
checkpoints: { impact: { lead_pressure: 74 % ± 3 % } }
delivery: { path: 1 deg left ± 1 deg, face: 3 deg right ± 1 deg }
plan:
  - change: checkpoints.address.ball_position
    to: 4 cm behind
`;

describe('proof-already-met', () => {
  it('marks a proof that was measured to hold, and says by which numbers', () => {
    const analysis = assertMarked(
      'proof-already-met',
      `${head}    proof: checkpoints.impact.lead_pressure > 70 %
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ information[proof-already-met]`,
    );
    assert.match(
      messageOf(analysis, 'proof-already-met'),
      /met already by pressure in the lead foot 74 % ± 3 %;/i,
    );
  });

  it('marks one that follows from what was measured', () => {
    assertMarked(
      'proof-already-met',
      `${head}    proof: delivery.face_to_path > 2 deg
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ information[proof-already-met]`,
    );
  });

  it('says nothing of what is not met, and of what was not measured', () => {
    for (const proof of [
      'checkpoints.impact.lead_pressure > 80 %',
      'delivery.attack < 0 deg',
      '2 cm > 1 cm',
      // Which every swing meets, and proof-proves-nothing tells of.
      'checkpoints.impact.lead_pressure >= 0 %',
    ])
      assertNone('proof-already-met', `${head}    proof: ${proof}`);
  });
});
