// Chooses what to blank out of a text that YAML cannot read, so that the other lines keep their meaning; length never changes.
import type { Span } from '../measure/measure.ts';
import { blank, blankPart, blockEnd, indentAt, itemEnd, itemStart, lineEnd, lineStart } from './lines.ts';
import type { Survey } from './survey.ts';
import { surveyOf } from './survey.ts';
import { readYaml, type YamlError, type YamlReading } from './yaml.ts';

export interface Repair {
  /** The repaired text, as long as the one before. */
  readonly text: string;
  /** A word that was left without its colon above deeper lines, and that an empty key now stands for. */
  readonly header?: Span;
}

/** An error that hides or moves other lines, and the character where its cause stands. */
export interface Harm {
  readonly error: YamlError;
  readonly cause: number;
}

/** A text with more errors than this is beyond a repair that takes the rest into account. */
const mostErrors = 60;

const mostTries = 6;
/** Reading a longer part again and again would take too long. */
const longPart = 50_000;

const harmless: ReadonlySet<string> = new Set([
  'BAD_DQ_ESCAPE',
  'BAD_SCALAR_START',
  'TAG_RESOLVE_FAILED',
  'BAD_COLLECTION_TYPE',
  'BAD_ALIAS',
  'ALIAS_PROPS',
  'MULTIPLE_ANCHORS',
  'MULTIPLE_TAGS',
  'BAD_DIRECTIVE',
  'KEY_OVER_1024_CHARS',
]);

/** The error that stands first among those that reach beyond their own line; undefined where none does. */
export function findHarm(errors: readonly YamlError[], survey: Survey, text: string): Harm | undefined {
  let first: Harm | undefined;
  for (const error of errors.slice(0, mostErrors)) {
    const cause = causeOf(error, survey, text);
    if (cause !== undefined && (first === undefined || cause < first.cause)) first = { error, cause };
  }
  return first && (leftOpenAbove(first, errors, survey, text) ?? first);
}

/** Where a bracket that was left open ends at the line of the harm, it is that which makes YAML misread the line. */
function leftOpenAbove(
  { cause }: Harm,
  errors: readonly YamlError[],
  { brackets }: Survey,
  text: string,
): Harm | undefined {
  for (const error of errors.slice(0, mostErrors)) {
    const at = error.span.start;
    if (error.code !== 'BAD_INDENT' || lineStart(text, at) !== lineStart(text, cause)) continue;
    const open = brackets.find(({ isOpen, end }) => isOpen && end === at);
    if (open !== undefined) return { error, cause: open.start };
  }
  return undefined;
}

const loneWord = /^[ \t-]*[^\s:#'"[\]{}][^:#]*$/;

/**
 * The text without the comments that part a lone word from a line with an error: for YAML they end the word as a value, and without
 * them it is a key whose colon is still to come. Undefined where there are none.
 */
export function joinLoneWord(
  text: string,
  { errors, comments }: Pick<YamlReading, 'errors' | 'comments'>,
): string | undefined {
  for (const error of errors.slice(0, mostErrors)) {
    // YAML names the space before what it stumbles on.
    const line = lineStart(text, error.span.start + text.slice(error.span.start).search(/\S|$/));
    let start = line;
    let hasComment = false;
    while (start > 0) {
      const above = lineStart(text, start - 1);
      const isComment = comments.has(above + indentAt(text, above));
      if (!isComment && text.slice(above, start).trim() !== '') break;
      hasComment ||= isComment;
      start = above;
    }
    if (!hasComment || start === 0) continue;
    const word = lineStart(text, start - 1);
    const isBelow = indentAt(text, line) >= indentAt(text, word);
    if (isBelow && loneWord.test(text.slice(word, lineEnd(text, word)))) return blank(text, start, line);
  }
  return undefined;
}

/** Where the harm of this error begins; undefined where it stays on its line. */
function causeOf(error: YamlError, survey: Survey, text: string): number | undefined {
  const at = error.span.start;
  if (harmless.has(error.code)) return undefined;
  switch (error.code) {
    case 'BAD_INDENT':
      return undefined;
    case 'MISSING_CHAR':
      return causeOfMissing(at, survey, text);
    case 'MULTILINE_IMPLICIT_KEY': {
      const key = survey.keys.find(({ start }) => start === at);
      return key !== undefined && key.isPlain && isAligned(key, text) ? undefined : at;
    }
    default: {
      const open = survey.brackets.findLast(({ isOpen, end }) => isOpen && end <= at);
      const isLeftOpen = open !== undefined && /^[\s\]},]*$/.test(text.slice(open.end, at));
      return isLeftOpen ? open.start : at;
    }
  }
}

