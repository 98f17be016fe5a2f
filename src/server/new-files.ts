// Answers the requests that make new files: gives their texts, from the files as the editor has them; writes nothing.
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { createCache } from '../analysis/cache.ts';
import { fileNameOf } from '../analysis/file-name.ts';
import { findLessons, studentOf } from '../analysis/lessons.ts';
import { newPractice, studentFolder } from '../analysis/new-practice.ts';
import { newRecord, usualClub } from '../analysis/new-record.ts';
import { birthProblem, newStudent, statureProblem, usualClubs } from '../analysis/new-student.ts';
import { settle } from '../analysis/settle.ts';
import { lastNameIn } from '../record/reference.ts';
import type { Files } from './files.ts';
import {
  checkAnswerRequest,
  clubsRequest,
  newPracticeRequest,
  newRecordRequest,
  newStudentRequest,
  proposedClubsRequest,
  type CheckAnswerParams,
  type ClubsParams,
  type ClubsResult,
  type NewFilesResult,
  type NewPracticeParams,
  type NewRecordParams,
  type NewStudentParams,
  type NewStudentResult,
} from './protocol.ts';
import { signalOf } from './signal.ts';

/** Listens to all of them on this connection. */
export function answerNewFiles(connection: Connection, files: Files): void {
  connection.onRequest(newPracticeRequest, (params: NewPracticeParams) => practiceFiles(params));
  connection.onRequest(newStudentRequest, (params: NewStudentParams) => studentFile(params, files));
  connection.onRequest(checkAnswerRequest, (params: CheckAnswerParams) => checkAnswer(params));
  connection.onRequest(proposedClubsRequest, () => usualClubs);
  connection.onRequest(clubsRequest, ({ uri }: ClubsParams, token: CancellationToken) =>
    clubsOf(uri, files, signalOf(token)),
  );
  connection.onRequest(newRecordRequest, (params: NewRecordParams, token: CancellationToken) =>
    recordFile(params, files, signalOf(token)),
  );
}

function practiceFiles({ folder, name }: NewPracticeParams): NewFilesResult {
  return { files: newPractice(bare(folder), name) };
}

async function studentFile(params: NewStudentParams, files: Files): Promise<NewStudentResult> {
  const { name, hand, stature, born, clubs, injuries } = params;
  const folder = studentFolder(bare(params.folder), fileNameOf(name, 'student'));
  const there = (await files.list(folder)).map((uri) => lastNameIn(uri));
  const wish = {
    name,
    hand,
    stature: stature ?? undefined,
    born: born ?? undefined,
    clubs,
    injuries,
  };
  return { files: [newStudent(wish, folder, there)] };
}

/** What is wrong with an answer; null where nothing is. */
function checkAnswer({ question, text }: CheckAnswerParams): string | null {
  return (question === 'stature' ? statureProblem(text) : birthProblem(text)) ?? null;
}

/** `uri` is a student's file or a record; null where no student can be told from it. */
async function clubsOf(uri: string, files: Files, signal: AbortSignal): Promise<ClubsResult | null> {
  const found = await studentAt(uri, files, signal);
  if (found === undefined) return null;
  const clubs = [...found.document.bag.keys()];
  return { student: found.uri, clubs, usual: usualClub(found) ?? null };
}

async function recordFile(
  { student, date, club }: NewRecordParams,
  files: Files,
  signal: AbortSignal,
): Promise<NewFilesResult | null> {
  const found = await studentAt(student, files, signal);
  if (found === undefined) return null;
  const { uri, document, lessons, registry, practice } = found;
  const wish = { student: uri, document, lessons, date, club: club ?? undefined, registry };
  return { files: [newRecord({ ...wish, files: await files.list(practice) })] };
}

async function studentAt(uri: string, files: Files, signal: AbortSignal) {
  const cache = createCache();
  const given = await settle(uri, files, files.load, signal, cache);
  const student = studentOf(given);
  if (student === undefined) return undefined;
  const analysis = student === uri ? given : await settle(student, files, files.load, signal, cache);
  const { document, subject } = analysis;
  if (document.kind !== 'student') return undefined;
  const { load, list } = files;
  const lessons = await findLessons(analysis, { files, load, list, signal, cache });
  const top = subject.workspace?.uri ?? student;
  const practice = top.slice(0, top.lastIndexOf('/'));
  return { uri: student, document, lessons, registry: subject.registry, practice };
}

function bare(folder: string): string {
  return folder.replace(/\/+$/, '');
}
