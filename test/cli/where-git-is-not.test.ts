// In a shallow clone, in a folder without git and above all folders that have one, each command does what it can and says what it cannot.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const lesson = 'swing: 1\ndelivery:\n  face: 1 deg right\n';
const asIda = ['--author', 'Ida'] as const;

function git(folder: string, ...args: readonly string[]): void {
  const who = ['-c', 'user.name=A Coach', '-c', 'user.email=coach@lessons.example'];
  execFileSync('git', [...who, ...args], { cwd: folder, stdio: 'ignore' });
}

/** What needs no history works anywhere. */
function assertReviews(folder: string): void {
  const review = (...args: readonly string[]) =>
    swingwright(['review', 'a.swing.yaml', ...args, ...asIda], folder);
  assert.equal(review('--about', 'delivery.face', '--text', 'Sure?').code, 0);
  assert.equal(review('--sign-off').code, 0);
  const { out } = swingwright(['review', 'a.swing.yaml'], folder);
  assert.match(out, /Signed off by Ida, [^:]*:\d\d:\d\dZ\n/);
  assert.match(out, /delivery\.face {2}open/);
  writeFileSync(join(folder, 'b.swing.yaml'), lesson.replace('1 deg', '3 deg'));
  const diff = swingwright(['diff', 'a.swing.yaml', 'b.swing.yaml'], folder);
  assert.equal(diff.code, 1);
  assert.match(diff.out, /^~ face direction: 1 deg right .* → 3 deg right/);
}

describe('in a shallow clone', () => {
  it('what is there is compared and reviewed, and what was not cloned is said', () =>
    withFolder({ 'full/a.swing.yaml': lesson }, (folder) => {
      const full = join(folder, 'full');
      const clone = join(folder, 'clone');
      git(full, 'init', '-q', '-b', 'main');
      git(full, 'add', '.');
      git(full, 'commit', '-q', '-m', 'One');
      writeFileSync(join(full, 'a.swing.yaml'), lesson.replace('1 deg', '2 deg'));
      git(full, 'commit', '-q', '-a', '-m', 'Two');
      git(folder, 'clone', '-q', '--depth', '1', `file://${full}`, clone);

      const history = swingwright(['history', 'a.swing.yaml'], clone);
      assert.equal(history.code, 0);
      assert.match(
        history.out,
        /Two\n +this clone is shallow and holds nothing older; `git fetch --unshallow`/,
      );
      assert.match(swingwright(['history', 'a.swing.yaml'], full).out, /1 entry, the first version\n$/);
      const past = swingwright(['diff', 'HEAD~1:a.swing.yaml', 'a.swing.yaml'], clone);
      assert.equal(past.code, 2);
      assert.match(past.err, /this clone is shallow and does not hold `HEAD~1`; `git fetch --unshallow`/);
      assert.deepEqual([swingwright(['diff', 'a.swing.yaml'], clone).code], [0]);
      assert.equal(swingwright(['git-setup'], clone).code, 0);
      assert.match(readFileSync(join(clone, '.gitattributes'), 'utf8'), /\*\.swing\.yaml diff=swingwright/);
      writeFileSync(join(clone, 'a.swing.yaml'), lesson);
      assertReviews(clone);
    })).timeout(180_000);
});

describe('in a folder without git', () => {
  it('records are compared and reviewed, and what asks git says that there is none', () =>
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      for (const args of [['diff', 'a.swing.yaml'], ['history', 'a.swing.yaml'], ['git-setup']]) {
        const { code, out, err } = swingwright(args, folder);
        assert.deepEqual([code, out], [2, ''], args.join(' '));
        assert.match(err, /no git repository/, args.join(' '));
      }
      assertReviews(folder);
    })).timeout(180_000);
});
