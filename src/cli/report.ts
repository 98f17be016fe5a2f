// The shape of a report on many files, common to all output formats, and the JSON form of one finding.
import type { Finding, TextRange } from '../analysis/result.ts';
import { toPath } from '../disk/files.ts';

export interface FileReport {
  /** As the user would write it. */
  readonly file: string;
  readonly findings: readonly Finding[];
}

/** With what a finding is known by. */
export interface KnownReport extends FileReport {
  /** What each finding is known by from run to run, in their order: free of numbers, of lines and of the working folder. None where no format asks for it. */
  readonly identities: readonly string[];
}

export interface FindingJson {
  readonly file: string;
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly range: TextRange;
  readonly related: readonly { readonly file: string; readonly range: TextRange; readonly message: string }[];
}

/** A finding as `check` and `derive` print it: zero-based, as in the language server protocol. */
export function findingJson(file: string, finding: Finding): FindingJson {
  return {
    file,
    code: finding.code,
    severity: finding.severity,
    message: finding.message,
    range: finding.range,
    related: finding.related.map((other) => ({
      file: toPath(other.uri),
      range: other.range,
      message: other.message,
    })),
  };
}

/** "2 errors, 1 warning" for the severities that occur; "no findings" where none do. */
export function countWords(findings: readonly Finding[]): string {
  const words = (['error', 'warning', 'information', 'hint'] as const)
    .map((severity) => ({
      severity,
      count: findings.filter((finding) => finding.severity === severity).length,
    }))
    .filter(({ count }) => count > 0)
    .map(
      ({ severity, count }) =>
        // "Information" has no plural.
        `${count} ${severity}${count === 1 || severity === 'information' ? '' : 's'}`,
    );
  return words.length > 0 ? words.join(', ') : 'no findings';
}
