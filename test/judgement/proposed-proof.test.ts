// What a proposed change is proved by: never something that the record meets already, and turned round for a left-handed player.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import { proofAgainst, proofHalfWay } from '../../src/judgement/proposed-proof.ts';
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

  it('else lies half-way, in as few decimals as lie between', () => {
    const degree = Math.PI / 180;
    const attack = builtIn.find('delivery.attack')!;
    assert.equal(proofHalfWay(attack, -1 * degree, -4 * degree), 'delivery.attack < -3 deg');
    assert.equal(proofHalfWay(attack, 0, 1 * degree), 'delivery.attack > 0.5 deg');
  });
});