function causeOfMissing(at: number, survey: Survey, text: string): number | undefined {
  const quote = survey.openQuotes.find(({ end }) => end === at);
  if (quote !== undefined) return isLong(quote, text) ? quote.start : undefined;
  if (survey.brackets.some(({ isOpen, end }) => isOpen && end === at) || text[at] === '#') return undefined;
  const alone = survey.keys.find(({ isAlone, isInFlow, start }) => isAlone && !isInFlow && start === at);
  if (alone !== undefined) return isHeader(alone, text) ? at : undefined;
  const around = survey.brackets.filter(({ start, end }) => start <= at && at <= end);
  if (around.length > 0 && !around.some((bracket) => isLong(bracket, text))) return undefined;
  // Only the comma between two whole mappings or lists is missing: both are read.
  return /^[{[]/.test(text.charAt(at)) && /[}\]]\s*$/.test(text.slice(Math.max(0, at - 200), at))
    ? undefined
    : at;
}

export function repair(text: string, harm: Harm, survey: Survey): Repair {
  const { error, cause } = harm;
  if (error.code === 'TAB_AS_INDENT') return { text: untab(text) };
  if (survey.openQuotes.some(({ start }) => start === cause))
    return { text: blank(text, cause, lineEnd(text, cause)) };
  const around = survey.brackets.filter(({ start, end }) => start <= cause && cause <= end);
  if (around.some((bracket) => isLong(bracket, text)))
    return { text: repairBrackets(text, cause, around, survey) };
  const key = survey.keys.find(({ start }) => start === cause);
  if (key !== undefined && (isLong(key, text) || key.isAlone)) return repairHeader(text, key);
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY') return { text: blank(text, cause, lineEnd(text, cause)) };
  return { text: blankRest(text, cause) };
}

/** Blanks the whole line of the cause, and where that is blank already, everything below it that stands further in. */
export function blankMore(text: string, cause: number): string {
  const start = lineStart(text, cause);
  if (text.slice(start, lineEnd(text, start)).trim() !== '') return blank(text, start, lineEnd(text, cause));
  return blank(text, start, blockEnd(text, start, indentAt(text, start)));
}

function repairHeader(text: string, key: Span): Repair {
  const start = lineStart(text, key.start);
  const before = text.slice(start, key.start);
  if (/^[ \t-]*$/.test(before)) {
    const end = lineEnd(text, key.start);
    const header = { start: key.start, end: key.start + text.slice(key.start, end).trimEnd().length };
    const emptyKey = `:${blankPart(text, key.start + 1, end)}`;
    return { text: text.slice(0, key.start) + emptyKey + text.slice(end), header };
  }
  // The key began as the value of another: the lines below stand too far in.
  const last = lineStart(text, key.end - 1);
  return { text: blank(text, last, blockEnd(text, last, indentAt(text, last))) };
}

