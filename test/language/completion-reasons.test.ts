// Reasons are proposed as the check accepts them: stated faults, misses and keys of goals, and nothing else.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { practice, snapshotWith } from '../samples.ts';
import { proposed, written } from './proposals.ts';

const path = 'tove/2026-12-24-seven-iron.swing.yaml';
const source = `swing: 1
student: tove.student.yaml
faults_from: ../house.faults.yaml
faults: [{ fault: trail-side-loaded }]
misses: [heavy]
goals: [{ carry: 130 m, shape: draw }]
plan:
  - change: delivery.path
    to: 1 deg right
    because: [$0]
`;

describe('the reasons of a change', () => {
  it('are what the record states', () => {
    const labels = proposed(path, source).items.map(({ label }) => label);
    assert.deepEqual(labels.slice(0, 4), ['trail-side-loaded', 'heavy', 'carry', 'shape']);
  });

  it('are found fault with in no case', () => {
    const { text, items } = proposed(path, source);
    const uri = practice + path;
    for (const item of items) {
      const after = written(text, item);
      const { findings } = analyse(uri, snapshotWith({ [uri]: after }));
      assert.ok(!findings.some(({ code }) => code === 'unknown-reason'), item.label);
    }
  });
});
