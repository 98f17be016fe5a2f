// The hover on a stated fault and on a miss: what the fault book says of it, and how far the numbers of the record bear it out.
import { upperFirst } from '../measure/quote.ts';
import type { Lesson } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import { handOf } from '../checks/handed.ts';
import { mirroredWords, numbersOf, percent, placeWords, verdictWords } from '../checks/verdict-words.ts';
import type { BookFault } from '../judgement/book.ts';
import type { JudgedMiss, Judgement, StatedVerdict } from '../judgement/judgement.ts';
import type { JudgedLine } from '../judgement/verdict.ts';
import type { BelievedEffect } from '../record/document.ts';
import { lastNameIn } from '../record/reference.ts';
import { meaningOfMiss } from '../registry/meaning-of-miss.ts';
import { findMiss } from '../registry/registry.ts';
import { claimLines } from './hover-claims.ts';
import type { Remark } from './hover.ts';
import { code, escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';
import { list } from './words.ts';
import { nameWithin } from '../checks/agreement.ts';

export function hoverOnFault(
  analysis: Analysis,
  offset: number,
  lessons: readonly Lesson[] | undefined,
): Remark | undefined {
  const {
    document,
    subject: { judgement },
  } = analysis;
  if (document.kind !== 'swing' || judgement === undefined) return undefined;
  const stated = judgement.stated.find(({ stated: one }) => holds(one.fault.span, offset));
  if (stated !== undefined)
    return {
      span: stated.stated.fault.span,
      lines: [...statedLines(stated), ...causeLines(stated, judgement), fromBook(stated)],
      table: claimLines(analysis, stated, lessons),
    };
  const miss = judgement.misses.find(({ stated: one }) => holds(one.miss.span, offset));
  if (miss !== undefined)
    return { span: miss.stated.miss.span, lines: missLines(miss, handOf(analysis.subject)) };
  const reason = document.plan.flatMap(({ because }) => because).find(({ span }) => holds(span, offset));
  const known = reason && judgement.faults.get(reason.value);
  if (reason === undefined || known === undefined) return undefined;
  return { span: reason.span, lines: [titleOf(known), ...explanationOf(known), fromBook(known)] };
}

/** "**Weight stays on the trail side** at impact: supported (93 %)", the explanation, and each line of evidence with its numbers. */
export function statedLines(one: StatedVerdict): readonly string[] {
  const place = placeWords(one.at);
  if (!one.isSeenHere)
    return [`${titleOf(one)}${place}: the fault book does not see it there`, ...explanationOf(one)];
  return [
    `${titleOf(one)}${place}: ${verdictWords(one)}`,
    ...explanationOf(one),
    ...(one.lines.length === 0 ? ['The fault book has no evidence for it here.'] : one.lines.map(lineWords)),
  ];
}

function titleOf({ fault }: BookFault): string {
  return `**${escapeMarkdown(fault.title ?? fault.id.value)}**`;
}

function explanationOf({ fault }: BookFault): readonly string[] {
  return fault.explanation === undefined ? [] : [escapeMarkdown(fault.explanation)];
}

function lineWords(line: JudgedLine): string {
  const { evidence, probability } = line;
  const chance = probability === undefined ? 'cannot tell' : percent(probability);
  const numbers = evidence.compiled === undefined ? 'it cannot be read' : numbersOf(line);
  return `${code(evidence.expression.value)}${mirroredWords(line)}: ${chance} (${numbers})`;
}

function causeLines({ fault }: BookFault, { links, contradicted, misses }: Judgement): readonly string[] {
  const id = fault.id.value;
  const unsure = fault.tendsTo.filter(({ quantity, sign }) => quantity === undefined || sign === undefined);
  const causes = [
    ...new Set(
      links.filter(({ from, to }) => to === id && !contradicted.has(from)).map(({ from }) => code(from)),
    ),
  ];
  const explained = misses
    .filter(({ by }) => by.some((one) => one.fault === id))
    .map(({ miss }) => code(miss));
  return [
    ...(unsure.length === 0 ? [] : [`Believed to change ${list(unsure.map(effectWords), 4)}.`]),
    ...(causes.length === 0 ? [] : [`A consequence of ${list(causes)}.`]),
    ...(explained.length === 0
      ? []
      : [`Explains the ${explained.length === 1 ? 'miss' : 'misses'} ${list(explained)}.`]),
  ];
}

/** "carry (1 m)": of an effect whose direction is not known. */
export function effectWords({ effect, quantity, direction, sizeWords: size }: BelievedEffect): string {
  const name = quantity === undefined ? code(effect.value) : nameWithin(quantity);
  const way =
    direction === undefined
      ? ''
      : ` (${escapeMarkdown(direction.value)}${size === undefined ? '' : `, ${escapeMarkdown(size)}`})`;
  return `${name}${way}`;
}

function fromBook({ uri }: BookFault): string {
  return `A fault from ${code(lastNameIn(uri))}.`;
}

function missLines(
  { miss, by, unstated, contradicted }: JudgedMiss,
  hand: 'left' | 'right' | undefined,
): readonly string[] {
  const known = findMiss(miss);
  const meaning = known === undefined ? '' : meaningOfMiss(known, hand);
  const ways = by.map(({ fault, way }) =>
    way.length === 0
      ? `Explained by ${code(fault)}.`
      : `Explained by ${code(fault)}, through ${list(way.map(code))}.`,
  );
  return [
    `**${upperFirst(miss)}**: ${meaning}`,
    ...(ways.length === 0 ? ['No stated fault explains it.'] : ways),
    ...(contradicted.length === 0
      ? []
      : [`Stated, and the numbers speak against it: ${list(contradicted.map(code))}.`]),
    ...(unstated.length === 0
      ? []
      : [`Not stated, and believed to lead to it: ${list(unstated.map(code))}.`]),
  ];
}
