// Definitions, references, renaming and symbols over the real protocol, in open and in closed files.
import assert from 'node:assert/strict';
import {
  CancellationTokenSource,
  type Location,
  type LocationLink,
  type WorkspaceEdit,
  type WorkspaceSymbol,
} from 'vscode-languageserver/node';
import { lessonsRequest, studentsRequest, type LessonState } from '../../src/server/protocol.ts';
import { marked } from '../marked.ts';
import { folder, startSession, type Session } from './session.ts';

const files = {
  'mira.student.yaml': 'student: 1\nname: Mira\nbag:\n  hybrid: { kind: hybrid }\n',
  'house.faults.yaml': 'faults: 1\nbook:\n  stays-back: {}\n',
  'old.swing.yaml':
    'swing: 1\nstudent: mira.student.yaml\ndate: 2026-05-01\nclub: hybrid\nfaults_from: house.faults.yaml\nfaults: [{ fault: stays-back }]\n',
};
const record = `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
faults_from: house.faults.yaml
faults: [{ fault: stays-back }]
delivery: { path: 1 deg right }
`;

describe('the server leads', () => {
  let session: Session;
  let uri: string;
  beforeEach(async () => {
    session = await startSession(files, undefined, { pages: 'page:/{name}.md' });
    uri = await session.open('new.swing.yaml', record, 4);
  });
  afterEach(() => session.end());

  const at = (word: string) => {
    const [before = '', after = ''] = [
      record.slice(0, record.indexOf(word) + 1),
      record.slice(record.indexOf(word) + 1),
    ];
    return { textDocument: { uri }, position: marked(`${before}$0${after}`).position };
  };
  const ask = <T>(method: string, params: object): Promise<T> =>
    session.connection.sendRequest<T>(`textDocument/${method}`, params);
  const names = (found: readonly { readonly uri: string; readonly range: Location['range'] }[]): string[] =>
    found.map((one) => `${one.uri.replace(folder, '')}:${one.range.start.line + 1}`).sort();

  it('to definitions in other files, as links where the client takes them', async () => {
    assert.deepEqual(names(await ask<Location[]>('definition', at('stays-back'))), ['house.faults.yaml:3']);
    assert.deepEqual(names(await ask<Location[]>('definition', at('hybrid'))), ['mira.student.yaml:4']);
    const able = await startSession(files, { textDocument: { definition: { linkSupport: true } } });
    await able.open('new.swing.yaml', record);
    const [link] = await able.connection.sendRequest<LocationLink[]>('textDocument/definition', at('hybrid'));
    assert.equal(link?.targetUri, `${folder}mira.student.yaml`);
    await able.end();
  });

  it('to all mentions in open and closed files, also to those of a file that came later', async () => {
    const ask3 = () =>
      ask<Location[]>('references', { ...at('stays-back'), context: { includeDeclaration: true } });
    assert.deepEqual(names(await ask3()), ['house.faults.yaml:3', 'new.swing.yaml:6', 'old.swing.yaml:6']);
    session.files.set(`${folder}later.swing.yaml`, files['old.swing.yaml']);
    await session.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: `${folder}later.swing.yaml`, type: 1 }],
    });
    assert.deepEqual(names(await ask3()).length, 4);
  });

  it('through a rename with the version of open files and none of closed ones', async () => {
    const place = await ask('prepareRename', at('stays-back'));
    assert.deepEqual(place, {
      range: { start: { line: 5, character: 18 }, end: { line: 5, character: 28 } },
      placeholder: 'stays-back',
    });
    const edit = await ask<WorkspaceEdit>('rename', { ...at('stays-back'), newName: 'hangs: back' });
    const changes = (edit.documentChanges ?? []).map(
      (change) =>
        'edits' in change && [
          change.textDocument.uri.replace(folder, ''),
          change.textDocument.version,
          ...change.edits.map((one) => ('newText' in one ? one.newText : '')),
        ],
    );
    assert.deepEqual(changes.sort(), [
      ['house.faults.yaml', null, '"hangs: back"'],
      ['new.swing.yaml', 4, '"hangs: back"'],
      ['old.swing.yaml', null, '"hangs: back"'],
    ]);
  });

  it('renames in a closed file as it is now, though nobody said that it has changed', async () => {
    await ask('references', { ...at('stays-back'), context: { includeDeclaration: true } });
    session.files.set(`${folder}old.swing.yaml`, `# a line more\n${files['old.swing.yaml']}`);
    const edit = await ask<WorkspaceEdit>('rename', { ...at('stays-back'), newName: 'x' });
    const old = edit.documentChanges?.find(
      (change) => 'edits' in change && change.textDocument.uri.endsWith('old.swing.yaml'),
    );
    assert.ok(old && 'edits' in old && 'range' in old.edits[0]!);
    assert.equal(old.edits[0].range.start.line, 6);
  });

  it('refuses in a sentence', async () => {
    await assert.rejects(
      async () => ask('prepareRename', at('path')),
      /`delivery\.path` is a quantity of the format/,
    );
    await assert.rejects(async () => ask('rename', { ...at('hybrid'), newName: ' ' }), /Nothing was typed/);
  });

  it('to symbols of the workspace', async () => {
    const find = () => session.connection.sendRequest<WorkspaceSymbol[]>('workspace/symbol', { query: '' });
    assert.deepEqual(
      (await find()).map(({ name }) => name),
      ['stays-back', 'Mira', '2026-05-14 hybrid', '2026-05-01 hybrid'],
    );
  });

  it('to the students, and to how their lessons stand', async () => {
    const students = await session.connection.sendRequest(studentsRequest, {});
    assert.deepEqual(students, [{ uri: `${folder}mira.student.yaml`, name: 'Mira' }]);
    const lessons = await session.connection.sendRequest<LessonState[]>(lessonsRequest, {
      uri: `${folder}mira.student.yaml`,
    });
    assert.deepEqual(
      lessons.map(({ uri: at, date, club }) => [at.replace(folder, ''), date, club]),
      [
        ['old.swing.yaml', '2026-05-01', 'hybrid'],
        ['new.swing.yaml', '2026-05-14', 'hybrid'],
      ],
    );
  });

  it('gives up when the client does', async () => {
    const source = new CancellationTokenSource();
    session.slow(() => new Promise((resolve) => setTimeout(resolve, 50)));
    const asked = session.connection.sendRequest('workspace/symbol', { query: '' }, source.token);
    source.cancel();
    await assert.rejects(async () => asked, /[Cc]ancel/);
  });

  it('through highlights, folds and growing selections of the document', async () => {
    assert.equal((await ask<unknown[]>('documentHighlight', at('stays-back'))).length, 1);
    assert.deepEqual(await ask('foldingRange', { textDocument: { uri } }), []);
    const [selection] = await ask<{ parent?: unknown }[]>('selectionRange', {
      textDocument: { uri },
      positions: [at('stays-back').position],
    });
    assert.ok(selection?.parent);
  });

  it('to the page of a quantity that has no entry', async () => {
    const page = await session.connection.sendRequest<string>('swingwright/explain', {
      code: 'delivery.attack',
    });
    assert.match(page, /^# Angle of attack|^# Attack/);
    assert.match(page, /`delivery\.attack`/);
    assert.match(page, /Possible: .*deg/);
    const miss = await session.connection.sendRequest<string>('swingwright/explain', { code: 'heavy' });
    assert.match(miss, /^# Heavy\n\nA miss: the turf before the ball/);
  });
});
