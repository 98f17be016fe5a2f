// Files are read as they stood at a git revision, and where they cannot be, a sentence says why.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { toUri } from '../../src/disk/files.ts';
import { openRevision, revisioned, type Revision } from '../../src/disk/git.ts';
import { committed, repository } from './repository.ts';

describe('a git revision', () => {
  let folder = '';
  before(() => {
    folder = mkdtempSync(join(tmpdir(), 'swingwright-git-'));
    repository(folder);
    committed(folder, { 'lessons/a ü.swing.yaml': 'swing: 1\n', 'mira.student.yaml': 'student: 1\n' });
    committed(folder, { 'lessons/a ü.swing.yaml': '\ufeffswing: 1\nclub: hybrid\n' });
  });
  after(() => rmSync(folder, { recursive: true, force: true }));

  const opened = async (
    revision: string,
    path = join(folder, 'lessons/a ü.swing.yaml'),
  ): Promise<Revision> => {
    const found = await openRevision({ revision, path });
    assert.ok(typeof found !== 'string', typeof found === 'string' ? found : '');
    return found;
  };
  const refused = async (
    revision: string,
    path = join(folder, 'lessons/a ü.swing.yaml'),
  ): Promise<string> => {
    const found = await openRevision({ revision, path });
    assert.ok(typeof found === 'string');
    return found;
  };

  it('is told from a path by its colon, but not from a drive', () => {
    assert.deepEqual(revisioned('HEAD~1:lessons/a.swing.yaml'), {
      revision: 'HEAD~1',
      path: 'lessons/a.swing.yaml',
    });
    for (const path of ['lessons/a.swing.yaml', 'C:/lessons/a.swing.yaml', 'HEAD:', ':a'])
      assert.equal(revisioned(path), undefined);
  });

  it('gives the text of then, of every file of its repository', async () => {
    const { load, uri, commit } = await opened('HEAD~1');
    assert.match(commit, /^[0-9a-f]{40}/);
    assert.deepEqual(await load(uri), { kind: 'text', text: 'swing: 1\n' });
    assert.deepEqual(await load(toUri(join(folder, 'mira.student.yaml'))), {
      kind: 'text',
      text: 'student: 1\n',
    });
    assert.deepEqual(await load(toUri(join(folder, 'nobody.student.yaml'))), { kind: 'missing' });
    assert.deepEqual(await load(toUri(join(tmpdir(), 'elsewhere.student.yaml'))), { kind: 'missing' });
    assert.deepEqual(await load(toUri(join(folder, 'lessons'))), {
      kind: 'unreadable',
      reason: 'it is a folder',
    });
    const now = await opened('HEAD');
    assert.deepEqual(await now.load(now.uri), { kind: 'text', text: 'swing: 1\nclub: hybrid\n' });
  });

  it('follows links to the folder, and reads what is deleted today', async () => {
    const link = `${folder}-link`;
    symlinkSync(folder, link);
    try {
      const { load, uri } = await opened('HEAD', join(link, 'lessons/a ü.swing.yaml'));
      assert.equal((await load(uri)).kind, 'text');
    } finally {
      rmSync(link);
    }
    rmSync(join(folder, 'lessons'), { recursive: true });
    const { load, uri } = await opened('HEAD');
    assert.equal((await load(uri)).kind, 'text');
  });

  it('says so where there is none such, and takes nothing for an option or a command', async () => {
    assert.equal(await refused('no-such-branch'), 'git knows no revision `no-such-branch` here');
    assert.equal(await refused('--help'), '`--help` is no revision of git');
    assert.equal(await refused('HEAD; touch touched'), 'git knows no revision `HEAD; touch touched` here');
    assert.equal(await refused('$(touch touched)'), 'git knows no revision `$(touch touched)` here');
    assert.equal(await refused('HEAD', join(tmpdir(), 'a.swing.yaml')), 'the file lies in no git repository');
  });

  it('says that a shallow clone does not hold it', async () => {
    const clone = `${folder}-shallow`;
    execFileSync('git', ['clone', '--quiet', '--depth', '1', `file://${folder}`, clone]);
    try {
      assert.match(
        await refused('HEAD~1', join(clone, 'mira.student.yaml')),
        /^this clone is shallow and does not hold `HEAD~1`/,
      );
    } finally {
      rmSync(clone, { recursive: true, force: true });
    }
  });

  it('says so where there is no git', async () => {
    const path = process.env['PATH'];
    process.env['PATH'] = join(folder, 'nothing');
    try {
      assert.equal(await refused('HEAD'), 'git is not installed, or not on the path');
    } finally {
      process.env['PATH'] = path;
    }
  });

  it('reads a file beside a folder of the same beginning', async () => {
    mkdirSync(`${folder}-other`, { recursive: true });
    writeFileSync(join(`${folder}-other`, 'b.student.yaml'), 'student: 1\n');
    const { load } = await opened('HEAD');
    assert.deepEqual(await load(toUri(join(`${folder}-other`, 'b.student.yaml'))), { kind: 'missing' });
    rmSync(`${folder}-other`, { recursive: true });
  });
});
