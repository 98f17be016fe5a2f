// Where that which a name stands for is made: a fault in its book, a club in its bag, an entry in the record, a page on a word; opens no file.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import { homeOf, mentionAt, mentionsIn, type Mention } from '../analysis/mentions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import type { Located, SwingwrightDocument } from '../record/document.ts';
import { anchorsOf } from '../record/anchor.ts';
import { holds, offsetAt } from './places.ts';
import type { LocationLink, Position } from './shapes.ts';

/** Gives the address of the page on a finding code, a quantity or a miss; undefined in editors that have no place for one. */
export type PageAddress = (name: string, record: string | undefined) => string | undefined;

/** The nearest one first. */
export function findDefinitions(analysis: Analysis, position: Position, page: PageAddress): LocationLink[] {
  const { uri, document } = analysis;
  const table = lineTableOf(document.text);
  const offset = offsetAt(table, position);
  const mention = mentionAt(mentionsIn(uri, document, homeOf(analysis)), offset);
  const code = mention === undefined ? codeAt(analysis, offset) : undefined;
  const from = mention?.span ?? code?.span;
  if (from === undefined) return [];
  const found = mention === undefined ? [] : placesOf(mention, analysis);
  const addresses = found.length > 0 ? [] : pagesOf(mention, code?.value, analysis, page);
  const originSelectionRange = rangeOf(table, from);
  return [
    ...found.map((place) => ({ originSelectionRange, ...linkTo(place) })),
    ...addresses.map((targetUri) => ({ originSelectionRange, targetUri, ...topOfFile })),
  ];
}

interface Place {
  readonly uri: string;
  readonly document: SwingwrightDocument | undefined;
  /** All of it, for an editor that shows it beside the text. */
  readonly whole: Span;
  readonly name: Span;
}

const start = { line: 0, character: 0 };
const topOfFile = { targetRange: { start, end: start }, targetSelectionRange: { start, end: start } };

function linkTo({ uri, document, whole, name }: Place): Omit<LocationLink, 'originSelectionRange'> {
  if (document === undefined) return { targetUri: uri, ...topOfFile };
  const table = lineTableOf(document.text);
  return { targetUri: uri, targetRange: rangeOf(table, whole), targetSelectionRange: rangeOf(table, name) };
}

function placesOf(mention: Mention, analysis: Analysis): readonly Place[] {
  const { thing } = mention;
  switch (thing.kind) {
    case 'file':
      return [{ uri: thing.name, document: undefined, whole: mention.span, name: mention.span }];
    case 'fault':
      return statedAbove(mention, analysis) ?? inBooks(thing.name, analysis);
    case 'club':
      return inBag(thing.name, analysis);
    case 'quantity':
      return [...entryOf(mention, analysis), ...ownOf(thing.name, analysis)];
    case 'check':
    case 'relation':
      return inWorkspaceFile(thing, analysis);
    case 'miss':
      return causesOf(thing.name, analysis);
  }
}

/** A reason for a planned change is a fault that the record states, where it does. */
function statedAbove({ thing, span }: Mention, { uri, document }: Analysis): readonly Place[] | undefined {
  if (document.kind !== 'swing') return undefined;
  const isReason = document.plan.some(({ because }) =>
    because.some((reason) => reason.span.start === span.start),
  );
  const stated = isReason ? document.faults.filter(({ fault }) => fault.value === thing.name) : [];
  if (stated.length === 0) return undefined;
  return stated.map((one) => ({ uri, document, whole: one.span, name: one.fault.span }));
}

function inBooks(name: string, { uri, document, subject }: Analysis): readonly Place[] {
  const own = document.kind === 'faults' ? [{ uri, document }] : [];
  return [...own, ...subject.faultBooks].flatMap((book) => {
    const fault = book.document.faults.get(name);
    return fault === undefined
      ? []
      : [{ uri: book.uri, document: book.document, whole: fault.span, name: fault.id.span }];
  });
}

function inBag(name: string, { uri, document, subject }: Analysis): readonly Place[] {
  const student = document.kind === 'student' ? { uri, document } : subject.student;
  const club = student?.document.bag.get(name);
  if (student === undefined || club === undefined) return [];
  const bag = student.document.outline.find((node) => node.name === 'bag');
  const line = bag?.children.find(({ nameSpan }) => nameSpan.start === club.name.span.start);
  return [
    {
      uri: student.uri,
      document: student.document,
      whole: line?.span ?? club.name.span,
      name: club.name.span,
    },
  ];
}

