// Compares two records, or a record and a template, by what they say and not by how it is written; plain data out, no words.
import { standingsOf, isForOtherClub } from '../judgement/template.ts';
import type { SwingRecord } from '../record/document.ts';
import { resolveReference } from '../record/reference.ts';
import type { Comparison, HeldBetween, TemplateComparison, WindowRow, WordChange } from './comparison.ts';
import { compareComputed, compareEntries, comparePredicted, compareShots } from './compare-numbers.ts';
import {
  compareFaults,
  compareFindings,
  compareGoals,
  compareMisses,
  comparePlans,
} from './compare-judgement.ts';
import { tellsOfHealth } from './cautions.ts';
import { compareSigned } from './compare-signed.ts';
import { holdPlan } from './courses.ts';
import { studentOf, type Lesson } from './lessons.ts';
import { hasPlan, isLater } from './open-plan.ts';
import type { Analysis } from './result.ts';
import { clubOf, isSameClub } from './same-club.ts';

/** An analysis of a record. */
export interface RecordAnalysis extends Analysis {
  readonly document: SwingRecord;
}

export function isRecord(analysis: Analysis): analysis is RecordAnalysis {
  return analysis.document.kind === 'swing';
}

/**
 * What the second record says other than the first. Moved keys, comments, and the same number in another unit or notation are no
 * change. Cheap beside the analyses themselves, so that it can be asked for at every keystroke.
 */
export function compareRecords(first: RecordAnalysis, second: RecordAnalysis): Comparison {
  const { changes: entries, same: sameEntries } = compareEntries(first, second);
  const parts = {
    words: compareWords(first, second),
    entries,
    computed: compareComputed(first, second),
    findings: compareFindings(first, second),
    faults: compareFaults(first, second),
    misses: compareMisses(first, second),
    plan: comparePlans(first, second),
    predicted: comparePredicted(first, second),
    shots: compareShots(first, second),
  };
  const goals = compareGoals(first, second);
  const signed = compareSigned(first.document.text, second.document.text, { ...parts, goals });
  const whole = { ...parts, goals, signed, sameEntries, held: heldBetween(first, second) };
  return { ...whole, isSame: isNothing(whole) };
}

/** For a page that is handed on: as if nobody's file noted an injury. */
export function withoutHealth(whole: Comparison): Comparison {
  const findings = whole.findings.filter(({ finding }) => !tellsOfHealth(finding));
  return { ...whole, findings, isSame: isNothing({ ...whole, findings }) };
}

function isNothing(comparison: Omit<Comparison, 'isSame'>): boolean {
  const { words, entries, computed, findings, faults, misses, plan, predicted, shots, signed } = comparison;
  return (
    [words, entries, computed, findings, faults, misses, plan, predicted, shots, signed].every(
      (part) => part.length === 0,
    ) && comparison.goals.every(({ state }) => state === 'same')
  );
}

/** Undefined where the second is no template. */
export function compareWithTemplate(
  record: RecordAnalysis,
  template: Analysis,
): TemplateComparison | undefined {
  const { document } = template;
  if (document.kind !== 'template' || record.derivation === undefined) return undefined;
  const { student, club } = record.subject;
  const standings = standingsOf(document, record.derivation, student?.document.hand?.value);
  return {
    title: document.title,
    isForOtherClub: isForOtherClub(document, club?.kind?.value),
    rows: standings.map(({ window, edges, value, outsideBy, state }): WindowRow => ({
      window,
      edges,
      figure: value && { value: value.value, u: value.u, kind: value.kind },
      outsideBy,
      state,
    })),
  };
}

function compareWords(first: RecordAnalysis, second: RecordAnalysis): readonly WordChange[] {
  const [a, b] = [wordsOf(first), wordsOf(second)];
  return a.flatMap(({ of, word, stands }, i): WordChange[] =>
    stands === b[i]!.stands ? [] : [{ of, before: word, after: b[i]!.word }],
  );
}

interface Word {
  readonly of: WordChange['of'];
  readonly word: string | undefined;
  /** What it stands for: a path may be written in several ways. */
  readonly stands: string | undefined;
}

function wordsOf({ uri, document, subject }: RecordAnalysis): readonly Word[] {
  const { student, date, club, template, faultsFrom, shotsFile, shape } = document;
  const plain = (of: Word['of'], word: string | undefined): Word => ({ of, word, stands: word?.trim() });
  const path = (of: Word['of'], word: string | undefined): Word => ({
    of,
    word,
    stands: word === undefined ? undefined : (resolveReference(uri, word) ?? word),
  });
  return [
    path('student', student?.value),
    plain('hand', subject.student?.document.hand?.value),
    plain('date', date?.value),
    plain('club', club?.value),
    path('template', template?.value),
    path('fault book', faultsFrom?.value),
    path('shots', shotsFile?.value),
    plain('shape', shape?.value),
  ];
}

function heldBetween(first: RecordAnalysis, second: RecordAnalysis): HeldBetween | undefined {
  const [a, b] = [lessonOf(first), lessonOf(second)];
  const student = studentOf(first);
  if (student === undefined || student !== studentOf(second) || !isSameClub(clubOf(a), clubOf(b)))
    return undefined;
  const [plan, next, which] = isLater(b, a) ? ([a, b, 'first'] as const) : ([b, a, 'second'] as const);
  if (!isLater(next, plan) || !hasPlan(plan)) return undefined;
  const held = holdPlan(plan, next);
  return held && { plan: which, outcome: held.outcome };
}

function lessonOf(analysis: RecordAnalysis): Lesson {
  const { uri, document } = analysis;
  return { uri, analysis, date: document.date?.value, club: document.club?.value };
}
