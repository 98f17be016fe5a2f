// Proposes the files that a reference may lead to, relative to the file that holds it; lists and reads no file.
import type { FileKind } from '../record/document.ts';
import { kindOf } from '../record/kind.ts';
import { relativePath } from '../record/reference.ts';
import type { Proposal } from './completion-item.ts';
import { asValue } from './completion-item.ts';
import type { Desire } from './completion.ts';

/** The files of this kind (of shots where it is `shots`), near ones first; `usual` are paths that earlier records name. */
export function proposeFiles(
  kind: FileKind | 'shots',
  { analysis, cursor, files }: Desire,
  usual: readonly (string | undefined)[],
): Proposal[] {
  const wanted = analysis.subject.club?.kind?.value;
  const paths = files
    .filter((uri) => uri !== analysis.uri && (kind === 'shots' ? /\.csv$/i.test(uri) : kindOf(uri) === kind))
    .flatMap((uri) => relativePath(analysis.uri, uri) ?? []);
  const rank = (path: string): number =>
    (usual.includes(path) ? 0 : 100) +
    (wanted !== undefined && path.toLowerCase().includes(wanted) ? 0 : 10) +
    path.split('/').length;
  return paths
    .toSorted((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1))
    .map((path) => ({ label: path, text: asValue(path, cursor.quote, cursor.style), kind: 'file' }));
}
