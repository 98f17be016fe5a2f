// Reads a record with all reviews of it from disk, for whoever names the record or one of its reviews.
import { findReviewed, findReviews, type ReviewFolder } from '../analysis/review-files.ts';
import type { Reviewed } from '../analysis/review.ts';
import { createCache } from '../analysis/cache.ts';
import type { FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { builtIn } from '../registry/registry.ts';
import { kindOf } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { listBeside, loadFile, toPath, toUri } from '../disk/files.ts';
import { printable } from './formats/text.ts';

function folderOnDisk(signal: AbortSignal): ReviewFolder {
  return { load: loadFile, list: listBeside, signal };
}

/** Undefined, with the reason on standard error, where there is no such file or it leads to no record. */
export async function reviewedAt(path: string, signal: AbortSignal): Promise<Reviewed | undefined> {
  const uri = toUri(path);
  const own = await loadFile(uri);
  const kind = kindOf(uri);
  if (own.kind !== 'text')
    return complain(path, own.kind === 'missing' ? 'there is no such file' : own.reason);
  if (kind === 'swing') return reviewedRecord(uri, signal);
  const document = parseDocument('review', own.text);
  if (kind !== 'review' || document.kind !== 'review')
    return complain(path, 'it is neither a swing record (`*.swing.yaml`) nor a review (`*.review.yaml`)');
  const record = await findReviewed({ uri, document }, folderOnDisk(signal));
  if (record === undefined) return complain(path, 'the record that it is of is not there');
  const reviewed = await reviewedRecord(record.uri, signal);
  // A review in another folder than its record is read where somebody names it.
  if (reviewed === undefined || reviewed.reviews.some((review) => review.uri === uri)) return reviewed;
  return { ...reviewed, reviews: [...reviewed.reviews, { uri, document }] };
}

async function reviewedRecord(uri: string, signal: AbortSignal): Promise<Reviewed | undefined> {
  const { document, subject } = await settle(
    uri,
    new Map<string, FileState>(),
    loadFile,
    signal,
    createCache(),
  );
  if (document.kind !== 'swing') return complain(toPath(uri), 'it is no swing record');
  return findReviews({ uri, document }, subject.registry, folderOnDisk(signal));
}

/** The same of any file, without a word and without what needs more than the texts; undefined where it leads to no record. */
export async function reviewedBy(uri: string, signal: AbortSignal): Promise<Reviewed | undefined> {
  const kind = kindOf(uri);
  const state = kind === 'swing' || kind === 'review' ? await loadFile(uri) : undefined;
  if (kind === undefined || state?.kind !== 'text') return undefined;
  const folder = folderOnDisk(signal);
  const document = parseDocument(kind, state.text);
  const record =
    document.kind === 'review' ? await findReviewed({ uri, document }, folder) : { uri, document };
  const { document: swing } = record ?? {};
  return record === undefined || swing?.kind !== 'swing'
    ? undefined
    : findReviews({ uri: record.uri, document: swing }, builtIn, folder);
}

function complain(path: string, reason: string): undefined {
  process.stderr.write(`swingwright: cannot read \`${printable(path)}\`: ${printable(reason)}.\n`);
}
