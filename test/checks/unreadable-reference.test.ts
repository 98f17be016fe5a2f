// Tests of the check unreadable-reference.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { assertNone, messageOf, uriOf } from './files.ts';

const uri = uriOf('lesson.swing.yaml');

function analyseWith(text: string, unreadable: string) {
  const file = (asked: string): FileState => {
    if (asked === uri) return { kind: 'text', text };
    return asked.endsWith(unreadable)
      ? { kind: 'unreadable', reason: 'it is a folder' }
      : { kind: 'missing' };
  };
  return analyse(uri, { file });
}

describe('unreadable-reference', () => {
  it('marks the path of a file that cannot be read, and says why', () => {
    const analysis = analyseWith('swing: 1\nstudent: mira.student.yaml', 'mira.student.yaml');
    const finding = analysis.findings.find(({ code }) => code === 'unreadable-reference');
    assert.deepEqual(finding?.range, { start: { line: 1, character: 9 }, end: { line: 1, character: 26 } });
    assert.equal(
      messageOf(analysis, 'unreadable-reference'),
      'Found `mira.student.yaml`, which cannot be read (it is a folder); expected a file that can be read.',
    );
  });

  it('says at the start of a file that the file of its workspace cannot be read', () => {
    const [finding] = analyseWith('swing: 1', 'lessons/swingwright.yaml').findings;
    assert.equal(finding?.code, 'unreadable-reference');
    assert.equal(
      finding.message,
      'Found the `swingwright.yaml` of this workspace, which cannot be read (it is a folder); expected a file that can be read.',
    );
    assert.deepEqual(finding.range, { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } });
  });

  it('takes a file that can be read', () => {
    assertNone('unreadable-reference', {
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml',
      'mira.student.yaml': 'student: 1',
    });
  });
});
