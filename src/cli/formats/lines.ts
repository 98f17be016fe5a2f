// Reports as one line a finding, as compilers print them: what problem matchers of editors and pipelines read.
import type { Severity } from '../../checks/check.ts';
import type { FileReport } from '../report.ts';
import { printable } from './text.ts';

/** Problem matchers know these three. */
const severities: Readonly<Record<Severity, 'error' | 'warning' | 'info'>> = {
  error: 'error',
  warning: 'warning',
  information: 'info',
  hint: 'info',
};

/** `lessons/a.swing.yaml:7:22: error: Found … [wrong-dimension]`, counted from one; nothing where nothing was found. */
export function linesReport(reports: readonly FileReport[]): string {
  return reports
    .flatMap(({ file, findings }) =>
      findings.map(({ code, severity, message, range: { start } }) => {
        const place = `${printable(file)}:${start.line + 1}:${start.character + 1}`;
        return `${place}: ${severities[severity]}: ${printable(message)} [${code}]\n`;
      }),
    )
    .join('');
}
