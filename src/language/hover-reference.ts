// The hover on a reference and on the club's name: what stands in the file that it leads to.
import type { Analysis } from '../analysis/result.ts';
import { standingWords, templateStandings, windowWords } from '../checks/template-words.ts';
import type { WindowStanding } from '../judgement/template.ts';
import { withArticle } from '../measure/article.ts';
import { showValue } from '../measure/show.ts';
import type { BagClub, Entry, SwingwrightDocument } from '../record/document.ts';
import type { Remark } from './hover.ts';
import { code, escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';
import { findReferences } from './references.ts';
import { list, nameOf } from './words.ts';

export function hoverOnReference(analysis: Analysis, offset: number): Remark | undefined {
  const reference = findReferences(analysis).find(({ text }) => holds(text.span, offset));
  if (reference !== undefined) {
    const { text, document, opens } = reference;
    return {
      span: text.span,
      lines:
        document === undefined
          ? [`Leads to ${withArticle(opens)}.`]
          : [...summaryOf(document), ...(document.kind === 'template' ? templateLines(analysis) : [])],
    };
  }
  return hoverOnClub(analysis, offset);
}

/** Where the record stands in each window; a window is named once. */
function templateLines({ subject }: Analysis): string[] {
  const standings = templateStandings(subject);
  const named = (title: string, of: readonly WindowStanding[]): string[] =>
    of.length === 0
      ? []
      : [
          `${title}: ${list(
            of.map(({ id }) => nameOf(id, subject.registry)),
            12,
          )}.`,
        ];
  const told = standings.filter((one) => standingWords(one) !== undefined);
  const outside = told.filter(({ outsideBy }) => outsideBy !== 0);
  return [
    ...outside.slice(0, 5).map((one) => {
      const { value, u, kind } = one.value!;
      const computed = kind === 'entered' ? '' : kind === 'derived' ? ', computed' : ', expected';
      const shown = showValue(one.window.quantity, value, u);
      return `Outside: ${nameOf(one.id, subject.registry)} ${shown}${computed}; ${escapeMarkdown(windowWords(one))}, ${standingWords(one)!}.`;
    }),
    ...named('Also outside', outside.slice(5)),
    ...named(
      'Inside',
      told.filter(({ outsideBy }) => outsideBy === 0),
    ),
    ...named(
      'Not measured, and not computed',
      standings.filter(({ value }) => value === undefined),
    ),
  ];
}

function hoverOnClub({ document, subject }: Analysis, offset: number): Remark | undefined {
  if (document.kind !== 'swing' || document.club === undefined || !holds(document.club.span, offset))
    return undefined;
  const { span, value } = document.club;
  if (subject.club !== undefined) return { span, lines: clubLines(subject.club) };
  const known = [...(subject.student?.document.bag.keys() ?? [])];
  if (known.length === 0) return undefined;
  return { span, lines: [`${code(value)} is not in the bag, which holds ${list(known.map(code))}.`] };
}

function summaryOf(document: SwingwrightDocument): string[] {
  switch (document.kind) {
    case 'student':
      return [
        `**${escapeMarkdown(document.name?.value ?? 'A student')}**${document.hand === undefined ? '' : `, plays ${document.hand.value}-handed`}`,
        ...measured([...document.entries.values()]),
        ...(document.bag.size === 0 ? [] : [`In the bag: ${list([...document.bag.keys()].map(code), 14)}.`]),
      ];
    case 'template':
      return [
        `**${escapeMarkdown(document.title ?? 'A template')}**`,
        `${count(document.windows.size, 'window')}${document.clubs.length === 0 ? '' : ` for ${list(document.clubs.map(({ value }) => code(value)))}`}.`,
      ];
    case 'faults':
      return [
        '**A fault book**',
        `${count(document.faults.size, 'fault')}: ${list([...document.faults.keys()].map(code), 8)}.`,
      ];
    case 'swing':
      return [
        `**A swing record**${document.date === undefined ? '' : ` of ${escapeMarkdown(document.date.value)}`}`,
      ];
    case 'review':
    case 'workspace':
      return [`A file of the kind ${code(document.kind)}.`];
  }
}

function clubLines({ name, kind, entries }: BagClub): string[] {
  return [
    `**${escapeMarkdown(name.value)}**${kind === undefined ? '' : `, ${escapeMarkdown(withArticle(kind.value))}`}`,
    ...measured([...entries.values()]),
  ];
}

function measured(entries: readonly Entry[]): string[] {
  return entries.flatMap(({ quantity, readings: [first] }) =>
    first === undefined ? [] : [`${quantity.title}: ${showValue(quantity, first.measure.value)}`],
  );
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? '' : 's'}`;
}
