// Every name in one document that stands for something which may stand elsewhere too, with its place; opens no other file.
import type { Span } from '../measure/measure.ts';
import type {
  Entry,
  FaultFile,
  Goal,
  Located,
  StudentFile,
  SwingRecord,
  SwingwrightDocument,
} from '../record/document.ts';
import { referencesOf, resolveReference } from '../record/reference.ts';
import { findMiss } from '../registry/registry.ts';
import { inExpression, inner, quantityAt, quantityNamed, unquoted, type Home } from './quantity-mentions.ts';
import type { Analysis } from './result.ts';
import { checkCoded, inWorkspace } from './workspace-mentions.ts';

/** What a name stands for. Two mentions are of the same thing where these are the same, faults aside: books extend one another. */
export type Thing =
  /** `book` is where it is looked for first. */
  | { readonly kind: 'fault'; readonly name: string; readonly book: string | undefined }
  | { readonly kind: 'club'; readonly name: string; readonly student: string | undefined }
  /** `workspace` is the file that declares it; undefined for what everybody knows. */
  | { readonly kind: 'quantity'; readonly name: string; readonly workspace: string | undefined }
  /** Of a workspace's own; its code is `own/` and its name. */
  | { readonly kind: 'check' | 'relation'; readonly name: string; readonly workspace: string }
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

/** In the order of the text. A document that was read once is looked through once; it was read with the registry of its home. */
export function mentionsIn(uri: string, document: SwingwrightDocument, home: Home): readonly Mention[] {
  const known = kept.get(document);
  if (known?.uri === uri && known.workspace === home.workspace) return known.mentions;
  const mentions = [
    ...filesIn(uri, document),
    ...namesIn(uri, document, home),
    ...acceptedIn(uri, document, home),
  ].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  kept.set(document, { uri, workspace: home.workspace, mentions });
  return mentions;
}

/** Where the file that was analysed lies. */
export function homeOf({ subject: { registry, workspace } }: Analysis): Home {
  return { registry, workspace: workspace?.uri };
}

const kept = new WeakMap<
  SwingwrightDocument,
  { readonly uri: string; readonly workspace: string | undefined; readonly mentions: readonly Mention[] }
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

function acceptedIn(
  uri: string,
  { kind, silences }: SwingwrightDocument,
  { workspace }: Home,
): readonly Mention[] {
  const of = kind === 'workspace' ? uri : workspace;
  return of === undefined ? [] : silences.flatMap(({ code }) => checkCoded(code, of));
}

function namesIn(uri: string, document: SwingwrightDocument, home: Home): readonly Mention[] {
  switch (document.kind) {
    case 'swing':
      return inRecord(uri, document, home);
    case 'student':
      return inStudent(uri, document, home);
    case 'template':
      return [...document.windows].map(([name, { keySpan }]) =>
        quantityAt(name, unquoted(keySpan, document.text), 'entry', home),
      );
    case 'faults':
      return inBook(uri, document, home);
    case 'workspace':
      return inWorkspace(uri, document);
    case 'review':
      return document.remarks.flatMap(({ about }) => (about === undefined ? [] : quantityNamed(about, home)));
  }
}

function inRecord(uri: string, document: SwingRecord, home: Home): readonly Mention[] {
  const { text, faults, misses, goals, plan, predicted } = document;
  const student = document.student && resolveReference(uri, document.student.value);
  const book = document.faultsFrom && resolveReference(uri, document.faultsFrom.value);
  const fault = ({ value, span }: Located<string>): Mention => ({
    thing: { kind: 'fault', name: value, book },
    span,
    role: 'use',
  });
  return [
    ...(document.club === undefined ? [] : [clubAt(document.club, student)]),
    ...[document.entries, ...document.shots].flatMap((entries) => entriesOf(entries, text, home)),
    ...faults.map((stated) => fault(stated.fault)),
    ...misses.flatMap(({ miss }): Mention[] =>
      findMiss(miss.value) === undefined
        ? []
        : [{ thing: { kind: 'miss', name: miss.value }, span: miss.span, role: 'use' }],
    ),
    ...goals.flatMap((goal) => inGoal(goal, student, text, home)),
    ...[...predicted.values()].map(({ id, keySpan }) => quantityAt(id, unquoted(keySpan, text), 'use', home)),
    ...plan.flatMap(({ change, because, proof }) => [
      ...(change === undefined ? [] : quantityNamed(change, home)),
      ...because.map(fault),
      ...(proof === undefined ? [] : inExpression(proof, home)),
    ]),
  ];
}

function inStudent(uri: string, { text, entries, bag, goals }: StudentFile, home: Home): readonly Mention[] {
  return [
    ...entriesOf(entries, text, home),
    ...[...bag.values()].flatMap((club): Mention[] => [
      {
        thing: { kind: 'club', name: club.name.value, student: uri },
        span: inner(club.name, text),
        role: 'definition',
      },
      ...entriesOf(club.entries, text, home),
    ]),
    ...goals.flatMap((goal) => inGoal(goal, uri, text, home)),
  ];
}

function inGoal(
  { club, targets }: Goal,
  student: string | undefined,
  text: string,
  home: Home,
): readonly Mention[] {
  return [
    ...(club === undefined ? [] : [clubAt(club, student)]),
    ...[...targets.values()].map(({ quantity, keySpan }) =>
      quantityAt(quantity.id, unquoted(keySpan, text), 'use', home),
    ),
  ];
}

function inBook(uri: string, { text, faults }: FaultFile, home: Home): readonly Mention[] {
  return [...faults.values()].flatMap(({ id, evidence, tendsTo, changes }): Mention[] => [
    {
      thing: { kind: 'fault', name: id.value, book: uri },
      span: inner(id, text),
      role: 'definition',
    },
    ...evidence.flatMap(({ expression }) => inExpression(expression, home)),
    ...tendsTo.flatMap(({ effect, of }) => [
      ...quantityNamed(effect, home),
      ...(of === undefined ? [] : quantityNamed(of, home)),
    ]),
    ...changes.flatMap(({ change }) => quantityNamed(change, home)),
  ]);
}

function entriesOf(entries: ReadonlyMap<string, Entry>, text: string, home: Home): readonly Mention[] {
  return [...entries.values()].map(({ id, quantity, keySpan }) =>
    quantityAt(id, inner({ value: quantity.key, span: keySpan }, text), 'entry', home),
  );
}

function clubAt({ value, span }: Located<string>, student: string | undefined): Mention {
  return { thing: { kind: 'club', name: value, student }, span, role: 'use' };
}
