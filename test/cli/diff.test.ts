// `diff` and `history` say what changed by value, in a repository of their own; looks make no difference.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { committed, repository } from '../disk/repository.ts';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

const files = { 'ansa.student.yaml': student, 'a.swing.yaml': cleanRecord };
const later = cleanRecord.replace('2 deg right by radar', '4 deg left by radar');

describe('swingwright diff', () => {
  it('gives a line for each value that differs, with its size, and ends with 1', () =>
    withFolder({ ...files, 'b.swing.yaml': later }, (folder) => {
      const { code, out } = swingwright(['diff', 'a.swing.yaml', 'b.swing.yaml'], folder);
      assert.equal(code, 1);
      assert.match(
        out,
        /^~ club path: 2\.0 deg right ± 1\.0 deg → 4\.0 deg left ± 1\.0 deg \(6\.0 deg further left ± 1\.4 deg; larger, 4\.2 u\)$/m,
      );
      assert.equal(out.split('\n').filter((line) => line.startsWith('~')).length, 1);
    }));

  it('says nothing of another form, order, unit or comment, and ends with 0', () =>
    withFolder(files, (folder) => {
      const lines = cleanRecord.trimEnd().split('\n');
      const moved = `# looked at again\n${cleanRecord}`;
      writeFileSync(join(folder, 'b.swing.yaml'), moved);
      assert.ok(lines.length > 3);
      assert.deepEqual(swingwright(['diff', 'a.swing.yaml', 'b.swing.yaml'], folder), {
        code: 0,
        out: '',
        err: '',
      });
    }));

  it('takes what is committed where one file is named', () =>
    withFolder({}, (folder) => {
      repository(folder);
      committed(folder, files);
      assert.equal(swingwright(['diff', 'a.swing.yaml'], folder).code, 0);
      writeFileSync(join(folder, 'a.swing.yaml'), later);
      const { code, out } = swingwright(['diff', 'a.swing.yaml'], folder);
      assert.equal(code, 1);
      assert.match(out, /club path: 2\.0 deg right/);
      const json = JSON.parse(swingwright(['diff', 'a.swing.yaml', '--format', 'json'], folder).out) as {
        isSame: boolean;
      };
      assert.equal(json.isSame, false);
    }));

  it('ends with 2 where one of them cannot be read, or is no record', () =>
    withFolder(files, (folder) => {
      for (const args of [
        ['a.swing.yaml'],
        ['a.swing.yaml', 'gone.swing.yaml'],
        ['a.swing.yaml', 'ansa.student.yaml'],
      ]) {
        const { code, err } = swingwright(['diff', ...args], folder);
        assert.equal(code, 2, args.join());
        assert.match(err, /^swingwright: /);
      }
    }));
});

describe('swingwright history', () => {
  it('says of each commit what it changed, through a change of name, the newest first', () =>
    withFolder({}, (folder) => {
      repository(folder);
      committed(folder, files);
      committed(folder, { 'a.swing.yaml': `# only a comment\n${cleanRecord}` });
      execFileSync('git', ['mv', 'a.swing.yaml', 'é lesson.swing.yaml'], { cwd: folder });
      committed(folder, {});
      committed(folder, { 'é lesson.swing.yaml': later });
      const { code, out, err } = swingwright(['history', 'é lesson.swing.yaml'], folder);
      assert.deepEqual([code, err], [0, '']);
      const said = out.split('\n').filter((line) => line.startsWith('   '));
      assert.match(said[0]!, /club path 2\.0 deg right → 4\.0 deg left/);
      assert.deepEqual(
        said.slice(1, 3).map((line) => line.trim()),
        ['no value changed', 'no value changed'],
      );
      assert.match(said[3]!, /\d+ entries, the first version/);
      const few = swingwright(['history', 'é lesson.swing.yaml', '--most', '1', '--format', 'json'], folder);
      assert.equal((JSON.parse(few.out) as { commits: unknown[] }).commits.length, 1);
    }));

  it('says where there is no history to ask', () =>
    withFolder(files, (folder) => {
      assert.match(swingwright(['history', 'a.swing.yaml'], folder).err, /lies in no git repository/);
      repository(folder);
      const { code, err } = swingwright(['history', 'a.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(err, /Found no commit that holds `a\.swing\.yaml`/);
    }));
});
