// The page that says why a quantity is what it is, as Markdown; the numbers come from the analysis.
import { explainedOf, verdictOn, type Explained } from '../analysis/explained.ts';
import type { Analysis } from '../analysis/result.ts';
import { showValue, showWindow } from '../measure/show.ts';
import type { Registry } from '../registry/registry.ts';
import { titleOf } from './hover-entry.ts';
import { escapeMarkdown } from './markdown.ts';
import { nameOf } from './words.ts';

const leastShown = 0.005;
const kinds = { entered: 'entered', derived: 'computed', expected: 'expected from all entries together' };

/** Undefined where the record says nothing of the quantity. */
export function explainWhy(analysis: Analysis, id: string): string | undefined {
  const explained = explainedOf(analysis, id);
  if (explained === undefined) return undefined;
  const { quantity, kind, value, u, interval } = explained;
  const parts = [
    `# ${titleOf(quantity).replaceAll('**', '')}: ${showValue(quantity, value, u)}`,
    `\`${id}\`, ${kinds[kind]}. ${quantity.meaning}`,
    interval === null
      ? ''
      : `In 95 of 100 cases the true value lies in ${showWindow(quantity, interval.min, interval.max)}.`,
    section('Entered', enteredLines(explained)),
    section('How it follows', stepLines(explained)),
    section('What its uncertainty comes from', shareTable(explained)),
    section('What it would be without an entry', withoutTable(explained, analysis.subject.registry)),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `## ${title}\n\n${lines.join('\n')}`;
}

function enteredLines({ readings, quantity, kind }: Explained): readonly string[] {
  if (kind !== 'entered') return [];
  return [
    ...readings.map(
      (reading) => `- ${showValue(quantity, reading.value, reading.u)}. ${verdictOn(reading, quantity)}`,
    ),
    '',
    'The value above is what all entries together say, this one included unless it does not fit.',
  ];
}

function stepLines({ steps }: Explained): readonly string[] {
  return steps.map(
    ({ formula, source }, place) =>
      `${place + 1}. ${escapeMarkdown(formula)}  \n   *${escapeMarkdown(source)}*`,
  );
}

function shareTable({ shares }: Explained): readonly string[] {
  const rows = shares
    .filter(({ share }) => share >= leastShown)
    .map(({ words, share }) => `| ${(100 * share).toFixed(0)} % | ${cell(words)} |`);
  return rows.length === 0 ? [] : ['| share | from |', '| ---: | --- |', ...rows];
}

function withoutTable({ without, quantity }: Explained, registry: Registry): readonly string[] {
  const rows = without.map(
    ({ id, reading, value, u }) =>
      `| ${cell(nameOf(id, registry))}${reading > 0 ? `, reading ${reading + 1}` : ''} | ${showValue(quantity, value, u)} |`,
  );
  return rows.length === 0 ? [] : ['| without | it would be |', '| --- | --- |', ...rows];
}

/** Backticks stay; the sign that ends a cell does not. */
function cell(text: string): string {
  return text.replace(/\s+/g, ' ').replaceAll('|', '\\|');
}
