// The `check` command: every file's findings in the format asked for, and the exit code that a pipeline reads.
import { jsonText } from './formats/json-text.ts';
import { openRemark } from '../checks/open-remark.ts';
import { createCache } from '../analysis/cache.ts';
import type { Analysis, FileState, Finding } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { badgeReport } from './formats/badge.ts';
import { junitReport } from './formats/junit.ts';
import { linesReport } from './formats/lines.ts';
import { sarifReport } from './formats/sarif.ts';
import { printable, textReport } from './formats/text.ts';
import { findFiles, loadFile, toPath } from '../disk/files.ts';
import { pathFromRoot } from '../disk/root.ts';
import { keysIn } from '../analysis/keys-in.ts';
import { reviewedBy } from './reviewed.ts';
import { startProgress } from './progress.ts';
import { findingJson, type KnownReport } from './report.ts';

export const formats = ['text', 'lines', 'json', 'sarif', 'junit', 'badge'] as const;
export type Format = (typeof formats)[number];

const writers: Record<Format, (reports: readonly KnownReport[], unread: number) => string> = {
  text: textReport,
  lines: linesReport,
  json: (reports) =>
    jsonText(reports.flatMap(({ file, findings }) => findings.map((f) => findingJson(file, f)))),
  sarif: sarifReport,
  junit: junitReport,
  badge: badgeReport,
};

/**
 * Checks the files at or below `paths` and prints the report.
 * With `required` reviews, those of the records and the records of the reviews are looked at too, and an open remark is an error.
 * Gives 0 when no finding is an error, 1 when one is, 2 when something that was asked for could not be read.
 */
export async function check(
  paths: readonly string[],
  format: Format,
  signal: AbortSignal,
  reviews: 'told' | 'required' = 'told',
): Promise<number> {
  const { uris, unusable } = await findFiles(paths);
  const together = reviews === 'required' ? await withReviews(uris, signal) : uris;
  const unread = unusable.map(({ path, reason }) => ({ path, reason }));
  const reports: KnownReport[] = [];
  const files = new Map<string, FileState>();
  const cache = createCache();
  const progress = startProgress(together.length);
  const asked = new Set(uris);
  for (const uri of together) {
    progress.step(printable(toPath(uri)));
    const own = await loadFile(uri);
    if (own.kind !== 'text') {
      unread.push({ path: toPath(uri), reason: own.kind === 'unreadable' ? own.reason : 'it is gone' });
      continue;
    }
    files.set(uri, own);
    const { findings, document } = await settle(uri, files, loadFile, signal, cache);
    const wanted = asked.has(uri) ? findings : findings.filter(({ code }) => code === openRemark.code);
    reports.push({
      file: toPath(uri),
      findings: reviews === 'required' ? wanted.map(required) : wanted,
      identities: format === 'sarif' ? await identitiesOf(wanted, { uri, document }) : [],
    });
  }
  progress.end();
  for (const { path, reason } of unread)
    process.stderr.write(`swingwright: cannot check \`${printable(path)}\`: ${printable(reason)}.\n`);
  if (reports.length > 0 || format !== 'text') process.stdout.write(writers[format](reports, unread.length));
  if (unread.length > 0) return 2;
  return reports.some(({ findings }) => findings.some(({ severity }) => severity === 'error')) ? 1 : 0;
}

/** What each finding is known by from run to run: the file from the root of its repository, the code and the keys above it. */
async function identitiesOf(
  findings: readonly Finding[],
  { uri, document }: Pick<Analysis, 'uri' | 'document'>,
): Promise<readonly string[]> {
  const path = await pathFromRoot(uri);
  const keysAt = keysIn(document);
  return findings.map(({ code, range }) => [path, code, ...keysAt(range)].join('\n'));
}

function required(finding: Finding): Finding {
  return finding.code === openRemark.code ? { ...finding, severity: 'error' } : finding;
}

/** An open remark is told at the value in the record, or in the review where the record cannot show it. */
async function withReviews(uris: readonly string[], signal: AbortSignal): Promise<readonly string[]> {
  const all = new Set(uris);
  for (const uri of uris) {
    const reviewed = await reviewedBy(uri, signal);
    if (reviewed === undefined) continue;
    for (const other of [reviewed.record.uri, ...reviewed.reviews.map((review) => review.uri)])
      all.add(other);
  }
  return [...all].sort();
}
