// The `new` commands: a practice, a student, the next record; they make files and never write over one.
import { readdir, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { URI } from 'vscode-uri';
import { createCache } from '../analysis/cache.ts';
import { fileNameOf } from '../analysis/file-name.ts';
import { findLessons } from '../analysis/lessons.ts';
import { newPractice, studentFolder } from '../analysis/new-practice.ts';
import { newRecord } from '../analysis/new-record.ts';
import {
  birthProblem,
  newStudent,
  statureProblem,
  studentSuffix,
  type StudentWish,
} from '../analysis/new-student.ts';
import type { NewFile } from '../analysis/new-text.ts';
import type { FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { listFolder, loadFile, toPath, toUri } from '../disk/files.ts';
import { makeFolder } from '../disk/make-folder.ts';
import { quote } from '../measure/quote.ts';
import { isDate } from '../record/date.ts';
import { lastNameIn } from '../record/reference.ts';
import { printable } from './formats/text.ts';

/** 0 where files were made or all of them were there already, 2 where one could not be written. */
export async function newPracticeCommand(folder: string, name: string | undefined): Promise<number> {
  const there = await stat(resolve(folder)).catch(() => undefined);
  if (there?.isDirectory() === false)
    return refuse(`Found the file ${quote(folder)}; expected a folder, or the name of a new one.`);
  const at = toUri(folder);
  return writeAll(newPractice(at, name ?? basename(resolve(folder))), 'keep');
}

export interface StudentOptions {
  readonly hand: 'left' | 'right';
  readonly stature?: string;
  readonly born?: string;
  readonly club: readonly string[];
  readonly injury: readonly string[];
  readonly in: string;
}

export async function newStudentCommand(name: string, options: StudentOptions): Promise<number> {
  const { hand, stature, born, club: clubs, injury: injuries } = options;
  const wrong =
    (name.trim() === '' ? 'Found an empty name; expected the name of the student.' : undefined) ??
    (stature === undefined ? undefined : statureProblem(stature)) ??
    (born === undefined ? undefined : birthProblem(born));
  if (wrong !== undefined) return refuse(wrong);
  const wish: StudentWish = { name, hand, stature, born, clubs, injuries };
  const folder = studentFolder(toUri(options.in), fileNameOf(name, 'student'));
  const file = newStudent(wish, folder, await namesIn(folder));
  const code = await writeAll([file], 'refuse');
  const usual = fileNameOf(name, 'student') + studentSuffix;
  if (code === 0 && lastNameIn(file.uri) !== usual)
    process.stdout.write(
      `${printable(quote(usual))} was there already: use that one for the same student.\n`,
    );
  return code;
}

export interface RecordOptions {
  readonly date: string;
  readonly club?: string;
}

export async function newRecordCommand(
  path: string,
  { date, club }: RecordOptions,
  signal: AbortSignal,
): Promise<number> {
  if (!isDate(date)) return refuse(`Found ${quote(date)}; expected a day such as \`2026-05-14\`.`);
  const uri = toUri(path);
  const files = new Map<string, FileState>([[uri, await loadFile(uri)]]);
  const cache = createCache();
  const analysis = await settle(uri, files, loadFile, signal, cache);
  const { document, subject } = analysis;
  const state = files.get(uri);
  if (state?.kind === 'missing')
    return refuse(`Found no file ${quote(path)}; expected a student's file that is there.`);
  if (state?.kind === 'unreadable') return refuse(`Cannot read ${quote(path)}: ${state.reason}.`);
  if (document.kind !== 'student')
    return refuse(`Found ${quote(path)}; expected a student's file that ends in \`${studentSuffix}\`.`);
  const bag = [...document.bag.keys()];
  if (club !== undefined && !document.bag.has(club))
    return refuse(`Found the club ${quote(club)}; expected one from the bag: ${bag.map(quote).join(', ')}.`);
  const lessons = await findLessons(analysis, { files, load: loadFile, list: listFolder, signal, cache });
  const top = subject.workspace?.uri ?? uri;
  const practice = await listFolder(top.slice(0, top.lastIndexOf('/')));
  const { registry } = subject;
  return writeAll(
    [newRecord({ student: uri, document, lessons, date, club, registry, files: practice })],
    'refuse',
  );
}

function refuse(message: string): number {
  process.stderr.write(`swingwright: ${printable(message)}\n`);
  return 2;
}

async function namesIn(folder: string): Promise<readonly string[]> {
  return readdir(URI.parse(folder).fsPath).catch(() => []);
}

/** A file that is there already is kept, whatever is in it. */
async function writeAll(files: readonly NewFile[], whenThere: 'keep' | 'refuse'): Promise<number> {
  let code = 0;
  for (const { uri, text } of files) {
    const file = URI.parse(uri).fsPath;
    const shown = printable(toPath(uri));
    try {
      await makeFolder(dirname(file));
      // Where a cursor would stand, a space waits for it; on a disk there is none.
      await writeFile(file, text.replace(/ +$/gm, ''), { flag: 'wx' });
      process.stdout.write(`Made ${shown}.\n`);
    } catch (error) {
      const isThere = error instanceof Error && 'code' in error && error.code === 'EEXIST';
      if (isThere && whenThere === 'keep') {
        process.stdout.write(`Kept ${shown}, which was there already.\n`);
        continue;
      }
      const reason = isThere ? 'it is there already' : error instanceof Error ? error.message : String(error);
      process.stderr.write(`swingwright: cannot write \`${shown}\`: ${printable(reason)}.\n`);
      code = 2;
    }
  }
  return code;
}
