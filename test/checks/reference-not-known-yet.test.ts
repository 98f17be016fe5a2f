// Tests of the check reference-not-known-yet.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { assertNone } from './files.ts';

const uri = 'untitled:Untitled-1';

function codesOf(text: string): readonly string[] {
  const { findings, wanted } = analyse(uri, {
    file: (asked) => (asked === uri ? { kind: 'text', text } : undefined),
  });
  assert.deepEqual(wanted, [], 'looks for files beside one that lies nowhere');
  return findings.map(({ code, message, severity }) =>
    code === 'reference-not-known-yet' ? `${severity}: ${message}` : code,
  );
}

describe('reference-not-known-yet', () => {
  it('marks each path in a record that is not saved, and nothing that only the other file could tell', () => {
    const text =
      'swing: 1\nstudent: mira.student.yaml\ndate: 2026-05-14\nclub: hybrid\ntemplate: a.template.yaml\nfaults_from: b.faults.yaml\nfaults: [{ fault: low-hands }]\nshots: a.csv\n';
    const said = (path: string): string =>
      `information: Found \`${path}\` in a file that is not saved yet; expected the file to be saved, since paths start from its folder.`;
    assert.deepEqual(
      codesOf(text),
      ['mira.student.yaml', 'a.template.yaml', 'b.faults.yaml', 'a.csv'].map(said),
    );
  });

  it('marks what a fault book and a review refer to', () => {
    assert.equal(codesOf('faults: 1\nextends: house.faults.yaml\n').length, 1);
    assert.equal(codesOf('review: 1\nof: a.swing.yaml\n').length, 1);
  });

  it('takes a record that lies in a folder', () => {
    assertNone('reference-not-known-yet', {
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml',
      'mira.student.yaml': 'student: 1',
    });
  });
});
