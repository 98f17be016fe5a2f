// Puts remarks, replies and signatures into the text of a review by edits that leave every other sign as it was, and reads the result back; knows no record.
import type { Span } from '../measure/measure.ts';
import { hashOf } from './fingerprint.ts';
import { lineEnd, lineStart } from './lines.ts';
import { readTree } from './read-tree.ts';
import type { Remark, RemarkState } from './remark.ts';
import { scalarText } from './review-scalar.ts';
import { isEmpty, type ListTree, type MapTree, type Tree } from './tree.ts';

export interface ReviewEdit {
  readonly span: Span;
  readonly text: string;
}

export interface NewRemark {
  readonly about: string;
  readonly value: string;
  readonly author: string;
  readonly time: string;
  readonly text: string;
  readonly suggests: string | undefined;
}

export interface NewReply {
  readonly author: string;
  readonly time: string;
  readonly state: RemarkState;
  readonly text: string | undefined;
  readonly suggests: string | undefined;
}

export interface NewSignature {
  readonly by: string;
  readonly time: string;
  readonly hash: string;
}

/** By what a remark says and who says it when, so that two people never choose the same; never a number. */
export function remarkId({ about, value, author, time, text }: NewRemark): string {
  return `r${hashOf(JSON.stringify([about, value, author, time, text])).slice(0, 10)}`;
}

/** The text of a review of which there is none yet. */
export function emptyReview(of: string): string {
  return `review: 1\nof: ${scalarText(of, { style: 'block', indent: 0 })}\n`;
}

/** Undefined where the review is damaged or written in a way in which nothing can be put in safely. */
export function addRemark(text: string, remark: NewRemark): readonly ReviewEdit[] | undefined {
  return append(text, (root) => ({ holder: root, key: 'threads' }), { id: remarkId(remark), ...remark });
}

/** A state that was written by hand at the remark itself goes along. */
export function addReply(text: string, remark: Remark, reply: NewReply): readonly ReviewEdit[] | undefined {
  const find = (root: MapTree): Place | undefined => {
    const threads = root.pairs.get('threads')?.value;
    const thread =
      threads?.kind === 'list'
        ? threads.items.find(({ span }) => span.start === remark.span.start)
        : undefined;
    return thread?.kind === 'map' ? { holder: thread, key: 'replies' } : undefined;
  };
  const edits = append(text, find, { ...reply });
  if (edits === undefined || remark.stated === undefined) return edits;
  return [{ span: remark.stated.span, text: reply.state }, ...edits];
}

export function addSignature(text: string, signature: NewSignature): readonly ReviewEdit[] | undefined {
  return append(text, (root) => ({ holder: root, key: 'signed_off' }), { ...signature });
}

export function applyReviewEdits(text: string, edits: readonly ReviewEdit[]): string {
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
}

/** The list at this key of the mapping gets one more item. */
interface Place {
  readonly holder: MapTree;
  readonly key: string;
}

type Fields = Readonly<Record<string, string | undefined>>;

function append(
  text: string,
  find: (root: MapTree) => Place | undefined,
  fields: Fields,
): readonly ReviewEdit[] | undefined {
  const root = rootOf(text);
  const place = root && find(root);
  if (place === undefined) return undefined;
  const said = Object.entries(fields).flatMap(([key, value]) =>
    value === undefined ? [] : [[key, value] as const],
  );
  const edit = editFor(text, place, said);
  if (edit === undefined) return undefined;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const put = { ...edit, text: edit.text.replaceAll('\n', newline) };
  const before = place.holder.pairs.get(place.key)?.value;
  const expected = [...(before?.kind === 'list' ? before.plain : []), Object.fromEntries(said)];
  return isAsExpected(text, applyReviewEdits(text, [put]), place, expected) ? [put] : undefined;
}

function rootOf(text: string): MapTree | undefined {
  const { tree, isDamaged, problems } = readTree(text, []);
  return tree?.kind === 'map' && !isDamaged && problems.length === 0 ? tree : undefined;
}

