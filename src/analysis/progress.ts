// How one student came along, club by club: chosen numbers with their intervals, goals, what became of plans, conflicts; plain data, no words.
import { wide95 } from '../judgement/changed.ts';
import { standingOf, wantedOf, type Standing } from '../judgement/goal-standing.ts';
import { isImpossible } from '../judgement/foreseer.ts';
import { measuredOf, type MeasuredValue } from '../judgement/measured.ts';
import { beliefAsItStands } from '../judgement/standing-number.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Difference } from './comparison.ts';
import { differenceOf } from './compare-numbers.ts';
import { planCautions } from './cautions.ts';
import { lastPlanOf, type LastPlan } from './courses.ts';
import { conflictCodes } from './lesson-state.ts';
import type { Lesson } from './lessons.ts';
import { goalsOf } from './plan.ts';
import { clubOf, isSameClub } from './same-club.ts';

export interface ProgressPoint {
  readonly lesson: Lesson;
  /** Of 95 %: value ± 1.96 u. */
  readonly value: MeasuredValue;
  readonly low: number;
  readonly high: number;
}

export interface Series {
  readonly quantity: Quantity;
  /** Of the dated lessons that measured it, the oldest first. */
  readonly points: readonly ProgressPoint[];
  /** Of the last against the first; undefined below two. */
  readonly change: Difference | undefined;
  /** What plans asked for, the oldest first. */
  readonly targets: readonly PlannedTarget[];
}

/** SI; the same twice where a plan names one number. In force from its lesson until the next one. */
export interface PlannedTarget {
  readonly lesson: Lesson;
  readonly next: Lesson | undefined;
  readonly from: number;
  readonly to: number;
}

export interface GoalPoint {
  readonly lesson: Lesson;
  readonly standing: Standing;
}

export interface GoalSeries {
  readonly key: string;
  readonly quantity: Quantity;
  readonly points: readonly GoalPoint[];
}

/** What became of the plan that was open at a lesson. */
export interface HeldPoint extends LastPlan {
  readonly lesson: Lesson;
}

export interface ClubProgress {
  /** As the first of the lessons writes it. */
  readonly club: string | undefined;
  /** With a date, the oldest first. */
  readonly lessons: readonly Lesson[];
  readonly undated: readonly Lesson[];
  /** Days on which there was more than one: their order is not known. */
  readonly sameDays: readonly string[];
  readonly series: readonly Series[];
  /** Asked for or usual, and measured in no dated lesson. */
  readonly unmeasured: readonly Quantity[];
  readonly goals: readonly GoalSeries[];
  readonly held: readonly HeldPoint[];
  /** Of all plans: what they load that is noted as injured. */
  readonly cautions: readonly string[];
  /** Entries that cannot be true together, by lesson. */
  readonly conflicts: readonly { readonly lesson: Lesson; readonly count: number }[];
}

export interface ProgressRequest {
  /** The name of a club; all where undefined. */
  readonly club: string | undefined;
  /** Ids; what plans and goals are about where there are none. */
  readonly quantities: readonly string[];
}

/** What is shown of a club of which no goal and no plan says what it is about (a judgement). */
const usual = ['delivery.low_point.ahead', 'delivery.face_to_path', 'flight.carry', 'flight.finish'];
/** More time lines than these would not be looked at. */
const mostSeries = 8;

/** `lessons` are one student's, the oldest first, as `findLessons` gives them. */
export function progressOf(lessons: readonly Lesson[], request: ProgressRequest): readonly ClubProgress[] {
  const groups: Lesson[][] = [];
  for (const lesson of lessons) {
    if (request.club !== undefined && !isCalled(lesson, request.club)) continue;
    const known = groups.find(([first]) => isSameClub(clubOf(first!), clubOf(lesson)));
    if (known === undefined) groups.push([lesson]);
    else known.push(lesson);
  }
  return groups.map((own) => progressWith(own, request.quantities));
}

function isCalled({ club }: Lesson, name: string): boolean {
  return club?.trim().toLowerCase() === name.trim().toLowerCase();
}

