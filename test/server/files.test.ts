// What the server knows of files stays true while they change under it.
import assert from 'node:assert/strict';
import type { FileState } from '../../src/analysis/result.ts';
import { createFiles, type FileSources } from '../../src/server/files.ts';

const nothing: FileSources = {
  openText: () => undefined,
  openUris: () => [],
  read: () => Promise.resolve({ kind: 'missing' }),
  list: () => Promise.resolve([]),
};
const text = (words: string): FileState => ({ kind: 'text', text: words });

describe('files', () => {
  it('are read once, however many ask at the same time', async () => {
    let reads = 0;
    const files = createFiles({
      ...nothing,
      read: () => Promise.resolve(text(`${(reads += 1)}`)),
    });
    assert.deepEqual(await Promise.all([files.load('a:b'), files.load('a:b')]), [text('1'), text('1')]);
    assert.equal(reads, 1);
  });

  it('are read again when they change while they are read', async () => {
    const answers: ((state: FileState) => void)[] = [];
    const files = createFiles({
      ...nothing,
      read: () => new Promise((resolve) => answers.push(resolve)),
    });
    const loaded = files.load('a:b');
    files.forget('a:b');
    answers[0]!(text('old'));
    await new Promise((resolve) => setImmediate(resolve));
    answers[1]!(text('new'));
    assert.deepEqual(await loaded, text('new'));
  });

  it('that change after they were read are not kept, though somebody hands the old state back', async () => {
    const files = createFiles({ ...nothing, read: () => Promise.resolve(text('old')) });
    const state = await files.load('a:b');
    files.forget('a:b');
    files.set('a:b', state);
    assert.equal(files.get('a:b'), undefined);
  });

  it('give the text of an open document whatever was read', async () => {
    const files = createFiles({
      ...nothing,
      openText: () => 'typed',
      read: () => Promise.resolve(text('on disk')),
    });
    assert.deepEqual(await files.load('a:b'), text('typed'));
    assert.deepEqual(files.get('a:b'), text('typed'));
  });

  it('that cannot be read are unreadable, with the reason', async () => {
    const files = createFiles({
      ...nothing,
      read: () => Promise.reject(new Error('it is locked')),
    });
    assert.deepEqual(await files.load('a:b'), { kind: 'unreadable', reason: 'it is locked' });
  });

  it('are listed once until some come or go, those that are open and not yet saved among them', async () => {
    let lists = 0;
    const files = createFiles({
      ...nothing,
      openUris: () => ['a:/lessons/new.swing.yaml', 'a:/elsewhere/b.swing.yaml'],
      list: () => Promise.resolve([`a:/lessons/${(lists += 1)}.swing.yaml`]),
    });
    const first = ['a:/lessons/1.swing.yaml', 'a:/lessons/new.swing.yaml'];
    assert.deepEqual(await files.list('a:/lessons'), first);
    assert.deepEqual(await files.list('a:/lessons'), first);
    files.forgetLists();
    assert.deepEqual(
      await files.list('a:/lessons/'),
      ['a:/lessons/1.swing.yaml', 'a:/lessons/new.swing.yaml'].map((uri) => uri.replace('1.', '2.')),
    );
  });

  it('that nobody can list are those that are open', async () => {
    const files = createFiles({
      ...nothing,
      openUris: () => ['a:/lessons/new.swing.yaml'],
      list: () => Promise.reject(new Error('it is locked')),
    });
    assert.deepEqual(await files.list('a:/lessons'), ['a:/lessons/new.swing.yaml']);
  });
});
