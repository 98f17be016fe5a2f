// Gathers the predictions of a practice that a later lesson tested, for their shares to be told; lists and reads no file itself.
import { assessPredictions, type PredictionRecord, type Tested } from '../judgement/predictions.ts';
import type { Practice } from './lessons.ts';
import { findStudents, type StudentLessons } from './students.ts';

export interface FolderPredictions {
  readonly record: PredictionRecord;
  /** Lessons that predict anything. */
  readonly lessons: number;
  /** Predictions that no lesson has tested, by why. */
  readonly untested: ReadonlyMap<'no later lesson' | 'not measured' | 'not tested' | 'no interval', number>;
}

export async function predictionsIn(folder: string, practice: Practice): Promise<FolderPredictions> {
  return gatherPredictions(await findStudents(folder, practice));
}

/** Each prediction counts once, by the first lesson that measured anything of its plan. */
export function gatherPredictions(students: readonly StudentLessons[]): FolderPredictions {
  const tested: Tested[] = [];
  const untested = new Map<'no later lesson' | 'not measured' | 'not tested' | 'no interval', number>();
  let lessons = 0;
  const states = students.flatMap(({ clubs }) => clubs.flatMap((club) => club.lessons));
  for (const { lesson, course } of states) {
    const { document, subject } = lesson.analysis;
    if (document.kind !== 'swing' || document.predicted.size === 0) continue;
    lessons += 1;
    const count = (why: 'no later lesson' | 'not measured' | 'not tested' | 'no interval', by = 1): unknown =>
      untested.set(why, (untested.get(why) ?? 0) + by);
    if (course?.held === undefined) {
      count(
        'no later lesson',
        [...document.predicted.values()].reduce((sum, { readings }) => sum + readings.length, 0),
      );
      continue;
    }
    const { predictions, followed } = course.held.outcome;
    const hand = subject.student?.document.hand?.value;
    for (const outcome of predictions) {
      if (outcome.state === 'inside' || outcome.state === 'outside')
        tested.push({ outcome, lesson: lesson.uri, hand, followed });
      else count(outcome.state);
    }
  }
  return { record: assessPredictions(tested), lessons, untested };
}
