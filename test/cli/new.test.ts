// The `new` and `next` commands, run as a coach runs them: files are made once and never written over, and check without a complaint.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const student = 'students/zoe-o-hara/zoe-o-hara.student.yaml';

describe('new', () => {
  it('makes a practice, a student and a record that raise neither error nor warning', () =>
    withFolder({}, (folder) => {
      const practice = swingwright(['new', 'practice'], folder);
      assert.deepEqual([practice.code, practice.err], [0, '']);
      const made = swingwright(['new', 'student', "Zoë O'Hara", '--hand', 'left', '--born', '2012'], folder);
      assert.deepEqual([made.code, made.out], [0, `Made ${student}.\n`]);
      const record = swingwright(
        ['new', 'record', student, '--date', '2026-05-14', '--club', 'seven iron'],
        folder,
      );
      assert.deepEqual(
        [record.code, record.out],
        [0, 'Made students/zoe-o-hara/2026-05-14-seven-iron.swing.yaml.\n'],
      );
      const checked = swingwright(['check', '.'], folder);
      assert.equal(checked.code, 0);
      assert.doesNotMatch(checked.out, /error|warning/);
      assert.match(checked.out, /under eighteen/);
    }));

  it('leaves what is there as it is', () =>
    withFolder({ 'swingwright.yaml': 'swingwright: 1\ncoverage: 2\n' }, (folder) => {
      const { code, out } = swingwright(['new', 'practice'], folder);
      assert.equal(code, 0);
      assert.match(out, /Kept swingwright\.yaml, which was there already\./);
      assert.equal(readFileSync(join(folder, 'swingwright.yaml'), 'utf8'), 'swingwright: 1\ncoverage: 2\n');
      assert.equal(swingwright(['new', 'student', 'Ansa'], folder).code, 0);
      const again = swingwright(['new', 'student', 'Ansa'], folder);
      assert.equal(again.code, 0);
      assert.equal(
        again.out,
        'Made students/ansa/ansa-2.student.yaml.\n`ansa.student.yaml` was there already: use that one for the same student.\n',
      );
      assert.ok(
        readFileSync(join(folder, 'students/ansa/ansa-2.student.yaml'), 'utf8').includes('name: Ansa'),
      );
    }));

  it('says what is wrong with an answer and makes nothing', () =>
    withFolder({}, (folder) => {
      for (const args of [
        ['student', 'Ansa', '--stature', '9 m'],
        ['student', 'Ansa', '--born', 'May'],
        ['record', 'nobody.student.yaml'],
        ['record', 'nobody.student.yaml', '--date', '2026-02-30'],
      ]) {
        const { code, err } = swingwright(['new', ...args], folder);
        assert.equal(code, 2, args.join(' '));
        assert.match(err, /^swingwright: Found .*expected /, args.join(' '));
      }
      assert.match(swingwright(['check', '.'], folder).err, /it holds no Swingwright file/);
    }));

  it('says that there is no name, and that there is no such file', () =>
    withFolder({ 'a.swing.yaml': 'swing: 1\n' }, (folder) => {
      const said = (...args: string[]): string => swingwright(['new', ...args], folder).err;
      assert.match(said('student', ''), /Found an empty name; expected the name of the student\./);
      assert.match(said('record', 'ansa/ansa.student.yaml'), /Found no file `ansa\/ansa\.student\.yaml`/);
      assert.match(said('record', 'a.swing.yaml'), /expected a student's file that ends in/);
      assert.match(said('record', ''), /expected at least one character/);
    }));

  it('names the clubs of the bag where there is no such club', () =>
    withFolder({ 'a.student.yaml': 'student: 1\nbag:\n  hybrid: { kind: hybrid }\n' }, (folder) => {
      const { code, err } = swingwright(['new', 'record', 'a.student.yaml', '--club', 'spoon'], folder);
      assert.equal(code, 2);
      assert.match(err, /`spoon`; expected one from the bag: `hybrid`/);
    }));
});

describe('next', () => {
  const files = {
    'a.student.yaml': 'student: 1\nhand: right\nbag:\n  hybrid: { kind: hybrid, loft: 22 deg }\n',
    'a.swing.yaml':
      'swing: 1\nstudent: a.student.yaml\ndate: 2026-05-14\nclub: hybrid\ngoals:\n  - { carry: 160 m }\n',
  };

  it('prints what to measure, and how far it would narrow what is wanted', () =>
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['next', 'a.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.match(out, /^To measure next\n {2}flight\.carry .*± 6 m\n {4}carry not known → ± 6 m\n/);
    }));

  it('prints the same as JSON', () =>
    withFolder(files, (folder) => {
      const { out } = swingwright(['next', 'a.swing.yaml', '--format', 'json'], folder);
      const { format, file, next } = JSON.parse(out) as {
        format: number;
        file: string;
        next: { id: string }[];
      };
      assert.deepEqual([format, file, next[0]?.id], [1, 'a.swing.yaml', 'flight.carry']);
    }));

  it('cannot be asked of anything but a record', () =>
    withFolder(files, (folder) => assert.equal(swingwright(['next', 'a.student.yaml'], folder).code, 2)));

  it('refuses a file in place of the folder, and a student without a name, in one sentence each', () =>
    withFolder({ 'f.txt': 'x\n' }, (folder) => {
      const practice = swingwright(['new', 'practice', 'f.txt'], folder);
      assert.deepEqual([practice.code, practice.out], [2, '']);
      assert.equal(
        practice.err,
        'swingwright: Found the file `f.txt`; expected a folder, or the name of a new one.\n',
      );
      const student = swingwright(['new', 'student', ' ', '--hand', 'left'], folder);
      assert.equal(student.code, 2);
      assert.equal(student.err, 'swingwright: Found an empty name; expected the name of the student.\n');
    }));
});
