// The pages that lay records beside one another, as HTML: a comparison and a student's progress; draws and compares nothing itself.
import { auditOf, whyNoAudit } from '../analysis/audit.ts';
import { diffInShort } from '../analysis/diff-words.ts';
import { auditPage } from '../draw/audit.tsx';
import { compareRecords, compareWithTemplate, isRecord, type RecordAnalysis } from '../analysis/compare.ts';
import type { Lesson } from '../analysis/lessons.ts';
import { progressOf } from '../analysis/progress.ts';
import type { Analysis } from '../analysis/result.ts';
import { comparedRecord, comparisonPage } from '../draw/comparison.tsx';
import { progressPage } from '../draw/progress.tsx';
import { templatePage } from '../draw/template-comparison.tsx';
import { upperFirst } from '../measure/quote.ts';

interface Named {
  readonly name: string;
  readonly analysis: Analysis;
}

/** The earlier lesson comes first, in whichever order they were picked. Undefined unless both are records, or one is a record and the other a template. */
export function comparePage(first: Named, second: Named): string | undefined {
  const [a, b] = [first.analysis, second.analysis];
  if (isRecord(a) && isRecord(b) && isBefore(b, a)) return comparePage(second, first);
  if (isRecord(a) && isRecord(b))
    return comparisonPage(
      comparedRecord(first.name, a),
      comparedRecord(second.name, b),
      compareRecords(a, b),
    );
  if (!isRecord(a)) return isRecord(b) ? comparePage(second, first) : undefined;
  const comparison = compareWithTemplate(a, b);
  return comparison && templatePage(comparedRecord(first.name, a), second, comparison);
}

function isBefore(one: RecordAnalysis, other: RecordAnalysis): boolean {
  const [date, than] = [one.document.date?.value, other.document.date?.value];
  return date !== undefined && than !== undefined && date < than;
}

/** Of all lessons of one student. */
export function studentPage(student: string, lessons: readonly Lesson[]): string {
  return progressPage(student, progressOf(lessons, { club: undefined, quantities: [] }));
}

/** What a reviewer asks of each entry, or why nobody can be told; undefined of what is no record. */
export function recordAudit(
  name: string,
  analysis: Analysis,
): { readonly html: string } | { readonly reason: string } | undefined {
  const audit = auditOf(analysis);
  if (audit === undefined) return undefined;
  const reason = whyNoAudit(audit, analysis, name);
  return reason === undefined ? { html: auditPage(name, analysis, audit) } : { reason: upperFirst(reason) };
}

/** What changed from one version to another, in one short line; undefined of what is no record. */
export function changeSummary(before: Analysis, after: Analysis): string | undefined {
  return isRecord(before) && isRecord(after) ? diffInShort(compareRecords(before, after)) : undefined;
}
