// A hover on a stated fault looks for the student's other records; no other hover does.
import assert from 'node:assert/strict';
import type { Hover, MarkupContent } from 'vscode-languageserver/node';
import { marked } from '../marked.ts';
import { startSession, type Session } from './session.ts';

const lesson = (face: number, start: number): string => `swing: 1
student: mira.student.yaml
club: eight iron
faults_from: house.faults.yaml
delivery: { face: ${face} deg right ± 0.5 deg }
flight: { start: ${start} deg right ± 0.5 deg }
`;
const files = {
  'mira.student.yaml': 'student: 1\nhand: right\nbag: { eight iron: { kind: iron, loft: 36 deg } }\n',
  'house.faults.yaml':
    'faults: 1\nbook:\n  open-face:\n    evidence: delivery.face > 2 deg\n    tends_to: [{ effect: flight.start, direction: right }]\n',
  'one.swing.yaml': lesson(0, 0.2),
  'two.swing.yaml': lesson(3, 2.5),
  'three.swing.yaml': lesson(6, 5.1),
  'four.swing.yaml': lesson(9, 7.4),
};

describe('a hover in the server', () => {
  let session: Session;
  before(async () => {
    session = await startSession(files);
  });
  after(() => session.end());

  it('has a column of history on a stated fault, out of the other records', async () => {
    const { text, position } = marked(`${lesson(4, 3.2)}faults: [{ fault: open-$0face }]\n`);
    const uri = await session.open('now.swing.yaml', text);
    const hover = (at: typeof position) =>
      session.connection.sendRequest<Hover | null>('textDocument/hover', {
        textDocument: { uri },
        position: at,
      });
    await hover({ line: 4, character: 14 });
    assert.ok(!session.read.some((one) => one.endsWith('two.swing.yaml')), session.read.join());
    const { value } = (await hover(position))?.contents as MarkupContent;
    assert.match(value, /\| Tends to change \| Belief \| Physics \| History \|/);
    assert.match(value, /\| right \| agrees: [^|]+ \| agrees: [^|]+ \|/);
    assert.ok(session.read.some((one) => one.endsWith('two.swing.yaml')));
  });
});
