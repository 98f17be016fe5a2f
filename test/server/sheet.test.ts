// A client that has sheets hears of each new analysis and asks for the sheet of the text as it stands; others hear nothing.
import assert from 'node:assert/strict';
import {
  analysedNotification,
  sheetRequest,
  whatIfRequest,
  writeWhatIfRequest,
  type AnalysedParams,
  type Sheet,
  type WhatIfAnswer,
  type WriteWhatIfResult,
} from '../../src/server/sheet-protocol.ts';
import { startSession, type Session } from './session.ts';

const text = (path: string): string =>
  `swing: 1\nstudent: mira.student.yaml\ndelivery: { path: ${path} ± 0.5 deg }\n`;
const files = { 'mira.student.yaml': 'student: 1\nname: Mira\nhand: right\n' };

describe('the server on sheets', () => {
  let session: Session;
  let heard: string[];
  const start = async (sheets: boolean): Promise<void> => {
    session = await startSession(files, undefined, { sheets });
    heard = [];
    session.connection.onNotification(analysedNotification, ({ uri }: AnalysedParams) => {
      heard.push(uri);
    });
  };
  const sheetOf = (uri: string): Promise<Sheet | null> =>
    session.connection.sendRequest(sheetRequest, { uri });
  const hears = async (times: number): Promise<void> => {
    while (heard.length < times) await new Promise((resolve) => setTimeout(resolve, 5));
  };
  afterEach(() => session.end());

  it('answers the sheet of the text as it stands', async () => {
    await start(true);
    const uri = await session.open('a.swing.yaml', text('2 deg right'));
    const before = await sheetOf(uri);
    assert.equal(before?.title, 'Mira');
    assert.match(before.things['delivery.path']!.number, /^2\.0 deg right/);
    await session.change('a.swing.yaml', text('3 deg left'), 2);
    assert.match((await sheetOf(uri))!.things['delivery.path']!.number, /^3\.0 deg left/);
  });

  it('answers nothing of other files, nor of what is not open', async () => {
    await start(true);
    const uri = await session.open('mira.student.yaml', files['mira.student.yaml']);
    assert.equal(await sheetOf(uri), null);
    assert.equal(await sheetOf('file:///lessons/closed.swing.yaml'), null);
  });

  it('tells of each new analysis, of a record whose student has changed too', async () => {
    await start(true);
    const uri = await session.open('a.swing.yaml', text('2 deg right'));
    await hears(1);
    assert.deepEqual(heard, [uri]);
    session.files.set(
      'file:///lessons/mira.student.yaml',
      files['mira.student.yaml'].replace('Mira', 'Ines'),
    );
    await session.touch('mira.student.yaml');
    await hears(2);
    assert.equal((await sheetOf(uri))?.title, 'Ines');
  });

  it('answers what would be, and the edit that plans it, for the version at hand', async () => {
    await start(true);
    const uri = await session.open('a.swing.yaml', `${text('2 deg right')}flight: { start: 1 deg right }\n`);
    const moves = [{ id: 'delivery.path', value: 0 }];
    const answer = await session.connection.sendRequest<WhatIfAnswer>(whatIfRequest, { uri, moves });
    assert.match(answer.rows.find(({ title }) => title === 'Club path')!.then, /^0\.0 deg ± 0\.8 deg$/);
    const params = { uri, moves, because: ['heavy'] };
    const { version, edits } = await session.connection.sendRequest<WriteWhatIfResult>(
      writeWhatIfRequest,
      params,
    );
    assert.equal(version, 1);
    assert.deepEqual(
      edits?.map(({ newText }) => newText),
      [
        'plan:\n  - change: delivery.path\n    to: 0 deg\n    because: [heavy]\n    proof: delivery.path < 1 deg\n',
      ],
    );
  });

  it('tells nothing to editors that have none', async () => {
    await start(false);
    await session.open('a.swing.yaml', text('2 deg right'));
    await session.diagnostics('a.swing.yaml');
    await sheetOf('file:///lessons/a.swing.yaml');
    assert.deepEqual(heard, []);
  });
});
