// Makes copies of records and of all that they refer to in which nobody can be found: other names and days, no free text; reads no file.
import { codes } from '../checks/table.ts';
import type { SwingRecord } from '../record/document.ts';
import { brokenIn } from '../record/broken.ts';
import { kindOf } from '../record/kind.ts';
import { printShots } from '../record/print-shots.ts';
import { printTree } from '../record/print-tree.ts';
import { lastNameIn, relativePath, resolveReference } from '../record/reference.ts';
import { builtIn } from '../registry/registry.ts';
import { fileNameOf, freeName } from './file-name.ts';
import type { Analysis } from './result.ts';
import { formatWords } from './format-words.ts';
import { copyOf, type Left } from './share-copy.ts';
import { sharedNames, type SharedNames } from './share-names.ts';
import { aliasesOf, cleaned, shiftedDay } from './share-words.ts';
import type { PrivatePart } from './share-parts.ts';

export interface ShareWish {
  /** The records, each settled. */
  readonly records: readonly Analysis[];
  /** Settled analyses of all the files that they refer to, by URI; those that are not there are left out. */
  readonly files: ReadonlyMap<string, Analysis>;
  /** Names of other students of the practice, which may stand in titles and ids. */
  readonly otherNames: readonly string[];
  /** Every day is moved by so many. */
  readonly days: number;
  readonly keep: ReadonlySet<PrivatePart>;
}

export interface SharedFile {
  /** Relative, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

export type ShareResult =
  | { readonly kind: 'refused'; readonly reason: string }
  | {
      readonly kind: 'shared';
      readonly files: readonly SharedFile[];
      /** How many of each were left out. */
      readonly leftOut: ReadonlyMap<Left, number>;
      readonly students: readonly { readonly name: string; readonly alias: string }[];
    };

/** Stands for the folder that is written to, so that paths between copies can be told. */
const top = 'share:/';

/** The copies of the records, their students, templates, fault books, files of shots and workspace file. Never throws. */
export function share(wish: ShareWish): ShareResult {
  const { records, files, days } = wish;
  const refused = reasonAgainst(wish);
  if (refused !== undefined) return { kind: 'refused', reason: refused };

  const students = studentsOf(records);
  const aliases = aliasesOf([
    ...students.flatMap(({ names, alias }) => names.map((name) => ({ name, alias: slugOf(alias) }))),
    ...wish.otherNames.map((name) => ({ name, alias: 'somebody' })),
  ]);
  // A name that is a word of the format stays in ids.
  const inNames = aliases.filter(({ name }) => !formatWords.has(name.toLowerCase()));
  const names = sharedNames(
    [...new Set(records.map(({ subject }) => subject.registry))],
    wish.keep.has('names') ? (words) => cleaned(words, inNames, days) : undefined,
  );
  const places = placesOf(records, students, names, days);
  const leftOut = new Map<Left, number>();
  const shared: SharedFile[] = [];
  for (const [uri, path] of places) {
    const analysis = files.get(uri) ?? records.find((record) => record.uri === uri);
    const kind = kindOf(uri);
    if (kind === undefined) {
      const shots = records.find(({ subject }) => subject.shots?.uri === uri)?.subject;
      if (shots?.shots !== undefined)
        shared.push({
          path,
          text: printShots(shots.shots.shots, shots.registry, (words) => names.wordsFor(words) ?? ''),
        });
      continue;
    }
    if (analysis === undefined || kind === 'review') continue;
    const copy = copyOf({
      kind,
      analysis,
      aliases,
      names,
      isCode: (word) => codes.includes(word) || builtIn.findMethod(word) !== undefined,
      days,
      keep: wish.keep,
      aliasOfStudent: students.find((student) => student.uri === uri)?.alias,
      pathTo: (written) => {
        const to = resolveReference(uri, written);
        const place = to === undefined ? undefined : places.get(to);
        return place === undefined ? undefined : relativePath(top + path, top + place);
      },
      leftOut,
    });
    shared.push({ path, text: printTree(copy) });
  }
  return {
    kind: 'shared',
    files: shared,
    leftOut,
    students: students.map(({ names: [name = ''], alias }) => ({ name, alias })),
  };
}

interface SharedStudent {
  readonly uri: string;
  /** As written in the file, then the name of the file itself. */
  readonly names: readonly string[];
  readonly alias: string;
}

function reasonAgainst({ records, files, days }: ShareWish): string | undefined {
  if (days === 0) return 'The days would stay what they are; expected a number of days other than 0.';
  if (records.length === 0) return 'There is no record; expected at least one.';
  if (new Set(records.map(({ subject }) => subject.workspace?.uri)).size > 1)
    return 'The records lie under several files `swingwright.yaml`; expected records of one practice.';
  for (const { uri, subject } of [...files.values(), ...records]) {
    const broken = brokenIn(subject);
    if (broken !== undefined)
      return `\`${lastNameIn(uri)}\` cannot be read to its end (${broken}); expected text in which nothing can hide. \`swingwright check\` says where.`;
  }
  return undefined;
}

function studentsOf(records: readonly Analysis[]): readonly SharedStudent[] {
  const found = new Map<string, SharedStudent>();
  for (const { subject } of records) {
    const { student } = subject;
    if (student === undefined || found.has(student.uri)) continue;
    const name = student.document.name?.value;
    const alias = `Player ${found.size + 1}`;
    const stem = lastNameIn(student.uri).replace(/\.student\.yaml$/, '');
    found.set(student.uri, {
      uri: student.uri,
      names: name === undefined ? [stem] : [name, stem],
      alias,
    });
  }
  return [...found.values()];
}

/** Where each file goes: students with their records and shots in a folder of their own. Paths tell neither name nor day. */
function placesOf(
  records: readonly Analysis[],
  students: readonly SharedStudent[],
  names: SharedNames,
  days: number,
): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  const put = (uri: string | undefined, base: string, suffix: string): void => {
    if (uri !== undefined && !places.has(uri)) places.set(uri, freeName(base, suffix, places.values()));
  };
  for (const { uri, document, subject } of records) {
    if (document.kind !== 'swing') continue;
    const student = students.find((one) => one.uri === subject.student?.uri);
    const folder = student === undefined ? 'records' : slugOf(student.alias);
    put(student?.uri, `${folder}/${folder}`, '.student.yaml');
    put(uri, `${folder}/${recordName(document, names, days)}`, '.swing.yaml');
    if (subject.shots?.file !== undefined) put(subject.shots.uri, `${folder}/shots`, '.csv');
    put(subject.template?.uri, 'templates/template', '.template.yaml');
    for (const book of subject.faultBooks) put(book.uri, 'books/book', '.faults.yaml');
    if (subject.workspace !== undefined) places.set(subject.workspace.uri, 'swingwright.yaml');
  }
  return places;
}

function recordName({ date, club }: SwingRecord, names: SharedNames, days: number): string {
  const day = date && shiftedDay(date.value, days);
  const parts = [
    ...(day === undefined ? [] : [day]),
    ...(club === undefined ? [] : [fileNameOf(names.nameFor('club', club.value), 'club')]),
  ];
  return parts.length === 0 ? 'record' : parts.join('-');
}

/** "Player 1" is `player1` where an id or a file is named so. */
function slugOf(alias: string): string {
  return alias.toLowerCase().replaceAll(' ', '');
}
