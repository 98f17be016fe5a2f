// Reports for people at a terminal; text from files is made harmless before it is printed.
import pc from 'picocolors';
import type { Severity } from '../../checks/check.ts';
import { toPath } from '../../disk/files.ts';
import { harmless } from '../../measure/quote.ts';
import { countWords, type FileReport } from '../report.ts';

const paint: Record<Severity, (text: string) => string> = {
  error: pc.red,
  warning: pc.yellow,
  information: pc.blue,
  hint: pc.dim,
};

/** One block a file that has findings, then one line that counts them. */
export function textReport(reports: readonly FileReport[]): string {
  const blocks = reports.filter(({ findings }) => findings.length > 0).map(fileBlock);
  const findings = reports.flatMap((report) => report.findings);
  const files = `${reports.length} file${reports.length === 1 ? '' : 's'}`;
  return [...blocks, `${files}: ${countWords(findings)}`].join('\n\n') + '\n';
}

/** Control characters and marks that turn the writing direction, replaced so that no file can steer the terminal. */
export function printable(text: string): string {
  return harmless(text).replace(/[\t\n]/g, '\u{fffd}');
}

function fileBlock({ file, findings }: FileReport): string {
  const places = findings.map(({ range }) => `${range.start.line + 1}:${range.start.character + 1}`);
  const wide = Math.max(...places.map((place) => place.length));
  const severityWide = Math.max(...findings.map(({ severity }) => severity.length));
  const rows = findings.flatMap((finding, at) => {
    const severity = paint[finding.severity](finding.severity.padEnd(severityWide));
    const head = `  ${places[at]!.padStart(wide)}  ${severity}  ${printable(finding.message)}  ${pc.dim(finding.code)}`;
    const others = finding.related.map(({ uri, range, message }) => {
      const place = `${printable(toPath(uri))}:${range.start.line + 1}:${range.start.character + 1}`;
      return `  ${' '.repeat(wide + severityWide + 4)}${pc.dim(`${place}  ${printable(message)}`)}`;
    });
    return [head, ...others];
  });
  return [pc.underline(printable(file)), ...rows].join('\n');
}
