// What an editor gets that asks the running server for proposals: files around, the last lesson, and snippets only where it knows them.
import assert from 'node:assert/strict';
import type { CompletionItem } from 'vscode-languageserver';
import { marked } from '../marked.ts';
import { startSession } from './session.ts';

const files = {
  'tove.student.yaml': 'student: 1\nname: Tove\nbag: { seven iron: { kind: iron } }\n',
  '2026-04-18.swing.yaml':
    'swing: 1\nstudent: tove.student.yaml\ndate: 2026-04-18\nclub: seven iron\ncheckpoints:\n  address:\n    ball_position: 9 cm behind by tape\n',
};

async function labelsAt(
  source: string,
  capabilities = {},
  around: Readonly<Record<string, string>> = files,
): Promise<readonly string[]> {
  const session = await startSession(around, capabilities);
  const { text, position } = marked(source);
  const uri = await session.open('new.swing.yaml', text);
  const items = await session.connection.sendRequest<CompletionItem[]>('textDocument/completion', {
    textDocument: { uri },
    position,
  });
  await session.end();
  return items.map(({ label }) => label);
}

describe('proposals of the server', () => {
  it('are clubs of the bag that the record leads to', async () => {
    assert.deepEqual(await labelsAt('swing: 1\nstudent: tove.student.yaml\nclub: $0'), ['seven iron']);
  });

  it('know files around and the unit, direction and method of the last lesson', async () => {
    assert.deepEqual(await labelsAt('swing: 1\nstudent: $0'), ['tove.student.yaml']);
    const head = 'swing: 1\nstudent: tove.student.yaml\ncheckpoints:\n  address:\n    ball_position: 8 $0';
    assert.equal((await labelsAt(head))[0], 'cm behind by tape');
  });

  it('know the habits of the last lesson that measured anything, over one that is still empty', async () => {
    const empty = 'swing: 1\nstudent: tove.student.yaml\ndate: 2026-04-25\nclub: seven iron\ncheckpoints:\n';
    const all = { ...files, '2026-04-25.swing.yaml': `${empty}  address:\n    ball_position:\n` };
    const head = 'swing: 1\nstudent: tove.student.yaml\nclub: seven iron\ncheckpoints:\n  address:\n';
    assert.equal((await labelsAt(`${head}    ball_position: 8 $0`, {}, all))[0], 'cm behind by tape');
  });

  it('know how a quantity was measured the last time that it was, in whichever lesson', async () => {
    const around = {
      ...files,
      '2026-04-25.swing.yaml':
        'swing: 1\nstudent: tove.student.yaml\ndate: 2026-04-25\nclub: seven iron\ndelivery: { attack: 3 deg down by radar }\n',
    };
    const lesson = 'swing: 1\nstudent: tove.student.yaml\nclub: seven iron\n';
    const position = `${lesson}checkpoints:\n  address:\n    ball_position: 8 $0`;
    assert.equal((await labelsAt(position, {}, around))[0], 'cm behind by tape');
    assert.equal((await labelsAt(`${lesson}delivery:\n  attack: 2 $0`, {}, around))[0], 'deg down by radar');
  });

  it('hold snippets only for a client that knows them', async () => {
    const snippetSupport = { textDocument: { completion: { completionItem: { snippetSupport: true } } } };
    assert.ok((await labelsAt('$0', snippetSupport)).includes('new record'));
    assert.ok(!(await labelsAt('$0')).includes('new record'));
  });
});