/** Tries, within the top-level item that holds the cause, what takes away most errors. */
function repairBrackets(text: string, cause: number, around: readonly Span[], survey: Survey): string {
  const start = itemStart(text, Math.min(cause, around[0]!.start));
  const end = itemEnd(text, cause);
  const line = lineStart(text, cause);
  const tries: string[] = [];
  const open = survey.brackets.findLast((bracket) => bracket.isOpen && around.includes(bracket));
  if (open !== undefined) {
    if (!goesOn(text, open)) tries.push(blank(text, open.start, lineEnd(text, open.start)));
    tries.push(...closeOnLastLine(text, open));
  }
  const running = survey.longScalars.findLast((scalar) => scalar.start <= cause && cause <= scalar.end + 1);
  if (running !== undefined) {
    const from = Math.max(lineStart(text, running.start), lastSeparator(text, running.start));
    tries.push(blank(text, from, lineEnd(text, running.start)));
  }
  tries.push(blank(text, line, lineEnd(text, cause)));
  if (line > start) {
    const above = lineStart(text, text.slice(0, line).trimEnd().length - 1);
    const aboveEnd = lineEnd(text, above);
    if (above >= start) {
      tries.push(blank(text, Math.max(valueStart(text, above), lastSeparator(text, aboveEnd - 1)), aboveEnd));
      tries.push(blank(text, valueStart(text, above), aboveEnd));
    }
  }
  for (const bracket of [...around].reverse())
    tries.push(blank(text, bracket.start, lineEnd(text, bracket.start)));
  tries.splice(mostTries - 1);
  tries.push(blank(text, around[0]!.start, end));

  let best = tries[0]!;
  let fewest = Infinity;
  for (const attempt of end - start > longPart ? tries.slice(-1) : tries) {
    const part = attempt.slice(start, end);
    const reading = readYaml(part);
    const rest = surveyOf(reading.root, part);
    const count = reading.errors
      .slice(0, mostErrors)
      .filter((error) => causeOf(error, rest, part) !== undefined).length;
    if (count >= fewest) continue;
    best = attempt;
    fewest = count;
    if (count === 0) break;
  }
  return best;
}

/** True where the line below the opening bracket stands further in than the bracket's own, as it must inside brackets. */
function goesOn(text: string, open: Span): boolean {
  const start = lineStart(text, open.start);
  const next = text.indexOf('\n', start) + 1;
  return next > 0 && indentAt(text, next) > indentAt(text, start);
}

/** Puts the closing bracket in place of what stands on the last line of an open one of several lines. */
function closeOnLastLine(text: string, open: Span): readonly string[] {
  const end = open.start + text.slice(open.start, open.end).trimEnd().length;
  const start = lineStart(text, end);
  if (start <= open.start) return [];
  const at = start + indentAt(text, start);
  const closer = text[open.start] === '{' ? '},' : '],';
  const stop = lineEnd(text, at);
  return [text.slice(0, at) + closer.slice(0, stop - at) + blankPart(text, at + 2, stop) + text.slice(stop)];
}

/** From the stray character to the end of its line; from the start of the line where nothing readable stands before it. */
function blankRest(text: string, cause: number): string {
  const start = lineStart(text, cause);
  const isLoneWord = /^[ \t-]*$/.test(text.slice(start, cause));
  return blank(text, isLoneWord ? start : cause, lineEnd(text, cause));
}

function untab(text: string): string {
  return text.replace(/^[ \t]*\t[ \t]*/gm, (indent) => ' '.repeat(indent.length));
}

/** True where a key of several lines has its last line at the column of its first: the lines above are half-typed keys. */
function isAligned(key: Span, text: string): boolean {
  const first = key.start - lineStart(text, key.start);
  const last = lineStart(text, key.end - 1);
  if (isHeader(key, text)) return false;
  return indentAt(text, last) === first && /^[ \t-]*$/.test(text.slice(key.start - first, key.start));
}

/** True where the next line that says something stands further in, or is the first of a list. */
function isHeader(key: Span, text: string): boolean {
  const column = key.start - lineStart(text, key.start);
  for (let feed = text.indexOf('\n', key.start); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const next = feed + 1;
    const indent = indentAt(text, next);
    const first = text.charAt(next + indent);
    if (first === '' || first === '#' || first === '\r' || first === '\n') continue;
    return (
      indent > column || (indent === column && /^-\s/.test(text.slice(next + indent, next + indent + 2)))
    );
  }
  return false;
}

function isLong(span: Span, text: string): boolean {
  const feed = text.indexOf('\n', span.start);
  return feed !== -1 && feed < span.end;
}

function lastSeparator(text: string, offset: number): number {
  return (
    Math.max(text.lastIndexOf(',', offset), text.lastIndexOf('{', offset), text.lastIndexOf('[', offset)) + 1
  );
}

/** Where the value after a line's first key begins; the line's start where it has no key. */
function valueStart(text: string, start: number): number {
  const key = /^[ \t-]*[^\s{}[\],:#"']+:(?=\s|$)/.exec(text.slice(start, lineEnd(text, start)));
  return key === null ? start : start + key[0].length;
}
