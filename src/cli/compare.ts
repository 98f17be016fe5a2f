// The `compare` command: what one record says other than another, or than itself at a git revision, or where it stands in a template.
import { compareRecords, compareWithTemplate, isRecord } from '../analysis/compare.ts';
import { comparedRecord, comparisonPage, type ComparedRecord } from '../draw/comparison.tsx';
import { templatePage } from '../draw/template-comparison.tsx';
import { readSide, type Side } from './compared-side.ts';
import { comparisonJson, templateJson } from './formats/comparison-json.ts';
import { comparisonText, templateText } from './formats/comparison-text.ts';
import { printable } from './formats/text.ts';

export type ComparisonFormat = 'text' | 'json' | 'html';

/** Prints the comparison; 2 where one of the two cannot be read, or nothing can be compared. */
export async function compare(
  first: string,
  second: string,
  format: ComparisonFormat,
  signal: AbortSignal,
): Promise<number> {
  const [a, b] = [await readSide(first, signal), await readSide(second, signal)];
  if (a === undefined || b === undefined) return 2;
  const [one, other] = [recordOf(a), recordOf(b)];
  if (one !== undefined && other !== undefined) return print(ofRecords(one, other, format));
  const record = one ?? other;
  const template = one === undefined ? a : b;
  if (record === undefined || template.analysis.document.kind !== 'template') {
    const wrong = record === undefined ? a : template;
    process.stderr.write(
      `swingwright: cannot compare \`${printable(wrong.name)}\`: expected two records that end in \`.swing.yaml\`, or a record and a \`.template.yaml\`.\n`,
    );
    return 2;
  }
  return print(ofTemplate(record, template, format));
}

function print(text: string): number {
  process.stdout.write(text);
  return 0;
}

function recordOf({ name, analysis }: Side): ComparedRecord | undefined {
  return isRecord(analysis) ? comparedRecord(name, analysis) : undefined;
}

function ofRecords(first: ComparedRecord, second: ComparedRecord, format: ComparisonFormat): string {
  const comparison = compareRecords(first.analysis, second.analysis);
  if (format === 'html') return comparisonPage(first, second, comparison);
  return format === 'json'
    ? comparisonJson(first.name, second.name, comparison)
    : comparisonText(first, second, comparison);
}

function ofTemplate(record: ComparedRecord, template: Side, format: ComparisonFormat): string {
  const comparison = compareWithTemplate(record.analysis, template.analysis)!;
  if (format === 'html') return templatePage(record, template, comparison);
  return format === 'json'
    ? templateJson(record.name, template.name, comparison)
    : templateText(record, template.name, comparison);
}
