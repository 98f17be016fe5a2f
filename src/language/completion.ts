// What may be written where the cursor stands, in the order in which a coach most likely wants it: asks who knows this kind of place; reads no file.
import { lineTableOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import { cursorAt, type Cursor } from '../record/cursor.ts';
import type { Entry, FileKind, SwingRecord } from '../record/document.ts';
import { documentEnd } from '../record/document-end.ts';
import { lineEnd, lineStart } from '../record/lines.ts';
import { proposeCodes } from './completion-codes.ts';
import { continueExpression } from './completion-expression.ts';
import { habitOf } from './completion-habits.ts';
import {
  asValue,
  escapeSnippet,
  itemsFrom,
  withinValue,
  type Abilities,
  type Proposal,
} from './completion-item.ts';
import { proposeKeys } from './completion-keys.ts';
import { aboutAt, continueAbout } from './completion-about.ts';
import { placeAt, quantityAt, type Path } from './completion-place.ts';
import { proposeForms, proposeMappings } from './completion-snippets.ts';
import { ids, methodWords } from './completion-ids.ts';
import { proposeWords } from './completion-words.ts';
import { continueMessage, proposePrefixes } from './completion-workspace.ts';
import { offsetAt } from './places.ts';
import type { CompletionItem, Position } from './shapes.ts';

export interface CompletionRequest extends Abilities {
  readonly position: Position;
  /** The URIs of the files around, for references. */
  readonly files: readonly string[];
  /** The student's record before this one. */
  readonly earlier: SwingRecord | undefined;
  /** Each quantity as it was measured the last time. */
  readonly usual: ReadonlyMap<string, Entry>;
  /** Year, month and day, as a record has it. */
  readonly today: string;
}

/** All that whoever proposes may look at. */
export interface Desire extends Omit<CompletionRequest, 'position'> {
  readonly analysis: Analysis;
  readonly cursor: Cursor;
  readonly text: string;
  /** As the file ends its lines. */
  readonly newline: '\n' | '\r\n';
}

interface Found {
  readonly span: Span;
  readonly proposals: readonly Proposal[];
}

const none: readonly Proposal[] = [];

export function findCompletions(analysis: Analysis, request: CompletionRequest): CompletionItem[] {
  const { text } = analysis.document;
  const table = lineTableOf(text);
  const offset = offsetAt(table, request.position);
  const cursor = asKey(cursorAt(text, offset), text, analysis.document.kind);
  if (cursor === undefined || isOutdented(cursor, text) || offset > documentEnd(text)) return [];
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const { span, proposals } = findAt({ ...request, analysis, cursor, text, newline }, offset);
  return itemsFrom(proposals, span, table, request);
}

/** A word in quotes alone below a key is a key itself where keys belong there. */
function asKey(cursor: Cursor | undefined, text: string, kind: FileKind): Cursor | undefined {
  if (cursor?.role !== 'value' || cursor.quote === '' || cursor.style !== 'block') return cursor;
  if (placeAt(kind, cursor.path)?.holds !== 'mapping') return cursor;
  const start = cursor.word.start - 1;
  const column = start - lineStart(text, start);
  if (text.slice(start - column, start).trim() !== '') return cursor;
  const end = cursor.word.end + (text[cursor.word.end] === cursor.quote ? 1 : 0);
  const after = text.slice(end, lineEnd(text, end));
  return { ...cursor, role: 'key', word: { start, end }, siblings: new Map(), column, after };
}

/** What goes on between brackets has to be indented (YAML 1.2.2, 6.3), unless the whole file stands between them: at column 0 nothing can. */
function isOutdented({ style, word }: Cursor, text: string): boolean {
  if (style !== 'flow' || !/(^|[\r\n])$/.test(text.slice(0, word.start))) return false;
  return !/^(?:\s|#[^\r\n]*[\r\n])*[{[]/.test(text);
}

function findAt(desire: Desire, offset: number): Found {
  const { cursor, analysis, text } = desire;
  switch (cursor.role) {
    case 'comment':
      return proposeCodes(analysis, offset);
    case 'key':
      return keysAt(desire, offset);
    case 'item': {
      const keys = itemKeys(desire, offset);
      const found = valuesAt(desire, offset);
      // Behind a word and a space no other key begins.
      if (offset > cursor.word.end) return cursor.siblings.size > 0 ? { ...found, proposals: none } : found;
      // The rest of the item stands below: only another key can go with it.
      if (cursor.siblings.size > 0) return keys;
      const isMapping = placeAt(analysis.document.kind, cursor.path)?.holds === 'mapping';
      if (text.slice(cursor.word.start, cursor.word.end) === '' || isMapping)
        return {
          span: keys.span,
          proposals: isMapping ? keys.proposals : [...found.proposals, ...keys.proposals],
        };
      return found;
    }
    case 'value':
      return valuesAt(desire, offset);
  }
}

function keysAt(desire: Desire, offset: number): Found {
  const { cursor, analysis } = desire;
  const place = placeAt(analysis.document.kind, cursor.path);
  const narrowed = narrow(desire, offset);
  // Below a key that holds a list, an item comes first.
  if (place?.holds === 'list' && cursor.style === 'block' && cursor.quote === '') {
    const { before, column } = cursor;
    const item = { ...cursor, path: [...cursor.path, 0], before: `${before}- `, column: column + 2 };
    const keys = placeAt(analysis.document.kind, item.path)?.holds === 'mapping';
    const inner = {
      ...narrowed.desire,
      cursor: {
        ...narrowed.desire.cursor,
        ...item,
        word: narrowed.span,
        after: narrowed.desire.cursor.after,
      },
    };
    return {
      span: narrowed.span,
      proposals: keys ? itemProposals(inner) : lead(item.before, valuesAt(inner, offset).proposals),
    };
  }
  const { path } = cursor;
  const inner = narrowed.desire;
  const forms = proposeMappings(inner, path);
  const prefixes = analysis.document.kind === 'workspace' ? proposePrefixes(inner, path) : none;
  const keys = [...proposeKeys(inner, path), ...prefixes];
  // In an empty file the whole record comes right after the first key.
  const isNew = path.length === 0 && cursor.siblings.size === 0;
  const proposals = isNew ? [...keys.slice(0, 1), ...forms, ...keys.slice(1)] : [...keys, ...forms];
  return { span: narrowed.span, proposals: lead(cursor.before, proposals) };
}

function itemKeys(desire: Desire, offset: number): Found {
  const { cursor, analysis } = desire;
  if (cursor.style === 'flow') {
    const holds = placeAt(analysis.document.kind, cursor.path)?.holds;
    const keys = holds === 'mapping' ? inBraces(proposeKeys(desire, cursor.path), desire) : none;
    return {
      span: cursor.word,
      proposals: lead(cursor.before, [...proposeForms(desire, cursor.path), ...keys]),
    };
  }
  const narrowed = narrow(desire, offset);
  return { span: narrowed.span, proposals: itemProposals(narrowed.desire) };
}

/** Between brackets a key has to bring braces of its own. */
function inBraces(keys: readonly Proposal[], { snippets }: Desire): readonly Proposal[] {
  return keys.map((key) => ({
    ...key,
    text: snippets
      ? `{ ${escapeSnippet(asValue(key.label, '', 'flow'))}: $0 }`
      : `{ ${asValue(key.label, '', 'flow')}: }`,
    isSnippet: snippets,
  }));
}

function itemProposals(desire: Desire): readonly Proposal[] {
  const { cursor } = desire;
  const forms = cursor.siblings.size > 0 ? [] : proposeForms(desire, cursor.path);
  return lead(cursor.before, [...proposeKeys(desire, cursor.path), ...forms]);
}

/** Only the word at the cursor counts as a half-written key; what follows on the line is kept. */
function narrow(desire: Desire, offset: number): { readonly desire: Desire; readonly span: Span } {
  const { cursor, text } = desire;
  const { start, end } = cursor.word;
  if (cursor.quote !== '' || /^\s*:(?:\s|$)/.test(cursor.after)) return { desire, span: cursor.word };
  const more = /\s/.exec(text.slice(offset, end));
  const stop = more === null ? end : offset + more.index;
  const after = text.slice(stop, end) + cursor.after;
  return { desire: { ...desire, cursor: { ...cursor, after } }, span: { start, end: stop } };
}

function valuesAt(desire: Desire, offset: number): Found {
  const { cursor, analysis, text } = desire;
  const { path, word, before } = cursor;
  const value = text.slice(word.start, word.end);
  const { kind } = analysis.document;
  const about = aboutAt(desire, path);
  if (about !== undefined && value !== '') {
    // White space behind the last word belongs to the place, not to the word.
    const full = offset > word.end ? text.slice(word.start, offset) : value;
    const found = continueAbout(about, full, offset - word.start, desire);
    if (found === undefined) return { span: word, proposals: none };
    const { start, end } = found;
    return {
      span: { start: word.start + start, end: word.start + end },
      proposals: found.proposals.map((one) => withinValue(one, { value: full, word, start, end }, cursor)),
    };
  }
  const isMessage = kind === 'workspace' && path[0] === 'checks' && path.at(-1) === 'message';
  if (isMessage || isExpression(kind, path)) {
    const full = offset > word.end ? text.slice(word.start, offset) : value;
    const at = offset - word.start;
    const saying = path[0] === 'relations' ? 'relation' : 'expression';
    const found = isMessage
      ? continueMessage(full, at, desire)
      : continueExpression(full, at, ids(desire), saying);
    if (found === undefined) return { span: word, proposals: none };
    const span = { start: word.start + found.start, end: word.start + found.end };
    return { span, proposals: value === '' ? lead(before, found.proposals) : found.proposals };
  }
  const isMethod =
    path.at(-1) === 'by' && quantityAt(kind, path.slice(0, -1), analysis.subject.registry) !== undefined;
  const words = isMethod ? methods(desire, path) : proposeWords(desire, path);
  const forms = value === '' && cursor.quote === '' ? proposeForms(desire, path) : [];
  // Some names are of several words, so that one is not yet over at its space.
  const span = { start: word.start, end: Math.max(word.end, offset) };
  return { span, proposals: lead(before, [...words, ...forms]) };
}

function methods(desire: Desire, path: Path): Proposal[] {
  const { analysis, cursor } = desire;
  const { quote, style } = cursor;
  const quantity = quantityAt(analysis.document.kind, path.slice(0, -1), analysis.subject.registry)!;
  const known = methodWords(desire);
  return habitOf(quantity, desire).methods.map((name) => ({
    label: name,
    text: asValue(name, quote, style),
    kind: 'word',
    detail: known.find(({ word }) => word === name)?.detail,
  }));
}

function isExpression(kind: Analysis['document']['kind'], path: Path): boolean {
  const key = path.findLast((part) => typeof part === 'string');
  if (kind === 'swing') return path[0] === 'plan' && key === 'proof';
  if (kind === 'faults') return key === 'expression' || key === 'evidence';
  if (kind !== 'workspace' || path.length !== 3) return false;
  const [section] = path;
  return (
    (section === 'derived' && key === 'is') ||
    (section === 'relations' && key === 'says') ||
    (section === 'checks' && key === 'when')
  );
}

function lead(before: string, proposals: readonly Proposal[]): readonly Proposal[] {
  return before === '' ? proposals : proposals.map((one) => ({ ...one, text: before + one.text }));
}
