// The edit by which a review names its record anew, after the record was renamed; reads no file.
import type { Followed } from '../checks/subject.ts';
import type { ReviewFile } from '../record/document.ts';
import { parseDocument } from '../record/parse.ts';
import { relativePath, resolveReference } from '../record/reference.ts';
import { scalarText } from '../record/review-scalar.ts';
import type { ReviewEdit } from '../record/review-text.ts';

/** None where it names that record already, or nothing at all; quotes around the old name go with it. */
export function recordNamed({ uri, document }: Followed<ReviewFile>, record: string): readonly ReviewEdit[] {
  const path = relativePath(uri, record);
  if (path === undefined || document.of === undefined) return [];
  if (resolveReference(uri, document.of.value) === record) return [];
  const { span } = document.of;
  const isQuoted = /["']/.test(document.text.charAt(span.start - 1));
  const around = isQuoted ? { start: span.start - 1, end: span.end + 1 } : span;
  const edit = { span: around, text: scalarText(path, { style: 'flow' }) };
  const after = document.text.slice(0, around.start) + edit.text + document.text.slice(around.end);
  const read = parseDocument('review', after);
  return read.kind === 'review' && read.of?.value === path ? [edit] : [];
}
