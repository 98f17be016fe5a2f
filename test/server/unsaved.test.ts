// A document that is not saved yet is read by its first line: findings, proposals and hovers work, and paths are not known until it is saved.
import assert from 'node:assert/strict';
import type { CompletionItem, Hover, PublishDiagnosticsParams } from 'vscode-languageserver';
import { startSession, type Session } from './session.ts';

const uri = 'untitled:Untitled-1';

async function open(session: Session, text: string): Promise<void> {
  const textDocument = { uri, languageId: 'swing-yaml', version: 1, text };
  await session.connection.sendNotification('textDocument/didOpen', { textDocument });
}

async function found(session: Session): Promise<PublishDiagnosticsParams> {
  // An answer comes after what was analysed for it, and the findings of the same version with it.
  for (;;) {
    const last = session.published.findLast((params) => params.uri === uri);
    if (last !== undefined) return last;
    await session.connection.sendRequest('textDocument/foldingRange', { textDocument: { uri } });
  }
}

async function labels(session: Session, line: number, character: number): Promise<readonly string[]> {
  const items = await session.connection.sendRequest<CompletionItem[]>('textDocument/completion', {
    textDocument: { uri },
    position: { line, character },
  });
  return items.map(({ label }) => label);
}

describe('a document that is not saved yet', () => {
  const record = 'swing: 1\nstudent: mira.student.yaml\ndelivery:\n  face: 2 dgr right\n  \n';

  it('has findings, and says of paths that they are not known until it is saved', async () => {
    const session = await startSession({ 'mira.student.yaml': 'student: 1\n' });
    await open(session, record);
    const { diagnostics } = await found(session);
    const codes = diagnostics.map(({ code }) => code);
    assert.ok(codes.includes('unknown-unit') && codes.includes('reference-not-known-yet'), codes.join(', '));
    assert.ok(!codes.includes('missing-reference'));
    assert.deepEqual(session.read, [], 'asks for files beside one that lies nowhere');
    await session.end();
  });

  it('has proposals and hovers', async () => {
    const session = await startSession();
    await open(session, record);
    assert.ok((await labels(session, 4, 2)).includes('path'));
    const hover = await session.connection.sendRequest<Hover>('textDocument/hover', {
      textDocument: { uri },
      position: { line: 3, character: 3 },
    });
    assert.match(JSON.stringify(hover.contents), /Face/);
    await session.end();
  });

  it('is of the kind that its version says, and a record as long as it says none', async () => {
    for (const [text, expected] of [
      ['', 'swing'],
      ['stu', 'student'],
      ['student: 1\n', 'bag'],
      ['template: 1\n', 'clubs'],
      ['faults: 1\n', 'book'],
      ['review: 1\n', 'threads'],
      ['# own\nswingwright: 1\n', 'quantities'],
    ] as const) {
      const session = await startSession();
      await open(session, text);
      const lines = text.split('\n');
      const proposed = await labels(session, lines.length - 1, lines.at(-1)!.length);
      assert.ok(proposed.includes(expected), `${text}: ${proposed.join(', ')}`);
      await session.end();
    }
  });
});
