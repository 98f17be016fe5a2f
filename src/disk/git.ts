// Reads files as they stood at a git revision, through git itself and never through a shell; says in words why it cannot.
import { execFile } from 'node:child_process';
import { readFile, realpath, stat } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { URI } from 'vscode-uri';
import type { FileState } from '../analysis/result.ts';

/** What stands before the colon and after it: `HEAD~1:samples/a.swing.yaml`. */
export interface Revisioned {
  readonly revision: string;
  readonly path: string;
}

/** Files of one repository as they stood at one commit. */
export interface Revision {
  /** As asked for. */
  readonly name: string;
  /** The commit. */
  readonly commit: string;
  readonly uri: string;
  /** What lies outside of the repository is missing, since no revision says what was there. */
  readonly load: (uri: string) => Promise<FileState>;
}

/**
 * `REV:path` where the text cannot be the name of a file that is there. A single letter before the colon is a drive of Windows, not
 * a revision. The path is taken as the shell's folder has it, as for any other file.
 */
export function revisioned(text: string): Revisioned | undefined {
  const at = text.indexOf(':');
  if (at < 2 || at === text.length - 1) return undefined;
  return { revision: text.slice(0, at), path: text.slice(at + 1) };
}

/** Larger than any file that is read. */
const largest = 64 * 1024 * 1024;

/** The repository around `path`, at a revision; a sentence without its full stop where there is none. */
export async function openRevision({ revision, path }: Revisioned): Promise<Revision | string> {
  const file = resolve(path);
  const folder = await nearestFolder(dirname(file));
  if (folder === undefined) return 'there is no such folder';
  const top = await git(['rev-parse', '--show-toplevel'], folder);
  if (top.kind === 'absent') return 'git is not installed, or not on the path';
  if (top.kind === 'failed') return whyNoRepository(top.words);
  // A name that begins with a dash would be read as an option, which no revision does.
  if (revision.startsWith('-')) return `\`${revision}\` is no revision of git`;
  const commit = await git(
    ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`],
    folder,
  );
  if (commit.kind !== 'done') {
    const shallow = await git(['rev-parse', '--is-shallow-repository'], folder);
    const isShallow = shallow.kind === 'done' && shallow.text.trim() === 'true';
    return isShallow
      ? `this clone is shallow and does not hold \`${revision}\`; \`git fetch --unshallow\` brings the whole history`
      : `git knows no revision \`${revision}\` here`;
  }
  const root = top.text.trim();
  const id = commit.text.trim();
  const real = await realpath(folder);
  return {
    name: revision,
    commit: id,
    uri: URI.file(file).toString(),
    // Git names folders as they are once every link is followed.
    load: (uri) => loadAt(id, root, join(real, relative(folder, URI.parse(uri).fsPath))),
  };
}

/** What git calls whoever works in this folder; undefined where there is no git or it does not say. A repository is not needed. */
export async function userNameIn(folder: string): Promise<string | undefined> {
  const there = await nearestFolder(resolve(folder));
  const name = there === undefined ? undefined : await git(['config', '--get', 'user.name'], there);
  return name?.kind === 'done' ? name.text.trim() || undefined : undefined;
}

/** A commit that changed a file. */
export interface PastCommit {
  readonly commit: string;
  /** When it was written, as ISO 8601 has it. */
  readonly time: string;
  /** The first line of its message. */
  readonly subject: string;
  /** The file's path on disk if it had kept the name that it had then. */
  readonly path: string;
  /** True where the clone is shallow and holds nothing of what came before. */
  readonly isCutOff: boolean;
}

/** The commits that changed a file, the newest first, through renames; a sentence without its full stop where there are none to ask. */
export async function commitsOf(path: string, most: number): Promise<readonly PastCommit[] | string> {
  const file = resolve(path);
  const folder = await nearestFolder(dirname(file));
  if (folder === undefined) return 'there is no such folder';
  const top = await git(['rev-parse', '--show-toplevel'], folder);
  if (top.kind === 'absent') return 'git is not installed, or not on the path';
  if (top.kind === 'failed') return whyNoRepository(top.words);
  const log = await git(
    ['log', '--follow', '--name-only', `--max-count=${most}`, '--format=%x00%H%x00%aI%x00%s%x00', '--', file],
    folder,
  );
  // A repository without a commit has no history.
  if (log.kind !== 'done') return [];
  const cutOff = await shallowCommits(folder);
  const parts = log.text.split('\0').slice(1);
  const commits: PastCommit[] = [];
  for (let i = 0; i + 3 < parts.length; i += 4) {
    const [commit = '', time = '', subject = '', name = ''] = parts.slice(i, i + 4);
    const isCutOff = cutOff.has(commit);
    commits.push({ commit, time, subject, path: join(top.text.trim(), unquotedPath(name.trim())), isCutOff });
  }
  return commits;
}

