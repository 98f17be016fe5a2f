// Reads a text into the plain tree whatever stands in it, and says what YAML could not read; knows nothing of swings.
import { blank, lineEnd, lineStart } from './lines.ts';
import { blankMore, findHarm, joinLoneWord, repair } from './repair.ts';
import { surveyOf } from './survey.ts';
import { halfTypedKey, treeOf, type HalfTypedKey } from './tree-of.ts';
import type { RecordProblem, Tree } from './tree.ts';
import { problemOf } from './yaml-problem.ts';
import { deepestNesting, longestText, readYaml, type YamlReading } from './yaml.ts';

/** Each repair reads the text once more; a long text is read less often. */
const mostRepairs = 8;
const mostCharactersRead = 1 << 16;
/** A text with more errors is no record that somebody is typing. */
const mostErrorsRepaired = 2000;
const mostSyntaxProblems = 20;

export interface ReadTree {
  /** Undefined where there is nothing to read, or the text is too long. */
  readonly tree: Tree | undefined;
  readonly problems: readonly RecordProblem[];
  /** Comments by offset, the number sign included. */
  readonly comments: ReadonlyMap<number, string>;
  /** True where YAML could not read all: what is missing may only be hidden. */
  readonly isDamaged: boolean;
}

/** `headers` are the keys that hold other keys: a half-typed one that stands above deeper lines is taken for one of them. */
export function readTree(text: string, headers: readonly string[]): ReadTree {
  if (text.length > longestText) return tooLarge(text);
  const lost = findLost(text);
  if (lost?.isWhole === true) return unread(lost.problem);
  const repairs: Repairs = {
    text,
    headers,
    problems: lost === undefined ? [] : [lost.problem],
    halfTyped: [],
    lines: new Set(),
    comments: new Map(),
  };
  let patched = text;
  let reading = readOnce(patched, repairs);
  for (
    let left = Math.min(mostRepairs, Math.ceil(mostCharactersRead / (text.length + 1)));
    left > 0;
    left--
  ) {
    const next = joinLoneWord(patched, reading) ?? repairOnce(patched, reading, repairs);
    if (next === undefined) break;
    patched = next;
    reading = readOnce(patched, repairs);
  }
  const { problems, comments } = repairs;
  const grown = reading.root === undefined ? undefined : treeOf(reading.root, patched, repairs.halfTyped);
  if (reading.errors.length > 0) {
    const survey = surveyOf(reading.root, patched);
    for (const error of reading.errors.slice(0, mostSyntaxProblems))
      push(problemOf(error, survey, patched), problems);
  }
  if (reading.tooDeepAt !== undefined) problems.push(tooDeep(reading.tooDeepAt, text));
  if (reading.secondDocumentAt !== undefined) problems.push(secondDocument(reading.secondDocumentAt, text));
  const all = problems.concat(grown?.problems ?? []);
  return {
    tree: grown?.tree,
    problems: all,
    comments,
    isDamaged: all.some(({ code }) => damaging.has(code)),
  };
}

const damaging: ReadonlySet<string> = new Set(['yaml-syntax', 'too-deep', 'too-many-aliases']);

interface Repairs {
  readonly text: string;
  readonly headers: readonly string[];
  readonly problems: RecordProblem[];
  readonly halfTyped: HalfTypedKey[];
  /** The starts of the lines that were repaired once. */
  readonly lines: Set<number>;
  readonly comments: Map<number, string>;
}

/** A repair hides comments on its line, and an open quote those below it: what any reading finds is kept. */
function readOnce(patched: string, { comments }: Repairs): YamlReading {
  const reading = readYaml(patched);
  for (const [offset, comment] of reading.comments) comments.set(offset, comment);
  return reading;
}

