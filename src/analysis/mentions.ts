// Every name in one document that stands for something which may stand elsewhere too, with its place; opens no other file.
import type { Span } from '../measure/measure.ts';
import { namesIn as namesInMessage } from '../judgement/message.ts';
import { scan } from '../judgement/scan.ts';
import type {
  Entry,
  FaultFile,
  Goal,
  Located,
  OutlineNode,
  StudentFile,
  SwingRecord,
  SwingwrightDocument,
  WorkspaceFile,
} from '../record/document.ts';
import { referencesOf, resolveReference } from '../record/reference.ts';
import { registryOf } from '../record/workspace.ts';
import { findMiss, type Registry } from '../registry/registry.ts';

/** What a name stands for. Two mentions are of the same thing where these are the same, faults aside: books extend one another. */
export type Thing =
  /** `book` is where it is looked for first. */
  | { readonly kind: 'fault'; readonly name: string; readonly book: string | undefined }
  | { readonly kind: 'club'; readonly name: string; readonly student: string | undefined }
  | { readonly kind: 'quantity'; readonly name: string }
  | { readonly kind: 'miss'; readonly name: string }
  /** `name` is its URI. */
  | { readonly kind: 'file'; readonly name: string };

export interface Mention {
  readonly thing: Thing;
  /** The name as written, quotes aside where that can be told. */
  readonly span: Span;
  /** Where the thing is made, where a value is given to it, or where it is only spoken of. */
  readonly role: 'definition' | 'entry' | 'use';
}

/** In the order of the text. A document that was read once is looked through once; `registry` is the one that it was read with. */
export function mentionsIn(
  uri: string,
  document: SwingwrightDocument,
  registry: Registry,
): readonly Mention[] {
  const known = kept.get(document);
  if (known?.uri === uri) return known.mentions;
  const mentions = [...filesIn(uri, document), ...namesIn(uri, document, registry)].sort(
    (a, b) => a.span.start - b.span.start || a.span.end - b.span.end,
  );
  kept.set(document, { uri, mentions });
  return mentions;
}

const kept = new WeakMap<
  SwingwrightDocument,
  { readonly uri: string; readonly mentions: readonly Mention[] }
>();

/** The mention under the cursor; just behind the last character counts. */
export function mentionAt(mentions: readonly Mention[], offset: number): Mention | undefined {
  return mentions.find(({ span }) => span.start <= offset && offset <= span.end);
}

function filesIn(uri: string, document: SwingwrightDocument): readonly Mention[] {
  return referencesOf(document).flatMap(({ path }): Mention[] => {
    const name = resolveReference(uri, path.value);
    return name === undefined ? [] : [{ thing: { kind: 'file', name }, span: path.span, role: 'use' }];
  });
}

function namesIn(uri: string, document: SwingwrightDocument, registry: Registry): readonly Mention[] {
  switch (document.kind) {
    case 'swing':
      return inRecord(uri, document, registry);
    case 'student':
      return inStudent(uri, document);
    case 'template':
      return [...document.windows].map(([name, { keySpan }]) => quantityAt(name, keySpan, 'entry'));
    case 'faults':
      return inBook(uri, document, registry);
    case 'workspace':
      return inWorkspace(document);
    case 'review':
      return [];
  }
}

function inRecord(uri: string, document: SwingRecord, registry: Registry): readonly Mention[] {
  const { text, faults, misses, goals, plan } = document;
  const student = document.student && resolveReference(uri, document.student.value);
  const book = document.faultsFrom && resolveReference(uri, document.faultsFrom.value);
  const fault = ({ value, span }: Located<string>): Mention => ({
    thing: { kind: 'fault', name: value, book },
    span,
    role: 'use',
  });
  return [
    ...(document.club === undefined ? [] : [clubAt(document.club, student)]),
    ...[document.entries, ...document.shots].flatMap((entries) => entriesOf(entries, text)),
    ...faults.map((stated) => fault(stated.fault)),
    ...misses.flatMap(({ miss }): Mention[] =>
      findMiss(miss.value) === undefined
        ? []
        : [{ thing: { kind: 'miss', name: miss.value }, span: miss.span, role: 'use' }],
    ),
    ...goals.flatMap((goal) => inGoal(goal, student)),
    ...plan.flatMap(({ change, because, proof }) => [
      ...(change === undefined ? [] : quantityNamed(change, registry)),
      ...because.map(fault),
      ...(proof === undefined ? [] : inExpression(proof, registry)),
    ]),
  ];
}

function inStudent(uri: string, { text, entries, bag, goals }: StudentFile): readonly Mention[] {
  return [
    ...entriesOf(entries, text),
    ...[...bag.values()].flatMap((club): Mention[] => [
      {
        thing: { kind: 'club', name: club.name.value, student: uri },
        span: inner(club.name, text),
        role: 'definition',
      },
      ...entriesOf(club.entries, text),
    ]),
    ...goals.flatMap((goal) => inGoal(goal, uri)),
  ];
}

