// An editor that knows nothing of Swingwright but the protocol: it is asked to watch files, and what it tells of them counts.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type DidChangeWatchedFilesRegistrationOptions,
  type PublishDiagnosticsParams,
  type RegistrationParams,
} from 'vscode-languageserver/node';
import { listFolder, loadFile, toUri } from '../../src/disk/files.ts';
import { serve } from '../../src/server/connection.ts';
import type { InitializationOptions } from '../../src/server/protocol.ts';

const watching: ClientCapabilities = { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } };

/** Nothing but what the protocol has; files are the server's to read from the disk. */
async function plainClient(
  folder: string,
  capabilities: ClientCapabilities,
  initializationOptions?: InitializationOptions,
) {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient)), {
    read: loadFile,
    list: listFolder,
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  const registered: RegistrationParams['registrations'] = [];
  const waiting: ((params: PublishDiagnosticsParams) => void)[] = [];
  connection.onRequest('client/registerCapability', ({ registrations }: RegistrationParams) => {
    registered.push(...registrations);
    return null;
  });
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    for (const wake of waiting.splice(0)) wake(params);
  });
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: null,
    rootUri: toUri(folder),
    capabilities,
    initializationOptions,
  });
  await connection.sendNotification('initialized', {});
  const published = (): Promise<PublishDiagnosticsParams> => new Promise((resolve) => waiting.push(resolve));
  /** An answer comes after all that the server has asked before it. */
  const settled = (): Promise<unknown> => connection.sendRequest('workspace/symbol', { query: 'x' });
  const end = async (): Promise<void> => {
    await connection.sendRequest('shutdown');
    connection.dispose();
  };
  return { connection, registered, published, settled, end };
}

describe('a plain editor', () => {
  let folder: string;
  before(() => (folder = mkdtempSync(join(tmpdir(), 'watching-'))));
  after(() => rmSync(folder, { recursive: true }));

  const globsOf = (registered: RegistrationParams['registrations']): readonly unknown[] =>
    registered
      .filter(({ method }) => method === 'workspace/didChangeWatchedFiles')
      .flatMap(({ registerOptions }) =>
        (registerOptions as DidChangeWatchedFilesRegistrationOptions).watchers.map(
          ({ globPattern }) => globPattern,
        ),
      );

  it('is asked to watch our files and tables, where it can be asked and does not do it by itself', async () => {
    const asked = await plainClient(folder, watching);
    await asked.settled();
    const globs = globsOf(asked.registered);
    for (const name of ['swing', 'student', 'template', 'faults', 'review'])
      assert.ok(
        globs.some((glob) => String(glob).includes(name)),
        name,
      );
    assert.ok(globs.includes('**/swingwright.yaml'));
    await asked.end();
    for (const [capabilities, options] of [
      [{}, {}],
      [watching, { watches: true }],
    ] as const) {
      const other = await plainClient(folder, capabilities, options);
      await other.settled();
      assert.deepEqual(globsOf(other.registered), []);
      await other.end();
    }
  });

  it('sees what a saved workspace file means for an open record', async () => {
    const workspace = join(folder, 'swingwright.yaml');
    writeFileSync(workspace, 'swingwright: 1\n');
    const { connection, published, end } = await plainClient(folder, watching);
    const uri = toUri(join(folder, 'a.swing.yaml'));
    const first = published();
    const text = 'swing: 1\ndelivery: { wobble: 3 deg }\n';
    await connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'yaml', version: 1, text },
    });
    const codesOf = ({ diagnostics }: PublishDiagnosticsParams): readonly unknown[] =>
      diagnostics.map(({ code }) => code);
    assert.ok(codesOf(await first).includes('unknown-key'));
    const own = '{ unit: deg, bounds: 0..9 deg, uncertainty: 1 deg }';
    writeFileSync(workspace, `swingwright: 1\nquantities: { delivery.wobble: ${own} }\n`);
    const second = published();
    await connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: toUri(workspace), type: 2 }],
    });
    assert.ok(!codesOf(await second).includes('unknown-key'));
    await end();
  });
});
