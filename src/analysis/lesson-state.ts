// How each lesson of a student stands: entries in conflict, a plan that no later lesson has followed up, proofs that are due; judges nothing anew.
import { conflictKinds } from '../checks/conflict-kinds.ts';
import { proofAsks } from '../judgement/proof.ts';
import { proofText } from '../checks/proof-words.ts';
import type { Span } from '../measure/measure.ts';
import type { Located, SwingRecord } from '../record/document.ts';
import { courseOf, lastPlanOf, type Course, type HeldPlan } from './courses.ts';
import type { Lesson } from './lessons.ts';
import { lineTableOf, rangeOf } from './positions.ts';
import type { TextRange } from './result.ts';

/** Something to be done, and where it stands. */
export interface StateItem {
  readonly words: string;
  readonly uri: string;
  readonly range: TextRange;
}

export interface LessonState {
  readonly uri: string;
  readonly date: string | undefined;
  readonly club: string | undefined;
  readonly errors: number;
  /** Entries that cannot be true together with the others, and were not accepted. */
  readonly conflicts: readonly StateItem[];
  /** The planned changes, while no later lesson with the same club has a plan of its own. */
  readonly plan: readonly StateItem[];
  /**
   * What was to be seen by now: of the lesson with the open plan, the proofs that no later one has measured; of a later one, those
   * that it has not measured itself.
   */
  readonly due: readonly StateItem[];
}

export const conflictCodes: ReadonlySet<string> = new Set([
  ...conflictKinds.map(({ code }) => code),
  'entries-do-not-agree',
]);

/** In the order of the lessons, which is the order of their days. */
export function lessonStates(lessons: readonly Lesson[]): readonly LessonState[] {
  return lessons.map((lesson) => {
    const { uri, date, club, analysis } = lesson;
    const { document, findings } = analysis;
    const conflicts = findings.filter(({ code }) => conflictCodes.has(code));
    const course = courseOf(lesson, lessons);
    return {
      uri,
      date,
      club,
      errors: findings.filter(({ severity }) => severity === 'error').length,
      conflicts: conflicts.map(({ message, range }) => ({ words: message, uri, range })),
      plan: course?.isLast === true && document.kind === 'swing' ? planItems(uri, document) : [],
      due: course === undefined ? dueAt(lesson, lessons) : dueOf(course),
    };
  });
}

function planItems(uri: string, { plan, text }: SwingRecord): readonly StateItem[] {
  const table = lineTableOf(text);
  return plan.map(({ change, to, span }) => ({
    words: [change?.value ?? '…', ...(to === undefined ? [] : ['to', textAt(text, to.span)])].join(' '),
    uri,
    range: rangeOf(table, change?.span ?? span),
  }));
}

/** Of the last plan: what no later lesson has measured. */
function dueOf({ plan, isLast, held }: Course): readonly StateItem[] {
  const { document } = plan.analysis;
  if (!isLast || document.kind !== 'swing') return [];
  if (held !== undefined) return dueIn(held);
  return proofItems(
    plan,
    document.plan.flatMap(({ proof }) => proof ?? []),
  );
}

/** Of a lesson after it: what this one has not measured itself. */
function dueAt(lesson: Lesson, lessons: readonly Lesson[]): readonly StateItem[] {
  const held = lastPlanOf(lesson, lessons);
  return held === undefined ? [] : dueIn(held);
}

function dueIn({ plan, outcome }: HeldPlan): readonly StateItem[] {
  const open = outcome.proofs.filter(({ state }) => state === 'not measured');
  return proofItems(
    plan,
    open.map(({ proof }) => proof),
  );
}

function proofItems({ uri, analysis }: Lesson, proofs: readonly Located<string>[]): readonly StateItem[] {
  const table = lineTableOf(analysis.document.text);
  const { registry } = analysis.subject;
  return proofs.map(({ value, span }) => ({
    words: proofText(proofAsks(value, registry)),
    uri,
    range: rangeOf(table, span),
  }));
}

function textAt(text: string, { start, end }: Span): string {
  return text.slice(start, end).replace(/\s+/g, ' ').trim();
}