/** The text with the first harm taken out, as long as before; undefined where every error stays on its own line. */
function repairOnce(patched: string, reading: YamlReading, repairs: Repairs): string | undefined {
  const { text, problems, lines } = repairs;
  if (reading.tooDeepAt !== undefined) {
    problems.push(tooDeep(reading.tooDeepAt, text));
    const start = lineStart(patched, reading.tooDeepAt);
    return blank(patched, start, nextItem(patched, start));
  }
  if (reading.errors.length === 0 || reading.errors.length > mostErrorsRepaired) return undefined;
  const survey = surveyOf(reading.root, patched);
  const harm = findHarm(reading.errors, survey, patched);
  if (harm === undefined) return undefined;
  push(problemOf(harm.error, survey, patched), problems);
  const line = lineStart(patched, harm.cause);
  if (lines.has(line)) return blankMore(patched, harm.cause);
  lines.add(line);
  const next = repair(patched, harm, survey);
  if (next.header !== undefined) {
    const word = text.slice(next.header.start, next.header.end);
    problems.push(halfTypedKey(word, next.header));
    repairs.halfTyped.push({ key: headerLike(word, repairs.headers, text), span: next.header });
  }
  return next.text;
}

function push(problem: RecordProblem | undefined, problems: RecordProblem[]): void {
  if (problem !== undefined) problems.push(problem);
}

/** The known key that the word begins, if it can only be that one or only that one is not yet written; else the word. */
function headerLike(word: string, headers: readonly string[], text: string): string {
  if (headers.includes(word)) return word;
  const alike = headers.filter((header) => header.startsWith(word));
  if (alike.length < 2) return alike[0] ?? word;
  return alike.find((header) => !new RegExp(`^[ \\t-]*${header}:`, 'm').test(text)) ?? word;
}

function nextItem(text: string, start: number): number {
  let feed = text.indexOf('\n', start);
  while (feed !== -1 && !/[A-Za-z_]/.test(text.charAt(feed + 1))) feed = text.indexOf('\n', feed + 1);
  return feed === -1 ? text.length : feed;
}

function tooDeep(offset: number, text: string): RecordProblem {
  return {
    code: 'too-deep',
    span: { start: offset, end: Math.min(offset + 1, text.length) },
    found: `values nested more than ${deepestNesting} deep`,
    expected: 'the nesting of a swing record, which is at most eight deep',
  };
}

function secondDocument(offset: number, text: string): RecordProblem {
  const start = Math.max(0, text.lastIndexOf('---', offset + 3));
  return {
    code: 'yaml-syntax',
    span: { start, end: Math.min(start + 3, text.length) },
    found: '`---` and a second document, which is not read',
    expected: 'one document in a file',
  };
}

function tooLarge(text: string): ReadTree {
  const end = Math.min(lineEnd(text.slice(0, 200), 0), 80);
  const problem: RecordProblem = {
    code: 'file-too-large',
    span: { start: 0, end },
    found: `a file of ${Math.ceil(text.length / 1000)} thousand characters, which is not read`,
    expected: `one of at most ${longestText / 1000} thousand`,
  };
  return unread(problem);
}

function unread(problem: RecordProblem): ReadTree {
  return { tree: undefined, problems: [problem], comments: new Map(), isDamaged: true };
}

/** A text of which more than this share is lost was written in another encoding: half of UTF-16 are zeros. */
const mostLost = 0.1;

/** Zeros, and what stands for bytes that are not UTF-8; whole where nothing of the text is worth reading. */
function findLost(text: string): { readonly problem: RecordProblem; readonly isWhole: boolean } | undefined {
  const start = text.search(/[\0\ufffd]/);
  if (start === -1) return undefined;
  let count = 0;
  for (let at = start; at < text.length; at++) if (text[at] === '\0' || text[at] === '\ufffd') count++;
  const problem: RecordProblem = {
    code: 'unreadable-characters',
    span: { start, end: start + 1 },
    found: count === 1 ? 'a character that cannot be read' : `${count} characters that cannot be read`,
    expected: 'a file saved as UTF-8',
  };
  return { problem, isWhole: count > mostLost * text.length };
}
