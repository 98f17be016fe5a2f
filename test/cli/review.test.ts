// Tests of the `review` command: lists and writes remarks, replies and signatures, with git and without.
import assert from 'node:assert/strict';
import { existsSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';
import { done, lesson, listed, name, read, run } from './reviews.ts';

describe('swingwright review', () => {
  it('remarks, replies, settles and opens again, by the beginning of an id', () =>
    withFolder({ [name]: lesson }, (folder) => {
      assert.match(
        done(folder, name, '--about', 'delivery.face', '--text', 'Sure?'),
        /^Began a\.review\.yaml\.\n$/,
      );
      const [{ id, line, state } = assert.fail()] = listed(folder).threads;
      assert.deepEqual([line, state], [4, 'open']);
      const reply = run(folder, name, '--reply', id.slice(0, 4), '--text', 'Yes.', '--author', 'Jon');
      assert.deepEqual([reply.code, reply.err], [0, '']);
      assert.equal(listed(folder).threads[0]?.state, 'answered');
      done(folder, name, '--settle', id);
      assert.equal(listed(folder).threads[0]?.state, 'settled');
      assert.match(run(folder, name).out, /0 remarks not settled, 1 settled/);
      done(folder, name, '--reopen', id);
      assert.equal(listed(folder).threads[0]?.state, 'open');
      assert.match(run(folder, 'a.review.yaml').out, /a\.swing\.yaml:4 {2}delivery\.face {2}open/);
    }));

  it('says what stood there and what stands there now, whatever lines came above', () =>
    withFolder({ [name]: lesson }, (folder) => {
      done(folder, name, '--about', 'delivery.face', '--text', 'Sure?');
      writeFileSync(
        join(folder, name),
        `# more\n${lesson.replace('1 deg right by radar', '1° right by radar')}`,
      );
      assert.equal(listed(folder).threads[0]?.changed, false);
      writeFileSync(join(folder, name), `# more\n${lesson.replace('1 deg right by radar', '2 right')}`);
      assert.match(run(folder, name).out, /:5 .*\n {2}then 1 deg right by radar, now 2 deg right\n/);
      writeFileSync(join(folder, name), 'swing: 1\n');
      assert.match(run(folder, name).out, /not in the record any more/);
    }));

  it('applies a suggested value and changes nothing else', () =>
    withFolder({ [name]: lesson }, (folder) => {
      done(folder, name, '--about', 'delivery.face', '--text', 'So.', '--suggest', '2 deg right by camera');
      done(folder, name, '--about', 'delivery.path', '--suggest', '3 deg left', '--text', '');
      for (const { id } of listed(folder).threads) done(folder, name, '--apply', id);
      const wanted = lesson.replace('1 deg right by radar', '2 deg right by camera');
      assert.equal(read(folder, name), wanted.replace('{ value: 2 deg left, by: radar }', '3 deg left'));
      assert.match(run(folder, name).out, /says what was suggested/);
    }));

  it('refuses what cannot be done, and writes nothing then', () =>
    withFolder(
      { [name]: lesson, 'b.swing.yaml': lesson, 'b.review.yaml': 'review: 1\nthreads: [\n' },
      (folder) => {
        const refused = (words: RegExp, code: number, ...args: readonly string[]): void => {
          const result = run(folder, ...args);
          assert.deepEqual([result.code, result.out], [code, '']);
          assert.match(result.err, words);
        };
        const ida = ['--author', 'Ida'];
        refused(
          /no entry `delivery\.fase`; expected one that it has, perhaps `delivery\.face`/,
          1,
          name,
          '--about',
          'delivery.fase',
          '--text',
          'x',
          ...ida,
        );
        refused(/found no text; expected/, 1, name, '--about', 'delivery.face', ...ida);
        refused(
          /cannot stand at/,
          1,
          name,
          '--about',
          'delivery.face',
          '--text',
          'x',
          '--suggest',
          '2 kg',
          ...ida,
        );
        refused(
          /expected one value on one line/,
          1,
          name,
          '--about',
          'delivery.face',
          '--text',
          'x',
          '--suggest',
          '2\nclub: x',
          ...ida,
        );
        refused(/has a remark `r`/, 1, name, '--settle', 'r', ...ida);
        refused(/one of them at a time/, 2, name, '--settle', 'r', '--reopen', 'r');
        refused(/go with/, 2, name, '--text', 'r');
        refused(/there is no such file/, 2, 'c.swing.yaml');
        refused(
          /`b\.review\.yaml` cannot be read to its end \(.*mended first/,
          2,
          'b.swing.yaml',
          '--sign-off',
          ...ida,
        );
        assert.ok(!existsSync(join(folder, 'a.review.yaml')));
        done(folder, name, '--about', 'delivery.face', '--text', '1');
        done(folder, name, '--about', 'delivery.face', '--text', '2');
        refused(/2 remarks begin with `r`/, 1, name, '--settle', 'r', ...ida);
      },
    ));

  it('signs off, and says when that is void', () =>
    withFolder({ [name]: lesson }, (folder) => {
      done(folder, name, '--sign-off');
      writeFileSync(join(folder, name), `# a comment\n${lesson}`);
      assert.deepEqual(
        listed(folder).signOffs.map((one) => [one.by, one.void]),
        [['Ida', false]],
      );
      writeFileSync(join(folder, name), lesson.replace('hybrid', 'driver'));
      assert.match(run(folder, name).out, /^Signed off by Ida, .*: void, for values have changed since$/m);
      const check = swingwright(['check', '.', '--format', 'lines'], folder);
      assert.match(check.out, /^a\.swing\.yaml:1:1: warning: .*`Ida`.*\[sign-off-void\]$/m);
      assert.match(check.out, /^a\.review\.yaml:6:11: warning: .*\[sign-off-void\]$/m);
      done(folder, name, '--sign-off');
      assert.deepEqual(
        listed(folder).signOffs.map((one) => one.void),
        [false],
      );
    }));

  it('keeps the reviews of a renamed record, and names it anew with the next word', () =>
    withFolder({ [name]: lesson, 'other.swing.yaml': 'swing: 1\nclub: hybrid\n' }, (folder) => {
      done(folder, name, '--about', 'delivery.face', '--text', 'Sure?');
      renameSync(join(folder, name), join(folder, 'b.swing.yaml'));
      assert.equal(listed(folder, 'b.swing.yaml').threads.length, 1);
      assert.equal(listed(folder, 'a.review.yaml').threads[0]?.line, 4);
      assert.equal(listed(folder, 'other.swing.yaml').threads.length, 0);
      done(folder, 'b.swing.yaml', '--sign-off');
      assert.match(read(folder, 'a.review.yaml'), /^of: b\.swing\.yaml$/m);
      renameSync(join(folder, 'b.swing.yaml'), join(folder, 'c.swing.yaml'));
      assert.deepEqual(
        listed(folder, 'c.swing.yaml').signOffs.map((one) => one.void),
        [false],
      );
    }));

  it('reads the reviews of several people, and never writes over that of another record', () =>
    withFolder(
      {
        [name]: lesson,
        'b.swing.yaml': lesson,
        'a.review.yaml': 'review: 1\nof: b.swing.yaml\nthreads: [{ id: r1, about: club }]\n',
        'by-jon.review.yaml': 'review: 1\nof: b.swing.yaml\nthreads: [{ id: r2, about: club }]\n',
      },
      (folder) => {
        assert.deepEqual(
          listed(folder, 'b.swing.yaml').threads.map(({ id }) => id),
          ['r1', 'r2'],
        );
        done(folder, name, '--sign-off');
        assert.match(read(folder, 'a-2.review.yaml'), /^of: a\.swing\.yaml$/m);
        assert.equal(listed(folder).signOffs.length, 1);
      },
    ));

  it('needs git for nothing but the name', () =>
    withFolder({ [name]: lesson }, (folder) => {
      const env = {
        HOME: process.env['HOME'],
        GIT_CONFIG_GLOBAL: process.env['GIT_CONFIG_GLOBAL'],
        GIT_CONFIG_NOSYSTEM: process.env['GIT_CONFIG_NOSYSTEM'],
      };
      try {
        Object.assign(process.env, {
          HOME: folder,
          GIT_CONFIG_GLOBAL: join(folder, 'config'),
          GIT_CONFIG_NOSYSTEM: '1',
        });
        const nobody = run(folder, name, '--sign-off');
        assert.deepEqual([nobody.code, nobody.out], [1, '']);
        assert.match(nobody.err, /--author/);
        writeFileSync(join(folder, 'config'), '[user]\n\tname = Jon\n');
        assert.equal(run(folder, name, '--sign-off').code, 0);
        assert.equal(listed(folder).signOffs[0]?.by, 'Jon');
      } finally {
        for (const [key, value] of Object.entries(env)) {
          if (value === undefined) Reflect.deleteProperty(process.env, key);
          else process.env[key] = value;
        }
      }
    }));

  it('prints nothing that could steer a terminal, and keeps the words in the file', () =>
    withFolder({ [name]: lesson }, (folder) => {
      const words = 'a\n\u001b[2J\u202eb: # "c"\u0007';
      done(folder, name, '--about', 'club', '--text', words);
      const { out } = run(folder, name);
      // eslint-disable-next-line no-control-regex
      assert.doesNotMatch(out, /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
      assert.equal(out.split('\n').length, 6);
      // eslint-disable-next-line no-control-regex
      assert.doesNotMatch(read(folder, 'a.review.yaml'), /[\u0000-\u0009\u000b-\u001f\u202e]/);
    }));

  it('signs off no record with conflict marks, and reads past no mark in a review', () =>
    withFolder(
      {
        [name]: lesson.replace(
          'club: hybrid\n',
          '<<<<<<< ours\nclub: hybrid\n=======\nclub: iron\n>>>>>>> theirs\n',
        ),
        'b.swing.yaml': lesson,
        'b.review.yaml': 'review: 1\nof: b.swing.yaml\n<<<<<<< ours\nthreads: []\n=======\n>>>>>>> theirs\n',
        'c.swing.yaml': lesson,
        'c.review.yaml': 'review: 2\nof: c.swing.yaml\nthreads: []\n',
      },
      (folder) => {
        const torn = run(folder, name, '--sign-off', '--author', 'Ida');
        assert.deepEqual([torn.code, torn.out], [2, '']);
        assert.match(
          torn.err,
          /`a\.swing\.yaml` cannot be read to its end \(.+\); expected it to be mended first/,
        );
        assert.ok(!existsSync(join(folder, 'a.review.yaml')));
        for (const letter of ['b', 'c']) {
          const { code, out, err } = run(folder, `${letter}.swing.yaml`);
          assert.deepEqual([code, out], [2, '']);
          assert.match(err, new RegExp(`\`${letter}\\.review\\.yaml\` cannot be read to its end`));
        }
      },
    ));

  it('begins a review in an empty file, and says when a suggestion stands there already', () =>
    withFolder({ [name]: lesson, 'a.review.yaml': '' }, (folder) => {
      done(folder, name, '--about', 'delivery.face', '--text', 'Sure?', '--suggest', '2 deg right by radar');
      const [{ id } = assert.fail()] = listed(folder).threads;
      assert.match(done(folder, name, '--apply', id), /Changed a\.swing\.yaml/);
      const again = run(folder, name, '--apply', id);
      assert.deepEqual([again.code, again.out], [1, '']);
      assert.match(
        again.err,
        /the record says `2 deg right by radar` there already; expected a value that differs/,
      );
    }));
});
