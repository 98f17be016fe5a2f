// Which rows the view of a record's revisions has, and what it says where it has none; knows no editor and no git.
import type { PastRevision } from './git-revisions.ts';

export interface Row {
  /** Undefined of the record as it stands now. */
  readonly revision: PastRevision | undefined;
  /** The version before it; undefined of the first one, the oldest of a shallow clone, and the last that git was asked for. */
  readonly before: PastRevision | undefined;
}

/** `found` is newest first, or a sentence that says why nobody can be asked; `none` is said where no commit holds the record. */
export function rowsOf(
  found: readonly PastRevision[] | string,
  none: string,
): { readonly rows: readonly Row[]; readonly message: string } {
  if (typeof found === 'string') return { rows: [], message: found };
  if (found.length === 0) return { rows: [], message: none };
  const past = found.map((revision, i): Row => ({ revision, before: found[i + 1] }));
  return { rows: [{ revision: undefined, before: found[0] }, ...past], message: '' };
}

/** What a row says beside its name: `changedSince` is asked only where there is a version before; `oldest` is said where there is none. */
export async function summaryOf(
  { before, revision }: Row,
  oldest: string,
  changedSince: (before: PastRevision, revision: PastRevision | undefined) => Promise<string>,
): Promise<string> {
  return before === undefined ? oldest : changedSince(before, revision);
}