/** The edited text says what it said before and the new item, in the list where it was wanted. */
function isAsExpected(
  before: string,
  after: string,
  { holder, key }: Place,
  list: readonly unknown[],
): boolean {
  const root = rootOf(after);
  const was = rootOf(before);
  if (root === undefined || was === undefined) return false;
  const replaced = (tree: Tree): unknown => {
    if (tree.kind === 'list') return tree.items.map(replaced);
    if (tree.kind === 'scalar') return tree.plain;
    const plain = Object.fromEntries([...tree.pairs].map(([name, { value }]) => [name, replaced(value)]));
    return tree.span.start === holder.span.start && tree.size === holder.size
      ? { ...plain, [key]: list }
      : plain;
  };
  return JSON.stringify(replaced(was)) === JSON.stringify(root.plain);
}

type Said = readonly (readonly [string, string])[];

function editFor(text: string, { holder, key }: Place, said: Said): ReviewEdit | undefined {
  const list = holder.pairs.get(key)?.value;
  if (isFlow(text, holder)) return inBraces(text, holder, key, list, said);
  const indent = columnOf(text, [...holder.pairs.values()][0]?.keySpan.start ?? 0);
  if (list === undefined)
    return atEndOf(text, holder, `${' '.repeat(indent)}${key}:\n${blockItem(said, indent + 2)}`);
  if (list.kind === 'list' && list.items.length > 0) {
    if (isFlow(text, list)) return behind(list, said);
    const sign = text.lastIndexOf('-', list.items[0]!.span.start - 1);
    return sign < 0 ? undefined : atEndOf(text, list, blockItem(said, columnOf(text, sign)));
  }
  if (list.kind !== 'list' && !isEmpty(list)) return undefined;
  // What stands behind the empty list on its line, such as a comment, stays on it.
  const end = lineEnd(text, list.span.end);
  const span = { start: list.span.start, end };
  return { span, text: `${text.slice(list.span.end, end)}\n${blockItem(said, indent + 2)}` };
}

function inBraces(
  text: string,
  holder: MapTree,
  key: string,
  list: Tree | undefined,
  said: Said,
): ReviewEdit | undefined {
  if (list?.kind === 'list' && list.items.length > 0) return behind(list, said);
  if (list?.kind === 'list') return { span: list.span, text: `[${flowItem(said)}]` };
  if (list !== undefined)
    return isEmpty(list) ? { span: list.span, text: ` [${flowItem(said)}]` } : undefined;
  const last = [...holder.pairs.values()].at(-1);
  if (last === undefined) return undefined;
  const at = endOf(text, last.value);
  return { span: { start: at, end: at }, text: `, ${key}: [${flowItem(said)}]` };
}

function behind(list: ListTree, said: Said): ReviewEdit {
  const at = list.items.at(-1)!.span.end;
  return { span: { start: at, end: at }, text: `, ${flowItem(said)}` };
}

/** Whole lines below the last one of a block. */
function atEndOf(text: string, tree: Tree, lines: string): ReviewEdit {
  const last = endOf(text, tree);
  const end = text[last - 1] === '\n' ? last : lineEnd(text, last);
  const at = { start: end, end };
  return text[end - 1] === '\n' && end === last
    ? { span: at, text: `${lines}\n` }
    : { span: at, text: `\n${lines}` };
}

/** The end of the last thing written in it; a block says of itself only where the next one begins. */
function endOf(text: string, tree: Tree): number {
  if (tree.kind === 'scalar' || isFlow(text, tree)) return tree.span.end;
  const last = tree.kind === 'map' ? [...tree.pairs.values()].at(-1)?.value : tree.items.at(-1);
  return last === undefined ? tree.span.end : endOf(text, last);
}

function blockItem(said: Said, indent: number): string {
  const margin = ' '.repeat(indent);
  return said
    .map(([key, value], i) => {
      const scalar = scalarText(value, { style: 'block', indent: indent + 2 });
      return `${margin}${i === 0 ? '- ' : '  '}${key}: ${scalar}`;
    })
    .join('\n');
}

function flowItem(said: Said): string {
  return `{ ${said.map(([key, value]) => `${key}: ${scalarText(value, { style: 'flow' })}`).join(', ')} }`;
}

function isFlow(text: string, { span }: Tree): boolean {
  return text[span.start] === '{' || text[span.start] === '[';
}

function columnOf(text: string, offset: number): number {
  return offset - lineStart(text, offset);
}
