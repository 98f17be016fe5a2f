// Tests of what a workspace file changes: severities, coverage and methods of measuring.
import assert from 'node:assert/strict';
import { workspaceCandidates } from '../../src/analysis/workspace.ts';
import { analyseFiles, codesOf } from '../checks/files.ts';

const steep = 'swing: 1\ndelivery:\n  attack: 20 deg down\n';

describe('the workspace', () => {
  it('is looked for from the folder of the file up to the root', () => {
    assert.deepEqual(workspaceCandidates('file:///a/b/c.swing.yaml'), [
      'file:///a/b/swingwright.yaml',
      'file:///a/swingwright.yaml',
      'file:///swingwright.yaml',
    ]);
    assert.deepEqual(workspaceCandidates('vscode-vfs://github/a/c.swing.yaml'), [
      'vscode-vfs://github/a/swingwright.yaml',
      'vscode-vfs://github/swingwright.yaml',
    ]);
  });

  it('changes how loud a finding is, and turns it off', () => {
    const severityWith = (severity: string) =>
      analyseFiles({
        'lesson.swing.yaml': steep,
        'swingwright.yaml': `swingwright: 1\nseverities: { outside-practice: ${severity} }`,
      })
        .findings.filter(({ code }) => code === 'outside-practice')
        .map((finding) => finding.severity);
    assert.deepEqual(severityWith('error'), ['error']);
    assert.deepEqual(severityWith('hint'), ['hint']);
    assert.deepEqual(severityWith('off'), []);
  });

  it('cannot turn off what says that a text cannot be read as meant', () => {
    const { findings } = analyseFiles({
      'lesson.swing.yaml': 'swing: 1\ndelivery: 41 m/s',
      'swingwright.yaml': 'swingwright: 1\nseverities: { wrong-shape: off }',
    });
    assert.deepEqual(
      findings.filter(({ code }) => code === 'wrong-shape').map(({ severity }) => severity),
      ['error'],
    );
  });

  it('says how many standard uncertainties a written ± stands for', () => {
    const u = (workspace: string) =>
      analyseFiles({
        'lesson.swing.yaml': 'swing: 1\ndelivery:\n  club_speed: 41 m/s ± 1 m/s',
        'swingwright.yaml': workspace,
      }).derivation?.values.get('delivery.club_speed')?.u;
    assert.equal(u('swingwright: 1'), 1);
    assert.equal(u('swingwright: 1\ncoverage: 2'), 0.5);
  });

  it('adds methods of measuring that a record may then name', () => {
    const lesson = 'swing: 1\ndelivery:\n  club_speed: 41 m/s by cart';
    assert.deepEqual(codesOf(analyseFiles(lesson)), ['unknown-method']);
    const analysis = analyseFiles({
      'lesson.swing.yaml': lesson,
      'swingwright.yaml':
        'swingwright: 1\nmethods:\n  cart: { meaning: the camera cart, uncertainty: { speed: 0.25 m/s } }',
    });
    assert.deepEqual(codesOf(analysis), []);
    assert.equal(analysis.derivation?.values.get('delivery.club_speed')?.u, 0.25);
  });

  it('applies to itself', () => {
    const { findings } = analyseFiles({
      'swingwright.yaml': 'swingwright: 1\nseverities: { unknown-code: error, outside-practise: off }',
    });
    assert.deepEqual(
      findings.map(({ code, severity }) => [code, severity]),
      [['unknown-code', 'error']],
    );
  });
});