function inGoal({ club, targets }: Goal, student: string | undefined): readonly Mention[] {
  return [
    ...(club === undefined ? [] : [clubAt(club, student)]),
    ...[...targets.values()].map(({ quantity, keySpan }) => quantityAt(quantity.id, keySpan, 'use')),
  ];
}

function inBook(uri: string, { text, faults }: FaultFile, registry: Registry): readonly Mention[] {
  return [...faults.values()].flatMap(({ id, evidence, tendsTo, changes }): Mention[] => [
    {
      thing: { kind: 'fault', name: id.value, book: uri },
      span: inner(id, text),
      role: 'definition',
    },
    ...evidence.flatMap(({ expression }) => inExpression(expression, registry)),
    ...tendsTo.flatMap(({ effect }) => quantityNamed(effect, registry)),
    ...changes.flatMap(({ change }) => quantityNamed(change, registry)),
  ]);
}

/** It knows its own quantities, whatever registry it was read with. */
function inWorkspace(document: WorkspaceFile): readonly Mention[] {
  const { own, outline, text } = document;
  const registry = registryOf(document);
  const sections = new Map(outline.map(({ name, children }) => [name, children]));
  const described = [...(sections.get('quantities') ?? []), ...(sections.get('derived') ?? [])];
  const inside = (expression: Located<string>): readonly Mention[] => inExpression(expression, registry);
  const named = (word: Located<string>): readonly Mention[] => quantityNamed(word, registry);
  return [
    ...[...own.quantities, ...own.derived].map(({ quantity: { id }, keySpan }) =>
      quantityAt(id, unquoted(keySpan, text), 'definition'),
    ),
    ...described.flatMap(({ children }) => children.flatMap((child) => likeIn(child, text).flatMap(named))),
    ...own.derived.flatMap(({ is }) => inside(is)),
    ...own.relations.flatMap(({ left, right }) => [...inside(left), ...inside(right)]),
    ...own.checks.flatMap(({ when, message, at }) => [
      ...inside(when),
      ...namesInMessage(message).flatMap(named),
      ...(at === undefined ? [] : named(at)),
    ]),
    ...(sections.get('show') ?? []).flatMap(({ name, nameSpan }) =>
      named({ value: name, span: unquoted(nameSpan, text) }),
    ),
    ...inColumns(document),
  ];
}

/** The word that stands for `like`. */
function likeIn({ name, nameSpan, span }: OutlineNode, text: string): readonly Located<string>[] {
  const value = name === 'like' ? /[\w.]+/.exec(text.slice(nameSpan.end, span.end)) : null;
  if (value === null) return [];
  const start = nameSpan.end + value.index;
  return [{ value: value[0], span: { start, end: start + value[0].length } }];
}

/** Which quantity a column of shots holds; its place is told by the outline alone. */
function inColumns({ outline, text, shotColumns }: WorkspaceFile): readonly Mention[] {
  const columns = outline
    .find(({ name }) => name === 'shots')
    ?.children.find(({ name }) => name === 'columns')?.children;
  return (columns ?? []).flatMap(({ name, span, children }): Mention[] => {
    const column = shotColumns.named.get(name);
    if (column?.kind !== 'quantity') return [];
    const within = children.find((child) => child.name === 'quantity')?.span ?? span;
    const at = text.slice(within.start, within.end).lastIndexOf(column.quantity.id);
    if (at < 0) return [];
    const start = within.start + at;
    return [quantityAt(column.quantity.id, { start, end: start + column.quantity.id.length }, 'use')];
  });
}

/** Escapes or folding part the text from what it says: then no name in it has a place. */
function inExpression({ value, span }: Located<string>, registry: Registry): readonly Mention[] {
  if (span.end - span.start !== value.length) return [];
  return scan(value).tokens.flatMap((token): Mention[] => {
    if (token.kind !== 'name' || registry.find(token.name) === undefined) return [];
    const { start, end } = token.span;
    return [quantityAt(token.name, { start: span.start + start, end: span.start + end }, 'use')];
  });
}

function quantityNamed({ value, span }: Located<string>, registry: Registry): readonly Mention[] {
  return registry.find(value) === undefined ? [] : [quantityAt(value, span, 'use')];
}

function quantityAt(name: string, span: Span, role: Mention['role']): Mention {
  return { thing: { kind: 'quantity', name }, span, role };
}

function entriesOf(entries: ReadonlyMap<string, Entry>, text: string): readonly Mention[] {
  return [...entries.values()].map(({ id, quantity, keySpan }) =>
    quantityAt(id, inner({ value: quantity.key, span: keySpan }, text), 'entry'),
  );
}

function clubAt({ value, span }: Located<string>, student: string | undefined): Mention {
  return { thing: { kind: 'club', name: value, student }, span, role: 'use' };
}

/** The place of a key without its quotes. */
function inner({ value, span }: Located<string>, text: string): Span {
  const within = { start: span.start + 1, end: span.end - 1 };
  return text.slice(within.start, within.end) === value ? within : span;
}

function unquoted(span: Span, text: string): Span {
  const isQuoted = /^["']/.test(text.slice(span.start, span.end));
  return isQuoted ? { start: span.start + 1, end: span.end - 1 } : span;
}
