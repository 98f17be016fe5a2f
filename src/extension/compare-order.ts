// In which order files are offered to be compared with a record: this student's lessons with the same club first; knows no editor.
import type { LessonState } from '../server/protocol.ts';

export interface Group<T> {
  readonly of: 'same club' | 'same student' | 'others';
  /** With the lesson that each is; undefined of others. */
  readonly files: readonly { readonly file: T; readonly lesson: Known | undefined }[];
}

type Known = Pick<LessonState, 'uri' | 'date' | 'club'>;

/**
 * Of a student's lessons those before this one come first, the newest first, then those of its day and after it; then the ones without a
 * date. Others stay in their order. Groups without a file are left out.
 */
export function inGroups<T>(
  files: readonly T[],
  uriOf: (file: T) => string,
  uri: string,
  lessons: readonly Known[],
): readonly Group<T>[] {
  const known = new Map(lessons.map((lesson) => [lesson.uri, lesson]));
  const own = known.get(uri);
  const all = files.map((file) => ({ file, lesson: known.get(uriOf(file)) }));
  const isSameClub = ({ club }: Known): boolean => folded(club) === folded(own?.club);
  const groupOf = ({ lesson }: (typeof all)[number]): Group<T>['of'] =>
    lesson === undefined ? 'others' : isSameClub(lesson) ? 'same club' : 'same student';
  return (['same club', 'same student', 'others'] as const)
    .map((of) => ({
      of,
      files: all
        .filter((one) => groupOf(one) === of)
        .sort((a, b) => compareDates(a.lesson?.date, b.lesson?.date, own?.date)),
    }))
    .filter((group) => group.files.length > 0);
}

function compareDates(a: string | undefined, b: string | undefined, own: string | undefined): number {
  const rank = (date: string | undefined): number =>
    date === undefined ? 2 : own !== undefined && date >= own ? 1 : 0;
  return rank(a) - rank(b) || (a === b ? 0 : (a ?? '') > (b ?? '') ? -1 : 1);
}

function folded(club: string | undefined): string | undefined {
  return club?.trim().replace(/\s+/g, ' ').toLowerCase();
}
