// Tells git to merge and to show Swingwright's files by value, in one repository; says in words what was done, or why it cannot be.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { git, notTrusted } from './git.ts';

const patterns = [
  '*.swing.yaml',
  '*.student.yaml',
  '*.template.yaml',
  '*.faults.yaml',
  '*.review.yaml',
  'swingwright.yaml',
] as const;

/** Without marks git would leave one edit there as if it were both. */
const mergeByLine = 'git merge-file --marker-size=%L -L ours -L base -L theirs %A %O %B';

/**
 * How git calls this program, through a shell: the same words for everybody, so that the settings can be read. Where the program is
 * not on the path (that of a window is often shorter than a terminal's), or fails, git merges by line and shows the file as it stands.
 */
const settings: readonly (readonly [string, string])[] = [
  ['merge.swingwright.name', 'Swingwright, by value'],
  [
    'merge.swingwright.driver',
    `swingwright merge %O %A %B --mark-length %L --ours ours --theirs theirs; code=$?; test $code -lt 2 && exit $code; ${mergeByLine}`,
  ],
  [
    'diff.swingwright.textconv',
    'values() { command -v swingwright >/dev/null && swingwright values -- "$1" || cat -- "$1"; }; values',
  ],
  ['diff.swingwright.cachetextconv', 'false'],
];

export interface GitSetup {
  readonly kind: 'done' | 'refused';
  /** Sentences. */
  readonly words: readonly string[];
}

/** Lines that are there stay. */
export async function setUpGit(folder: string): Promise<GitSetup> {
  // A folder that is not there would look like a git that is not there.
  const top = await git(['-C', folder, 'rev-parse', '--show-toplevel'], '.');
  if (top.kind === 'absent') return refused('Git was not found; expected it on the path.');
  if (top.kind === 'failed')
    return refused(
      notTrusted(top.words) ??
        `Found no git repository at \`${folder}\`; expected one, as \`git init\` makes it.`,
    );
  try {
    const file = join(top.text.trim(), '.gitattributes');
    const before = await readFile(file, 'utf8').catch(() => '');
    const wanted = patterns.map((pattern) => `${pattern} diff=swingwright merge=swingwright`);
    const missing = wanted.filter((line) => !before.split(/\r?\n/).includes(line));
    const start = before === '' || before.endsWith('\n') ? before : `${before}\n`;
    if (missing.length > 0) await writeFile(file, `${start}${missing.join('\n')}\n`);
    for (const [key, value] of settings) {
      const set = await git(['-C', folder, 'config', '--local', key, value], '.');
      if (set.kind !== 'done') throw new Error(set.kind === 'failed' ? set.words : 'git was not found');
    }
    const said = missing.length > 0 ? `Added ${missing.length} lines to` : 'Nothing was missing in';
    return {
      kind: 'done',
      words: [
        `${said} .gitattributes, which belongs into the repository.`,
        'Set git to merge and to show these files by value, in this clone; every other clone is set up once too.',
      ],
    };
  } catch (error) {
    return refused(`Cannot set up git: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

function refused(reason: string): GitSetup {
  return { kind: 'refused', words: [reason] };
}
