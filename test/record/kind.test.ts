import assert from 'node:assert/strict';
import { kindOf } from '../../src/record/kind.ts';

describe('the kind of a file', () => {
  it('is told by its suffix', () => {
    assert.equal(kindOf('file:///a/2026-05-14.swing.yaml'), 'swing');
    assert.equal(kindOf('file:///a/imke.student.yaml'), 'student');
    assert.equal(kindOf('vscode-vfs://github/a/b/hybrid.template.yaml'), 'template');
    assert.equal(kindOf('house.faults.yaml'), 'faults');
    assert.equal(kindOf('a/b.review.yaml'), 'review');
    assert.equal(kindOf('file:///swingwright.yaml'), 'workspace');
  });

  it('does not depend on a query', () => {
    assert.equal(kindOf('memfs:/a.swing.yaml?ref=main#top'), 'swing');
  });

  it('is unknown for other files', () => {
    for (const uri of ['a.yaml', 'a.swing.yml', 'a.swing.yaml.txt', 'my-swingwright.yaml', '.swing.yaml', ''])
      assert.equal(kindOf(uri), undefined, uri);
  });
});
