// References are links to the files that they name.
import assert from 'node:assert/strict';
import { findLinks } from '../../src/language/index.ts';
import { analysed } from './analysed.ts';

describe('links', () => {
  it('lead from each reference to its file, whether it is there or not', () => {
    const text = 'swing: 1\nstudent: ../m%20x.student.yaml\nshots: shots/a b.csv\n';
    const found = findLinks(analysed(text)).map(({ range, target }) => {
      const line = text.split('\n')[range.start.line]!;
      return [line.slice(range.start.character, range.end.character), target];
    });
    assert.deepEqual(found, [
      ['../m%20x.student.yaml', 'file:///m%2520x.student.yaml'],
      ['shots/a b.csv', 'file:///lessons/shots/a%20b.csv'],
    ]);
  });

  it('lead nowhere from a path that leaves the folders', () => {
    assert.deepEqual(findLinks(analysed('swing: 1\nstudent: http://example.org/a.student.yaml\n')), []);
  });
});
