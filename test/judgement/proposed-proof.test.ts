// What a proposed change is proved by: never something that the record meets already, and turned round for a left-handed player.
import assert from 'node:assert/strict';
import { forecastOf, proposalOf } from '../../src/analysis/plan.ts';
import { proofAgainst, proofHalfWay, proofWithin } from '../../src/judgement/proposed-proof.ts';
import type { Prediction } from '../../src/judgement/prediction.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { analyseFiles } from '../checks/files.ts';

const proofOf = (evidence: string, hand: 'left' | 'right', entries: string): string | undefined => {
  const { subject, account } = analyseFiles({
    'lesson.swing.yaml': `swing: 1\nstudent: a.student.yaml\nfaults_from: b.faults.yaml\nfaults: [{ fault: x }]\n${entries}`,
    'a.student.yaml': `student: 1\nhand: ${hand}\n`,
    'b.faults.yaml': `faults: 1\nbook:\n  x:\n    title: X\n    evidence: ${evidence}\n`,
  });
  assert.ok(account !== undefined && forecastOf(subject, account) !== undefined);
  const foreseer = { account, hand, registry: builtIn, coverage: 1, faults: [] };
  return proofAgainst(subject.judgement!.stated[0]!, foreseer);
};

describe('a proof', () => {
  it('is the evidence turned round, unless that is met already', () => {
    const [evidence, at] = [
      'checkpoints.impact.lead_pressure < 70 %',
      'checkpoints: { impact: { lead_pressure: ',
    ] as const;
    assert.equal(proofOf(evidence, 'right', `${at}60 % } }`), 'checkpoints.impact.lead_pressure >= 70 %');
    assert.equal(proofOf(evidence, 'right', `${at}80 % } }`), undefined);
  });

  it('speaks of left and right as the player sees them', () => {
    const evidence = 'delivery.path < -4 deg';
    assert.equal(proofOf(evidence, 'right', 'delivery: { path: 6 deg left }'), 'delivery.path >= -4 deg');
    assert.equal(proofOf(evidence, 'left', 'delivery: { path: 6 deg right }'), 'delivery.path <= 4 deg');
  });

  it('is nothing where the evidence is more than one quantity against a number', () => {
    const entries = 'delivery: { path: 0 deg, face: 6 deg right }';
    assert.equal(proofOf('delivery.face - delivery.path > 4 deg', 'right', entries), undefined);
  });

  it('asks for no more than the goal where the evidence would outlast what is predicted', () => {
    const proofFor = (size: string): string => {
      const { subject, account } = analyseFiles({
        'lesson.swing.yaml': `swing: 1
student: a.student.yaml
club: iron
faults_from: b.faults.yaml
checkpoints: { address: { ball_position: 8 cm behind by tape } }
delivery: { club_speed: 36 m/s by radar, low_point: { ahead: 2 cm behind by radar } }
faults: [{ fault: x }]
goals: [{ contact: ball before turf }]
`,
        'a.student.yaml': 'student: 1\nhand: right\nbag: { iron: { kind: iron, loft: 32 deg } }\n',
        'b.faults.yaml': `faults: 1
book:
  x:
    title: X
    evidence: delivery.low_point.ahead < 3 cm
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind, size: ${size} }]
    changes: [{ change: checkpoints.address.ball_position, by: 3 cm behind, when: setup }]
`,
      });
      const { changes } = proposalOf(subject, account, () => {})!;
      return changes.find(({ because }) => because.includes('x'))!.proof;
    };
    assert.equal(proofFor('9 cm'), 'delivery.low_point.ahead >= 3 cm');
    assert.equal(proofFor('2.2 cm ± 0.5 cm'), 'delivery.low_point.ahead >= 0 cm');
  });

  it('is half of what is predicted only where that leads toward it', () => {
    const { account } = analyseFiles('swing: 1\ndelivery: { low_point: { ahead: 1 cm ahead } }\n');
    assert.ok(account !== undefined);
    const foreseer = { account, hand: 'right', registry: builtIn, coverage: 1, faults: [] } as const;
    const quantity = builtIn.find('delivery.low_point.ahead')!;
    const proofWhere = (then: number): string => {
      const moved = {
        quantity,
        origin: 'model',
        value: then,
        u: 0.002,
        difference: null,
        uDifference: null,
      } as const;
      const belief = {
        of: () => ({ means: Float64Array.of(then), covariance: Float64Array.of(0.002 ** 2) }),
      };
      const prediction: Prediction = {
        outlooks: new Map([[quantity.id, moved]]),
        kept: [],
        belief,
        without: [],
      };
      return proofWithin('delivery.low_point.ahead >= 6 cm', prediction, [], foreseer);
    };
    assert.equal(proofWhere(0.07), 'delivery.low_point.ahead >= 6 cm');
    assert.equal(proofWhere(0.03), 'delivery.low_point.ahead > 2 cm');
    assert.equal(proofWhere(-0.03), 'delivery.low_point.ahead >= 6 cm');
  });

  it('else lies half-way, in as few decimals as lie between', () => {
    const degree = Math.PI / 180;
    const attack = builtIn.find('delivery.attack')!;
    assert.equal(proofHalfWay(attack, -1 * degree, -4 * degree), 'delivery.attack < -3 deg');
    assert.equal(proofHalfWay(attack, 0, 1 * degree), 'delivery.attack > 0.5 deg');
  });
});
