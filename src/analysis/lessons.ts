// Finds the records of one student among the files of a practice and analyses them, by date; lists and reads no file itself.
import { kindOf } from '../record/kind.ts';
import { lastNameIn, resolveReference } from '../record/reference.ts';
import type { AnalysisCache } from './cache.ts';
import type { Analysis, FileState } from './result.ts';
import { settle, type Cancellation, type FileStore } from './settle.ts';

export interface Lesson {
  readonly uri: string;
  /** As written, a day of the calendar; undefined where there is none. */
  readonly date: string | undefined;
  readonly club: string | undefined;
  readonly analysis: Analysis;
}

/** Where a practice keeps its files, and how they are come by. */
export interface Practice {
  readonly files: FileStore;
  readonly load: (uri: string) => Promise<FileState>;
  /** The URIs of the files at or below a folder; any others among them do no harm. */
  readonly list: (folder: string) => Promise<readonly string[]>;
  readonly signal: Cancellation;
  readonly cache: AnalysisCache;
}

/** The URI of the student's file that a record names, or of the student's file itself; undefined of any other file. */
export function studentOf({ uri, document }: Analysis): string | undefined {
  if (document.kind === 'student') return uri;
  if (document.kind !== 'swing' || document.student === undefined) return undefined;
  return resolveReference(uri, document.student.value);
}

/**
 * All records of the student of this file, itself among them, the oldest first; those without a date come last. They are looked
 * for at and below the folder of the workspace file, or of the student's file where there is none. Rejects with the signal's
 * reason when it is aborted, and otherwise never.
 */
export async function findLessons(of: Analysis, practice: Practice): Promise<readonly Lesson[]> {
  const student = studentOf(of);
  if (student === undefined) return [];
  const top = folderOf(of.subject.workspace?.uri ?? student);
  const found = await practice.list(top).catch(() => []);
  const records = new Set([...found, of.uri].filter((uri) => kindOf(uri) === 'swing'));
  const lessons: Lesson[] = [];
  for (const uri of records) {
    practice.signal.throwIfAborted();
    if (uri !== of.uri && !(await names(uri, student, practice))) continue;
    const { files, load, signal, cache } = practice;
    const analysis = await settle(uri, files, load, signal, cache);
    const { document } = analysis;
    if (document.kind !== 'swing' || studentOf(analysis) !== student) continue;
    lessons.push({ uri, date: document.date?.value, club: document.club?.value, analysis });
  }
  return lessons.sort(byDate);
}

/** Whether the text holds the name of the student's file at all, which every path to it does: most records are left at that. */
async function names(uri: string, student: string, { files, load }: Practice): Promise<boolean> {
  const kept = files.get(uri);
  const state = kept ?? (await load(uri).catch(() => undefined));
  if (kept === undefined && state !== undefined) files.set(uri, state);
  const name = lastNameIn(student);
  // In double quotes YAML may write any letter as a number.
  return state?.kind === 'text' && (state.text.includes(name) || state.text.includes('\\'));
}

function byDate(a: Lesson, b: Lesson): number {
  const [one, other] = [a.date ?? '~', b.date ?? '~'];
  if (one !== other) return one < other ? -1 : 1;
  return a.uri < b.uri ? -1 : a.uri > b.uri ? 1 : 0;
}

function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/'));
}
