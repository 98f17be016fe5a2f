// A report as the small JSON that services for badges read: what is counted, in one word or two, and a colour.
import { counted } from '../../measure/counted.ts';
import { conflictCodes } from '../../analysis/lesson-state.ts';
import { countWords, type FileReport } from '../report.ts';

/**
 * Grey where no file was read, of which nothing can be said; red with an error, yellow with a warning, an entry in conflict or one of
 * `unread` files, of which nobody knows what they say, green otherwise; hints and information are not counted.
 */
export function badgeReport(reports: readonly FileReport[], unread: number): string {
  const findings = reports.flatMap((report) => report.findings);
  const told = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
  const isError = told.some(({ severity }) => severity === 'error');
  const isDoubtful = unread > 0 || told.length > 0 || findings.some(({ code }) => conflictCodes.has(code));
  const said = [
    ...(told.length === 0 ? [] : [countWords(told)]),
    ...(unread === 0 ? [] : [`${counted(unread, 'file')} not read`]),
  ];
  const isNothing = reports.length === 0;
  const body = {
    schemaVersion: 1,
    label: 'lessons',
    message: isNothing ? 'nothing checked' : said.length === 0 ? 'in order' : said.join(', '),
    color: isNothing ? 'lightgrey' : isError ? 'red' : isDoubtful ? 'yellow' : 'green',
    isError,
  };
  return `${JSON.stringify(body)}\n`;
}
