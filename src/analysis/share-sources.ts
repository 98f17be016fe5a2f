// Gathers what a shared copy is made from: the records, all that they refer to, and the names of everybody in the practice; lists and reads no file itself.
import { kindOf } from '../record/kind.ts';
import type { Practice } from './lessons.ts';
import type { Analysis } from './result.ts';
import { settle } from './settle.ts';
import type { ShareWish } from './share.ts';

export type ShareSources = Pick<ShareWish, 'records' | 'files' | 'otherNames'>;

/** Of the records at these URIs. Rejects with the signal's reason when it is aborted. */
export async function shareSources(uris: readonly string[], practice: Practice): Promise<ShareSources> {
  const read = (uri: string): Promise<Analysis> =>
    settle(uri, practice.files, practice.load, practice.signal, practice.cache);
  const records: Analysis[] = [];
  for (const uri of uris) records.push(await read(uri));

  const files = new Map<string, Analysis>();
  for (const uri of new Set(records.flatMap(({ used }) => used))) {
    const kind = kindOf(uri);
    const isThere = practice.files.get(uri)?.kind === 'text';
    if (isThere && kind !== undefined && kind !== 'swing' && kind !== 'review')
      files.set(uri, await read(uri));
  }

  const shared = new Set([...files.keys()]);
  const tops = new Set(records.map(({ uri, subject }) => folderOf(subject.workspace?.uri ?? uri)));
  const otherNames = new Set<string>();
  for (const top of tops)
    for (const uri of await practice.list(top).catch(() => [])) {
      if (kindOf(uri) !== 'student' || shared.has(uri)) continue;
      const { document } = await read(uri);
      if (document.kind === 'student' && document.name !== undefined) otherNames.add(document.name.value);
    }
  return { records, files, otherNames: [...otherNames] };
}

function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/'));
}
