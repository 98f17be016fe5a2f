// Which lesson decides a plan: the next one of the same student with the same club; holds the one against the other. Reads no file.
import { measuredOf, type Measured } from '../judgement/measured.ts';
import { judgeOutcome, saysAnything, type Outcome } from '../judgement/outcome.ts';
import type { SwingRecord } from '../record/document.ts';
import type { Lesson } from './lessons.ts';
import { hasPlan, isLater, openPlanOf } from './open-plan.ts';
import type { Analysis } from './result.ts';
import { clubOf, isSameClub } from './same-club.ts';

/** A plan held against a lesson that came after it. */
export interface HeldPlan {
  readonly plan: Lesson;
  readonly next: Lesson;
  readonly outcome: Outcome;
}

/** The plan before a lesson, held against that lesson. */
export interface LastPlan extends HeldPlan {
  /** By a lesson before this one: then this one shows how things stand, and decides nothing anew. */
  readonly decided: HeldPlan | undefined;
}

/** What became of the plan of a lesson. */
export interface Course {
  readonly plan: Lesson;
  /**
   * `open`: nothing of it was measured yet; `replaced`: neither before a later lesson brought a plan of its own; `undated`: nobody
   * can tell which lessons are later.
   */
  readonly state: 'held' | 'open' | 'replaced' | 'undated';
  /** Against the first later lesson that measured anything of it. */
  readonly held: HeldPlan | undefined;
  /** Whether no later lesson with the same club has a plan of its own. */
  readonly isLast: boolean;
  /** Later lessons before that, which measured nothing of it. */
  readonly silent: readonly Lesson[];
  /** The first later lesson with another club, where there is none with this one. */
  readonly otherClub: Lesson | undefined;
  /** Other lessons of the same club and day, of which nobody can tell whether they are later. */
  readonly sameDay: readonly Lesson[];
}

/**
 * What became of the plan of this lesson; undefined where it has none. A plan stays the last one until a later lesson with the
 * same club brings another; that lesson itself still shows what became of the one before.
 */
export function courseOf(plan: Lesson, lessons: readonly Lesson[]): Course | undefined {
  if (!hasPlan(plan)) return undefined;
  const sameClub = lessons.filter((one) => one.uri !== plan.uri && isSameClub(clubOf(one), clubOf(plan)));
  const sameDay = plan.date === undefined ? [] : sameClub.filter(({ date }) => date === plan.date);
  const none = { plan, held: undefined, silent: [], otherClub: undefined, sameDay };
  if (plan.date === undefined) return { ...none, state: 'undated', isLast: true };
  const later = sameClub.filter((one) => isLater(one, plan));
  const end = later.findIndex(hasPlan);
  const span = end < 0 ? later : later.slice(0, lastOfDay(later, end) + 1);
  const silent: Lesson[] = [];
  for (const next of span) {
    const held = holdPlan(plan, next);
    if (held !== undefined && saysAnything(held.outcome))
      return { ...none, state: 'held', held, silent, isLast: end < 0 };
    if (measuresAnything(next.analysis)) silent.push(next);
  }
  const otherClub =
    later.length > 0
      ? undefined
      : lessons.find((one) => isLater(one, plan) && !isSameClub(clubOf(one), clubOf(plan)));
  return { ...none, state: end < 0 ? 'open' : 'replaced', silent, otherClub, isLast: end < 0 };
}

/** The plan that was open at this lesson, held against it; undefined where there is none. */
export function lastPlanOf(lesson: Lesson, lessons: readonly Lesson[]): LastPlan | undefined {
  const open = openPlanOf(lessons, { date: lesson.date, club: clubOf(lesson) });
  const held = open && holdPlan(open.from, lesson);
  if (held === undefined) return undefined;
  const first = courseOf(held.plan, lessons)?.held;
  const isBefore = first !== undefined && first.next.uri !== lesson.uri && !isLater(first.next, lesson);
  return { ...held, decided: isBefore ? first : undefined };
}

/** By analyses, which stay the same objects while nothing that they depend on has changed. */
const kept = new WeakMap<Analysis, WeakMap<Analysis, Outcome>>();

/** The plan of one lesson against another, whichever comes next; undefined where one of them says nothing that the model can read. */
export function holdPlan(plan: Lesson, next: Lesson): HeldPlan | undefined {
  const outcomes = kept.get(plan.analysis) ?? new WeakMap<Analysis, Outcome>();
  kept.set(plan.analysis, outcomes);
  const outcome = outcomes.get(next.analysis) ?? outcomeOf(plan.analysis, next.analysis);
  if (outcome === undefined) return undefined;
  outcomes.set(next.analysis, outcome);
  return { plan, next, outcome };
}

function outcomeOf(plan: Analysis, next: Analysis): Outcome | undefined {
  const [before, after] = [measuredIn(plan), measuredIn(next)];
  if (plan.document.kind !== 'swing' || before === undefined || after === undefined) return undefined;
  const { plan: changes, predicted } = plan.document;
  const coverage = plan.subject.workspace?.document.coverage ?? 1;
  return judgeOutcome(
    { plan: changes, predicted, measured: before, coverage, registry: plan.subject.registry },
    after,
  );
}

function measuredIn({ account, subject }: Analysis): Measured | undefined {
  return account && measuredOf(account, subject.shots?.summary);
}

/** Lessons of one day have no order: all of the day on which a new plan came may still speak of the old one. */
function lastOfDay(later: readonly Lesson[], at: number): number {
  return later.findLastIndex(({ date }) => date === later[at]!.date);
}

/** Whether the record measured anything of the swing or its shots. */
function measuresAnything({ document, subject }: Analysis): boolean {
  if (document.kind !== 'swing') return false;
  return (subject.shots?.summary?.count ?? 0) > 0 || hasReadings(document);
}

function hasReadings({ entries }: SwingRecord): boolean {
  return [...entries.values()].some(
    ({ id, readings }) => !id.startsWith('conditions.') && readings.length > 0,
  );
}
