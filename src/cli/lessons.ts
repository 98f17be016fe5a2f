// The `lessons` command: the students of a folder with their lessons by club and date, and where each stands, as text or JSON.
import { counted } from '../measure/counted.ts';
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { courseInShort, dayOf } from '../analysis/outcome-words.ts';
import { findStudents, type ListedLesson, type StudentLessons } from '../analysis/students.ts';
import { toPath, toUri } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { practiceAt } from './practice.ts';

/** Prints the lessons at or below `path`; 2 where something there cannot be read. */
export async function lessons(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const practice = await practiceAt(path, signal);
  if (practice === undefined) return 2;
  const students = await findStudents(toUri(path), practice);
  process.stdout.write(format === 'json' ? studentsJson(students) : studentsText(students));
  return 0;
}

function studentsText(students: readonly StudentLessons[]): string {
  if (students.length === 0) return 'No lessons.\n';
  return `${students.map(studentText).join('\n\n')}\n`;
}

function studentText({ uri, name, clubs }: StudentLessons): string {
  const file = uri === undefined ? 'no student' : toPath(uri);
  const title = name === undefined ? file : `${name} (${file})`;
  const rows = clubs.flatMap(({ club, lessons: own }) => [
    `  ${club ?? 'no club'}`,
    ...own.flatMap(lessonRows),
  ]);
  return [pc.bold(printable(title)), ...rows.map(printable)].join('\n');
}

function lessonRows({ lesson, state: { errors, conflicts, due }, course }: ListedLesson): readonly string[] {
  const said = [
    ...(errors === 0 ? [] : [counted(errors, 'error')]),
    ...(conflicts.length === 0 ? [] : [counted(conflicts.length, 'conflict')]),
    ...(due.length === 0 ? [] : [`${counted(due.length, 'proof')} due`]),
  ];
  const words = said.length === 0 ? '' : `  ${said.join(', ')}`;
  return [
    `    ${dayOf(lesson)}  ${toPath(lesson.uri)}${words}`,
    ...(course === undefined ? [] : [`      Plan: ${courseInShort(course)}.`]),
  ];
}

function studentsJson(students: readonly StudentLessons[]): string {
  const json = {
    format: 1,
    students: students.map(({ uri, name, clubs }) => ({
      student: uri === undefined ? null : toPath(uri),
      name: name ?? null,
      clubs: clubs.map(({ club, lessons: own }) => ({ club: club ?? null, lessons: own.map(lessonJson) })),
    })),
  };
  return jsonText(json);
}

function lessonJson({ lesson, state: { errors, conflicts, due }, course }: ListedLesson) {
  return {
    file: toPath(lesson.uri),
    date: lesson.date ?? null,
    errors,
    conflicts: conflicts.length,
    proofsDue: due.length,
    plan:
      course === undefined
        ? null
        : {
            state: course.state,
            isLast: course.isLast,
            heldAgainst: course.held === undefined ? null : toPath(course.held.next.uri),
            summary: courseInShort(course),
          },
  };
}
