// What a lesson still has to measure: proofs of the open plan first, then what makes the quantities of its goals surest; in plain data and short words.
import { showSpread } from '../measure/show.ts';
import type { Account } from '../model/account.ts';
import { measureNext, type Narrowing } from '../model/measure-next.ts';
import type { Goal, SwingRecord } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { standardUncertainty } from '../registry/registry.ts';
import type { Lesson } from './lessons.ts';
import { openPlanOf, provingIds } from './open-plan.ts';
import type { Analysis } from './result.ts';
import { isOfLesson, usualMethods } from './usual-entries.ts';
import { lowerFirst } from '../measure/quote.ts';

export interface NextEntry {
  readonly quantity: Quantity;
  /** What this coach measured it, or the like of it, with last; undefined where nobody knows. */
  readonly method: string | undefined;
  /** The standard uncertainty that this gives, SI. */
  readonly u: number;
  /** Whether the open plan asks for it. */
  readonly reason: 'proof' | 'goals';
  /** Where it is written. */
  readonly place: 'record' | 'student';
  readonly narrowings: readonly (Omit<Narrowing, 'id'> & { readonly quantity: Quantity })[];
}

/** So many beside the proofs: nobody measures more in one go. */
const most = 3;

/** What a record is for where neither a goal nor a plan says anything else. */
const usualGoals = [
  'delivery.low_point.ahead',
  'delivery.face_to_path',
  'flight.start',
  'flight.curve',
  'flight.carry',
];

/** What only follows from others: to ask for it would be to ask for those. */
const following: ReadonlySet<string> = new Set([
  'delivery.face_to_path',
  'delivery.obliquity',
  'delivery.release_ratio',
  'flight.speed_ratio',
]);

const found = new WeakMap<Account, Map<string, readonly NextEntry[]>>();

/** `lessons` are those of the student, this record's own among them. Empty for anything but a record. */
export function nextEntriesOf(analysis: Analysis, lessons: readonly Lesson[]): readonly NextEntry[] {
  const { account, document, subject } = analysis;
  if (account === undefined || document.kind !== 'swing') return [];
  const { registry, workspace } = subject;
  const club = { name: document.club?.value, inBag: subject.club };
  const isEntered = (id: string): boolean => account.situation.observations.has(id);
  const plan = openPlanOf(lessons, { date: document.date?.value, club });
  const proofs = plan === undefined ? [] : provingIds(plan.changes, registry);
  const goals = goalIds([...document.goals, ...(subject.student?.document.goals ?? [])]);
  const own = provingIds(document.plan, registry);
  const wanted = [
    ...new Set([...proofs, ...own, ...(goals.length > 0 ? goals : own.length > 0 ? [] : usualGoals)]),
  ];
  const methodOf = usualMethods(recordsBefore(analysis, document, lessons));
  const candidates = registry.quantities
    .filter(({ id }) => !isEntered(id) && !following.has(id) && placeOf(id, analysis) !== undefined)
    .map((quantity) => {
      const method = methodOf(quantity);
      const measure = { stated: undefined, method, estimate: false };
      const { u } = standardUncertainty(quantity, measure, workspace?.document.coverage ?? 1, registry);
      return { id: quantity.id, u, method };
    });
  const first = proofs.filter((id) => !isEntered(id));
  const key = JSON.stringify([wanted, first, candidates]);
  const kept = found.get(account) ?? new Map<string, readonly NextEntry[]>();
  found.set(account, kept);
  const before = kept.get(key);
  if (before !== undefined) return before;
  const entries = measureNext(account, { goals: wanted, candidates, first, most }).flatMap(
    ({ id, u, narrowings }): NextEntry[] => {
      const quantity = registry.find(id);
      const place = placeOf(id, analysis);
      if (quantity === undefined || place === undefined) return [];
      const method = candidates.find((candidate) => candidate.id === id)?.method;
      const reason = first.includes(id) ? 'proof' : 'goals';
      const named = narrowings.flatMap((one) => {
        const of = registry.find(one.id);
        return of === undefined || isUnseen(of, one) ? [] : [{ ...one, quantity: of }];
      });
      return [{ quantity, method, u, reason, place, narrowings: named }];
    },
  );
  kept.set(key, entries);
  return entries;
}

/** "carry ± 9 m → ± 6 m", "face to path not known → ± 1.4 deg". */
export function narrowingWords({
  quantity,
  before,
  after,
  wasKnown,
  isKnown,
}: NextEntry['narrowings'][number]): string {
  const name = lowerFirst(quantity.title);
  const to = `± ${showSpread(quantity, after)}`;
  if (wasKnown) return `${name} ± ${showSpread(quantity, before)} → ${to}`;
  return isKnown ? `${name} not known → ${to}` : `${name} hardly known → ${to}`;
}

/** What is the same once rounded is no news. */
function isUnseen(quantity: Quantity, { before, after, wasKnown }: Narrowing): boolean {
  return wasKnown && showSpread(quantity, before) === showSpread(quantity, after);
}

/** "by radar, ± 1 deg"; without a method only how sure it usually is. */
export function methodWords({ quantity, method, u }: Pick<NextEntry, 'quantity' | 'method' | 'u'>): string {
  const spread = `± ${showSpread(quantity, u)}`;
  return method === undefined ? spread : `by ${method}, ${spread}`;
}

function goalIds(goals: readonly Goal[]): readonly string[] {
  const ids = goals.flatMap(({ shape, targets }) => [
    ...(shape === undefined ? [] : ['delivery.face_to_path', 'flight.start', 'flight.curve']),
    ...[...targets.values()].map(({ quantity }) => quantity.id),
  ]);
  return [...new Set(ids)];
}

/** This one first, then the newest. */
function recordsBefore(
  { uri }: Analysis,
  document: SwingRecord,
  lessons: readonly Lesson[],
): readonly SwingRecord[] {
  const others = lessons.toReversed().flatMap((lesson) => {
    const other = lesson.analysis.document;
    return lesson.uri === uri || other.kind !== 'swing' ? [] : [other];
  });
  return [document, ...others];
}

/** A student's own measures stand in the student's file, where there is one. */
function placeOf(id: string, { subject }: Analysis): NextEntry['place'] | undefined {
  if (isOfLesson(id)) return 'record';
  const isOfStudent = id.startsWith('student.') && subject.student !== undefined;
  const isOfClub = id.startsWith('club.') && subject.club !== undefined;
  return isOfStudent || isOfClub ? 'student' : undefined;
}