/** The oldest commits of a shallow clone, whose parents stayed where it was cloned from; none in any other repository. */
async function shallowCommits(folder: string): Promise<ReadonlySet<string>> {
  const file = await git(['rev-parse', '--git-path', 'shallow'], folder);
  if (file.kind !== 'done') return new Set();
  const words = await readFile(resolve(folder, file.text.trim()), 'utf8').catch(() => '');
  return new Set(words.split('\n').filter((line) => line !== ''));
}

/** Git writes a name with signs beyond ASCII in quotes, each byte of them as a number of base 8. */
function unquotedPath(name: string): string {
  if (!name.startsWith('"')) return name;
  const bytes: number[] = [];
  const inner = name.slice(1, -1);
  for (let at = 0; at < inner.length; at++) {
    const octal = /^\\([0-7]{3})/.exec(inner.slice(at));
    if (octal !== null) {
      bytes.push(parseInt(octal[1]!, 8));
      at += 3;
    } else if (inner[at] !== '\\') bytes.push(inner.charCodeAt(at));
  }
  return new TextDecoder('utf-8').decode(Uint8Array.from(bytes));
}

async function loadAt(commit: string, root: string, file: string): Promise<FileState> {
  const path = relative(root, file).split(sep).join('/');
  if (path === '' || path.startsWith('../') || path === '..') return { kind: 'missing' };
  const name = `${commit}:${path}`;
  const kind = await git(['cat-file', '-t', '--end-of-options', name], root);
  if (kind.kind !== 'done') return { kind: 'missing' };
  if (kind.text.trim() !== 'blob') return { kind: 'unreadable', reason: 'it is a folder' };
  const shown = await git(['show', '--end-of-options', name], root);
  if (shown.kind === 'done') return { kind: 'text', text: shown.text.replace(/^\ufeff/, '') };
  return { kind: 'unreadable', reason: shown.kind === 'failed' ? shown.words : 'git is not installed' };
}

/** The file may be gone today; its folder may be too. */
async function nearestFolder(folder: string): Promise<string | undefined> {
  const isThere = await stat(folder).then(
    (info) => info.isDirectory(),
    () => false,
  );
  if (isThere) return folder;
  const above = dirname(folder);
  return above === folder ? undefined : nearestFolder(above);
}

function whyNoRepository(words: string): string {
  return notTrusted(words) ?? 'the file lies in no git repository';
}

/** Undefined where git's own words say anything else. */
export function notTrusted(words: string): string | undefined {
  return /dubious ownership/i.test(words)
    ? 'git does not trust this repository, since it belongs to another user (see `safe.directory` in its manual)'
    : undefined;
}

type Answer =
  | { readonly kind: 'done'; readonly text: string }
  | { readonly kind: 'failed'; readonly words: string }
  | { readonly kind: 'absent' };

/** Never waits for a password or a page, and speaks English whatever the user's language. */
export function git(args: readonly string[], cwd: string): Promise<Answer> {
  const env = {
    ...process.env,
    LC_ALL: 'C',
    GIT_TERMINAL_PROMPT: '0',
    GIT_PAGER: 'cat',
    GIT_OPTIONAL_LOCKS: '0',
  };
  return new Promise((answer) => {
    execFile(
      'git',
      ['--no-pager', ...args],
      { cwd, env, maxBuffer: largest, encoding: 'buffer' },
      (error, out, words) => {
        if (error === null) answer({ kind: 'done', text: new TextDecoder('utf-8').decode(out) });
        else if (error.code === 'ENOENT') answer({ kind: 'absent' });
        else answer({ kind: 'failed', words: new TextDecoder('utf-8').decode(words).trim() });
      },
    );
  });
}
