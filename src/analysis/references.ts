// Follows what a document refers to, in the texts known so far, and says which references lead nowhere; reads no file.
import type { Followed } from '../checks/subject.ts';
import type { Problem } from '../measure/measure.ts';
import type {
  BagClub,
  FaultFile,
  FileKind,
  Located,
  ReviewFile,
  StudentFile,
  SwingRecord,
  SwingwrightDocument,
  TemplateFile,
} from '../record/document.ts';
import { isUnsaved, kindOf } from '../record/kind.ts';
import { referencesOf, resolveReference } from '../record/reference.ts';
import type { Lookout } from './lookout.ts';
import { recordBeside, reviewBeside } from './review-beside.ts';

export interface FollowedReferences {
  readonly student: Followed<StudentFile> | undefined;
  readonly club: BagClub | undefined;
  readonly template: Followed<TemplateFile> | undefined;
  readonly faultBooks: readonly Followed<FaultFile>[];
  /** The file of shots, as text. */
  readonly shotsFile: ShotsText | undefined;
  /** Of a record the review beside it, of a review the record that it is of. */
  readonly review: Followed<ReviewFile> | undefined;
  readonly record: Followed<SwingRecord> | undefined;
  readonly problems: readonly Problem[];
}

export interface ShotsText {
  readonly uri: string;
  readonly text: string;
}

type Parse = (uri: string, kind: FileKind, text: string) => SwingwrightDocument;

/** More fault books than this that extend one another are not followed: nobody could keep them in mind. */
const mostFaultBooks = 16;

const fileNames: Readonly<Record<FileKind, string>> = {
  swing: 'a swing record (`*.swing.yaml`)',
  student: 'a student file (`*.student.yaml`)',
  template: 'a template (`*.template.yaml`)',
  faults: 'a fault book (`*.faults.yaml`)',
  review: 'a review (`*.review.yaml`)',
  workspace: 'a workspace file (`swingwright.yaml`)',
};

/** Everything that `document` refers to and that is known; a file not yet in the snapshot gives neither document nor problem. */
export function followReferences(
  uri: string,
  document: SwingwrightDocument,
  lookout: Lookout,
  parse: Parse,
): FollowedReferences {
  if (isUnsaved(uri))
    return { ...nothing, problems: referencesOf(document).map(({ path }) => unknownYet(path)) };
  const problems: Problem[] = [];
  const follow = <T extends SwingwrightDocument>(reference: Located<string> | undefined, kind: T['kind']) =>
    followOne<T>(uri, reference, kind, lookout, parse, problems);

  if (document.kind === 'faults') {
    const first = follow<FaultFile>(document.extends, 'faults');
    const chain = chainFrom(first, new Set([uri]), lookout, parse);
    if (document.extends !== undefined && chain.backTo === uri) problems.push(circular(document.extends));
    return { ...nothing, faultBooks: chain.books, problems };
  }
  if (document.kind === 'review') {
    const record = follow<SwingRecord>(document.of, 'swing') ?? recordBeside(uri, lookout, parse);
    return { ...nothing, record, problems };
  }
  if (document.kind !== 'swing') return nothing;

  const student = follow<StudentFile>(document.student, 'student');
  const template = follow<TemplateFile>(document.template, 'template');
  const book = follow<FaultFile>(document.faultsFrom, 'faults');
  return {
    student,
    club: document.club === undefined ? undefined : student?.document.bag.get(document.club.value),
    template,
    faultBooks: chainFrom(book, new Set(), lookout, parse).books,
    shotsFile: followText(uri, document.shotsFile, lookout, problems),
    review: reviewBeside(uri, lookout, parse),
    record: undefined,
    problems,
  };
}

const nothing: FollowedReferences = {
  shotsFile: undefined,
  review: undefined,
  record: undefined,
  student: undefined,
  club: undefined,
  template: undefined,
  faultBooks: [],
  problems: [],
};

