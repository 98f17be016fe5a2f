// The `share` command: an empty folder is filled, a folder with files is left alone, and what was left out is said.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const practice = {
  'ansa/a.swing.yaml':
    'swing: 1\nstudent: ansa.student.yaml\ndate: 2026-05-14\nclub: hybrid\nnotes: slept badly\nflight: { carry: 150 m }\n',
  'ansa/ansa.student.yaml': 'student: 1\nname: Ansa\nbag: { hybrid: { kind: hybrid } }\n',
};

describe('share', () => {
  it('writes copies, and says what is who and what was left out', () =>
    withFolder(practice, (folder) => {
      const { code, out, err } = swingwright(
        ['share', 'ansa/a.swing.yaml', '--out', 'out', '--days', '1'],
        folder,
      );
      assert.deepEqual([code, err], [0, '']);
      assert.match(out, /Wrote out.player1.2026-05-15-hybrid\.swing\.yaml\n/);
      assert.match(out, /Ansa is Player 1\.\nEvery day is moved .*\nLeft out: 1 note\.\n$/);
      assert.equal(
        readFileSync(join(folder, 'out/player1/2026-05-15-hybrid.swing.yaml'), 'utf8'),
        'swing: 1\nstudent: player1.student.yaml\ndate: 2026-05-15\nclub: hybrid\nflight: { carry: 150 m }\n',
      );
      assert.equal(swingwright(['check', 'out'], folder).code, 0);
    }));

  it('moves the days by chance where nothing is said, by a month at least', () =>
    withFolder(practice, (folder) => {
      assert.equal(swingwright(['share', 'ansa', '--out', 'out'], folder).code, 0);
      const name = readdirSync(join(folder, 'out/player1')).find((file) => file.endsWith('.swing.yaml'))!;
      assert.ok(Date.parse('2026-05-14') - Date.parse(name.slice(0, 10)) >= 30 * 86_400_000);
    }));

  it('keeps what is asked for, and says to read it', () =>
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(
        ['share', 'ansa', '--out', 'out', '--keep', 'notes', 'birth'],
        folder,
      );
      assert.equal(code, 0);
      assert.match(out, /Nothing was left out\.\nRead what you asked to keep/);
    }));

  it('leaves a folder with files alone', () =>
    withFolder(practice, (folder) => {
      const { code, err } = swingwright(['share', 'ansa', '--out', '.'], folder);
      assert.equal(code, 2);
      assert.match(err, /Found files in `\.`; expected a folder that is empty or not yet there/);
      assert.deepEqual(readdirSync(folder), ['ansa']);
    }));

  it('refuses what YAML cannot read, and paths that are not there', () =>
    withFolder({ 'a.swing.yaml': 'swing: 1\nclub: "open\n' }, (folder) => {
      const broken = swingwright(['share', 'a.swing.yaml', '--out', 'out'], folder);
      assert.equal(broken.code, 1);
      assert.match(broken.err, /cannot be read to its end/);
      assert.equal(swingwright(['share', 'b.swing.yaml', '--out', 'out'], folder).code, 2);
      assert.equal(swingwright(['share', 'a.swing.yaml', '--out', 'out', '--days', 'x'], folder).code, 2);
    }));
});
