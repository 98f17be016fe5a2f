// Tests of the check relation-does-not-hold.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, type Files } from './files.ts';

const workspace = `swingwright: 1
quantities:
  delivery.shaft_droop: { unit: deg, bounds: -5..15 deg, uncertainty: 0.5 deg }
relations:
  droop-and-lean: { says: delivery.shaft_droop ≈ 0.2 * checkpoints.impact.shaft_lean ± 0.5 deg }`;

const files = (droop: string, mark = ''): Files => ({
  'lesson.swing.yaml': `swing: 1
delivery:
  shaft_droop: [${droop} ± 0.2 deg, ${droop} ± 0.2 deg]
${mark}checkpoints:
  impact: { shaft_lean: [8 deg forward ± 0.5 deg, 8 deg forward ± 0.5 deg] }`,
  'swingwright.yaml': workspace,
});

describe('relation-does-not-hold', () => {
  it('marks the first entry that the relation joins, and links to the relation', () => {
    const told = files(
      '9 deg',
      '#              ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[relation-does-not-hold]\n',
    );
    assertMarked('relation-does-not-hold', told);
    const { findings } = analyseFiles(files('9 deg'));
    const found = findings.find(({ code }) => code === 'relation-does-not-hold');
    assert.match(found?.message ?? '', /`droop-and-lean`.*expected `delivery\.shaft_droop ≈/);
    assert.ok(found?.related.some(({ uri }) => uri.endsWith('swingwright.yaml')));
  });

  it('says nothing where it holds', () => {
    assertNone('relation-does-not-hold', files('1.6 deg'));
  });
});
