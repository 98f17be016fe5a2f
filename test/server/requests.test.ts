// Each request is answered from the text that the client sees, or refused as too late.
import assert from 'node:assert/strict';
import {
  CancellationTokenSource,
  LSPErrorCodes,
  type CodeAction,
  type DocumentLink,
  type DocumentSymbol,
  type Hover,
  type InlayHint,
  type MarkupContent,
} from 'vscode-languageserver/node';
import {
  calibrateRequest,
  explainRequest,
  gitSetupRequest,
  whyRequest,
  type CalibrateParams,
  type CalibrateResult,
  type GitSetupResult,
} from '../../src/server/protocol.ts';
import { marked } from '../marked.ts';
import { folder, startSession, type Session } from './session.ts';

const student = 'student: 1\nname: Mira\nhand: right\n';
const record = `swing: 1
student: mira.student.yaml
delivery:
  path: 5 deg right ± 1 deg
  face: 1 deg right ± 1 deg
  attack: 3
`;
const everywhere = { start: { line: 0, character: 0 }, end: { line: 100, character: 0 } };

describe('the server', () => {
  let session: Session;
  let uri: string;
  beforeEach(async () => {
    session = await startSession({ 'mira.student.yaml': student });
    uri = await session.open('a.swing.yaml', record);
  });
  afterEach(() => session.end());

  it('says that git cannot be set up where there is no disk', async () => {
    const { kind, words } = await session.connection.sendRequest<GitSetupResult>(gitSetupRequest, { folder });
    assert.equal(kind, 'refused');
    assert.match(
      words.join(' '),
      /^Found a folder that git cannot reach from here; expected one on the disk/,
    );
  });

  const hints = (): Promise<InlayHint[]> =>
    session.connection.sendRequest('textDocument/inlayHint', { textDocument: { uri }, range: everywhere });
  const labels = async (): Promise<string[]> =>
    (await hints()).map(({ label }) =>
      typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
    );
  const hover = (
    position: { line: number; character: number },
    token = new CancellationTokenSource().token,
  ) =>
    session.connection.sendRequest<Hover | null>(
      'textDocument/hover',
      { textDocument: { uri }, position },
      token,
    );

  it('answers hints, each family with a switch of its own', async () => {
    const all = await labels();
    assert.ok(all.includes('deg up'), all.join());
    assert.ok(all.includes('face-to-path 4.0 deg left ± 1.4 deg (closed)'), all.join());
    await session.configure({ units: false, faceToPath: true });
    const some = await labels();
    assert.ok(
      !some.includes('deg up') && some.some((label) => label.startsWith('face-to-path')),
      some.join(),
    );
    await session.configure({ units: false, faceToPath: false, lowPoint: false, flight: false });
    assert.deepEqual(await labels(), []);
    await session.hintsRefreshed(2);
  });

  it('answers a hover in Markdown', async () => {
    const { position } = marked(record.replace('face:', 'fa$0ce:'));
    const answer = await hover(position);
    const { kind, value } = answer?.contents as MarkupContent;
    assert.equal(kind, 'markdown');
    assert.match(value, /1\.0 deg right/);
  });

  it('answers the outline', async () => {
    const symbols = await session.connection.sendRequest<DocumentSymbol[]>('textDocument/documentSymbol', {
      textDocument: { uri },
    });
    const delivery = symbols.find(({ name }) => name === 'delivery');
    assert.deepEqual(
      delivery?.children?.map(({ name }) => name),
      ['path', 'face', 'attack'],
    );
  });

  it('answers links to the files that a record names', async () => {
    const links = await session.connection.sendRequest<DocumentLink[]>('textDocument/documentLink', {
      textDocument: { uri },
    });
    assert.deepEqual(
      links.map(({ target }) => target),
      ['file:///lessons/mira.student.yaml'],
    );
  });

  it('answers quick fixes that name the version they are for', async () => {
    const at = marked(record.replace('attack: 3', 'attack: $03')).position;
    const actions = await session.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri },
      range: { start: at, end: at },
      context: { diagnostics: [] },
    });
    const [change] = actions.find(({ isPreferred }) => isPreferred)?.edit?.documentChanges ?? [];
    assert.deepEqual(change && 'textDocument' in change && change.textDocument, { uri, version: 1 });
    assert.ok(actions.some(({ title }) => title.startsWith('Accept bare-number')));
  });

  it('offers no quick fix to a client that asks for another kind of action', async () => {
    const actions = await session.connection.sendRequest('textDocument/codeAction', {
      textDocument: { uri },
      range: everywhere,
      context: { diagnostics: [], only: ['source.organizeImports'] },
    });
    assert.deepEqual(actions, []);
  });

  it('answers the page of a code, and null where there is no such code', async () => {
    assert.match(
      await session.connection.sendRequest<string>(explainRequest, { code: 'bare-number' }),
      /^# /,
    );
    assert.equal(await session.connection.sendRequest(explainRequest, { code: 'no-such-code' }), null);
  });

  it('calibrates a folder from the files that the editor hands it, and writes nothing', async () => {
    const row = (index: number): string =>
      `${40 + index},${20 - index / 2},${5600 - 100 * index},${105 + 4.6 * index},${18 + 0.2 * index}`;
    const shots = Array.from({ length: 12 }, (_, index) => row(index)).join('\n');
    session.files.set(`${folder}b.csv`, `ball_speed,launch_angle,spin,carry,apex\n${shots}\n`);
    session.files.set(`${folder}b.swing.yaml`, 'swing: 1\nshots: b.csv\n');
    session.files.set(`${folder}swingwright.yaml`, 'swingwright: 1\nshots: { by: radar }\n');
    const params: CalibrateParams = { folder, records: [`${folder}b.swing.yaml`] };
    const result = await session.connection.sendRequest<CalibrateResult>(calibrateRequest, params);
    assert.match(result.lines[0]!, /^Drag × \d\.\d{3} ± /);
    assert.deepEqual([result.workspace, result.isThere], [`${folder}swingwright.yaml`, true]);
    assert.deepEqual(result.edit!.range.start, { line: 2, character: 0 });
    assert.match(result.edit!.newText, /^calibration: \{ drag: /);
    const none = { folder, records: [] };
    const refused = await session.connection.sendRequest<CalibrateResult>(calibrateRequest, none);
    assert.equal(refused.edit, null);
    assert.match(refused.lines[0]!, /^Not calibrated\. Found 0 shots/);
  });

  it('answers with the typical shot where rewriting is asked for, and not among quick fixes', async () => {
    session.files.set(`${folder}b.csv`, 'carry\n168\n170\n172\n');
    const other = await session.open('b.swing.yaml', 'swing: 1\nshots: b.csv\n');
    const start = { line: 1, character: 0 };
    const titles = async (only: string[]): Promise<string[]> => {
      const actions = await session.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
        textDocument: { uri: other },
        range: { start, end: start },
        context: { diagnostics: [], only },
      });
      return actions.map(({ title }) => title);
    };
    assert.deepEqual(await titles(['refactor']), ['Take the typical shot (shot 2)']);
    assert.deepEqual(await titles(['quickfix']), []);
    assert.deepEqual(await titles(['source']), []);
  });

  it('answers the page that says why, the page on what the record says nothing of, and null for no quantity', async () => {
    const why = (id: string) => session.connection.sendRequest<string | null>(whyRequest, { uri, id });
    assert.match((await why('delivery.face_to_path')) ?? '', /^# Face to path: 4\.0 deg left ± 1\.4 deg\n/);
    assert.match((await why('flight.carry')) ?? '', /^# Carry\n\n`flight\.carry`\n/);
    assert.equal(await why('flight.unheard_of'), null);
  });

  it('refuses an answer about a text that changed while a file was awaited', async () => {
    await session.diagnostics('a.swing.yaml');
    let release = (): void => {};
    const held = new Promise<void>((resolve) => (release = resolve));
    let asked = (): void => {};
    const isAsked = new Promise<void>((resolve) => (asked = resolve));
    session.slow(() => {
      asked();
      return held;
    });
    await session.touch('mira.student.yaml');
    const answer = hover({ line: 3, character: 3 });
    await isAsked;
    await session.change('a.swing.yaml', `${record}# more\n`, 2);
    release();
    await assert.rejects(answer, { code: LSPErrorCodes.ContentModified });
  });

  it('stops when the client no longer wants the answer', async () => {
    await session.diagnostics('a.swing.yaml');
    const asked = new Promise<void>((resolve) =>
      session.slow(() => {
        resolve();
        return new Promise((later) => setTimeout(later, 20));
      }),
    );
    await session.touch('mira.student.yaml');
    const source = new CancellationTokenSource();
    const answer = hover({ line: 3, character: 3 }, source.token);
    await asked;
    source.cancel();
    await assert.rejects(answer, { code: LSPErrorCodes.RequestCancelled });
  });

  it('answers nothing about a file that is not open', async () => {
    uri = 'file:///lessons/other.swing.yaml';
    assert.equal(await hover({ line: 0, character: 0 }), null);
  });
});
