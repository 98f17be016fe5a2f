// Reports as JUnit XML, one suite a file and one case a finding, for pipelines that read test results.
import type { Finding } from '../../analysis/result.ts';
import { harmless } from '../../measure/quote.ts';
import type { FileReport } from '../report.ts';

export function junitReport(reports: readonly FileReport[]): string {
  const findings = reports.flatMap((report) => report.findings);
  const cases = reports.reduce((sum, report) => sum + Math.max(1, report.findings.length), 0);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<testsuites name="swingwright" tests="${cases}" failures="${countErrors(findings)}" errors="0">`,
    ...reports.map(suite),
    '</testsuites>',
    '',
  ].join('\n');
}

function suite({ file, findings }: FileReport): string {
  const name = xml(file);
  const rows =
    findings.length === 0
      ? [`    <testcase name="no findings" classname="${name}"/>`]
      : findings.map((finding) => testCase(name, finding));
  return [
    `  <testsuite name="${name}" tests="${rows.length}" failures="${countErrors(findings)}" errors="0" skipped="0">`,
    ...rows,
    '  </testsuite>',
  ].join('\n');
}

function testCase(classname: string, { code, severity, message, range }: Finding): string {
  const place = `${range.start.line + 1}:${range.start.character + 1}`;
  const head = `    <testcase name="${xml(code)} at ${place}" classname="${classname}">`;
  const body =
    severity === 'error'
      ? `<failure type="${xml(code)}" message="${xml(message)}"/>`
      : `<system-out>${xml(`${severity}: ${message}`)}</system-out>`;
  return `${head}${body}</testcase>`;
}

function countErrors(findings: readonly Finding[]): number {
  return findings.filter(({ severity }) => severity === 'error').length;
}

/** Text for an attribute or an element; characters that XML 1.0 does not admit, or that could steer a reader, are replaced. */
function xml(text: string): string {
  const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return harmless(text)
    .replace(/\p{Surrogate}/gu, '\u{fffd}')
    .replace(/[&<>"]/g, (sign) => entities[sign]!)
    .replace(/[\t\n]/g, (sign) => `&#${sign.charCodeAt(0)};`)
    .replace(/[\ufffe\uffff]/g, '\u{fffd}');
}
