// Says in our own words what the yaml package found wrong, at the characters that a coach would mend.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { lineEnd, lineStart } from './lines.ts';
import type { KeyPlace, Survey } from './survey.ts';
import { halfTypedKey } from './tree-of.ts';
import type { RecordProblem } from './tree.ts';
import type { YamlError } from './yaml.ts';

/** `text` is the text that was read, `survey` what was left open in it; undefined where another problem says the same. */
export function problemOf(error: YamlError, survey: Survey, text: string): RecordProblem | undefined {
  const at = error.span.start;
  const openQuote = survey.openQuotes.find(({ end }) => end === at);
  if (openQuote !== undefined) return openQuoteProblem(openQuote, text);
  const openBracket = survey.brackets.findLast(({ isOpen, end }) => isOpen && end === at);
  if (openBracket !== undefined) return openBracketProblem(openBracket.start, text);
  const key = survey.keys.find(({ start }) => start === at);
  switch (error.code) {
    case 'MULTILINE_IMPLICIT_KEY':
    case 'BLOCK_AS_IMPLICIT_KEY': {
      if (key !== undefined && text.slice(key.start, key.end).includes('\n')) return longKey(key, text);
      return syntax(
        rest(text, at),
        found(text, at),
        'one value after the colon, in quotes if it holds a colon itself',
      );
    }
    case 'TAB_AS_INDENT':
      return syntax(tabs(text, at), 'a tab at the start of the line', 'spaces');
    case 'BAD_INDENT': {
      const start = skipSpace(text, at);
      return syntax(
        wordAt(text, start),
        `${found(text, start)} at a column of its own`,
        'the same column as the lines that it belongs to',
      );
    }
    case 'BAD_DQ_ESCAPE':
      return syntax(
        { start: at, end: at + 2 },
        `${quote(text.slice(at, at + 2))} in double quotes`,
        'two backslashes (`\\\\`) for one, or single quotes',
      );
    case 'BAD_SCALAR_START':
      return syntax(
        error.span,
        `${quote(text.charAt(at))} at the start of a value`,
        'quotes around a value that starts so',
      );
    case 'BAD_ALIAS':
      return syntax(
        error.span,
        `${quote(text.slice(error.span.start, error.span.end))} without a name`,
        'a name after it, or quotes around the value',
      );
    case 'TAG_RESOLVE_FAILED':
    case 'BAD_COLLECTION_TYPE':
    case 'MULTIPLE_TAGS':
      return syntax(
        error.span,
        `the tag ${quote(text.slice(error.span.start, error.span.end))}`,
        'a value without `!`, or quotes around it',
      );
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
      return syntax(
        error.span,
        quote(text.slice(error.span.start, error.span.end)),
        'either a name (`&`) or a use of one (`*`)',
      );
    case 'BAD_DIRECTIVE':
      return syntax(rest(text, at), found(text, at), 'no line that starts with `%`');
    case 'KEY_OVER_1024_CHARS':
      return syntax(wordAt(text, at), 'a key of over 1024 characters', 'a shorter key');
    case 'BLOCK_IN_FLOW':
      return syntax(rest(text, at), `${found(text, at)} inside brackets`, 'entries parted by commas');
    case 'MISSING_CHAR':
      return missing(error, survey, text);
    default: {
      const start = skipSpace(text, at);
      const isInBrackets = survey.brackets.some((bracket) => bracket.start < at && at < bracket.end);
      return syntax(
        rest(text, start),
        found(text, start),
        isInBrackets ? 'entries parted by commas' : 'the end of the line, or a new key on its own line',
      );
    }
  }
}

/** A key of several lines: either the first is half-typed, or the last stands too far in below a value. */
function longKey(key: KeyPlace, text: string): RecordProblem | undefined {
  const start = lineStart(text, key.start);
  // The tree says it itself where it takes the key apart.
  if (/^[ \t-]*$/.test(text.slice(start, key.start))) return key.isPlain ? undefined : halfTyped(key, text);
  const last = skipSpace(text, lineStart(text, key.end - 1));
  return syntax(
    wordAt(text, last),
    `${found(text, last)} further in than the line above`,
    'the column of the line above, or of the keys that it belongs to',
  );
}

function halfTyped(key: KeyPlace, text: string): RecordProblem {
  const { start, end } = rest(text, key.start);
  return halfTypedKey(text.slice(start, end), { start, end });
}

function missing(error: YamlError, survey: Survey, text: string): RecordProblem {
  const at = error.span.start;
  if (text[at] === '#')
    return syntax(
      rest(text, at),
      `${found(text, at)} close to the value`,
      'a space before the `#` of a comment',
    );
  const alone = survey.keys.find(({ start, isAlone }) => isAlone && start === at);
  if (alone !== undefined)
    return halfTypedKey(text.slice(alone.start, alone.end), { start: alone.start, end: alone.end });
  const start = skipSpace(text, at);
  const isInBrackets = survey.brackets.some((bracket) => bracket.start <= at && at <= bracket.end);
  return isInBrackets
    ? syntax(
        wordAt(text, start),
        found(text, start),
        'a comma between two entries, and a colon and a space after a key',
      )
    : syntax(wordAt(text, start), found(text, start), 'a key, a colon and a value');
}

function openQuoteProblem({ start }: Span, text: string): RecordProblem {
  const mark = text.charAt(start);
  return syntax(
    { start, end: lineEnd(text, start) },
    `a text that starts with ${quote(mark)} and does not end`,
    `${quote(mark)} at the end of the text`,
  );
}

function openBracketProblem(start: number, text: string): RecordProblem {
  const closer = text[start] === '{' ? '}' : ']';
  return syntax(
    { start, end: start + 1 },
    `${quote(text.charAt(start))} without ${quote(closer)}`,
    `${quote(closer)} after the last entry`,
  );
}

function syntax(span: Span, what: string, expected: string): RecordProblem {
  return { code: 'yaml-syntax', span, found: what, expected };
}

function found(text: string, at: number): string {
  const { start, end } = rest(text, at);
  return start === end ? 'the end of the line' : quote(text.slice(start, end));
}

/** The rest of the line from `at` on, without trailing white space. */
function rest(text: string, at: number): Span {
  const line = text.slice(at, Math.min(lineEnd(text, at), at + 400));
  return { start: at, end: at + line.trimEnd().length };
}

function wordAt(text: string, at: number): Span {
  const word = /^\S+/.exec(text.slice(at, at + 400));
  return { start: at, end: at + (word?.[0].length ?? 0) };
}

function tabs(text: string, at: number): Span {
  let end = at;
  while (text[end] === '\t') end++;
  return { start: at, end: Math.max(end, Math.min(at + 1, text.length)) };
}

function skipSpace(text: string, at: number): number {
  let start = at;
  while (start < text.length && /\s/.test(text.charAt(start))) start++;
  return start;
}
