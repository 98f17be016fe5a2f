// Tests that settling loads what is wanted, no more, and minds the signal and the files that change meanwhile.
import assert from 'node:assert/strict';
import { createCache } from '../../src/analysis/cache.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { settle } from '../../src/analysis/settle.ts';
import { analyseFiles, codesOf, uriOf } from '../checks/files.ts';

const files: Readonly<Record<string, string>> = {
  'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: hybird
faults_from: house.faults.yaml
template: irons.template.yaml
shots: shots.csv
faults:
  - fault: low-hands
`,
  'mira.student.yaml': 'student: 1\nhand: left\nbag:\n  hybrid: { kind: hybrid }',
  'house.faults.yaml': 'faults: 1\nextends: base.faults.yaml',
  'base.faults.yaml': 'faults: 1\nextends: root.faults.yaml',
  'root.faults.yaml': 'faults: 1\nbook:\n  low-hands: { title: Low hands }',
};
const uri = uriOf('lesson.swing.yaml');
const byUri = new Map(Object.entries(files).map(([name, text]) => [uriOf(name), text]));

function loader(asked: string[] = []) {
  return (wanted: string): Promise<FileState> => {
    asked.push(wanted);
    const text = byUri.get(wanted);
    return Promise.resolve(text === undefined ? { kind: 'missing' } : { kind: 'text', text });
  };
}

const never = new AbortController().signal;

describe('settle', () => {
  it('loads each file once and gives what an analysis of all files at once gives', async () => {
    const asked: string[] = [];
    const settled = await settle(uri, new Map<string, FileState>(), loader(asked), never);
    assert.equal(new Set(asked).size, asked.length);
    assert.deepEqual(settled.wanted, []);
    const whole = analyseFiles(files);
    assert.deepEqual(settled.findings, whole.findings);
    assert.deepEqual(settled.used, whole.used);
    assert.deepEqual(codesOf(settled), ['unknown-club', 'missing-reference', 'missing-reference']);
  });

  it('gives the same with a cache, the first time and again', async () => {
    const cache = createCache();
    const without = await settle(uri, new Map<string, FileState>(), loader(), never);
    const store = new Map<string, FileState>();
    const first = await settle(uri, store, loader(), never, cache);
    assert.deepEqual(first.findings, without.findings);
    assert.equal(await settle(uri, store, loader(), never, cache), first);
  });

  it('takes a file that turned up while it was being loaded, since an editor is newer than the disk', async () => {
    const store = new Map<string, FileState>();
    const student = uriOf('mira.student.yaml');
    const load = async (wanted: string): Promise<FileState> => {
      const state = await loader()(wanted);
      const text = 'student: 1\nbag: { hybird: { kind: hybrid } }';
      if (wanted === student) store.set(student, { kind: 'text', text });
      return state;
    };
    const { findings } = await settle(uri, store, load, never);
    assert.ok(!findings.some(({ code }) => code === 'unknown-club'));
  });

  it('says that a file whose loading failed cannot be read', async () => {
    const load = (wanted: string): Promise<FileState> =>
      wanted.endsWith('.csv') ? Promise.reject(new Error('it is locked')) : loader()(wanted);
    const { findings } = await settle(uri, new Map<string, FileState>(), load, never);
    assert.match(findings.find(({ code }) => code === 'unreadable-reference')?.message ?? '', /it is locked/);
  });

  it('rejects with the reason of the signal, before loading and after each round', async () => {
    const reason = new Error('closed');
    const aborted = AbortSignal.abort(reason);
    await assert.rejects(settle(uri, new Map<string, FileState>(), loader(), aborted), reason);
    const controller = new AbortController();
    const asked: string[] = [];
    const load = async (wanted: string): Promise<FileState> => {
      const state = await loader(asked)(wanted);
      controller.abort(reason);
      return state;
    };
    const store = new Map<string, FileState>();
    await assert.rejects(settle(uri, store, load, controller.signal), reason);
    assert.deepEqual(asked, [uri]);
    assert.equal(store.size, 0);
  });

  it('ends even where every file names another one', async () => {
    const endless = (wanted: string): Promise<FileState> => {
      const number = Number(/(\d+)\.faults\.yaml$/.exec(wanted)?.[1] ?? NaN);
      if (Number.isNaN(number)) return Promise.resolve({ kind: 'missing' });
      return Promise.resolve({ kind: 'text', text: `faults: 1\nextends: ${number + 1}.faults.yaml` });
    };
    const { subject } = await settle(uriOf('0.faults.yaml'), new Map<string, FileState>(), endless, never);
    assert.ok(subject.faultBooks.length > 5);
  });
});
