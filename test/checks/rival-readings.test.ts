// Tests of the check rival-readings.
import assert from 'node:assert/strict';
import { codesOf, analyseFiles, assertMarked, assertNone } from './files.ts';

describe('rival-readings', () => {
  it('marks the later of two readings that lie too far apart', () => {
    assertMarked(
      'rival-readings',
      `swing: 1
delivery:
  face: [1 deg right by radar, 14 deg right by radar]
#                              ^^^^^^^^^^^^^^^^^^^^^ warning[rival-readings]`,
    );
  });

  it('takes readings that their uncertainties allow', () => {
    assertNone(
      'rival-readings',
      `swing: 1
delivery:
  face: [1 deg right by radar, 3 deg right by eye]`,
    );
  });

  it('takes a reading that is marked doubtful with its wider uncertainty', () => {
    const face = (second: string) =>
      `swing: 1\ndelivery:\n  face: [1 deg right ± 1 deg, { value: ${second} }]`;
    assertNone('rival-readings', face('8 deg right ± 1 deg, doubtful: true'));
    assert.deepEqual(codesOf(analyseFiles(face('8 deg right ± 1 deg'))), ['rival-readings']);
  });

  it('reads a written ± with the coverage of the workspace', () => {
    const lesson = 'swing: 1\ndelivery:\n  face: [1 deg right ± 2 deg, 8 deg right ± 2 deg]';
    assertNone('rival-readings', lesson);
    const files = { 'lesson.swing.yaml': lesson, 'swingwright.yaml': 'swingwright: 1\ncoverage: 2' };
    assert.deepEqual(codesOf(analyseFiles(files)), ['rival-readings']);
  });
});
