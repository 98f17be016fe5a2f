// Findings as an editor's diagnostics; decides nothing about what is wrong.
import type { Analysis, Finding } from '../analysis/result.ts';
import type { Diagnostic, DiagnosticSeverity } from './shapes.ts';

const severities: Readonly<Record<Finding['severity'], DiagnosticSeverity>> = {
  error: 1,
  warning: 2,
  information: 3,
  hint: 4,
};

/** Gives the address of the explanation of a code; undefined in editors that have no place to show one. */
export type ExplanationAddress = (code: string) => string | undefined;

export function findDiagnostics(analysis: Analysis, explanation: ExplanationAddress): Diagnostic[] {
  return analysis.findings.map((finding) => toDiagnostic(finding, explanation));
}

export function toDiagnostic(finding: Finding, explanation: ExplanationAddress): Diagnostic {
  const href = explanation(finding.code);
  return {
    range: finding.range,
    severity: severities[finding.severity],
    code: finding.code,
    ...(href === undefined ? {} : { codeDescription: { href } }),
    source: 'swingwright',
    message: finding.message,
    ...(finding.related.length === 0
      ? {}
      : {
          relatedInformation: finding.related.map(({ uri, range, message }) => ({
            location: { uri, range },
            message,
          })),
        }),
  };
}
