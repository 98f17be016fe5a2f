// Reports as SARIF 2.1.0 (OASIS, 2020), the format that code hosts show beside the line.
import { jsonText } from './json-text.ts';
import { createHash } from 'node:crypto';
import type { Log, Result, ReportingDescriptor, Location } from 'sarif';
import type { Severity } from '../../checks/check.ts';
import { checks } from '../../checks/table.ts';
import type { Finding, TextRange } from '../../analysis/result.ts';
import { toPath } from '../../disk/files.ts';
import type { KnownReport } from '../report.ts';
import { version } from '../version.ts';

const levels: Record<Severity, 'error' | 'warning' | 'note'> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
};

export function sarifReport(reports: readonly KnownReport[]): string {
  const log: Log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Swingwright', version, rules: checks.map(rule) } },
        columnKind: 'utf16CodeUnits',
        results: reports.flatMap(({ file, findings, identities }) => {
          const seen = new Map<string, number>();
          return findings.map((finding, i) => result(file, finding, identities[i] ?? '', seen));
        }),
      },
    ],
  };
  return jsonText(log);
}

function rule(check: (typeof checks)[number]): ReportingDescriptor {
  return {
    id: check.code,
    shortDescription: { text: check.title },
    fullDescription: { text: check.title },
    help: { text: check.explanation, markdown: check.explanation },
    defaultConfiguration: { level: levels[check.severity] },
  };
}

function result(file: string, finding: Finding, identity: string, seen: Map<string, number>): Result {
  const occurrence = seen.get(identity) ?? 0;
  seen.set(identity, occurrence + 1);
  return {
    ruleId: finding.code,
    ruleIndex: checks.findIndex(({ code }) => code === finding.code),
    level: levels[finding.severity],
    message: { text: finding.message },
    locations: [location(file, finding.range)],
    relatedLocations: finding.related.map((other, id) => ({
      id,
      ...location(toPath(other.uri), other.range),
      message: { text: other.message },
    })),
    // Free of lines and of computed figures, so that an edit elsewhere leaves a known finding known.
    partialFingerprints: {
      'codeAndKey/v1': createHash('sha256').update(`${identity}\n${occurrence}`).digest('hex'),
    },
  };
}

function location(file: string, { start, end }: TextRange): Location {
  return {
    physicalLocation: {
      artifactLocation: { uri: file.split('/').map(encodeURIComponent).join('/') },
      region: {
        startLine: start.line + 1,
        startColumn: start.character + 1,
        endLine: end.line + 1,
        endColumn: end.character + 1,
      },
    },
  };
}