function followOne<T extends SwingwrightDocument>(
  base: string,
  reference: Located<string> | undefined,
  kind: T['kind'],
  lookout: Lookout,
  parse: Parse,
  problems: Problem[],
): Followed<T> | undefined {
  if (reference === undefined) return undefined;
  const uri = resolveReference(base, reference.value);
  if (uri === undefined) {
    problems.push(notRelative(reference));
    return undefined;
  }
  const foundKind = kindOf(uri);
  if (foundKind !== kind) {
    problems.push(wrongKind(reference, foundKind, kind));
    return undefined;
  }
  const state = lookout.file(uri);
  if (state === undefined) return undefined;
  if (state.kind !== 'text') {
    problems.push(state.kind === 'missing' ? missing(reference, kind) : unreadable(reference, state.reason));
    return undefined;
  }
  const document = parse(uri, kind, state.text);
  return document.kind === kind ? { uri, document: document as T } : undefined;
}

/** The first book and those that it extends; `backTo` is the book that the chain comes back to, if it does. */
function chainFrom(
  first: Followed<FaultFile> | undefined,
  visited: Set<string>,
  lookout: Lookout,
  parse: Parse,
): { readonly books: readonly Followed<FaultFile>[]; readonly backTo: string | undefined } {
  const books: Followed<FaultFile>[] = [];
  let next = first;
  while (next !== undefined && books.length < mostFaultBooks) {
    if (visited.has(next.uri)) return { books, backTo: next.uri };
    visited.add(next.uri);
    books.push(next);
    // What is wrong further up is said where it stands, in the book that refers to it.
    next = followOne<FaultFile>(next.uri, next.document.extends, 'faults', lookout, parse, []);
  }
  return { books, backTo: undefined };
}

function followText(
  base: string,
  reference: Located<string> | undefined,
  lookout: Lookout,
  problems: Problem[],
): ShotsText | undefined {
  if (reference === undefined) return undefined;
  const uri = resolveReference(base, reference.value);
  if (uri === undefined) {
    problems.push(notRelative(reference));
    return undefined;
  }
  const state = lookout.file(uri);
  if (state?.kind === 'text') return { uri, text: state.text };
  if (state?.kind === 'missing') problems.push(missing(reference, undefined));
  if (state?.kind === 'unreadable') problems.push(unreadable(reference, state.reason));
  return undefined;
}

function missing(reference: Located<string>, kind: FileKind | undefined): Problem {
  return {
    code: 'missing-reference',
    span: reference.span,
    found: `no file at \`${reference.value}\``,
    expected: kind === undefined ? 'a file with shots' : fileNames[kind],
  };
}

function unknownYet(reference: Located<string>): Problem {
  return {
    code: 'reference-not-known-yet',
    span: reference.span,
    found: `\`${reference.value}\` in a file that is not saved yet`,
    expected: 'the file to be saved, since paths start from its folder',
  };
}

function notRelative(reference: Located<string>): Problem {
  return {
    code: 'missing-reference',
    span: reference.span,
    found: `\`${reference.value}\``,
    expected: 'a path relative to this file, with `/` between its parts',
  };
}

function unreadable(reference: Located<string>, reason: string): Problem {
  return {
    code: 'unreadable-reference',
    span: reference.span,
    found: `\`${reference.value}\`, which cannot be read (${reason})`,
    expected: 'a file that can be read',
  };
}

function wrongKind(reference: Located<string>, found: FileKind | undefined, expected: FileKind): Problem {
  const what = found === undefined ? 'whose name says nothing of its kind' : `which is ${fileNames[found]}`;
  return {
    code: 'wrong-kind-of-file',
    span: reference.span,
    found: `\`${reference.value}\`, ${what}`,
    expected: fileNames[expected],
  };
}

function circular(reference: Located<string>): Problem {
  return {
    code: 'circular-reference',
    span: reference.span,
    found: `\`${reference.value}\`, which leads back to this fault book`,
    expected: 'a fault book that does not extend this one',
  };
}
