// Proofs of a plan: what is wrong in them is told at the very characters, and who writes and who judges them sees the same sides.
import assert from 'node:assert/strict';
import { proposalOf } from '../../src/analysis/plan.ts';
import { measuredOf } from '../../src/judgement/measured.ts';
import { judgeOutcome, type ProofState } from '../../src/judgement/outcome.ts';
import type { Measured } from '../../src/judgement/measured.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { analyseFiles, assertMarked } from '../checks/files.ts';

const withProof = (proof: string): string => `swing: 1
misses: [slice]
plan:
  - change: delivery.attack
    because: slice
    proof: ${proof}`;

describe('a proof that cannot be evaluated', () => {
  for (const [what, code, proof, marks] of [
    ['a quantity that nobody knows', 'unknown-quantity', 'delivery.pth < 2 deg', '^^^^^^^^^^^^'],
    ['an angle beside a length', 'dimensions-do-not-match', 'delivery.path < 2 m', '^^^^^^^^^^^^^^^^^^^'],
    ['a function that nobody knows', 'unknown-function', 'sqr(delivery.path) > 2', '^^^'],
    ['a sign too few', 'unreadable-expression', 'delivery.path <', '              ^'],
    ['a call that is not allowed', 'expression-not-allowed', 'constructor("x") > 1', '            ^^^'],
  ] as const)
    it(`is told at its characters: ${what}`, () => {
      assertMarked(code, `${withProof(proof)}\n#${' '.repeat(10)}${marks} error[${code}]`);
    });

  it('is nothing found where it can be', () => {
    const { findings } = analyseFiles(withProof('delivery.path < 2 deg and flight.carry > 150 m'));
    assert.deepEqual(
      findings.filter(({ severity }) => severity === 'error'),
      [],
    );
  });
});

const lesson = (hand: 'left' | 'right', delivery: string, rest = ''): ReturnType<typeof analyseFiles> =>
  analyseFiles({
    'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down ± 0.5 deg, ${delivery} }
${rest}`,
    'ansa.student.yaml': `student: 1
hand: ${hand}
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`,
  });

const measured = (one: ReturnType<typeof analyseFiles>): Measured => measuredOf(one.account!, undefined);

function statesOf(hand: 'left' | 'right', proof: string, then: string): readonly ProofState[] {
  const before = lesson(hand, 'path: 3 deg left, face: 0 deg', `plan: [{ proof: ${proof} }]`);
  const { plan, predicted } = before.document as SwingRecord;
  const planned = { plan, predicted, measured: measured(before), coverage: 1, registry: builtIn };
  return judgeOutcome(planned, measured(lesson(hand, then))).proofs.map(({ state }) => state);
}

describe('a proof of left and right', () => {
  it('is read as the record speaks, whichever hand plays', () => {
    for (const hand of ['right', 'left'] as const) {
      assert.deepEqual(statesOf(hand, 'delivery.path > 2 deg', 'path: 5 deg right ± 1 deg'), ['met']);
      assert.deepEqual(statesOf(hand, 'delivery.path > 2 deg', 'path: 5 deg left ± 1 deg'), ['not met']);
      // Computed from the other two, through the fit, which knows right-handers only.
      const apart = 'path: 1 deg left ± 0.5 deg, face: 5 deg right ± 0.5 deg';
      assert.deepEqual(statesOf(hand, 'delivery.face_to_path > 2 deg and delivery.path < 0 deg', apart), [
        'met',
      ]);
      assert.deepEqual(statesOf(hand, 'delivery.face_to_path < 2 deg', apart), ['not met']);
    }
  });

  it('is proposed so that the change made as proposed meets it, and the swing of today does not', () => {
    for (const [hand, side, other] of [
      ['right', 'left', 'right'],
      ['left', 'right', 'left'],
    ] as const) {
      const delivery = `path: 3 deg ${side} ± 0.5 deg, face: 2 deg ${other} ± 0.5 deg`;
      const goals = 'goals: [{ curve: 4 m left..4 m right }]';
      const today = lesson(hand, delivery, goals);
      const { changes } = proposalOf(today.subject, today.account, () => undefined)!;
      const sided = changes.filter(({ quantity }) => quantity.lateral);
      assert.ok(sided.length > 0, hand);
      for (const { quantity, to, proof } of sided) {
        const asked = { ...measured(today), of: () => undefined };
        const { document } = lesson(hand, delivery, `plan: [{ proof: ${proof} }]`);
        const planned = {
          plan: (document as SwingRecord).plan,
          predicted: new Map(),
          measured: asked,
          coverage: 1,
          registry: builtIn,
        };
        const made: Measured = {
          of: () => ({ value: to, u: 0.001, how: 'entered', shots: undefined, isInDoubt: false }),
          joint: () => ({ means: Float64Array.of(to), covariance: Float64Array.of(1e-6) }),
        };
        assert.deepEqual(
          [made, measured(today)].map((after) => judgeOutcome(planned, after).proofs[0]!.state),
          ['met', 'not met'],
          `${hand} ${quantity.id} ${proof}`,
        );
      }
    }
  });
});
