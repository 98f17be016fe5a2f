// The `explain` command for one quantity of a record: why it is what it is, as text or as JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { explainedOf, verdictOn, type Explained } from '../analysis/explained.ts';
import type { Analysis } from '../analysis/result.ts';
import { findNearest } from '../measure/nearest.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Registry } from '../registry/registry.ts';
import { toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

/** 0 where the record says something of the quantity; 2 where it does not, or cannot be read. */
export async function explainQuantity(
  path: string,
  id: string,
  format: 'text' | 'json',
  signal: AbortSignal,
): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const explained = explainedOf(analysis, id);
  if (explained === undefined) {
    process.stderr.write(`swingwright: ${printable(absence(analysis, id))}\n`);
    return 2;
  }
  process.stdout.write(
    format === 'json' ? jsonOf(explained, analysis) : textOf(explained, analysis.subject.registry),
  );
  return 0;
}

function absence({ derivation, subject }: Analysis, id: string): string {
  const known = [...(derivation?.values.keys() ?? [])].filter(
    (other) => subject.registry.find(other) !== undefined,
  );
  if (subject.registry.find(id) === undefined) {
    const nearest = subject.registry.broken.has(id) ? undefined : findNearest(id, known);
    const advice = nearest === undefined ? '' : `; did you mean \`${nearest}\`?`;
    return `there is no quantity \`${id}\`${advice === '' ? '.' : advice}`;
  }
  const missing = derivation?.missing.get(id);
  if (missing === undefined) return `the record says nothing of \`${id}\`.`;
  return missing.needs.length === 0
    ? `no number comes out of what is entered for \`${id}\`.`
    : `the record says nothing of \`${id}\`; ${missing.needs.join(' and ')} would give it.`;
}

const kinds = { entered: 'entered', derived: 'computed', expected: 'expected from all entries together' };
const leastShown = 0.005;

function textOf(
  { quantity, kind, value, u, interval, readings, steps, shares, without }: Explained,
  registry: Registry,
): string {
  const rows = (title: string, lines: readonly string[]): string =>
    lines.length === 0 ? '' : [pc.bold(title), ...lines.map((line) => `  ${printable(line)}`)].join('\n');
  const percent = (share: number): string => `${(100 * share).toFixed(0).padStart(3)} %`;
  const name = (id: string): string => registry.find(id)?.id ?? id;
  const wide = Math.max(0, ...without.map(({ id }) => name(id).length));
  const blocks = [
    `${pc.bold(printable(quantity.title))} (${quantity.id}), ${kinds[kind]}`,
    rows(
      'Entered',
      readings.map(
        (reading) => `${showValue(quantity, reading.value, reading.u)}. ${verdictOn(reading, quantity)}`,
      ),
    ),
    rows(kind === 'entered' ? 'All entries together' : 'Value', [
      showValue(quantity, value, u),
      ...(interval === null ? [] : [`95 %: ${showWindow(quantity, interval.min, interval.max)}`]),
    ]),
    rows(
      'How it follows',
      steps.flatMap(({ formula, source }) => [formula, `  ${source}`]),
    ),
    rows(
      'What its uncertainty comes from',
      shares
        .filter(({ share }) => share >= leastShown)
        .map(({ words, share }) => `${percent(share)}  ${words}`),
    ),
    rows(
      'What it would be without an entry',
      without.map(
        ({ id, value: left, u: spread }) => `${name(id).padEnd(wide)}  ${showValue(quantity, left, spread)}`,
      ),
    ),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function jsonOf(explained: Explained, analysis: Analysis): string {
  const { quantity, kind, value, u, interval, readings, steps, shares, without } = explained;
  const shown = (number: number): number => tidy(fromSI(number, quantity.unit));
  const spread = (number: number): number => tidy(differenceFromSI(number, quantity.unit));
  const ends = interval === null ? null : [shown(interval.min), shown(interval.max)].sort((a, b) => a - b);
  const json = {
    format: 1,
    file: toPath(analysis.uri),
    id: quantity.id,
    title: quantity.title,
    unit: quantity.unit,
    kind,
    value: shown(value),
    u: u === null ? null : spread(u),
    interval: ends,
    shown: showValue(quantity, value, u),
    readings: readings.map((reading) => ({
      reading: reading.reading,
      value: shown(reading.value),
      u: spread(reading.u),
      implied: reading.implied === null ? null : shown(reading.implied),
      u_implied: reading.uImplied === null ? null : spread(reading.uImplied),
      verdict: reading.verdict,
    })),
    steps,
    shares: shares.map((share) => ({ ...share, share: tidy(share.share) })),
    without: without.map((one) => ({
      id: one.id,
      reading: one.reading,
      value: shown(one.value),
      u: spread(one.u),
    })),
  };
  return jsonText(json);
}
