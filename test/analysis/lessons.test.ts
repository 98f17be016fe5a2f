// The lessons of one student are found among the files of a practice, in their order, whatever else lies there.
import assert from 'node:assert/strict';
import { createCache } from '../../src/analysis/cache.ts';
import { findLessons, type Lesson } from '../../src/analysis/lessons.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { settle } from '../../src/analysis/settle.ts';

const top = 'file:///practice';
const lesson = (date: string, student = '../students/ansa.student.yaml'): string =>
  `swing: 1\nstudent: ${student}\n${date === '' ? '' : `date: ${date}\n`}club: seven iron\n`;

const files: Readonly<Record<string, string>> = {
  'swingwright.yaml': 'swingwright: 1\n',
  'students/ansa.student.yaml': 'student: 1\nname: Ansa\n',
  'students/brana.student.yaml': 'student: 1\nname: Brana\n',
  'lessons/b.swing.yaml': lesson('2026-05-20'),
  'lessons/a.swing.yaml': lesson('2026-06-01'),
  'lessons/undated.swing.yaml': lesson(''),
  'lessons/quoted.swing.yaml': lesson('2026-04-01', '"../students/\\x61nsa.student.yaml"'),
  'lessons/other.swing.yaml': lesson('2026-05-21', '../students/brana.student.yaml'),
  'lessons/same-name.swing.yaml': lesson('2026-05-22', 'ansa.student.yaml'),
  'lessons/broken.swing.yaml': 'student: [ansa.student.yaml\n  - {',
  'lessons/none.swing.yaml': '',
};

async function lessonsOf(name: string, texts = files, aborted?: Error): Promise<readonly Lesson[]> {
  const store = new Map<string, FileState>();
  const load = (uri: string): Promise<FileState> => {
    const text = texts[uri.slice(top.length + 1)];
    return Promise.resolve(text === undefined ? { kind: 'missing' } : { kind: 'text', text });
  };
  const signal = { throwIfAborted: () => undefined };
  const cache = createCache();
  const of = await settle(`${top}/${name}`, store, load, signal, cache);
  const list = (folder: string): Promise<readonly string[]> =>
    Promise.resolve(
      Object.keys(texts)
        .map((file) => `${top}/${file}`)
        .filter((uri) => uri.startsWith(`${folder}/`)),
    );
  const stopped = {
    throwIfAborted: () => {
      if (aborted !== undefined) throw aborted;
    },
  };
  return findLessons(of, { files: store, load, list, signal: stopped, cache });
}

const names = (lessons: readonly Lesson[]): readonly string[] =>
  lessons.map(({ uri }) => uri.slice(uri.lastIndexOf('/') + 1));

const ansas = ['quoted.swing.yaml', 'b.swing.yaml', 'a.swing.yaml', 'undated.swing.yaml'];

describe('lessons', () => {
  it('are all records of the student, the oldest first and those without a date last', async () => {
    const found = await lessonsOf('lessons/b.swing.yaml');
    assert.deepEqual(names(found), ansas);
    assert.deepEqual(found[1]?.date, '2026-05-20');
    assert.equal(found[1]?.analysis.subject.student?.document.name?.value, 'Ansa');
  });

  it('are found from the student as well', async () => {
    assert.deepEqual(names(await lessonsOf('students/ansa.student.yaml')), ansas);
  });

  it('lie below the student where there is no workspace file', async () => {
    const others = Object.fromEntries(Object.entries(files).filter(([name]) => name !== 'swingwright.yaml'));
    assert.deepEqual(names(await lessonsOf('lessons/b.swing.yaml', others)), ['b.swing.yaml']);
  });

  it('are none of a file that is about no student', async () => {
    assert.deepEqual(await lessonsOf('swingwright.yaml'), []);
    assert.deepEqual(await lessonsOf('lessons/none.swing.yaml'), []);
  });

  it('are given up when nobody waits for them any more', async () => {
    await assert.rejects(lessonsOf('lessons/b.swing.yaml', files, new Error('stopped')), /stopped/);
  });
});