/** Where the workspace says what the quantity is, if it is one of its own. */
function ownOf(id: string, { uri, document, subject }: Analysis): readonly Place[] {
  const workspace = document.kind === 'workspace' ? { uri, document } : subject.workspace;
  if (workspace === undefined) return [];
  const { own, outline } = workspace.document;
  const one = [...own.quantities, ...own.derived].find(({ quantity }) => quantity.id === id);
  if (one === undefined) return [];
  const line = outline
    .flatMap(({ children }) => children)
    .find(({ nameSpan }) => nameSpan.start === one.keySpan.start);
  return [{ ...workspace, whole: line?.span ?? one.keySpan, name: one.keySpan }];
}

/** Where the workspace declares a check or a relation of its own. */
function inWorkspaceFile(
  { kind, name }: Mention['thing'],
  { uri, document, subject }: Analysis,
): readonly Place[] {
  const workspace = document.kind === 'workspace' ? { uri, document } : subject.workspace;
  const section = workspace?.document.outline.find((node) => node.name === `${kind}s`);
  const line = section?.children.find((child) => child.name === name);
  return workspace === undefined || line === undefined
    ? []
    : [{ ...workspace, whole: line.span, name: line.nameSpan }];
}

/** The entry in this file, unless this is it and the workspace has more to say; a template's window for it stands for one. */
function entryOf({ thing: { name: id }, role }: Mention, analysis: Analysis): readonly Place[] {
  const { uri, document, subject } = analysis;
  if (role === 'entry' && subject.registry.own.some((own) => own.id === id)) return [];
  const { record } = subject;
  if (document.kind === 'review') return record === undefined ? [] : entryIn(id, record);
  const entries = mentionsIn(uri, document, homeOf(analysis)).filter(
    ({ thing, role }) => role === 'entry' && thing.kind === 'quantity' && thing.name === id,
  );
  const [first] = entries;
  if (first === undefined) return [];
  const entry = document.kind === 'swing' ? document.entries.get(id) : undefined;
  const whole = entry === undefined ? first.span : { start: entry.keySpan.start, end: entry.valueSpan.end };
  return [
    { uri, document, whole: { ...whole, start: Math.min(whole.start, first.span.start) }, name: first.span },
  ];
}

/** What a remark is about. */
function entryIn(
  id: string,
  { uri, document }: NonNullable<Analysis['subject']['record']>,
): readonly Place[] {
  const anchor = anchorsOf(document).get(id);
  if (anchor === undefined) return [];
  const { start } = anchor.span;
  const key = id.slice(id.lastIndexOf('.') + 1);
  const name = document.text.startsWith(key, start) ? { start, end: start + key.length } : anchor.span;
  return [{ uri, document, whole: anchor.span, name }];
}

/** The stated faults that lead to the miss, in their books. */
function causesOf(name: string, analysis: Analysis): readonly Place[] {
  const misses = analysis.subject.judgement?.misses ?? [];
  const faults = new Set(
    misses.filter(({ miss }) => miss === name).flatMap(({ by }) => by.map(({ fault }) => fault)),
  );
  return [...faults].flatMap((fault) => inBooks(fault, analysis).slice(0, 1));
}

const withoutPage: ReadonlySet<Mention['thing']['kind']> = new Set(['fault', 'club', 'check', 'relation']);

function pagesOf(
  mention: Mention | undefined,
  code: string | undefined,
  { uri, document }: Analysis,
  page: PageAddress,
): readonly string[] {
  const name = mention?.thing.name ?? code;
  const isWithoutPage = mention !== undefined && withoutPage.has(mention.thing.kind);
  if (name === undefined || isWithoutPage) return [];
  const isOfRecord = mention?.thing.kind === 'quantity' && document.kind === 'swing';
  return [page(name, isOfRecord ? uri : undefined) ?? []].flat();
}

/** A finding's code, where one is accepted or made louder or quieter. */
function codeAt({ document }: Analysis, offset: number): Located<string> | undefined {
  const accepted = document.silences.find(({ code }) => holds(code.span, offset))?.code;
  if (accepted !== undefined || document.kind !== 'workspace') return accepted;
  const [value, key] = [...document.severities].find(([, { keySpan }]) => holds(keySpan, offset)) ?? [];
  return value === undefined || key === undefined ? undefined : { value, span: key.keySpan };
}
