// Lenses and hovers of a plan are answered from the other lessons of the student as they stand, and lead to them.
import assert from 'node:assert/strict';
import type { CodeLens, Hover, MarkupContent } from 'vscode-languageserver/node';
import { predictionsRequest } from '../../src/server/protocol.ts';
import { marked } from '../marked.ts';
import { folder, startSession, type Session } from './session.ts';

const head = (date: string): string => `swing: 1\nstudent: ines.student.yaml\ndate: ${date}\nclub: hybrid\n`;
const plan = `${head('2026-05-14')}checkpoints: { impact: { lead_pressure: 62 % ± 3 % } }
plan:
  - change: checkpoints.impact.lead_pressure
    to: 75 %
    proof: delivery.path < 2 deg
predicted:
  flight.carry: 178 m ± 4 m by model
`;
const next = (carry: number): string =>
  `${head('2026-06-02')}delivery: { path: 1 deg left ± 1 deg }\nflight: { carry: ${carry} m ± 2 m }\n`;
const files = {
  'swingwright.yaml': 'swingwright: 1\n',
  'ines.student.yaml': 'student: 1\nname: Ines\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
  'plan.swing.yaml': plan,
  'next.swing.yaml': next(176),
};

describe('the server on a plan', () => {
  let session: Session;
  const lenses = (uri: string): Promise<CodeLens[]> =>
    session.connection.sendRequest('textDocument/codeLens', { textDocument: { uri } });
  const start = async (opener?: string): Promise<void> => {
    session = await startSession(files, undefined, opener === undefined ? {} : { opener });
  };
  afterEach(() => session.end());

  it('answers a lens at the plan that leads to the next lesson', async () => {
    await start('open.place');
    const [lens, ...others] = await lenses(await session.open('plan.swing.yaml', plan));
    assert.equal(others.length, 0);
    assert.equal(
      lens?.command?.title,
      'Next lesson 2026-06-02: 1 change not measured, 1 of 1 proof met, 1 of 1 prediction inside',
    );
    assert.equal(lens.range.start.line, 5);
    assert.equal(lens.command.command, 'open.place');
    const [uri, range] = lens.command.arguments as [string, CodeLens['range']];
    assert.deepEqual([uri, range.start.line], [`${folder}next.swing.yaml`, 4]);
  });

  it('answers a lens at the measurements of the next lesson that leads back', async () => {
    await start('open.place');
    const [lens] = await lenses(await session.open('next.swing.yaml', next(176)));
    assert.match(lens?.command?.title ?? '', /^Last plan \(2026-05-14\): .*1 of 1 prediction inside$/);
    assert.equal(lens?.range.start.line, 4);
    assert.equal((lens.command?.arguments as [string])[0], `${folder}plan.swing.yaml`);
  });

  it('sees what is typed in the other lesson', async () => {
    await start();
    const uri = await session.open('plan.swing.yaml', plan);
    await session.open('next.swing.yaml', next(150));
    assert.match((await lenses(uri))[0]?.command?.title ?? '', /0 of 1 prediction inside$/);
  });

  it('gives no command to editors that have none', async () => {
    await start();
    const [lens] = await lenses(await session.open('plan.swing.yaml', plan));
    assert.deepEqual([lens?.command?.command, lens?.command?.arguments], ['', undefined]);
  });

  it('has none for a record without a plan before it', async () => {
    await start();
    assert.deepEqual(await lenses(await session.open('alone.swing.yaml', head('2026-05-01'))), []);
    assert.deepEqual(await lenses(await session.open('empty.swing.yaml', '')), []);
  });

  it('says on hovering a proof and a prediction what came', async () => {
    await start();
    const uri = await session.open('plan.swing.yaml', plan);
    const hover = async (at: string): Promise<string> => {
      const { position } = marked(plan.replace(at, `$0${at}`));
      const answer = await session.connection.sendRequest<Hover | null>('textDocument/hover', {
        textDocument: { uri },
        position,
      });
      return (answer?.contents as MarkupContent | undefined)?.value ?? '';
    };
    assert.match(
      await hover('delivery.path <'),
      /\*\*Proof\*\*, in the lesson of 2026-06-02:.*\n.*Club path under 2 deg right.*\n.*met: club path 1\\\.0 deg left/,
    );
    assert.match(
      await hover('flight.carry'),
      /inside: predicted 178 m ± 4 m, came 176\\\.0 m ± 2\\\.0 m; 2 m less, 0\\\.4 standard/,
    );
    assert.match(await hover('checkpoints.impact.lead_pressure\n'), /not measured, asked for 75 %/);
  });

  it('answers the page on the predictions of a folder', async () => {
    await start();
    const page = await session.connection.sendRequest<string>(predictionsRequest, {
      folder: folder.slice(0, -1),
    });
    assert.match(page, /^# How good predictions have been\n\n1 of 1 inside/);
    assert.match(page, /cannot be told yet/);
    assert.match(page, /\| carry \| 1 of 1 inside \(21 to 100 %\) \|/);
  });
});
