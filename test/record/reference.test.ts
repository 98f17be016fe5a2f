import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';
import { referencesOf, resolveReference } from '../../src/record/reference.ts';

describe('a reference', () => {
  it('is relative to the file that holds it', () => {
    const base = 'file:///lessons/imke/2026-05-14.swing.yaml';
    assert.equal(resolveReference(base, '../imke.student.yaml'), 'file:///lessons/imke.student.yaml');
    assert.equal(resolveReference(base, './a b.csv'), 'file:///lessons/imke/a%20b.csv');
    assert.equal(resolveReference(base, 'shots/ä.csv'), 'file:///lessons/imke/shots/%C3%A4.csv');
  });

  it('stays in a virtual file system', () => {
    assert.equal(
      resolveReference('vscode-vfs://github/someone/lessons/a.swing.yaml', '../house.faults.yaml'),
      'vscode-vfs://github/someone/house.faults.yaml',
    );
    assert.equal(resolveReference('memfs:/a/b.swing.yaml', 'c.student.yaml'), 'memfs:/a/c.student.yaml');
  });

  it('keeps the authority and cannot climb above the root', () => {
    assert.equal(
      resolveReference('vscode-vfs://github/a.swing.yaml', '../../../b.student.yaml'),
      'vscode-vfs://github/b.student.yaml',
    );
  });

  it('is refused when it is absolute, has a scheme, or says nothing', () => {
    for (const path of [
      '/etc/a.yaml',
      '//host/a.yaml',
      'file:///a.yaml',
      'https://a/b',
      'C:\\a.yaml',
      'C:/a',
      '..\\a.yaml',
      '',
      '  ',
      'a\0b',
    ])
      assert.equal(resolveReference('file:///a/b.swing.yaml', path), undefined, JSON.stringify(path));
  });

  it('is given with its place and the kind that it expects', () => {
    const text = `swing: 1
student: "../imke.student.yaml"
template: t.template.yaml
faults_from: h.faults.yaml
shots: s.csv
`;
    const found = referencesOf(parseDocument('swing', text)).map(({ path, expects }) => [
      text.slice(path.span.start, path.span.end),
      path.value,
      expects,
    ]);
    assert.deepEqual(found, [
      ['../imke.student.yaml', '../imke.student.yaml', 'student'],
      ['t.template.yaml', 't.template.yaml', 'template'],
      ['h.faults.yaml', 'h.faults.yaml', 'faults'],
      ['s.csv', 's.csv', 'any'],
    ]);
  });

  it('may stand in a fault book and in a review', () => {
    const book = referencesOf(parseDocument('faults', 'faults: 1\nextends: ../base.faults.yaml\n'));
    assert.deepEqual(
      book.map(({ path, expects }) => [path.value, expects]),
      [['../base.faults.yaml', 'faults']],
    );
    const review = referencesOf(parseDocument('review', 'review: 1\nof: a.swing.yaml\n'));
    assert.deepEqual(
      review.map(({ path, expects }) => [path.value, expects]),
      [['a.swing.yaml', 'swing']],
    );
    assert.deepEqual(referencesOf(parseDocument('student', 'student: 1\n')), []);
  });
});
