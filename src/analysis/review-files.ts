// Finds all reviews of a record in its folder, renamed ones too, and the record that a review is of; lists and reads no file itself.
import type { Followed } from '../checks/subject.ts';
import { anchorsOf } from '../record/anchor.ts';
import type { FileKind, ReviewFile, SwingRecord, SwingwrightDocument } from '../record/document.ts';
import { kindOf } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { remarkStandings, signatureStandings } from '../record/remark-standing.ts';
import { resolveReference } from '../record/reference.ts';
import type { Registry } from '../registry/registry.ts';
import { builtIn } from '../registry/registry.ts';
import { recordUriOf } from './review-beside.ts';
import type { Reviewed } from './review.ts';
import type { FileState } from './result.ts';
import type { Cancellation } from './settle.ts';

/** A folder of files, and how they are come by. */
export interface ReviewFolder {
  readonly load: (uri: string) => Promise<FileState>;
  /** The URIs of the files in a folder; those of folders below it do no harm. */
  readonly list: (folder: string) => Promise<readonly string[]>;
  readonly signal: Cancellation;
}

/** The record with every review in its folder that is of it. Rejects with the signal's reason, and otherwise never. */
export async function findReviews(
  record: Followed<SwingRecord>,
  registry: Registry,
  folder: ReviewFolder,
): Promise<Reviewed> {
  const reviews: Followed<ReviewFile>[] = [];
  const taken = await filesBeside(record.uri, 'review', folder);
  for (const uri of taken) {
    const review = await read<ReviewFile>(uri, 'review', folder);
    if (review !== undefined && (await findReviewed(review, folder, record))?.uri === record.uri)
      reviews.push(review);
  }
  return { record, registry, reviews, taken };
}

/**
 * The record that a review is of: the one that `of` names; where that is not there the one of the same name beside it; else the
 * only one in the folder that a signature is of or that most remarks fit, which is how a renamed record keeps its reviews.
 * `known` is a record whose text is newer than the folder's.
 */
export async function findReviewed(
  review: Followed<ReviewFile>,
  folder: ReviewFolder,
  known?: Followed<SwingRecord>,
): Promise<Followed<SwingRecord> | undefined> {
  const { uri, document } = review;
  const at = (record: string | undefined): Promise<Followed<SwingRecord> | undefined> =>
    record === undefined
      ? Promise.resolve(undefined)
      : record === known?.uri
        ? Promise.resolve(known)
        : read<SwingRecord>(record, 'swing', folder);
  const named = document.of && resolveReference(uri, document.of.value);
  const near = (await at(named)) ?? (await at(recordUriOf(uri)));
  if (near !== undefined) return near;
  const records: Followed<SwingRecord>[] = [];
  for (const beside of await filesBeside(uri, 'swing', folder)) {
    const record = await at(beside);
    if (record !== undefined) records.push(record);
  }
  return bestFit(document, records);
}

/** Undefined where two records fit equally well, or none does. */
function bestFit(
  review: ReviewFile,
  records: readonly Followed<SwingRecord>[],
): Followed<SwingRecord> | undefined {
  const signed = records.filter(({ document }) =>
    signatureStandings(review, document).some(({ isVoid }) => !isVoid),
  );
  if (signed.length === 1) return signed[0];
  const about = review.remarks.filter(({ about: id, value }) => id !== undefined && value !== undefined);
  const fitting = (signed.length > 1 ? signed : records)
    .map((record) => ({ record, count: fitOf(review, record.document) }))
    .filter(({ count }) => count * 2 > about.length)
    .sort((a, b) => b.count - a.count);
  const [first, second] = fitting;
  return first !== undefined && first.count > (second?.count ?? 0) ? first.record : undefined;
}

/** How many remarks find in the record what they were made about. */
function fitOf(review: ReviewFile, record: SwingRecord): number {
  if (anchorsOf(record).size === 0) return 0;
  return remarkStandings(review, record, builtIn).filter(
    ({ anchor, then, isChanged }) => anchor !== undefined && then !== undefined && !isChanged,
  ).length;
}

async function filesBeside(uri: string, kind: FileKind, folder: ReviewFolder): Promise<readonly string[]> {
  const above = uri.slice(0, uri.lastIndexOf('/'));
  const found = await folder.list(above).catch(() => []);
  folder.signal.throwIfAborted();
  return [...new Set(found)]
    .filter((other) => kindOf(other) === kind && other.slice(0, other.lastIndexOf('/')) === above)
    .sort();
}

async function read<T extends SwingwrightDocument>(
  uri: string,
  kind: T['kind'],
  { load, signal }: ReviewFolder,
): Promise<Followed<T> | undefined> {
  if (kindOf(uri) !== kind) return undefined;
  const state = await load(uri).catch(() => undefined);
  signal.throwIfAborted();
  if (state?.kind !== 'text') return undefined;
  const document = parseDocument(kind, state.text);
  return document.kind === kind ? { uri, document: document as T } : undefined;
}
