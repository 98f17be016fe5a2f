// Holds the place of the cursor against the tree that the YAML library reads, at every key and value of every sample, and checks half-written lines.
import assert from 'node:assert/strict';
import { cursorAt } from '../../src/record/cursor.ts';
import { readTree } from '../../src/record/read-tree.ts';
import type { Tree } from '../../src/record/tree.ts';
import { marked } from '../marked.ts';
import { yamlSamples } from '../samples.ts';

interface Expected {
  readonly role: 'key' | 'value' | 'item';
  readonly path: string;
  readonly offset: number;
}

/** The ends of all keys and of all plain or quoted words. */
function expectedIn(tree: Tree, path: readonly (string | number)[], found: Expected[]): void {
  if (tree.kind === 'scalar') {
    if (tree.offset === undefined || tree.source === '') return;
    const role = typeof path.at(-1) === 'number' ? 'item' : 'value';
    found.push({ role, path: path.join('/'), offset: tree.offset + tree.source.length });
  } else if (tree.kind === 'list') {
    tree.items.forEach((item, index) => expectedIn(item, [...path, index], found));
  } else {
    for (const { key, keySpan, value } of tree.pairs.values()) {
      found.push({ role: 'key', path: path.join('/'), offset: keySpan.end });
      expectedIn(value, [...path, key], found);
    }
  }
}

function at(
  source: string,
): { role: string; path: string; siblings: readonly string[]; before: string } | undefined {
  const { text, offset } = marked(source);
  const cursor = cursorAt(text, offset);
  if (cursor === undefined) return undefined;
  const { role, path, siblings, before } = cursor;
  return { role, path: path.join('/'), siblings: [...siblings.keys()], before };
}

describe('where a cursor stands', () => {
  for (const [name, text] of yamlSamples)
    it(`is what YAML says at every key and every word of ${name}`, () => {
      for (const written of [text, text.replace(/\n/g, '\r\n')]) {
        const { tree } = readTree(written, []);
        const found: Expected[] = [];
        expectedIn(tree!, [], found);
        assert.ok(found.length > 10);
        for (const { role, path, offset } of found) {
          const cursor = cursorAt(written, offset);
          const near = written.slice(Math.max(0, offset - 30), offset);
          assert.deepEqual([cursor?.role, cursor?.path.join('/')], [role, path], near);
        }
      }
    });

  it('is a key of the mapping whose column it has, and knows the keys above and below', () => {
    assert.deepEqual(at('checkpoints:\n  address:\n    head: 3\n    $0\n    hands: 4\n  top:\n'), {
      role: 'key',
      path: 'checkpoints/address',
      siblings: ['head', 'hands'],
      before: '',
    });
  });

  it('is moved in where the lines below would be torn from the key above', () => {
    const found = at('checkpoints:\n$0\n  address:\n    head: 3\n');
    assert.deepEqual([found?.path, found?.before], ['checkpoints', '  ']);
  });

  it('is moved in to the column of the keys that stand there', () => {
    const found = at('checkpoints:\n  address:\n    head: 3\n   $0');
    assert.deepEqual([found?.path, found?.before], ['checkpoints/address', ' ']);
  });

  it('is nowhere further in than a value that is finished', () => {
    assert.equal(at('checkpoints:\n  address:\n    head: 3\n        $0'), undefined);
  });

  it('is the next item at the column of the dashes', () => {
    assert.deepEqual(at('misses:\n  - heavy\n  $0'), {
      role: 'item',
      path: 'misses/1',
      siblings: [],
      before: '- ',
    });
  });

  it('is the first key of an item behind a dash, above those that follow', () => {
    assert.deepEqual(at('faults:\n  - $0\n    at: top\n'), {
      role: 'item',
      path: 'faults/0',
      siblings: ['at'],
      before: '',
    });
  });

  it('is found behind brackets and quotes that nobody closed', () => {
    assert.equal(at('strike: { across: 4 mm\nflight:\n  start: 3 $0')?.path, 'flight/start');
    assert.equal(at('notes: "unfinished\nflight:\n  start: 3 $0')?.path, 'flight/start');
    assert.equal(at('strike: { across: 4 mm, hei$0')?.path, 'strike');
  });

  it('is nowhere in free text of several lines', () => {
    assert.equal(at('notes: |\n  a word$0\n  more\nmisses: []\n'), undefined);
    assert.equal(at('notes: |\n  a word\n$0')?.path, '');
  });
});
