// A practice in memory: analyses several files beside one another, for tests of what lessons say together.
import { createCache } from '../../src/analysis/cache.ts';
import type { Lesson, Practice } from '../../src/analysis/lessons.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { findStudents, type StudentLessons } from '../../src/analysis/students.ts';

export const top = 'file:///practice';

export const ines = `student: 1
name: Ines
hand: right
bag:
  hybrid: { kind: hybrid, loft: 22 deg, length: 40 in }
  old hybrid: { kind: hybrid, loft: 22 deg, length: 40 in }
  driver: { kind: driver, loft: 10 deg }
`;

/** A record of Ines; `rest` follows its head. */
export function recordOf(
  date: string | undefined,
  rest: string,
  { club = 'hybrid', student = 'ines.student.yaml' }: { club?: string | undefined; student?: string } = {},
): string {
  const day = date === undefined ? '' : `date: ${date}\n`;
  return `swing: 1\nstudent: ${student}\n${day}${club === '' ? '' : `club: ${club}\n`}${rest}`;
}

export function practiceOf(texts: Readonly<Record<string, string>>): Practice {
  const all: Readonly<Record<string, string>> = { 'ines.student.yaml': ines, ...texts };
  const state = (uri: string): FileState => {
    const text = all[uri.slice(top.length + 1)];
    return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
  };
  return {
    files: new Map<string, FileState>(),
    load: (uri) => Promise.resolve(state(uri)),
    list: () => Promise.resolve(Object.keys(all).map((name) => `${top}/${name}`)),
    signal: { throwIfAborted: () => undefined },
    cache: createCache(),
  };
}

export function studentsOf(texts: Readonly<Record<string, string>>): Promise<readonly StudentLessons[]> {
  return findStudents(top, practiceOf(texts));
}

/** All lessons, the oldest first. */
export async function lessonsOf(texts: Readonly<Record<string, string>>): Promise<readonly Lesson[]> {
  const students = await studentsOf(texts);
  const lessons = students.flatMap(({ clubs }) =>
    clubs.flatMap((club) => club.lessons.map(({ lesson }) => lesson)),
  );
  return lessons.sort((a, b) => (`${a.date ?? '~'} ${a.uri}` < `${b.date ?? '~'} ${b.uri}` ? -1 : 1));
}

export function nameOf(lesson: Lesson | undefined): string | undefined {
  return lesson?.uri.slice(top.length + 1).replace('.swing.yaml', '');
}
