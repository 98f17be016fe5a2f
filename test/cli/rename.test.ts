// Faults and clubs are renamed on disk as in the editor, in all files or in none.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const files = {
  'house.faults.yaml': '\ufefffaults: 1\nbook:\n  stays-back: {} # ours\n  stands-up: {}\n',
  'mira/mira.student.yaml': 'student: 1\nname: Mira\nbag: { hybrid: {}, wedge: {} }\n',
  'mira/a.swing.yaml':
    'swing: 1\r\nstudent: mira.student.yaml\r\nclub: hybrid\r\nfaults_from: ../house.faults.yaml\r\nfaults: [{ fault: stays-back }]\r\n',
  'ansa/ansa.student.yaml': 'student: 1\nname: Ansa\nbag: { hybrid: {} }\n',
};

describe('swingwright rename', () => {
  it('renames a fault in the book and in records, and keeps every other byte', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['rename', '--fault', 'stays-back', 'hangs-back'], folder);
      assert.equal(out, 'house.faults.yaml: 1\nmira/a.swing.yaml: 1\nRenamed in 2 places of 2 files.\n');
      assert.equal(code, 0);
      for (const [name, text] of Object.entries(files))
        assert.equal(
          readFileSync(join(folder, name), 'utf8'),
          text.replace('stays-back', 'hangs-back'),
          name,
        );
    });
  });

  it('follows records to a book that lies outside of the folder', () => {
    withFolder(files, (folder) => {
      assert.equal(swingwright(['rename', '--fault', 'stays-back', 'x', 'mira'], folder).code, 0);
      assert.match(readFileSync(join(folder, 'house.faults.yaml'), 'utf8'), /^ {2}x: /m);
    });
  });

  it('asks which club is meant where several students have one of that name', () => {
    withFolder(files, (folder) => {
      const { code, err } = swingwright(['rename', '--club', 'hybrid', 'utility'], folder);
      assert.equal(code, 1);
      assert.match(
        err,
        /several of the name `hybrid`, in `ansa\/ansa\.student\.yaml` and `mira\/mira\.student\.yaml`/,
      );
      const chosen = swingwright(
        ['rename', '--club', 'hybrid', 'utility', '--of', 'mira/a.swing.yaml'],
        folder,
      );
      assert.equal(
        chosen.out,
        'mira/a.swing.yaml: 1\nmira/mira.student.yaml: 1\nRenamed in 2 places of 2 files.\n',
      );
      assert.equal(
        readFileSync(join(folder, 'ansa/ansa.student.yaml'), 'utf8'),
        files['ansa/ansa.student.yaml'],
      );
    });
  });

  it('refuses what is taken, what is nowhere, and what could not be written back as it was', () => {
    withFolder(
      {
        ...files,
        'mira/b.swing.yaml': Buffer.from(
          'swing: 1\nstudent: mira.student.yaml\nclub: wedge # \xfcber\n',
          'latin1',
        ),
      },
      (folder) => {
        const taken = swingwright(['rename', '--fault', 'stays-back', 'stands-up'], folder);
        assert.deepEqual([taken.code, taken.out], [1, '']);
        assert.match(taken.err, /`stands-up` stands in `house\.faults\.yaml` already/);
        assert.match(
          swingwright(['rename', '--fault', 'unheard-of', 'x'], folder).err,
          /^swingwright: No fault `unheard-of` is mentioned there/,
        );
        const odd = swingwright(['rename', '--club', 'wedge', 'lob'], folder);
        assert.equal(odd.code, 2);
        assert.match(odd.err, /cannot read `mira\/b\.swing\.yaml`/);
        assert.equal(
          readFileSync(join(folder, 'mira/mira.student.yaml'), 'utf8'),
          files['mira/mira.student.yaml'],
        );
        assert.equal(swingwright(['rename', 'stays-back', 'x'], folder).code, 2);
        assert.equal(swingwright(['rename', '--fault', 'stays-back', 'x', 'nowhere'], folder).code, 2);
      },
    );
  });
  it("renames an own quantity in its own workspace's files, by its id or as it is declared", () => {
    const own = `swingwright: 1
quantities:
  checkpoints.rib_turn: { like: checkpoints.shoulder_turn, at: [top, impact] }
checks: { far: { when: checkpoints.top.rib_turn > 90 deg, message: Far. } }
`;
    const record = 'swing: 1\r\ncheckpoints: { top: { rib_turn: 80 deg } } # accept[own/far]: rib_turn\r\n';
    const two = {
      'one/swingwright.yaml': own,
      'one/a.swing.yaml': record,
      'two/swingwright.yaml': own,
      'two/a.swing.yaml': record,
    };
    withFolder(two, (folder) => {
      const run = (...words: string[]) => swingwright(['rename', ...words], folder);
      const read = (name: string): string => readFileSync(join(folder, name), 'utf8');
      const both = run('--quantity', 'checkpoints.rib_turn', 'cage_turn');
      assert.equal(both.code, 1);
      assert.match(both.err, /several of the name .* `one\/swingwright\.yaml` and `two\/swingwright\.yaml`/);
      const { code, out } = run('--quantity', 'checkpoints.rib_turn', 'checkpoints.cage_turn', 'one');
      assert.equal(code, 0);
      assert.match(out, /Renamed in 3 places of 2 files\.\n$/);
      assert.equal(read('one/swingwright.yaml'), own.replaceAll('rib_turn', 'cage_turn'));
      assert.equal(read('one/a.swing.yaml'), record.replace('{ rib_turn', '{ cage_turn'));
      assert.equal(run('--check', 'far', 'too-far', '.', '--of', 'two/a.swing.yaml').code, 0);
      assert.equal(read('two/a.swing.yaml'), record.replace('own/far', 'own/too-far'));
      assert.equal(read('two/swingwright.yaml'), own.replace('far:', 'too-far:'));
      assert.match(
        run('--quantity', 'delivery.path', 'way').err,
        /No quantity `delivery\.path` is mentioned/,
      );
      assert.equal(run('--quantity', '--check', 'a', 'b').code, 2);
    });
  });
});

describe('swingwright references', () => {
  it('lists the places of a fault, a club, a quantity and a file', () => {
    withFolder({ ...files, 'b.swing.yaml': 'swing: 1\ndelivery: { path: 1 deg right }\n' }, (folder) => {
      const places = (name: string): string[] =>
        swingwright(['references', name], folder).out.trim().split('\n');
      assert.deepEqual(places('stays-back'), [
        'house.faults.yaml:3:3  fault defined',
        'mira/a.swing.yaml:5:19  fault mentioned',
      ]);
      assert.equal(places('hybrid').length, 3);
      assert.deepEqual(places('delivery.path'), ['b.swing.yaml:2:13  quantity entered']);
      assert.deepEqual(places('mira/mira.student.yaml'), ['mira/a.swing.yaml:2:10  file mentioned']);
    });
  });

  it('gives them as JSON, and says where there is none', () => {
    withFolder(files, (folder) => {
      const { out } = swingwright(['references', 'wedge', 'mira', '--format', 'json'], folder);
      assert.deepEqual(JSON.parse(out), [
        {
          file: 'mira/mira.student.yaml',
          kind: 'club',
          name: 'wedge',
          role: 'definition',
          range: { start: { line: 2, character: 19 }, end: { line: 2, character: 24 } },
        },
      ]);
      const none = swingwright(['references', 'putter'], folder);
      assert.deepEqual([none.code, none.out, none.err], [1, '', 'swingwright: nothing mentions `putter`.\n']);
    });
  });
});
