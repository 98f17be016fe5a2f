// The `claims` command prints belief, physics and history beside one another, as text and JSON.
import assert from 'node:assert/strict';
import { swingwright, withFolder } from './program.ts';

const lesson = (face: number, start: number): string => `swing: 1
student: a.student.yaml
club: eight iron
faults_from: house.faults.yaml
delivery: { face: ${face} deg right ± 0.5 deg }
flight: { start: ${start} deg right ± 0.5 deg }
`;
const files = {
  'a.student.yaml': 'student: 1\nhand: right\nbag: { eight iron: { kind: iron, loft: 36 deg } }\n',
  'house.faults.yaml': `faults: 1
book:
  open-face:
    evidence: delivery.face > 2 deg
    tends_to: [{ effect: flight.start, direction: right, size: 0.8 deg per deg ± 0.2 deg }]
`,
  'now.swing.yaml': `${lesson(4, 3.2)}faults: [{ fault: open-face }]\n`,
  'one.swing.yaml': lesson(0, 0.2),
  'two.swing.yaml': lesson(3, 2.5),
  'three.swing.yaml': lesson(6, 5.1),
  'four.swing.yaml': lesson(9, 7.4),
};

describe('swingwright claims', () => {
  it('prints a table of effect, belief, physics and history, and says where nothing is claimed', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['claims', 'now.swing.yaml'], folder);
      assert.equal(code, 0);
      const [heads = '', row = ''] = out.split('\n');
      assert.match(heads, /^fault +effect +belief +physics +history$/);
      assert.match(
        row,
        /^open-face +start direction, when face direction changes by 1\.0 deg right +0\.80 deg right ± 0\.20 deg +agrees: 0\.\d+ deg right ± 0\.\d+ deg, as believed +agrees: 0\.\d+ deg right ± 0\.\d+ deg, as believed$/,
      );
      assert.match(swingwright(['claims', 'one.swing.yaml'], folder).out, /^No stated fault is believed/);
    });
  });

  it('prints the same as JSON, with differences in the unit shown', () => {
    withFolder(files, (folder) => {
      const { out } = swingwright(['claims', 'now.swing.yaml', '--format', 'json'], folder);
      const json = JSON.parse(out) as { claims: Record<string, unknown>[] };
      const [claim] = json.claims;
      assert.deepEqual(claim!.for, { cause: 'delivery.face', difference: 1, unit: 'deg', is: 'per' });
      assert.deepEqual(claim!.belief, { sign: 1, difference: 0.8, u: 0.2, unit: 'deg' });
      const history = claim!.history as Record<string, unknown>;
      assert.deepEqual([history.answer, history.records], ['agrees', 4]);
      // The line through the four points without weights: Σxy/Σxx about the means (4.5, 3.8) is 36.3/45.
      assert.ok(Math.abs((history.difference as number) - 0.807) < 0.01, String(history.difference));
    });
  });

  it('refuses a record without a fault book', () => {
    withFolder({ 'b.swing.yaml': 'swing: 1\n' }, (folder) => {
      const { code, err } = swingwright(['claims', 'b.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(err, /has no fault book; expected one at `faults_from`/);
    });
  });

  it('lists what it leaves out, with place and reason, and names a book that is missing', () => {
    const missing = 'swing: 1\nfaults_from: nowhere.faults.yaml\nfaults: [{ fault: open-face }]\n';
    const plain = `${lesson(4, 3.2)}faults: open face\n`;
    withFolder({ ...files, 'missing.swing.yaml': missing, 'plain.swing.yaml': plain }, (folder) => {
      const { code, err } = swingwright(['claims', 'missing.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(
        err,
        /^line 2, column 14: Found no file at `nowhere\.faults\.yaml`; expected a fault book/,
      );
      assert.match(err, /has no fault book that can be read; expected one at `faults_from`/);
      const { out } = swingwright(['claims', 'plain.swing.yaml'], folder);
      assert.match(
        out,
        /^Not understood, and left out\n {2}line 7, column 9: Found `open face`; expected a list\./,
      );
      const json = JSON.parse(
        swingwright(['claims', 'plain.swing.yaml', '--format', 'json'], folder).out,
      ) as { notUnderstood: unknown[] };
      assert.equal(json.notUnderstood.length, 1);
    });
  });
});
