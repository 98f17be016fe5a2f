// Runs the table of checks over a subject and gives what stands after silences and severities, sorted; knows no check by name.
import { mostFindings, type Check, type RawFinding, type Run } from '../checks/check.ts';
import type { Subject } from '../checks/subject.ts';
import { checkFrom } from '../checks/own-checks.ts';
import { checks, checksWith } from '../checks/table.ts';
import type { Silence } from '../record/document.ts';
import { lineTableOf, positionAt, rangeOf } from './positions.ts';
import type { LineTable } from './positions.ts';
import type { Finding } from './result.ts';
import { silencesByLine, silencesOver } from './silence.ts';

const lasting: ReadonlySet<string> = new Set(
  checks.filter((check) => check.lasting === true).map((c) => c.code),
);
const ranks = { error: 0, warning: 1, information: 2, hint: 3 } as const;

interface Standing {
  readonly check: Check;
  readonly severity: Finding['severity'];
  readonly raw: RawFinding;
}

/** Sorted by place, then by severity, then in the table's order. */
export function findingsOf(subject: Subject): readonly Finding[] {
  const tableOf = lineTablesOf(subject);
  const own = tableOf(subject.uri);
  const standing = gravest(standingFindings(subject, own));
  standing.sort(
    (a, b) =>
      a.raw.span.start - b.raw.span.start ||
      ranks[a.severity] - ranks[b.severity] ||
      a.raw.span.end - b.raw.span.end,
  );
  return standing.map(({ check, severity, raw }) => ({
    code: check.code,
    severity,
    message: raw.message,
    range: rangeOf(own, raw.span),
    related: (raw.related ?? []).map(({ uri, span, message }) => ({
      uri,
      range: rangeOf(tableOf(uri), span),
      message,
    })),
    fixes: raw.fixes ?? [],
  }));
}

/** As many as are told: the gravest ones, and of equally grave ones the first in the text. What says so comes last and stays. */
function gravest(standing: readonly Standing[]): Standing[] {
  if (standing.length <= mostFindings) return [...standing];
  return [
    ...standing
      .slice(0, -1)
      .sort((a, b) => ranks[a.severity] - ranks[b.severity] || a.raw.span.start - b.raw.span.start)
      .slice(0, mostFindings),
    ...standing.slice(-1),
  ];
}

function standingFindings(subject: Subject, table: LineTable): readonly Standing[] {
  const { document, workspace } = subject;
  const silences = silencesByLine(document.silences);
  const silenced = new Set<Silence>();
  const standing: Standing[] = [];
  const all = checksWith(subject.own.checks.map(checkFrom));
  const codes = all.map(({ code }) => code);
  for (const check of all) {
    if (check.kinds !== 'all' && !check.kinds.includes(document.kind)) continue;
    const chosen = workspace?.document.severities.get(check.code)?.severity;
    const severity = chosen === 'off' && check.lasting === true ? check.severity : (chosen ?? check.severity);
    // A check that is off still runs, so that the comments that silence it are not called unused.
    const run: Run = { codes, lasting, silenced, standing: standing.length };
    for (const raw of check.find(subject, run)) {
      const covering =
        silences.size === 0 ? [] : silencesOver(check, positionAt(table, raw.span.start).line, silences);
      // Those of one code on one line go together, so that the first tells of all.
      if (covering[0] !== undefined && !silenced.has(covering[0]))
        for (const silence of covering) silenced.add(silence);
      if (covering.length === 0 && severity !== 'off') standing.push({ check, severity, raw });
    }
  }
  return standing;
}

/** The line table of each text that a finding may point into, made when first asked for. */
function lineTablesOf(subject: Subject): (uri: string) => LineTable {
  const tables = new Map<string, LineTable>();
  return (uri) => {
    const kept = tables.get(uri);
    if (kept !== undefined) return kept;
    const table = lineTableOf(textAt(subject, uri));
    tables.set(uri, table);
    return table;
  };
}

function textAt(subject: Subject, uri: string): string {
  if (uri === subject.uri) return subject.document.text;
  if (uri === subject.shots?.uri) return subject.shots.file?.text ?? '';
  const { student, template, workspace, review, record, faultBooks } = subject;
  const others = [student, template, workspace, review, record, ...faultBooks];
  return others.find((other) => other?.uri === uri)?.document.text ?? '';
}