function progressWith(own: readonly Lesson[], asked: readonly string[]): ClubProgress {
  const lessons = own.filter(({ date }) => date !== undefined);
  const days = lessons.map(({ date }) => date!);
  const goals = goalSeries(lessons);
  const wanted = quantitiesOf(own, goals, asked);
  const all = wanted.map((quantity) => seriesOf(quantity, lessons));
  return {
    club: own[0]!.club,
    lessons,
    undated: own.filter(({ date }) => date === undefined),
    sameDays: [...new Set(days.filter((day, i) => days.indexOf(day) !== i))],
    series: all.filter(({ points }) => points.length > 0),
    unmeasured: all.flatMap(({ quantity, points }) => (points.length === 0 ? [quantity] : [])),
    goals,
    held: lessons.flatMap((lesson): HeldPoint[] => {
      const held = lastPlanOf(lesson, own);
      return held === undefined ? [] : [{ lesson, ...held }];
    }),
    cautions: [...new Set(own.flatMap(({ analysis }) => planCautions(analysis)))],
    conflicts: lessons.map((lesson) => ({
      lesson,
      count: lesson.analysis.findings.filter(({ code }) => conflictCodes.has(code)).length,
    })),
  };
}

function quantitiesOf(
  own: readonly Lesson[],
  goals: readonly GoalSeries[],
  asked: readonly string[],
): readonly Quantity[] {
  const planned = own.flatMap(({ analysis: { document } }) =>
    document.kind === 'swing' ? document.plan.flatMap(({ change }) => change?.value ?? []) : [],
  );
  const found = [...planned, ...goals.map(({ quantity }) => quantity.id), ...usual];
  const ids = asked.length > 0 ? asked : [...new Set(found)].slice(0, mostSeries);
  const { registry } = own.at(-1)!.analysis.subject;
  return [...new Set(ids)].flatMap((id) => registry.find(id) ?? []);
}

function seriesOf(quantity: Quantity, lessons: readonly Lesson[]): Series {
  const points = lessons.flatMap((lesson): ProgressPoint[] => {
    const { account, subject } = lesson.analysis;
    const value = account && measuredOf(account, subject.shots?.summary).of(quantity.id);
    if (value === undefined) return [];
    return [{ lesson, value, low: value.value - wide95 * value.u, high: value.value + wide95 * value.u }];
  });
  const change = points.length < 2 ? undefined : differenceOf(points[0]!.value, points.at(-1)!.value);
  return { quantity, points, change, targets: targetsOf(quantity, lessons) };
}

function targetsOf({ id }: Quantity, lessons: readonly Lesson[]): readonly PlannedTarget[] {
  return lessons.flatMap((lesson, i): PlannedTarget[] => {
    const { document } = lesson.analysis;
    const next = lessons.slice(i + 1).find(({ date }) => date !== lesson.date);
    const plan = document.kind === 'swing' ? document.plan : [];
    return plan.flatMap(({ quantity, to }): PlannedTarget[] => {
      if (quantity?.id !== id || to === undefined || isImpossible(to.target, quantity)) return [];
      const { target } = to;
      const [from, end] = target.kind === 'window' ? [target.from, target.to] : [target.value, target.value];
      return [{ lesson, next, from, to: end }];
    });
  });
}

/** Each thing that any lesson's goals ask for, with its standing at every lesson whose goals ask for it. */
function goalSeries(lessons: readonly Lesson[]): readonly GoalSeries[] {
  const found = new Map<string, { key: string; quantity: Quantity; points: GoalPoint[] }>();
  for (const lesson of lessons) {
    const { account, subject } = lesson.analysis;
    if (account === undefined) continue;
    const belief = beliefAsItStands(account, subject.student?.document.hand?.value);
    const wanted = goalsOf(subject).flatMap(({ goal }) =>
      wantedOf(goal, belief, account.situation, subject.registry),
    );
    for (const one of wanted) {
      const name = `${one.key} ${one.quantity.id}`;
      const known = found.get(name) ?? { key: one.key, quantity: one.quantity, points: [] };
      // Two goals of one lesson that ask for the same thing: the first one is shown.
      if (known.points.at(-1)?.lesson !== lesson)
        known.points.push({ lesson, standing: standingOf(one, belief, account.situation) });
      found.set(name, known);
    }
  }
  return [...found.values()];
}
