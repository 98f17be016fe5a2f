// Blocks that are put into a record stay before the end of its document, keep the comments on their keys, and read back.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { blockEdits, edit, readBack } from '../../src/checks/block-edits.ts';
import { predictedEdits } from '../../src/checks/predicted-edits.ts';
import { stateFault } from '../../src/checks/state-fault.ts';
import type { Subject } from '../../src/checks/subject.ts';
import { keysIntoRecord } from '../../src/language/new-keys.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { builtIn } from '../../src/registry/registry.ts';

const samples = resolve(import.meta.dirname, '../../samples');
const records = readdirSync(samples, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.swing.yaml'))
  .map((name) => [name, readFileSync(join(samples, name), 'utf8')] as const);

const plan = 'plan:\n  - change: delivery.path\n    to: 1.5 deg right\n    because: [finish]\n';
const predicted = 'predicted:\n  flight.carry: 120 m ± 3 m by model\n';
const blocks = [
  ['plan', plan],
  ['predicted', predicted],
] as const;

function read(text: string): SwingRecord {
  return parseDocument('swing', text, builtIn) as SwingRecord;
}

/** The record with both blocks; every problem that it has, it had before. */
function withBlocks(text: string): string {
  const before = read(text);
  const edits = readBack(before, builtIn, blockEdits('', before, blocks));
  assert.notEqual(edits.length, 0, text);
  const put = edit(text, edits);
  const after = read(put);
  assert.equal(after.plan[0]?.to?.target?.kind, 'measure', put);
  assert.deepEqual([after.plan.length, [...after.predicted.keys()]], [1, ['flight.carry']]);
  return put;
}

describe('blocks put into a record', () => {
  it('stay before the end of the document, in every sample', () => {
    for (const [name, text] of records) {
      const ended = text.endsWith('\n') ? text : `${text}\n`;
      for (const end of [
        '...\n',
        '...',
        '# that was it\n...\n',
        '... # done\n# after it\n',
        '---\nswing: 1\n',
      ]) {
        const put = withBlocks(ended + end);
        assert.ok(
          put.includes(end.split('\n')[0]!) && put.endsWith(end.slice(end.search(/\.\.\.|---/))),
          name,
        );
      }
      assert.doesNotMatch(withBlocks(`${ended}...\n`.replaceAll('\n', '\r\n')), /[^\r]\n/, name);
    }
  });

  it('keep the comments on their keys, in every sample', () => {
    const heads = [
      'plan: # to come',
      'plan: []   # none yet',
      'plan: [ # several\n  { change: delivery.path, to: 2 deg } ]',
      'plan: [{ change: delivery.path, to: 2 deg }] # one',
    ];
    for (const [name, text] of records) {
      const bare = edit(
        text,
        blockEdits('', read(text), [
          ['plan', ''],
          ['predicted', ''],
        ]),
      );
      for (const head of heads)
        for (const end of ['', '\n', '\npredicted: {} # nothing\n', '\n...\n']) {
          const put = withBlocks(`${bare.trimEnd()}\n${head}${end}`);
          for (const [comment] of `${head}${end}`.matchAll(/#.*/g))
            assert.ok(put.includes(comment), name + put);
        }
    }
  });

  it('leave what follows the key where it stands', () => {
    assert.equal(
      withBlocks('swing: 1\nplan: # to come\nnotes: fine # really\n...\n'),
      `swing: 1\n${plan.replace('plan:', 'plan: # to come')}notes: fine # really\n${predicted}...\n`,
    );
  });

  it('are given out only where they read back', () => {
    const flow = read('{ swing: 1 }\n');
    assert.deepEqual(readBack(flow, builtIn, blockEdits('', flow, blocks)), []);
    assert.deepEqual(readBack(read('swing: 1\n'), builtIn, []), []);
  });

  it('are not the only ones that know where a document ends', () => {
    const text = 'swing: 1\nfaults_from: a.faults.yaml\n...\n';
    const document = read(text);
    const subject = { uri: '', document, registry: builtIn } as unknown as Subject;
    const stated = stateFault(subject, 'late', undefined)!;
    assert.equal(
      edit(text, stated.edits),
      'swing: 1\nfaults_from: a.faults.yaml\nfaults:\n  - { fault: late }\n...\n',
    );
    assert.equal(
      edit('...\n', keysIntoRecord(read('...\n'), ['delivery.path'])!),
      'delivery:\n  path:\n...\n',
    );
    const kept = { prediction: { outlooks: new Map(), kept: [] }, further: [], coverage: 1 };
    assert.deepEqual(predictedEdits(subject, document, kept as never), []);
  });
});
