// A review whose record was renamed: whether it has lost it, and the mend that names the one that it fits; looks for no file.
import { recordNamed } from '../analysis/record-named.ts';
import type { Analysis, Finding } from '../analysis/result.ts';
import type { Fix } from '../checks/check.ts';
import { missingReference } from '../checks/missing-reference.ts';
import { quote } from '../measure/quote.ts';
import { relativePath } from '../record/reference.ts';
import { touches } from './places.ts';
import type { TextRange } from './shapes.ts';

/** Whether a review here names a record that is not there, so that it is worth looking for the one that it fits. */
export function hasLostRecord({ document, findings }: Analysis, range: TextRange): boolean {
  return (
    document.kind === 'review' &&
    findings.some(({ code, range: own }) => code === missingReference.code && touches(own, range))
  );
}

/** `renamed` is the URI of the record that the review fits, where somebody looked for it and found one. */
export function nameRecordAnew(
  { uri, document }: Analysis,
  { code, fixes }: Finding,
  renamed: string | undefined,
): readonly Fix[] {
  if (document.kind !== 'review' || code !== missingReference.code || fixes.length > 0) return [];
  if (renamed === undefined) return [];
  const [edit] = recordNamed({ uri, document }, renamed);
  const name = quote(relativePath(uri, renamed) ?? '');
  return edit === undefined ? [] : [{ title: `Write ${name}`, edits: [{ uri, ...edit }], preferred: true }];
}
