// Git is set up in a repository, and a folder without one is told in a sentence.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setUpGit } from '../../src/disk/git-setup.ts';

describe('git', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'swingwright-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('is set up where there is a repository, once', async () => {
    spawnSync('git', ['init', '-q'], { cwd: folder });
    assert.equal((await setUpGit(folder)).kind, 'done');
    const { kind, words } = await setUpGit(folder);
    assert.deepEqual(
      [kind, words[0]],
      ['done', 'Nothing was missing in .gitattributes, which belongs into the repository.'],
    );
    assert.match(readFileSync(join(folder, '.gitattributes'), 'utf8'), /^\*\.swing\.yaml diff=swingwright/);
    const driver = spawnSync('git', ['config', 'merge.swingwright.driver'], {
      cwd: folder,
      encoding: 'utf8',
    });
    assert.match(driver.stdout, /^swingwright merge /);
  });

  it('is not where there is none, which is said', async () => {
    const { kind, words } = await setUpGit(folder);
    assert.equal(kind, 'refused');
    assert.match(
      words.join(' '),
      /^Found no git repository at `.*`; expected one, as `git init` makes it\.$/,
    );
  });
});
