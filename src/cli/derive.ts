// The `derive` command: every quantity of one record, entered or computed, as a table or as JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import type { Analysis } from '../analysis/result.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Missing, Value } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import { agreementJson, agreementRows } from './agreement.ts';
import { printable, textReport } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { shotRows, shotsJson, tidy } from './shots.ts';
import { toPath } from '../disk/files.ts';
import { findingJson } from './report.ts';
import { showValue } from '../measure/show.ts';
import { windowRows, windowsJson } from './windows.ts';

/** Prints what follows from the record at `path`; 2 where it cannot be read or is no record, 1 where a finding is an error. */
export async function derive(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  process.stdout.write(format === 'json' ? derivationJson(analysis) : derivationText(analysis));
  return analysis.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
}

function derivationJson(analysis: Analysis): string {
  const file = toPath(analysis.uri);
  const quantities = Object.fromEntries(
    valuesOf(analysis).map(({ quantity, value }) => [
      quantity.id,
      {
        value: tidy(fromSI(value.value, quantity.unit)),
        u: value.u === null ? null : tidy(differenceFromSI(value.u, quantity.unit)),
        unit: quantity.unit,
        shown: showValue(quantity, value.value, value.u),
        kind: value.kind,
        from: value.from,
        ...(value.kind === 'expected' && value.u !== null ? { interval: intervalOf(value, quantity) } : {}),
      },
    ]),
  );
  const findings = analysis.findings.map((finding) => findingJson(file, finding));
  const shots = shotsJson(analysis.subject);
  const agreement = agreementJson(analysis);
  const windows = windowsJson(analysis);
  const json = { format: 1, file, quantities, agreement, windows, ...(shots && { shots }), findings };
  return jsonText(json);
}

/** In 95 of 100 cases the true value lies within, in the unit shown, if errors are normal. */
function intervalOf({ value, u }: Value, { unit }: Quantity): readonly [number, number] {
  const half = 1.959964 * (u ?? 0);
  return [tidy(fromSI(value - half, unit)), tidy(fromSI(value + half, unit))];
}

/** What was computed and expected, what was entered with what the others make of it, how it agrees, what is missing, the findings. */
function derivationText(analysis: Analysis): string {
  const { expected, missing } = analysis.derivation!;
  const values = valuesOf(analysis).map(({ quantity, value }) => ({
    quantity,
    value,
    shown: showValue(quantity, value.value, value.u),
  }));
  const wide = Math.max(0, ...values.map(({ quantity }) => quantity.id.length));
  const shownWide = Math.max(0, ...values.map(({ shown }) => shown.length));
  const row = (id: string, shown: string, words: string): string =>
    `  ${id.padEnd(wide)}  ${printable(shown).padEnd(shownWide)}  ${pc.dim(printable(words))}`.trimEnd();
  const derived = values.filter(({ value }) => value.kind === 'derived');
  const likely = values.filter(({ value }) => value.kind === 'expected');
  const entered = values.filter(({ value }) => value.kind === 'entered');
  const blocks = [
    block(
      'Computed',
      derived.map(({ quantity, value, shown }) => row(quantity.id, shown, originWords(value))),
    ),
    block(
      'Expected from all entries together',
      likely.map(({ quantity, value, shown }) => row(quantity.id, shown, originWords(value))),
    ),
    block(
      'Entered',
      entered.map(({ quantity, shown }) => {
        const other = expected.get(quantity.id);
        return row(
          quantity.id,
          shown,
          other ? `the others say ${showValue(quantity, other.value, other.u)}` : '',
        );
      }),
    ),
    block('Agreement', agreementRows(analysis).map(printable)),
    block('Windows', windowRows(analysis).map(printable)),
    block('Not computed', missingRows(missing.values())),
    block('Shots', shotRows(analysis.subject)),
  ];
  const findings = textReport([{ file: toPath(analysis.uri), findings: analysis.findings }]);
  return [...blocks.filter((text) => text !== ''), findings].join('\n\n');
}

function block(title: string, rows: readonly string[]): string {
  return rows.length === 0 ? '' : [pc.bold(title), ...rows].join('\n');
}

/** One row for what one set of entries would give. */
function missingRows(missing: Iterable<Missing>): string[] {
  const byNeeds = new Map<string, string[]>();
  for (const { id, needs } of missing) {
    const key = needs.join(' and ');
    byNeeds.set(key, [...(byNeeds.get(key) ?? []), id]);
  }
  return [...byNeeds].map(([needs, ids]) =>
    needs === ''
      ? `  no number comes out of what is entered for ${pc.dim(ids.join(', '))}`
      : `  ${needs} would give ${pc.dim(ids.join(', '))}`,
  );
}

const mostNamed = 3;

/** The entries with the largest shares in the uncertainty first; JSON lists them all. */
function originWords({ from, assumed, shares }: Value): string {
  const foremost = from.toSorted((a, b) => (shares.get(b) ?? 0) - (shares.get(a) ?? 0));
  const named = foremost.slice(0, mostNamed).join(', ');
  const more = from.length > mostNamed ? ` and ${from.length - mostNamed} more` : '';
  const assumptions = assumed.length > 0 ? `; assumes ${assumed.map(({ words }) => words).join(', ')}` : '';
  return `from ${named}${more}${assumptions}`;
}

function valuesOf({ derivation, subject }: Analysis): { quantity: Quantity; value: Value }[] {
  return [...(derivation?.values.values() ?? [])].flatMap((value) => {
    const quantity = subject.registry.find(value.id);
    return quantity === undefined ? [] : [{ quantity, value }];
  });
}
