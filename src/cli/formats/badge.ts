// A report as the small JSON that services for badges read: what is counted, in one word or two, and a colour.
import { conflictCodes } from '../../analysis/lesson-state.ts';
import { countWords, type FileReport } from '../report.ts';

/** Grey where no file was read, of which nothing can be said; red with an error, yellow with a warning or an entry in conflict, green otherwise; hints and information are not counted. */
export function badgeReport(reports: readonly FileReport[]): string {
  const findings = reports.flatMap((report) => report.findings);
  const counted = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
  const isError = counted.some(({ severity }) => severity === 'error');
  const isDoubtful = counted.length > 0 || findings.some(({ code }) => conflictCodes.has(code));
  const isNothing = reports.length === 0;
  const body = {
    schemaVersion: 1,
    label: 'lessons',
    message: isNothing ? 'nothing checked' : counted.length === 0 ? 'in order' : countWords(counted),
    color: isNothing ? 'lightgrey' : isError ? 'red' : isDoubtful ? 'yellow' : 'green',
    isError,
  };
  return `${JSON.stringify(body)}\n`;
}
