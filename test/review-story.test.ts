// Two people review one record in a real git repository: remarks, answers and edits on two branches, merged without loss, settled and signed off.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gitIn, type Git } from './cli/git-folder.ts';
import { swingwright, withFolder } from './cli/program.ts';

const name = 'a.swing.yaml';
const record = `swing: 1
date: 2026-05-14
club: hybrid
delivery:
  attack: 3.5 deg down by radar
  path: 2 deg right by radar   # five shots
  face: 1 deg right by camera
`;

interface Listed {
  readonly threads: readonly {
    readonly id: string;
    readonly about: string;
    readonly state: string;
    readonly suggestion: string | null;
    readonly comments: readonly { readonly author: string; readonly text: string }[];
  }[];
  readonly signOffs: readonly { readonly by: string; readonly void: boolean }[];
}

describe('a review on two branches', () => {
  it('loses nothing, holds a check back while a remark is open, and ends in a signature that a value voids', () =>
    withFolder({ [name]: record }, (folder) => {
      const git = gitIn(folder);
      git('init', '-q', '-b', 'main');
      assert.equal(swingwright(['git-setup'], folder).code, 0);
      commit(git, 'Write the lesson');

      git('switch', '-q', '-c', 'analyst');
      review(
        folder,
        'Jon',
        '--about',
        'delivery.face',
        '--text',
        'Square?',
        '--suggest',
        '2 deg right by camera',
      );
      review(folder, 'Jon', '--about', 'delivery.path', '--text', 'Which five?');
      commit(git, 'Remark');
      const [path = assert.fail(), face = assert.fail()] = listed(folder).threads;
      assert.deepEqual([path.about, face.about], ['delivery.path', 'delivery.face']);

      // The coach has the remarks so far, and answers while the analyst goes on.
      git('switch', '-q', 'main');
      git('merge', '-q', '--ff-only', 'analyst');
      review(folder, 'Lea', '--reply', face.id, '--text', 'It was a degree off.');
      change(folder, '3.5 deg down', '4 deg down');
      commit(git, 'Answer');
      git('switch', '-q', 'analyst');
      review(folder, 'Jon', '--settle', path.id);
      change(folder, '2 deg right by radar', '2.5 deg right by radar');
      commit(git, 'Settle');

      git('switch', '-q', 'main');
      git('merge', '-q', '-m', 'Both', 'analyst');
      assert.equal(git('status', '--porcelain', '-uno'), '');
      assert.equal(read(folder), record.replace('3.5 deg', '4 deg').replace('path: 2 deg', 'path: 2.5 deg'));
      assert.deepEqual(
        listed(folder).threads.map(({ about, state, suggestion, comments }) => [
          about,
          state,
          suggestion,
          comments.map(({ author, text }) => `${author}: ${text}`),
        ]),
        [
          ['delivery.path', 'settled', null, ['Jon: Which five?', 'Jon: ']],
          [
            'delivery.face',
            'answered',
            '2 deg right by camera',
            ['Jon: Square?', 'Lea: It was a degree off.'],
          ],
        ],
      );

      // What its author says again opens it.
      review(folder, 'Jon', '--reply', face.id, '--text', 'Then take mine.');
      const held = check(folder);
      assert.equal(held.code, 1);
      assert.match(held.out, /^ +7:3 +error .* open-remark$/m);
      review(folder, 'Lea', '--apply', face.id);
      assert.match(read(folder), /^ {2}face: 2 deg right by camera$/m);
      review(folder, 'Lea', '--settle', face.id);
      assert.deepEqual([check(folder).code, check(folder).out.includes('open-remark')], [0, false]);

      review(folder, 'Jon', '--sign-off');
      commit(git, 'Sign off');
      assert.deepEqual(signOffs(folder), [['Jon', false]]);
      const indented = read(folder).replace(/^ {2}/gm, '    ');
      writeFileSync(join(folder, name), `# as it was on the range\n${indented}`);
      assert.deepEqual(signOffs(folder), [['Jon', false]]);
      assert.doesNotMatch(check(folder).out, /sign-off-void/);
      change(folder, '2 deg right by camera', '2.2 deg right by camera');
      assert.deepEqual(signOffs(folder), [['Jon', true]]);
      assert.match(check(folder).out, / sign-off-void$/m);
    })).timeout(180_000);
});

function commit(git: Git, message: string): void {
  git('add', '--', '*.yaml', '.gitattributes');
  git('commit', '-q', '-m', message);
}

function review(folder: string, author: string, ...args: readonly string[]): void {
  const { code, err } = swingwright(['review', name, ...args, '--author', author], folder);
  assert.deepEqual([code, err], [0, '']);
}

function listed(folder: string): Listed {
  return JSON.parse(swingwright(['review', name, '--all', '--format', 'json'], folder).out) as Listed;
}

function signOffs(folder: string): readonly (readonly [string, boolean])[] {
  return listed(folder).signOffs.map((one) => [one.by, one.void]);
}

function check(folder: string) {
  return swingwright(['check', '--reviews', name, 'a.review.yaml'], folder);
}

function change(folder: string, from: string, to: string): void {
  assert.ok(read(folder).includes(from));
  writeFileSync(join(folder, name), read(folder).replace(from, to));
}

function read(folder: string): string {
  return readFileSync(join(folder, name), 'utf8');
}
