// A plan is proposed over the real protocol, what is picked comes back as an edit, and a search makes room for other requests.
import assert from 'node:assert/strict';
import type { CodeAction, Hover, TextEdit } from 'vscode-languageserver/node';
import { CancellationTokenSource } from 'vscode-languageserver/node';
import type { InitializationOptions } from '../../src/server/protocol.ts';
import {
  proposeRequest,
  writePlanRequest,
  type ProposeResult,
  type WritePlanResult,
} from '../../src/server/protocol.ts';
import { planFiles, planRecord } from '../language/plan-record.ts';
import { startSession, type Session } from './session.ts';

const text = planRecord('', 'goals: [{ start: 1 deg left..1 deg right, curve: 4 m left..4 m right }]');
const goalsLine = text.split('\n').findIndex((line) => line.startsWith('goals:'));

describe('the server asked for a plan', () => {
  let session: Session;
  let uri: string;
  const start = async (options: InitializationOptions = {}): Promise<void> => {
    session = await startSession(planFiles, undefined, options);
    uri = await session.open('a.swing.yaml', text);
  };
  const propose = (): Promise<ProposeResult | null> =>
    session.connection.sendRequest(proposeRequest, { uri });
  const actionsAt = async (line: number): Promise<CodeAction[]> => {
    const at = { line, character: 1 };
    const params = { textDocument: { uri }, range: { start: at, end: at }, context: { diagnostics: [] } };
    return (
      (await session.connection.sendRequest<CodeAction[] | null>('textDocument/codeAction', params)) ?? []
    );
  };
  afterEach(() => session.end());

  it('answers at most three changes with reasons, and how the chances of the goals change', async () => {
    await start();
    const found = (await propose())!;
    assert.ok(found.changes.length >= 1 && found.changes.length <= found.mostChanges);
    assert.deepEqual([found.mostChanges, found.planned, found.nothing], [3, 0, '']);
    for (const { label, description, detail } of found.changes) {
      assert.match(label, /: .* → .*/);
      assert.match(description, /^(setup|backswing|downswing), because of \w/);
      assert.match(detail, /^By (model|belief): .*\. The (model|fault book) says/);
    }
    assert.match(found.goals, /start \d+ % → \d+ %; curve \d+ % → \d+ %/);
  });

  it('writes only what was picked, with because, proof and what that alone leads to', async () => {
    await start();
    const { changes } = (await propose())!;
    const [first] = changes;
    const params = { uri, picked: [first!.id] };
    const { version, edits } = (await session.connection.sendRequest<WritePlanResult | null>(
      writePlanRequest,
      params,
    ))!;
    assert.equal(version, 1);
    assert.equal(edits.length, 1);
    const [edit] = edits;
    assert.match(
      edit!.newText,
      /^plan:\n {2}- change: .*\n {4}to: .*\n {4}because: \[.*\]\n {4}proof: .*\npredicted:\n/,
    );
    assert.equal(edit!.newText.split('- change:').length, 2);
    assert.ok(edit!.newText.includes(`change: ${first!.id}`));
  });

  it('has nothing to propose without goals', async () => {
    session = await startSession(planFiles);
    uri = await session.open('b.swing.yaml', planRecord('', ''));
    const { changes, nothing } = (await propose())!;
    assert.deepEqual(changes, []);
    assert.match(nothing, /^Nothing to propose: there is no goal/);
    assert.deepEqual(
      (await actionsAt(0)).filter(({ title }) => /plan/.test(title)),
      [],
    );
  });

  it('can be cancelled, and answers other requests while it searches', async () => {
    await start();
    await session.connection.sendRequest('textDocument/documentLink', { textDocument: { uri } });
    const order: string[] = [];
    const source = new CancellationTokenSource();
    const asked = session.connection
      .sendRequest(proposeRequest, { uri }, source.token)
      .then(() => order.push('answered'))
      .catch(() => order.push('cancelled'));
    await session.connection.sendRequest<Hover | null>('textDocument/hover', {
      textDocument: { uri },
      position: { line: 2, character: 1 },
    });
    order.push('hover');
    source.cancel();
    await asked;
    assert.deepEqual(order, ['hover', 'cancelled']);
  });

  it('offers the command where the client has one, and the plan itself elsewhere', async () => {
    await start({ proposer: 'propose.plan' });
    const [command] = (await actionsAt(goalsLine)).filter(({ title }) => title === 'Propose a plan…');
    assert.deepEqual(command?.command, {
      title: 'Propose a plan…',
      command: 'propose.plan',
      arguments: [uri],
    });
    await session.end();
    await start();
    const [edit] = (await actionsAt(goalsLine)).filter(({ title }) =>
      /^Write the proposed plan: /.test(title),
    );
    const [change] = edit!.edit!.documentChanges!;
    assert.ok(change && 'edits' in change);
    assert.match((change.edits[0] as TextEdit).newText, /^plan:\n/);
    assert.deepEqual(
      (await actionsAt(1)).filter(({ title }) => /proposed plan/.test(title)),
      [],
    );
  });
});
