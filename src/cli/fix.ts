// The `fix` command: makes the one obvious mend of each finding in the files named, and says which; changes nothing else.
import { readFile, writeFile } from 'node:fs/promises';
import pc from 'picocolors';
import { URI } from 'vscode-uri';
import { createCache } from '../analysis/cache.ts';
import { mendsOf, waitingMends, type Mend } from '../analysis/mends.ts';
import type { FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { codes } from '../checks/table.ts';
import { findFiles, loadFile, toPath } from '../disk/files.ts';
import { kindOf } from '../record/kind.ts';
import { printable } from './formats/text.ts';

export interface FixOptions {
  /** Only findings of these codes; of all where it is empty. */
  readonly only: readonly string[];
  readonly keep: 'write' | 'print';
}

/** A mend may bring another finding to light; a text that goes on changing after so many rounds is left as it is then. */
const mostRounds = 10;

/** 0 where every file could be read and written, 2 where not or where a code is not known. */
export async function fixCommand(
  paths: readonly string[],
  { only, keep }: FixOptions,
  signal: AbortSignal,
): Promise<number> {
  const unknown = only.filter((code) => !codes.includes(code));
  for (const code of unknown) complain(`there is no finding \`${code}\`; \`swingwright explain\` lists them`);
  if (unknown.length > 0) return 2;
  const { uris, unusable } = await findFiles(paths);
  for (const { path, reason } of unusable) complain(`cannot mend \`${path}\`: ${reason}`);
  let failed = unusable.length > 0;
  let count = 0;
  let waiting = 0;
  for (const uri of workspacesLast(uris)) {
    try {
      const fixed = await fixFile(uri, only, keep, signal);
      count += fixed.made;
      waiting += fixed.waiting;
    } catch (error) {
      complain(`cannot mend \`${toPath(uri)}\`: ${error instanceof Error ? error.message : String(error)}`);
      failed = true;
    }
  }
  const mends = count === 1 ? '1 mend' : `${count} mends`;
  const verb = keep === 'write' ? 'made' : 'to make; nothing was written';
  if (count > 0 || waiting === 0)
    process.stdout.write(count === 0 ? 'Nothing to mend.\n' : `${mends} ${verb}.\n`);
  if (waiting > 0)
    process.stdout.write(
      `${waiting === 1 ? '1 mend of a name waits' : `${waiting} mends of names wait`} until \`swingwright.yaml\` has no findings; then run this again.\n`,
    );
  return failed ? 2 : 0;
}

/** A name is never mended in the run that mends what declares it, so that nobody's own word becomes another. */
function workspacesLast(uris: readonly string[]): readonly string[] {
  const isWorkspace = (uri: string): boolean => kindOf(uri) === 'workspace';
  return [...uris.filter((uri) => !isWorkspace(uri)), ...uris.filter(isWorkspace)];
}

async function fixFile(
  uri: string,
  only: readonly string[],
  keep: FixOptions['keep'],
  signal: AbortSignal,
): Promise<{ readonly made: number; readonly waiting: number }> {
  const { fsPath } = URI.parse(uri);
  const before = await readFile(fsPath);
  // Bytes that are no UTF-8 could not be written back as they were.
  const whole = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(before);
  const mark = whole.startsWith('\ufeff') ? '\ufeff' : '';
  const { text, mends, waiting } = await mendText(uri, whole.slice(mark.length), only, signal);
  for (const { finding, fix } of mends) {
    const { line, character } = finding.range.start;
    const place = `${printable(toPath(uri))}:${line + 1}:${character + 1}`;
    process.stdout.write(`${place}  ${printable(fix.title)}  ${pc.dim(finding.code)}\n`);
  }
  if (keep === 'write' && mends.length > 0) await writeFile(fsPath, mark + text);
  return { made: mends.length, waiting };
}

/** The places told are those of the text as it was when its mend was made. */
async function mendText(
  uri: string,
  original: string,
  only: readonly string[],
  signal: AbortSignal,
): Promise<{ readonly text: string; readonly mends: readonly Mend[]; readonly waiting: number }> {
  let text = original;
  let waiting = 0;
  const made: Mend[] = [];
  const files = new Map<string, FileState>();
  const cache = createCache();
  for (let round = 0; round < mostRounds; round++) {
    files.set(uri, { kind: 'text', text });
    const analysis = await settle(uri, files, loadFile, signal, cache);
    const isWanted = (code: string): boolean => only.length === 0 || only.includes(code);
    const mends = mendsOf(analysis, isWanted);
    waiting = waitingMends(analysis, isWanted).length;
    if (mends.length === 0) break;
    made.push(...mends);
    text = mends
      .flatMap(({ fix }) => fix.edits)
      .sort((a, b) => b.span.start - a.span.start)
      .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
  }
  return { text, mends: made, waiting };
}

function complain(words: string): void {
  process.stderr.write(`swingwright: ${printable(words)}.\n`);
}
