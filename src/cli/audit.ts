// The `audit` command: each entry of a record with how it was measured, who checks it and what leans on it, as text, CSV, JSON or a page.
import { jsonText } from './formats/json-text.ts';
import Papa from 'papaparse';
import pc from 'picocolors';
import { auditCells, auditColumns, auditRemarks } from '../analysis/audit-words.ts';
import { auditOf, whyNoAudit, type Audit } from '../analysis/audit.ts';
import type { Analysis } from '../analysis/result.ts';
import { toPath } from '../disk/files.ts';
import { auditPage } from '../draw/audit.tsx';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import { printable } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

export const auditFormats = ['text', 'json', 'csv', 'html'] as const;
export type AuditFormat = (typeof auditFormats)[number];

/** 0 printed, 2 the record could not be read. */
export async function auditCommand(path: string, format: AuditFormat, signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  const audit = analysis && auditOf(analysis);
  if (analysis === undefined || audit === undefined) return 2;
  const reason = whyNoAudit(audit, analysis, path);
  if (reason !== undefined) {
    process.stderr.write(`swingwright: ${printable(reason)}\n`);
    return 2;
  }
  const write = { text, json, csv, html }[format];
  process.stdout.write(write(audit, analysis));
  return 0;
}

function html(audit: Audit, analysis: Analysis): string {
  return auditPage(toPath(analysis.uri), analysis, audit);
}

function text(audit: Audit, analysis: Analysis): string {
  const columns = Object.keys(auditColumns) as readonly (keyof typeof auditColumns)[];
  const rows = [auditColumns, ...audit.rows.map((row) => auditCells(row, analysis))];
  const table = rows.map((cells) => columns.map((column) => cells[column]));
  const widths = columns.map((_, i) => Math.max(...table.map((cells) => cells[i]!.length)));
  const lines = table.map((cells) =>
    cells
      .map((cell, i) => cell.padEnd(widths[i]!))
      .join('  ')
      .trimEnd(),
  );
  const [head = '', ...body] = lines.map(printable);
  return `${[...auditRemarks(audit, analysis).map(printable), '', pc.bold(head), ...body].join('\n')}\n`;
}

/** Plain numbers in the quantity's unit, one row a reading. */
function records({ rows, concluded }: Audit) {
  return rows.map((row) => {
    const { quantity, judged, second } = row;
    const { unit } = quantity;
    return {
      file: toPath(row.uri),
      line: row.range.start.line + 1,
      id: quantity.id,
      reading: row.reading,
      value: tidy(fromSI(row.value, unit)),
      u: tidy(differenceFromSI(row.u, unit)),
      unit,
      method: row.method ?? null,
      estimate: row.estimate,
      doubtful: row.doubtful,
      uncertainty_from: row.origin,
      guess: row.isGuess,
      redundancy: judged === undefined ? null : tidy(judged.redundancy),
      w: judged?.w === undefined || judged.w === null ? null : tidy(judged.w),
      verdict: judged?.verdict ?? null,
      verdict_at_twice: row.verdictAtTwice ?? null,
      second_opinion: second === undefined ? null : tidy(fromSI(second.value, unit)),
      second_opinion_u: second === undefined ? null : tidy(differenceFromSI(second.u, unit)),
      second_opinion_apart: second === undefined ? null : tidy(second.apart),
      weight: tidy(row.weight),
      ...Object.fromEntries(concluded.map(({ id }) => [`share of ${id}`, tidy(row.shares.get(id) ?? 0)])),
    };
  });
}

function json(audit: Audit, analysis: Analysis): string {
  const body = {
    format: 1,
    record: toPath(analysis.uri),
    conclusions: audit.concluded.map(({ id }) => id),
    fromGoals: audit.fromGoals,
    entries: records(audit),
    leanedOn: audit.leanedOn.map(({ quantity: { id }, reading }) => ({ id, reading })),
    remarks: auditRemarks(audit, analysis),
  };
  return jsonText(body);
}

/** What a spreadsheet would run, also where it takes the wide signs for the plain ones; a number with a sign is none. */
const formula = /^\s*(?:[=@＝＋－＠]|[+-](?!(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$))/i;

function csv(audit: Audit): string {
  const rows = records(audit);
  const columns = Object.keys(rows[0] ?? { file: '', line: '', id: '' });
  const cells = rows.map((row) =>
    columns.map((column) => {
      const value = (row as Readonly<Record<string, unknown>>)[column];
      return typeof value === 'string'
        ? printable(value)
        : value === null || value === undefined
          ? ''
          : JSON.stringify(value);
    }),
  );
  return `${Papa.unparse([columns.map(printable), ...cells], { newline: '\n', escapeFormulae: formula })}\n`;
}
