// Verdicts on stated faults, and the numbers and the mirror behind them.
import assert from 'node:assert/strict';
import type { Judgement, StatedVerdict } from '../../src/judgement/judgement.ts';
import { contradictedUpTo, supportedFrom, verdictOf } from '../../src/judgement/verdict.ts';
import { normalBelow } from '../../src/model/quantiles.ts';
import { analyseFiles } from '../checks/files.ts';

const book = `faults: 1
book:
  late-weight:
    at: [lead_arm_parallel_down, impact]
    evidence:
      - checkpoints.lead_arm_parallel_down.lead_pressure < 60 %
      - { expression: checkpoints.impact.lead_pressure < 70 %, weight: 3 }
  open-face:
    evidence: delivery.face - delivery.path > 3 deg
`;

function judged(record: string, faults = book, student = 'student: 1\nhand: right\n'): Judgement {
  const { subject } = analyseFiles({
    'lesson.swing.yaml': `swing: 1\nstudent: ansa.student.yaml\nfaults_from: house.faults.yaml\n${record}`,
    'house.faults.yaml': faults,
    'ansa.student.yaml': student,
  });
  assert.ok(subject.judgement);
  return subject.judgement;
}

function first(record: string, faults?: string, student?: string): StatedVerdict {
  return judged(record, faults, student).stated[0]!;
}

const pressures = (down: string, impact: string): string => `checkpoints:
  lead_arm_parallel_down: { lead_pressure: ${down} }
  impact: { lead_pressure: ${impact} }
`;

describe('a verdict', () => {
  it('is that of the probability, cut at its thresholds', () => {
    assert.equal(verdictOf(supportedFrom), 'supported');
    assert.equal(verdictOf(supportedFrom - 0.01), 'cannot tell');
    assert.equal(verdictOf(contradictedUpTo + 0.01), 'cannot tell');
    assert.equal(verdictOf(contradictedUpTo), 'contradicted');
    assert.equal(verdictOf(undefined), 'cannot tell');
  });

  it('comes from the distance to the limit over the uncertainty', () => {
    const { verdict, probability } = first(
      `${pressures('', '64 % ± 4 %')}faults: [{ fault: late-weight, at: impact }]`,
    );
    assert.equal(verdict, 'supported');
    assert.ok(Math.abs(probability! - normalBelow(1.5)) < 1e-9);
  });

  it('at a checkpoint takes only the evidence that speaks of it', () => {
    const record = pressures('80 % ± 2 %', '50 % ± 2 %');
    const at = (checkpoint: string) => first(`${record}faults: [{ fault: late-weight, at: ${checkpoint} }]`);
    assert.equal(at('impact').verdict, 'supported');
    assert.equal(at('lead_arm_parallel_down').verdict, 'contradicted');
    assert.equal(at('impact').lines.length, 1);
  });

  it('without a checkpoint weighs all of the evidence', () => {
    const { probability } = first(`${pressures('80 % ± 2 %', '50 % ± 2 %')}faults: [{ fault: late-weight }]`);
    // The line that holds weighs 3 of 4.
    assert.ok(Math.abs(probability! - 0.75) < 1e-6);
  });

  it('cannot be told where less than half of the evidence can', () => {
    const one = first(`${pressures('50 %', '')}faults: [{ fault: late-weight }]`);
    assert.deepEqual([one.verdict, one.probability], ['cannot tell', undefined]);
    assert.deepEqual(
      one.lines.flatMap(({ missing }) => missing.map(({ id }) => id)),
      ['checkpoints.impact.lead_pressure'],
    );
    const enough = first(`${pressures('', '50 % ± 2 %')}faults: [{ fault: late-weight }]`);
    assert.equal(enough.verdict, 'supported');
  });

  it('cannot be told from evidence that cannot be read', () => {
    const broken = 'faults: 1\nbook: { late-weight: { evidence: pressure < 3 } }';
    assert.equal(first('faults: [{ fault: late-weight }]', broken).verdict, 'cannot tell');
  });

  it('reads a book as for a right-handed player and mirrors it for a left-handed one', () => {
    const record = (side: string) =>
      `delivery: { face: 6 deg ${side} by radar, path: 0 deg by radar }\nfaults: [{ fault: open-face }]`;
    const left = 'student: 1\nhand: left\n';
    assert.equal(first(record('right')).verdict, 'supported');
    assert.equal(first(record('left')).verdict, 'contradicted');
    assert.equal(first(record('left'), book, left).verdict, 'supported');
    assert.equal(first(record('right'), book, left).verdict, 'contradicted');
    const [line] = first(record('left'), book, left).lines;
    assert.ok(line!.values[0]!.value < 0, 'values are shown as the player sees them');
  });

  it('cannot be told of a side while the hand is not known', () => {
    const record = 'delivery: { face: 6 deg right, path: 0 deg }\nfaults: [{ fault: open-face }]';
    assert.equal(first(record, book, 'student: 1\n').verdict, 'cannot tell');
  });

  it('takes the fault of the nearest book', () => {
    const { subject } = analyseFiles({
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: own.faults.yaml\nflight: { carry: 100 m }\nfaults: [{ fault: short }, { fault: far }]',
      'own.faults.yaml':
        'faults: 1\nextends: base.faults.yaml\nbook: { short: { evidence: flight.carry < 150 m } }',
      'base.faults.yaml':
        'faults: 1\nbook: { short: { evidence: flight.carry < 50 m }, far: { evidence: flight.carry > 200 m } }',
    });
    assert.deepEqual(
      subject.judgement?.stated.map(({ verdict, uri }) => [verdict, uri.slice(uri.lastIndexOf('/') + 1)]),
      [
        ['supported', 'own.faults.yaml'],
        ['contradicted', 'base.faults.yaml'],
      ],
    );
  });

  it('of a fault that nobody stated is that of the checkpoint where it shows best', () => {
    const { unstated } = judged(pressures('40 % ± 2 %', '90 % ± 2 %'));
    assert.deepEqual(
      unstated.map(({ fault, at }) => [fault.id.value, at]),
      [['late-weight', 'lead_arm_parallel_down']],
    );
    assert.deepEqual(judged(pressures('59 % ± 2 %', '90 % ± 2 %')).unstated, []);
  });
});
