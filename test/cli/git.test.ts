// git itself merges and shows records by value once it is set up, in a repository of its own.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gitEnvironment, gitIn } from './git-folder.ts';
import { swingwright, withFolder } from './program.ts';

const lesson = `swing: 1
date: 2026-05-14
delivery: { attack: 3.5 deg down, path: 5 deg right }
flight: { carry: 171 m } # by radar
`;

/** Ways to call git in a folder. */
function gitWays(folder: string) {
  const env = gitEnvironment(folder);
  const git = gitIn(folder, env);
  const tryGit = (...args: string[]): number | null => spawnSync('git', args, { cwd: folder, env }).status;
  /** As from a window whose path is short. */
  const bare = (...args: string[]): { readonly status: number | null; readonly stdout: string } =>
    spawnSync('git', args, { cwd: folder, env: { ...env, PATH: '/usr/bin:/bin' }, encoding: 'utf8' });
  const commit = (text: string, message: string): void => {
    writeFileSync(join(folder, 'a.swing.yaml'), text);
    git('add', 'a.swing.yaml', '.gitattributes');
    git('commit', '-q', '-m', message);
  };
  return { git, tryGit, bare, commit };
}

describe('git', () => {
  it('merges two edits of one line by key', () =>
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const { git, commit } = gitWays(folder);
      git('init', '-q', '-b', 'main');
      const set = swingwright(['git-setup'], folder);
      assert.deepEqual([set.code, set.err], [0, '']);
      assert.match(set.out, /Added 6 lines to \.gitattributes/);
      commit(lesson, 'lesson');
      git('switch', '-q', '-c', 'colleague');
      commit(lesson.replace('5 deg right', '6 deg right'), 'path');
      git('switch', '-q', 'main');
      commit(lesson.replace('3.5 deg down', '4 deg down'), 'attack');
      git('merge', '-q', '-m', 'both', 'colleague');
      assert.match(
        readFileSync(join(folder, 'a.swing.yaml'), 'utf8'),
        /delivery: \{ attack: 4 deg down, path: 6 deg right \}\n/,
      );
    }));

  it('leaves ordinary marks where both changed one value, and says so', () =>
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const { git, tryGit, commit } = gitWays(folder);
      git('init', '-q', '-b', 'main');
      assert.equal(swingwright(['git-setup'], folder).code, 0);
      commit(lesson, 'lesson');
      git('switch', '-q', '-c', 'colleague');
      commit(lesson.replace('171 m', '172 m'), 'carry');
      git('switch', '-q', 'main');
      commit(lesson.replace('171 m', '170 m'), 'carry');
      assert.equal(tryGit('merge', '-q', 'colleague'), 1);
      const text = readFileSync(join(folder, 'a.swing.yaml'), 'utf8');
      assert.match(
        text,
        /<<<<<<< ours\nflight: \{ carry: 170 m \} # by radar\n=======\nflight: \{ carry: 172 m \} # by radar\n>>>>>>> theirs\n/,
      );
      assert.match(git('status', '--porcelain'), /^UU a\.swing\.yaml/m);
    }));

  it('merges by line, with marks, and shows the text where the program is not on the path', () =>
    withFolder({ 'a.swing.yaml': lesson, '-q.swing.yaml': lesson }, (folder) => {
      const { git, bare, commit } = gitWays(folder);
      git('init', '-q', '-b', 'main');
      assert.equal(swingwright(['git-setup'], folder).code, 0);
      commit(lesson, 'lesson');
      git('add', '-A', '*.yaml');
      git('commit', '-q', '-m', 'another');
      git('switch', '-q', '-c', 'colleague');
      commit(lesson.replace('171 m', '172 m'), 'carry');
      git('switch', '-q', 'main');
      commit(lesson.replace('171 m', '170 m'), 'carry');
      assert.equal(bare('merge', '-q', 'colleague').status, 1);
      const text = readFileSync(join(folder, 'a.swing.yaml'), 'utf8');
      assert.match(text, /^<<<<<<< ours\nflight: .*170 m.*\n=======\nflight: .*172 m.*\n>>>>>>> theirs\n/m);
      assert.match(git('status', '--porcelain'), /^UU a\.swing\.yaml/m);
      git('merge', '--abort');
      git('switch', '-q', '-c', 'other', 'colleague~1');
      commit(lesson.replace('2026-05-14', '2026-05-15'), 'date');
      assert.equal(bare('merge', '-q', '-m', 'both', 'colleague').status, 0);
      assert.match(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), /2026-05-15[^]*172 m/);
      writeFileSync(join(folder, '-q.swing.yaml'), lesson.replace('171 m', '168 m'));
      assert.match(bare('diff').stdout, /^\+flight: \{ carry: 168 m \} # by radar$/m);
      assert.match(git('diff'), /^\+flight\.carry: 168 m$/m);
    })).timeout(120_000);

  it('shows values that changed, and no other form, order or comment', () =>
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const { git, commit } = gitWays(folder);
      git('init', '-q', '-b', 'main');
      assert.equal(swingwright(['git-setup'], folder).code, 0);
      commit(lesson, 'lesson');
      const moved =
        'swing: 1\ndate: 2026-05-14\nflight:\n  carry: 171 m\ndelivery:\n  path: 5 deg right\n  attack: 3.5 deg down\n';
      writeFileSync(join(folder, 'a.swing.yaml'), moved);
      assert.doesNotMatch(git('diff'), /^[+-] ?\w/m);
      writeFileSync(join(folder, 'a.swing.yaml'), moved.replace('171 m', '168 m'));
      const shown = git('diff');
      assert.deepEqual(shown.match(/^[+-]\w.*$/gm), ['-flight.carry: 171 m', '+flight.carry: 168 m']);
    }));

  it('is set up once, and a second time changes nothing', () =>
    withFolder({ '.gitattributes': '* text=auto' }, (folder) => {
      const { git } = gitWays(folder);
      git('init', '-q', '-b', 'main');
      assert.equal(swingwright(['git-setup'], folder).code, 0);
      const attributes = readFileSync(join(folder, '.gitattributes'), 'utf8');
      assert.match(attributes, /^\* text=auto\n\*\.swing\.yaml diff=swingwright merge=swingwright\n/);
      assert.match(swingwright(['git-setup'], folder).out, /Nothing was missing in \.gitattributes/);
      assert.equal(readFileSync(join(folder, '.gitattributes'), 'utf8'), attributes);
    }));

  it('says where there is no repository', () =>
    withFolder({}, (folder) => {
      const { code, err } = swingwright(['git-setup'], folder);
      assert.equal(code, 2);
      assert.match(err, /Found no git repository at `\.`; expected one/);
    }));

  it('merges by line what YAML cannot read', () =>
    withFolder(
      { b: 'a: "x\nb: 1\n\n\nc: 1\n', o: 'a: "x\nb: 2\n\n\nc: 1\n', t: 'a: "x\nb: 1\n\n\nc: 3\n' },
      (folder) => {
        assert.equal(swingwright(['merge', 'b', 'o', 't'], folder).code, 0);
        assert.equal(readFileSync(join(folder, 'o'), 'utf8'), 'a: "x\nb: 2\n\n\nc: 3\n');
        assert.equal(swingwright(['merge', 'b', 'o', 'nothing'], folder).code, 2);
      },
    ));

  it('merges two edits of one review, so that nothing that was said is lost and no id stands twice', () =>
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const { git, commit } = gitWays(folder);
      const say = (author: string, ...args: readonly string[]): void => {
        const { code, err } = swingwright(['review', 'a.swing.yaml', ...args, '--author', author], folder);
        assert.deepEqual([code, err], [0, '']);
      };
      const commitAll = (message: string): void => {
        git('add', '*.yaml');
        git('commit', '-q', '-m', message);
      };
      const threads = (): readonly Said[] =>
        (
          JSON.parse(swingwright(['review', 'a.swing.yaml', '--all', '--format', 'json'], folder).out) as {
            threads: readonly Said[];
          }
        ).threads;
      git('init', '-q', '-b', 'main');
      swingwright(['git-setup'], folder);
      commit(lesson, 'lesson');
      say('Ida', '--about', 'delivery.path', '--text', 'Sure?');
      commitAll('remark');
      const id = threads()[0]!.id;

      git('switch', '-q', '-c', 'colleague');
      say('Jon', '--reply', id, '--text', 'By radar.');
      say('Jon', '--about', 'flight.carry', '--text', 'With which ball?');
      commitAll('Jon');
      git('switch', '-q', 'main');
      say('Lea', '--reply', id, '--text', 'Five shots.');
      say('Lea', '--about', 'delivery.attack', '--text', 'From the mat?');
      commitAll('Lea');
      git('merge', '-q', '-m', 'both', 'colleague');

      assert.doesNotMatch(readFileSync(join(folder, 'a.review.yaml'), 'utf8'), /^[<=>]{7}/m);
      const said = threads();
      assert.equal(new Set(said.map((thread) => thread.id)).size, 3);
      assert.deepEqual(
        said.flatMap(({ comments }) => comments.map(({ author, text }) => `${author}: ${text}`)).sort(),
        ['Ida: Sure?', 'Jon: By radar.', 'Jon: With which ball?', 'Lea: Five shots.', 'Lea: From the mat?'],
      );
      // Whoever copies a remark by hand is told, in the check and by each act on it.
      const path = join(folder, 'a.review.yaml');
      writeFileSync(path, readFileSync(path, 'utf8').replaceAll(/^ {2}- id: \w+$/gm, `  - id: ${id}`));
      const checked = swingwright(['check', 'a.review.yaml'], folder);
      assert.equal(checked.out.match(/remark-stated-twice/g)?.length, 2, checked.out);
      const settled = swingwright(['review', 'a.swing.yaml', '--settle', id, '--author', 'Ida'], folder);
      assert.notEqual(settled.code, 0);
      assert.match(settled.err, /3 remarks begin with/);
    })).timeout(120_000);
});

interface Said {
  readonly id: string;
  readonly comments: readonly { readonly author: string; readonly text: string }[];
}
