// Finds the review that lies beside a record, and the record beside a review, by their names alone; reads no file.
import type { Followed } from '../checks/subject.ts';
import type { FileKind, ReviewFile, SwingRecord, SwingwrightDocument } from '../record/document.ts';
import { resolveReference } from '../record/reference.ts';
import type { Lookout } from './lookout.ts';

type Parse = (uri: string, kind: FileKind, text: string) => SwingwrightDocument;

const record = /\.swing\.yaml$/;
const review = /\.review\.yaml$/;

/** `lessons/a.review.yaml` for `lessons/a.swing.yaml`; undefined of any other file. */
export function reviewUriOf(uri: string): string | undefined {
  return record.test(uri) ? uri.replace(record, '.review.yaml') : undefined;
}

export function recordUriOf(uri: string): string | undefined {
  return review.test(uri) ? uri.replace(review, '.swing.yaml') : undefined;
}

/** The review of the same name, unless it says that it is of another record that is there. */
export function reviewBeside(uri: string, lookout: Lookout, parse: Parse): Followed<ReviewFile> | undefined {
  const at = reviewUriOf(uri);
  const state = at === undefined ? undefined : lookout.file(at);
  if (at === undefined || state?.kind !== 'text') return undefined;
  const document = parse(at, 'review', state.text);
  if (document.kind !== 'review') return undefined;
  const of = document.of && resolveReference(at, document.of.value);
  return of === undefined || of === uri || lookout.file(of)?.kind === 'missing'
    ? { uri: at, document }
    : undefined;
}

/** The record of the same name: what a review is of that names none, or one that is not there. */
export function recordBeside(uri: string, lookout: Lookout, parse: Parse): Followed<SwingRecord> | undefined {
  const at = recordUriOf(uri);
  const state = at === undefined ? undefined : lookout.file(at);
  if (at === undefined || state?.kind !== 'text') return undefined;
  const document = parse(at, 'swing', state.text);
  return document.kind === 'swing' ? { uri: at, document } : undefined;
}
