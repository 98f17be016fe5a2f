// Builds the next record of a student: what stays from lesson to lesson, and keys for what is to be measured; invents no value.
import { lineEnd, lineStart } from '../record/lines.ts';
import { lastNameIn, relativePath } from '../record/reference.ts';
import type { Registry } from '../registry/registry.ts';
import type { StudentFile, SwingRecord } from '../record/document.ts';
import { fileNameOf, freeName } from './file-name.ts';
import type { Lesson } from './lessons.ts';
import { cursorMark, newFile, yamlWords, type NewFile } from './new-text.ts';
import { openPlanOf, provingIds, type OpenPlan } from './open-plan.ts';
import { inOrder, isOfLesson, usualEntries } from './usual-entries.ts';

export interface RecordWish {
  /** The URI of the student's file. */
  readonly student: string;
  readonly document: StudentFile;
  /** Of this student, by date. */
  readonly lessons: readonly Lesson[];
  /** The day, as `YYYY-MM-DD`; the core knows no clock. */
  readonly date: string;
  /** A name from the bag; that of the last lesson where undefined. */
  readonly club: string | undefined;
  /** That of the student's workspace. */
  readonly registry: Registry;
  /** The URIs of the files of the practice, so that no name is taken twice and a template and a book are found. */
  readonly files: readonly string[];
}

export const recordSuffix = '.swing.yaml';

/** The club of the last lesson, else the first one in the bag. */
export function usualClub({
  document,
  lessons,
}: Pick<RecordWish, 'document' | 'lessons'>): string | undefined {
  return lessons.toReversed().find(({ club }) => club !== undefined)?.club ?? [...document.bag.keys()][0];
}

/**
 * Beside the last record, whose references so hold as they are, or beside the student's file where there is none. A template goes
 * with its club; of a club that is new, the one whose file is named for its kind.
 */
export function newRecord(wish: RecordWish): NewFile {
  const { student, document, lessons, date, files, registry } = wish;
  const club = wish.club ?? usualClub(wish);
  const last = lastOf(lessons, club);
  const folder = folderOf(last?.uri ?? student);
  const taken = files.filter((file) => folderOf(file) === folder).map(lastNameIn);
  const base = [date, ...(club === undefined ? [] : [fileNameOf(club, 'club')])].join('-');
  const uri = `${folder}/${encodeURIComponent(freeName(base, recordSuffix, taken))}`;
  const inBag = club === undefined ? undefined : document.bag.get(club);
  const plan = openPlanOf(lessons, { date, club: { name: club, inBag } });
  const named = last === undefined ? undefined : last.analysis.document;
  const before = named?.kind === 'swing' ? named : undefined;
  const kind = inBag?.kind?.value;
  const template = pathTo(uri, files, (name) => name === `${kind}.template.yaml`);
  const book = pathTo(uri, files, (name) => name.endsWith('.faults.yaml'));
  const header = [
    ...planLines(plan),
    'swing: 1',
    `student: ${pathWords(relativePath(uri, student) ?? lastNameIn(student))}`,
    `date: ${date}`,
    ...(club === undefined ? ['club:'] : [`club: ${yamlWords(club)}`]),
    ...referenceLine('template', last?.club === club ? before?.template?.value : template),
    ...referenceLine('faults_from', last === undefined ? book : before?.faultsFrom?.value),
  ];
  const proving = plan === undefined ? [] : provingIds(plan.changes, registry);
  const wanted = inOrder([...usualEntries(lessons, club), ...proving].filter(isOfLesson), registry);
  const text = [...header, '', ...keyLines(wanted, markOf(wanted, proving)), ...goalLines(before)].join('\n');
  return newFile(uri, `${text}\n`);
}

/** What shall be proved is typed first. */
function markOf(wanted: readonly string[], proving: readonly string[]): string | undefined {
  return wanted.find((id) => proving.includes(id)) ?? wanted[0];
}

/** The last one with this club, else the last one. */
function lastOf(lessons: readonly Lesson[], club: string | undefined): Lesson | undefined {
  return lessons.findLast((lesson) => lesson.club === club) ?? lessons.at(-1);
}

/** What was planned, for the eye: the record that planned it stays the place of the plan. */
function planLines(plan: OpenPlan | undefined): readonly string[] {
  if (plan === undefined) return [];
  const { from, changes } = plan;
  return changes.flatMap((one) => {
    if (one.change === undefined) return [];
    const to = one.to === undefined ? '' : ` to ${inOneLine(written(from, one.to.span))}`;
    const proof = one.proof === undefined ? '' : `; proof: ${inOneLine(one.proof.value)}`;
    return [`# Planned on ${from.date}: ${one.change.value}${to}${proof}`];
  });
}

function written(
  { analysis }: Lesson,
  { start, end }: { readonly start: number; readonly end: number },
): string {
  return analysis.document.text.slice(start, end);
}

function inOneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

function referenceLine(key: 'template' | 'faults_from', path: string | undefined): readonly string[] {
  return path === undefined ? [] : [`${key}: ${pathWords(path)}`];
}

/** The way to the one file of the practice with such a name; undefined where there are several, or none. */
function pathTo(
  uri: string,
  files: readonly string[],
  isWanted: (name: string) => boolean,
): string | undefined {
  const found = files.filter((file) => isWanted(lastNameIn(file)));
  return found.length === 1 ? relativePath(uri, found[0]!) : undefined;
}

/** Keys without a value, in blocks; each comes where the first one of its part comes. */
function keyLines(ids: readonly string[], marked: string | undefined): readonly string[] {
  const lines = (below: readonly string[], depth: number): readonly string[] => {
    const keyOf = (id: string): string => id.split('.')[depth]!;
    const isLeaf = (id: string): boolean => id.split('.').length === depth + 1;
    return [...new Set(below.map(keyOf))].flatMap((key) => {
      const own = below.filter((id) => keyOf(id) === key);
      const line = `${'  '.repeat(depth)}${key}:`;
      const leaf = own.find(isLeaf);
      if (leaf !== undefined) return [leaf === marked ? `${line} ${cursorMark}` : line];
      return [line, ...lines(own, depth + 1)];
    });
  };
  return lines(ids, 0);
}

/** The goals as they stand, with their comments. */
function goalLines(before: SwingRecord | undefined): readonly string[] {
  const node = before?.outline.find(({ name }) => name === 'goals');
  if (before === undefined || node === undefined || before.goals.length === 0) return [];
  const { text } = before;
  const start = lineStart(text, node.nameSpan.start);
  const end = lineEnd(text, Math.max(node.nameSpan.end, node.span.end - 1));
  return text.slice(start, end).trimEnd().split(/\r?\n/);
}

/** A path that YAML reads back as it is. */
function pathWords(path: string): string {
  return /^[\p{L}\p{N}._/-][\p{L}\p{M}\p{N} ._/-]*$/u.test(path) && !/\s$/.test(path)
    ? path
    : JSON.stringify(path);
}

function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/'));
}
