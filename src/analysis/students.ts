// The students of a practice with their lessons by club and date, and where each lesson stands; lists and reads no file itself.
import { grouped } from '../judgement/grouped.ts';
import { kindOf } from '../record/kind.ts';
import { courseOf, type Course } from './courses.ts';
import { lessonStates, type LessonState } from './lesson-state.ts';
import { studentOf, type Lesson, type Practice } from './lessons.ts';
import { settle } from './settle.ts';

/** One lesson as a list shows it. */
export interface ListedLesson {
  readonly lesson: Lesson;
  readonly state: LessonState;
  /** What became of its plan; undefined where it has none. */
  readonly course: Course | undefined;
}

export interface ClubLessons {
  /** As the first of the lessons writes it; undefined for lessons without a club. */
  readonly club: string | undefined;
  /** The oldest first, those without a date last. */
  readonly lessons: readonly ListedLesson[];
}

export interface StudentLessons {
  /** The student's file, whether or not it is there; undefined for records that name none. */
  readonly uri: string | undefined;
  readonly name: string | undefined;
  readonly clubs: readonly ClubLessons[];
}

/** Sorted by name, then by file; records without a student come last. Rejects with the signal's reason when it is aborted. */
export async function findStudents(folder: string, practice: Practice): Promise<readonly StudentLessons[]> {
  const { files, load, list, signal, cache } = practice;
  const found = (await list(folder.replace(/\/+$/, ''))).filter((uri) => kindOf(uri) === 'swing');
  const lessons: Lesson[] = [];
  for (const uri of [...new Set(found)].sort()) {
    signal.throwIfAborted();
    const analysis = await settle(uri, files, load, signal, cache);
    const { document } = analysis;
    if (document.kind !== 'swing') continue;
    lessons.push({ uri, date: document.date?.value, club: document.club?.value, analysis });
  }
  return groupLessons(lessons);
}

/** Pure: the same lessons give the same groups, and what is costly is kept with their analyses. */
export function groupLessons(lessons: readonly Lesson[]): readonly StudentLessons[] {
  const byStudent = grouped([...lessons].sort(byDate), ({ analysis }) => studentOf(analysis));
  return [...byStudent]
    .map(([uri, own]) => ({
      uri,
      name: own.find(({ analysis }) => analysis.subject.student !== undefined)?.analysis.subject.student
        ?.document.name?.value,
      clubs: clubsOf(own),
    }))
    .sort(byName);
}

function clubsOf(lessons: readonly Lesson[]): readonly ClubLessons[] {
  const states = lessonStates(lessons);
  const listed = lessons.map((lesson, i): ListedLesson => ({
    lesson,
    state: states[i]!,
    course: courseOf(lesson, lessons),
  }));
  const byClub = grouped(listed, ({ lesson }) => lesson.club?.trim().toLowerCase());
  return [...byClub.values()]
    .map((own) => ({ club: own[0]?.lesson.club, lessons: own }))
    .sort((a, b) => ((a.club ?? '~') < (b.club ?? '~') ? -1 : 1));
}

function byDate(a: Lesson, b: Lesson): number {
  const [one, other] = [`${a.date ?? '~'} ${a.uri}`, `${b.date ?? '~'} ${b.uri}`];
  return one < other ? -1 : 1;
}

function byName(a: StudentLessons, b: StudentLessons): number {
  const key = ({ uri, name }: StudentLessons): string =>
    uri === undefined ? '1' : `0 ${(name ?? uri).toLowerCase()} ${uri}`;
  return key(a) < key(b) ? -1 : 1;
}
