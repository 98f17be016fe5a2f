// The `faults` command: the stated faults of one record with their verdicts, what nobody stated, and what causes what, as text or JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import type { Analysis } from '../analysis/result.ts';
import { mirroredWords, numbersOf, percent, placeWords, verdictWords } from '../checks/verdict-words.ts';
import type { Judgement, JudgedMiss } from '../judgement/judgement.ts';
import type { FaultVerdict, JudgedLine } from '../judgement/verdict.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import { printable, textReport } from './formats/text.ts';
import { toPath } from '../disk/files.ts';
import { analyseRecord } from './record.ts';
import { findingJson } from './report.ts';
import { tidy } from './shots.ts';

/** Prints the judgement of the record at `path`; 2 where it cannot be read, is no record or has no fault book, 1 where a finding is an error. */
export async function faults(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const { judgement } = analysis.subject;
  if (judgement === undefined) {
    process.stderr.write(
      `swingwright: \`${printable(path)}\` has no fault book; expected one at \`faults_from\`.\n`,
    );
    return 2;
  }
  process.stdout.write(
    format === 'json' ? judgementJson(analysis, judgement) : judgementText(analysis, judgement),
  );
  return analysis.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
}

function judgementJson(
  analysis: Analysis,
  { stated, unstated, links, contradicted, misses }: Judgement,
): string {
  const file = toPath(analysis.uri);
  const json = {
    format: 1,
    file,
    stated: stated.map((one) => ({ ...verdictJson(one), isSeenHere: one.isSeenHere })),
    unstated: unstated.map(verdictJson),
    causes: links.map(({ from, to, through }) => ({
      from,
      to,
      through: through.id,
      isContradicted: contradicted.has(from) || contradicted.has(to),
    })),
    misses: misses.map(({ miss, by, unstated: others, contradicted: against }) => ({
      miss,
      by,
      unstated: others,
      contradicted: against,
    })),
    findings: analysis.findings.map((finding) => findingJson(file, finding)),
  };
  return jsonText(json);
}

function verdictJson({ fault, uri, at, verdict, probability, lines }: FaultVerdict) {
  return {
    fault: fault.id.value,
    title: fault.title ?? null,
    book: toPath(uri),
    at: at ?? null,
    verdict,
    probability: probability === undefined ? null : Number(probability.toFixed(4)),
    evidence: lines.map((line) => ({
      expression: line.evidence.expression.value,
      weight: line.evidence.weight,
      probability: line.probability === undefined ? null : Number(line.probability.toFixed(4)),
      values: Object.fromEntries(
        line.values.map(({ quantity: { id, unit }, value, u }) => [
          id,
          { value: tidy(fromSI(value, unit)), u: tidy(differenceFromSI(u, unit)), unit },
        ]),
      ),
      missing: line.missing.map(({ id }) => id),
    })),
  };
}

function judgementText(
  analysis: Analysis,
  { stated, unstated, links, contradicted, misses }: Judgement,
): string {
  const blocks = [
    block(
      'Stated',
      stated.flatMap((one) =>
        verdictRows(one, one.isSeenHere ? verdictWords(one) : 'the fault book does not see it there'),
      ),
    ),
    block(
      'Not stated, but shown',
      unstated.flatMap((one) => verdictRows(one, percent(one.probability!))),
    ),
    block(
      'Causes',
      links.map(({ from, to, through }) => {
        const against = [from, to].filter((id) => contradicted.has(id));
        const words = against.length === 0 ? '' : `; the numbers speak against ${against.join(' and ')}`;
        return `  ${from} leads to ${to}, ${pc.dim(`through ${through.id}`)}${words}`;
      }),
    ),
    block('Misses', misses.flatMap(missRows)),
  ];
  const findings = textReport([{ file: toPath(analysis.uri), findings: analysis.findings }]);
  return [...blocks.filter((text) => text !== ''), findings].join('\n\n');
}

function verdictRows({ fault, at, lines }: FaultVerdict, words: string): readonly string[] {
  const title = fault.title === undefined ? '' : ` (${fault.title})`;
  return [printable(`  ${fault.id.value}${placeWords(at)}: ${words}${title}`), ...lines.map(lineRow)];
}

function lineRow(line: JudgedLine): string {
  const chance = line.probability === undefined ? 'cannot tell' : percent(line.probability);
  return `    ${chance.padStart(11)}  ${printable(line.evidence.expression.value)}${mirroredWords(line)}  ${pc.dim(numbersOf(line))}`;
}

function missRows({ miss, by, unstated, contradicted }: JudgedMiss): readonly string[] {
  const ways = by.map(({ fault, way }) =>
    way.length === 0 ? fault : `${fault} (through ${way.join(', ')})`,
  );
  const others =
    unstated.length === 0 ? '' : pc.dim(`; not stated, and believed to lead to it: ${unstated.join(', ')}`);
  const against =
    contradicted.length === 0
      ? ''
      : pc.dim(`; stated, and the numbers speak against it: ${contradicted.join(', ')}`);
  return [
    `  ${miss}: ${printable(ways.length === 0 ? 'no stated fault explains it' : ways.join('; '))}${against}${others}`,
  ];
}

function block(title: string, rows: readonly string[]): string {
  return rows.length === 0 ? '' : [pc.bold(title), ...rows].join('\n');
}
