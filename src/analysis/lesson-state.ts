// How each lesson of a student stands: entries in conflict, a plan that no later lesson has followed up, proofs that are due; judges nothing anew.
import { conflictKinds } from '../checks/conflict-kinds.ts';
import type { Span } from '../measure/measure.ts';
import type { PlannedChange, SwingRecord } from '../record/document.ts';
import type { Lesson } from './lessons.ts';
import { mentionsIn } from './mentions.ts';
import { lineTableOf, rangeOf } from './positions.ts';
import type { Analysis, TextRange } from './result.ts';

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
  /** The planned changes, while no later lesson has a plan of its own. */
  readonly plan: readonly StateItem[];
  /**
   * What was to be seen by now: of the lesson with the open plan, the proofs that no later one has measured; of a later one, those
   * that it has not measured itself.
   */
  readonly due: readonly StateItem[];
}

const conflictCodes: ReadonlySet<string> = new Set([
  ...conflictKinds.map(({ code }) => code),
  'entries-do-not-agree',
]);

/** In the order of the lessons, which is the order of their days. */
export function lessonStates(lessons: readonly Lesson[]): readonly LessonState[] {
  const planned = lessons.findLastIndex(({ analysis: { document } }) => planOf(document).length > 0);
  return lessons.map(({ uri, date, club, analysis }, place) => {
    const { document, findings } = analysis;
    const conflicts = findings.filter(({ code }) => conflictCodes.has(code));
    return {
      uri,
      date,
      club,
      errors: findings.filter(({ severity }) => severity === 'error').length,
      conflicts: conflicts.map(({ message, range }) => ({ words: message, uri, range })),
      plan: place === planned && document.kind === 'swing' ? planItems(uri, document) : [],
      due: dueIn(lessons, planned, place),
    };
  });
}

function planOf(document: Lesson['analysis']['document']): readonly PlannedChange[] {
  return document.kind === 'swing' ? document.plan : [];
}

function planItems(uri: string, { plan, text }: SwingRecord): readonly StateItem[] {
  const table = lineTableOf(text);
  return plan.map(({ change, to, span }) => ({
    words: [change?.value ?? '…', ...(to === undefined ? [] : ['to', textAt(text, to.span)])].join(' '),
    uri,
    range: rangeOf(table, change?.span ?? span),
  }));
}

/** A proof is measured where a lesson has a value for all that it names; one in free words, where it has one for what was changed. */
function dueIn(lessons: readonly Lesson[], planned: number, place: number): readonly StateItem[] {
  const lesson = lessons[planned];
  if (lesson === undefined || place < planned) return [];
  const { uri, analysis } = lesson;
  const { document } = analysis;
  if (document.kind !== 'swing') return [];
  const later = place === planned ? lessons.slice(planned + 1) : lessons.slice(place, place + 1);
  const table = lineTableOf(document.text);
  return document.plan.flatMap(({ change, proof }): StateItem[] => {
    if (proof === undefined) return [];
    const named = quantitiesIn(analysis, proof.span);
    const wanted = named.length > 0 ? named : change === undefined ? [] : [change.value];
    const isMeasured = later.some(({ analysis: { document: record } }) =>
      record.kind === 'swing' && wanted.length > 0
        ? wanted.every((id) => (record.entries.get(id)?.readings.length ?? 0) > 0)
        : false,
    );
    return isMeasured ? [] : [{ words: proof.value, uri, range: rangeOf(table, proof.span) }];
  });
}

function quantitiesIn({ uri, document, subject }: Analysis, { start, end }: Span): readonly string[] {
  return mentionsIn(uri, document, subject.registry).flatMap(({ thing, span }) =>
    thing.kind === 'quantity' && span.start >= start && span.end <= end ? [thing.name] : [],
  );
}

function textAt(text: string, { start, end }: Span): string {
  return text.slice(start, end).replace(/\s+/g, ' ').trim();
}
