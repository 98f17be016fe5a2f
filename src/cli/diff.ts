// The `diff` and `history` commands: what changed from one version of a record to the next, by value, as a diff says it.
import { counted } from '../measure/counted.ts';
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { compareRecords, isRecord, type RecordAnalysis } from '../analysis/compare.ts';
import { diffInShort, diffLines, type DiffLine } from '../analysis/diff-words.ts';
import { toPath, toUri } from '../disk/files.ts';
import { commitsOf, type PastCommit } from '../disk/git.ts';
import { readSide } from './compared-side.ts';
import { comparisonJson } from './formats/comparison-json.ts';
import { printable } from './formats/text.ts';

/** As `diff` itself ends: 0 where no value differs, 1 where one does, 2 where something cannot be read. */
export async function diffCommand(
  first: string,
  second: string | undefined,
  format: 'text' | 'json',
  signal: AbortSignal,
): Promise<number> {
  const [one, other] = second === undefined ? [`HEAD:${first}`, first] : [first, second];
  const [a, b] = [await recordAt(one, signal), await recordAt(other, signal)];
  if (a === undefined || b === undefined) return 2;
  const comparison = compareRecords(a.analysis, b.analysis);
  process.stdout.write(
    format === 'json'
      ? comparisonJson(a.name, b.name, comparison)
      : diffLines(comparison)
          .map((line) => `${coloured(line)}\n`)
          .join(''),
  );
  return comparison.isSame ? 0 : 1;
}

export interface HistoryOptions {
  readonly format: 'text' | 'json';
  readonly most: number;
}

/** What each commit changed in a record, the newest first: 0 said, 2 it cannot be read, or there is no history to ask. */
export async function historyCommand(
  path: string,
  { format, most }: HistoryOptions,
  signal: AbortSignal,
): Promise<number> {
  const commits = await commitsOf(path, most + 1);
  if (typeof commits === 'string') return refuse(`cannot tell the history of \`${path}\`: ${commits}.`);
  if (commits.length === 0) return refuse(`Found no commit that holds \`${path}\`; expected one.`);
  const versions: { readonly of: PastCommit; readonly analysis: RecordAnalysis | undefined }[] = [];
  for (const of of commits) versions.push({ of, analysis: await versionAt(of, signal) });
  const rows = versions.slice(0, most).map(({ of, analysis }, i) => {
    const before = versions[i + 1]?.analysis;
    const isFirst = i + 1 === versions.length && commits.length <= most;
    const words =
      analysis === undefined
        ? 'cannot be read there'
        : before !== undefined
          ? diffInShort(compareRecords(before, analysis))
          : isFirst
            ? oldestWords(analysis, of)
            : 'what came before cannot be read';
    return { commit: of.commit, time: of.time, subject: of.subject, path: toPath(toUri(of.path)), words };
  });
  process.stdout.write(
    format === 'json' ? jsonText({ format: 1, record: path, commits: rows }) : historyText(rows),
  );
  return 0;
}

/** What comes before the oldest commit of a shallow clone was not cloned. */
function oldestWords({ document }: RecordAnalysis, { isCutOff }: PastCommit): string {
  if (isCutOff)
    return 'this clone is shallow and holds nothing older; `git fetch --unshallow` brings the whole history';
  const { size } = document.entries;
  return `${counted(size, 'entry', 'entries')}, the first version`;
}

function historyText(
  rows: readonly {
    readonly commit: string;
    readonly time: string;
    readonly subject: string;
    readonly words: string;
  }[],
): string {
  return rows
    .map(({ commit, time, subject, words }) => {
      const head = `${pc.yellow(commit.slice(0, 7))}  ${time.slice(0, 10)}  ${printable(subject)}`;
      return `${head}\n         ${printable(words)}\n`;
    })
    .join('');
}

async function versionAt(
  { commit, path }: PastCommit,
  signal: AbortSignal,
): Promise<RecordAnalysis | undefined> {
  const side = await readSide(`${commit}:${toPath(toUri(path))}`, signal, 'quietly');
  return side !== undefined && isRecord(side.analysis) ? side.analysis : undefined;
}

async function recordAt(
  given: string,
  signal: AbortSignal,
): Promise<{ readonly name: string; readonly analysis: RecordAnalysis } | undefined> {
  const side = await readSide(given, signal);
  if (side === undefined) return undefined;
  const { name, analysis } = side;
  if (isRecord(analysis)) return { name, analysis };
  refuse(`Found \`${name}\`; expected a record that ends in \`.swing.yaml\`.`);
  return undefined;
}

function coloured({ sign, words }: DiffLine): string {
  const line = `${sign} ${printable(words)}`;
  return sign === '+' ? pc.green(line) : sign === '-' ? pc.red(line) : pc.yellow(line);
}

function refuse(message: string): number {
  process.stderr.write(`swingwright: ${printable(message)}\n`);
  return 2;
}
