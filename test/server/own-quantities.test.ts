// What a workspace has of its own reaches open records as soon as its file is saved, and no record of another workspace.
import assert from 'node:assert/strict';
import type {
  CompletionItem,
  Location,
  TextDocumentEdit,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver';
import { explainRequest } from '../../src/server/protocol.ts';
import { folder, startSession, type Session } from './session.ts';

const workspaceWith = (key: string): string => `swingwright: 1
quantities: { delivery.${key}: { title: A ${key}, unit: deg, bounds: 0..9 deg, uncertainty: 1 deg } }
checks: { much-${key}: { when: delivery.${key} > 4 deg, message: "It is {delivery.${key}}." } }
`;
const recordWith = (key: string): string => `swing: 1\ndelivery: { ${key}: 5 deg }\n`;

describe('own quantities in the server', () => {
  let session: Session;
  afterEach(() => session.end());

  /** Settles once the file has a finding of this code. */
  const finds = (name: string, code: string): Promise<unknown> =>
    session.diagnostics(name, ({ diagnostics }) => diagnostics.some((one) => one.code === code));
  const latest = (name: string): readonly unknown[] =>
    session.published.findLast(({ uri }) => uri.endsWith(name))!.diagnostics.map(({ code }) => code);

  it('come, change their name and go with what is saved', async () => {
    session = await startSession({ 'swingwright.yaml': 'swingwright: 1\n' });
    await session.open('a.swing.yaml', recordWith('wobble'));
    await finds('a.swing.yaml', 'unknown-key');
    const save = async (text: string): Promise<void> => {
      session.published.length = 0;
      session.files.set(`${folder}swingwright.yaml`, text);
      await session.touch('swingwright.yaml');
    };
    await save(workspaceWith('wobble'));
    await finds('a.swing.yaml', 'own/much-wobble');
    assert.ok(!latest('a.swing.yaml').includes('unknown-key'));
    await save(workspaceWith('shake'));
    await finds('a.swing.yaml', 'unknown-key');
    assert.ok(!latest('a.swing.yaml').includes('own/much-wobble'));
    await save(workspaceWith('wobble'));
    await finds('a.swing.yaml', 'own/much-wobble');
    await save('swingwright: 1\n');
    await finds('a.swing.yaml', 'unknown-key');
  });

  it('are those of the folder that a record lies in, with two folders open side by side', async () => {
    session = await startSession({
      'one/swingwright.yaml': workspaceWith('wobble'),
      'two/swingwright.yaml': workspaceWith('shake'),
    });
    for (const [place, own, other] of [
      ['one', 'wobble', 'shake'],
      ['two', 'shake', 'wobble'],
    ] as const) {
      await session.open(`${place}/a.swing.yaml`, recordWith(own));
      await session.open(`${place}/b.swing.yaml`, recordWith(other));
      await finds(`${place}/a.swing.yaml`, `own/much-${own}`);
      await finds(`${place}/b.swing.yaml`, 'unknown-key');
      assert.ok(!latest(`${place}/a.swing.yaml`).includes('unknown-key'));
      assert.ok(!latest(`${place}/b.swing.yaml`).includes(`own/much-${other}`));
      const page = (code: string): Promise<string | null> =>
        session.connection.sendRequest<string | null>(explainRequest, { code });
      assert.match((await page(`own/much-${own}`)) ?? '', new RegExp(`delivery\\.${own} > 4 deg`));
      assert.match((await page(`delivery.${own}`)) ?? '', new RegExp(`^# A ${own}\n`));
    }
  });

  it('are found and renamed only in the workspace that declares them, though the other has one of the same id', async () => {
    const record = recordWith('wobble').replace('5 deg', '3 deg # wobble');
    session = await startSession({
      'one/swingwright.yaml': workspaceWith('wobble'),
      'one/b.swing.yaml': record,
      'two/swingwright.yaml': workspaceWith('wobble'),
      'two/b.swing.yaml': record,
    });
    const uri = await session.open('one/a.swing.yaml', record);
    await session.diagnostics('one/a.swing.yaml');
    const at = { textDocument: { uri }, position: { line: 1, character: 13 } };
    const found = await session.connection.sendRequest<Location[]>('textDocument/references', {
      ...at,
      context: { includeDeclaration: true },
    });
    const one = ['one/a.swing.yaml', 'one/b.swing.yaml', 'one/swingwright.yaml'];
    assert.deepEqual([...new Set(found.map((place) => place.uri.slice(folder.length)))].sort(), one);
    const edit = await session.connection.sendRequest<WorkspaceEdit>('textDocument/rename', {
      ...at,
      newName: 'delivery.shake',
    });
    const changed = edit.documentChanges as TextDocumentEdit[];
    assert.deepEqual(changed.map(({ textDocument }) => textDocument.uri.slice(folder.length)).sort(), one);
    const texts = changed.flatMap(({ edits }) => edits.map((each) => (each as TextEdit).newText));
    assert.deepEqual([...new Set(texts)], ['shake']);
    assert.equal(texts.length, 5);
  });

  it('and files proposed for a reference are those of the open folder that the record lies in', async () => {
    const student = 'student: 1\n';
    session = await startSession(
      { 'one/ansa.student.yaml': student, 'two/mira.student.yaml': student },
      { workspace: { workspaceFolders: true } },
    );
    const folders = (...names: readonly string[]) =>
      names.map((name) => ({ uri: `${folder}${name}`.replace(/\/$/, ''), name }));
    await session.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: folders('one', 'two'), removed: folders('') },
    });
    const uri = await session.open('one/a.swing.yaml', 'swing: 1\nstudent: ');
    await session.diagnostics('one/a.swing.yaml');
    const items = await session.connection.sendRequest<CompletionItem[]>('textDocument/completion', {
      textDocument: { uri },
      position: { line: 1, character: 9 },
    });
    assert.deepEqual(
      items.map(({ label }) => label),
      ['ansa.student.yaml'],
    );
  });
});
