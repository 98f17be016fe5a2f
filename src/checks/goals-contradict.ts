// The check that says which goals for one club no single shot could meet together, at each of the two.
import type { Span } from '../measure/measure.ts';
import { finishWithin } from '../physics/flight-geometry.ts';
import { isImpossible } from '../judgement/foreseer.ts';
import { intervalOf, wantedOfContact } from '../judgement/goal-standing.ts';
import { grouped } from '../judgement/grouped.ts';
import { quote } from '../measure/quote.ts';
import type { Goal } from '../record/document.ts';
import { findShape } from '../registry/registry.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { textAt } from './fixes.ts';
import { handOf } from './handed.ts';
import { straightTo } from './shape-evidence.ts';
import type { Subject } from './subject.ts';

export const goalsContradict: Check = {
  code: 'goals-contradict',
  severity: 'warning',
  title: 'Goals that contradict each other',
  explanation: explain({
    found:
      'Two goals for the same club ask for what no shot can be at once: a draw and a fade, a start to the left and one to the right, a straight shot and a curve of 15 m, two windows without a number in common, a finish where no ball lands that starts and curves as asked, or a total distance far short of the carry.',
    matters:
      'No plan can reach both, and none would be proposed. A goal that is a single number reaches as far as its ± or, without one, as its quantity is read without an instrument.',
    raises: `swing: 1
club: hybrid
goals: [{ shape: draw, carry: 178 m }, { shape: fade }]`,
    accepts: `swing: 1
club: hybrid
goals: [{ shape: draw, carry: 178 m }, { carry: 170..180 m }]`,
    source:
      'the meaning of the words in the trade, and how straight is straight: common practice, no source; where a ball lands follows from start, curve and carry by plain geometry; no ball spins back by more than 10 m (judgement).',
  }),
  kinds: ['swing', 'student'],
  find: (subject) => {
    const { document } = subject;
    if (document.kind !== 'swing' && document.kind !== 'student') return [];
    const asks = document.goals.flatMap((goal) => asksOf(goal, subject));
    // A goal that names no club is for all of them.
    const ofAll = extremesOf(asks);
    const byClub = new Map(
      [...grouped(asks, ({ goal }) => goal.club?.value)].map(([club, own]) => [club, extremesOf(own)]),
    );
    const told = new Set<Span>();
    const pairs = asks.flatMap((ask): RawFinding[] => {
      const { club } = ask.goal;
      const rivals = club === undefined ? [ofAll] : [byClub.get(club.value), byClub.get(undefined)];
      const other = rivals
        .flatMap((extremes) => extremes?.get(ask.about) ?? [])
        .find((rival) => rival.goal !== ask.goal && areApart(ask, rival));
      if (other === undefined || told.has(ask.span)) return [];
      told.add(ask.span);
      return [findingOf(ask, [other], subject)];
    });
    const unclubbed = asks.filter(({ goal }) => goal.club === undefined);
    const landings = [...byClub.keys()].flatMap((club) => {
      const own = club === undefined ? [] : asks.filter(({ goal }) => goal.club?.value === club);
      const all = [...own, ...unclubbed];
      return [...landingFindings(all, subject), ...runFindings(all, subject)];
    });
    return [...pairs, ...landings.filter(({ span }) => !told.has(span) && told.add(span))];
  },
};

/** A finish where no ball comes down that starts, curves and carries as asked, at all that ask for it; without a carry, with any. */
function landingFindings(asks: readonly Ask[], subject: Subject): readonly RawFinding[] {
  const extremes = extremesOf(asks);
  const windowOf = (id: string): { readonly min: number; readonly max: number } | undefined => {
    const [latest, earliest] = extremes.get(id) ?? [];
    return latest && earliest && { min: latest.min, max: earliest.max };
  };
  const [start, curve, finish] = ['start', 'curve', 'finish'].map((part) => windowOf(`flight.${part}`));
  const carry = windowOf('flight.carry') ?? subject.registry.find('flight.carry')?.bounds;
  if (start === undefined || curve === undefined || finish === undefined || carry === undefined) return [];
  // Windows that exclude one another are told of by themselves.
  if ([start, curve, finish, carry].some(({ min, max }) => min > max)) return [];
  const reach = finishWithin(start, curve, carry);
  const isLeftOf = reach.max < finish.min;
  if (!isLeftOf && !(reach.min > finish.max)) return [];
  // The first is the one that begins last, the second the one that ends first.
  const [held, wanted] = isLeftOf ? [1, 0] : [0, 1];
  const all = [
    extremes.get('flight.start')![held]!,
    extremes.get('flight.curve')![held]!,
    extremes.get('flight.finish')![wanted]!,
  ];
  if (isToldOfShape(all)) return [];
  const parts = all.filter((ask, at) => all.findIndex(({ span }) => span === ask.span) === at);
  return parts.map((ask) =>
    findingOf(
      ask,
      parts.filter((other) => other !== ask),
      subject,
    ),
  );
}

/** How far a ball spins back from where it came down, m, at the most: a judgement. */
const mostBack = 10;

/** A whole distance that ends before the ball comes down. */
function runFindings(asks: readonly Ask[], subject: Subject): readonly RawFinding[] {
  const extremes = extremesOf(asks);
  const [carry] = extremes.get('flight.carry') ?? [];
  const [, total] = extremes.get('flight.total') ?? [];
  if (carry === undefined || total === undefined || total.max >= carry.min - mostBack) return [];
  return [findingOf(carry, [total], subject), findingOf(total, [carry], subject)];
}

/** A shape beside start and finish of its own goal is held against the curve that they leave. */
function isToldOfShape([start, curve, finish]: readonly Ask[]): boolean {
  if (curve?.key !== 'shape' || start?.key === 'shape') return false;
  return start?.goal === curve.goal && finish?.goal === curve.goal;
}

/** One thing that a goal wants, as an interval: numbers in SI, words as the side that they name. */
interface Ask {
  readonly goal: Goal;
  /** What it is about; only what is about the same thing can contradict. */
  readonly about: string;
  readonly min: number;
  readonly max: number;
  readonly key: string;
  readonly span: Span;
}

function asksOf(goal: Goal, subject: Subject): readonly Ask[] {
  // What cannot be at all is told of by itself.
  const possible = [...goal.targets].filter(([, { quantity, target }]) => !isImpossible(target, quantity));
  const numbers = possible.map(([key, { quantity, target, span }]): Ask => ({
    goal,
    about: quantity.id,
    key,
    span,
    ...intervalOf(target, quantity),
  }));
  const contact = wantedOfContact(goal, subject.registry).map((one): Ask => ({
    ...one,
    goal,
    about: one.quantity.id,
  }));
  return [...numbers, ...asksOfShape(goal, subject), ...contact];
}

/** A word against a word by the sides that they name; against numbers where the hand tells which side that is, or the word says straight. */
function asksOfShape(goal: Goal, subject: Subject): readonly Ask[] {
  const { shape: word } = goal;
  const shape = word && findShape(word.value);
  if (word === undefined || shape === undefined) return [];
  const hand = handOf(subject);
  return (['start', 'curve'] as const).flatMap((part): Ask[] => {
    const side = shape[part];
    if (side === undefined) return [];
    const at = { goal, key: 'shape', span: word.span };
    const asks: Ask[] = [{ ...at, about: `side of ${part}`, min: side, max: side }];
    const about = `flight.${part}`;
    const seen = hand === 'left' ? -side : side;
    if (seen === 0) {
      const most = straightTo(about, subject, carryOf(goal));
      asks.push({ ...at, about, min: -most, max: most });
    } else if (hand !== undefined)
      asks.push({ ...at, about, min: seen > 0 ? 0 : -Infinity, max: seen > 0 ? Infinity : 0 });
    return asks;
  });
}

function carryOf({ targets }: Goal): number | undefined {
  const carry = targets.get('carry');
  return carry && intervalOf(carry.target, carry.quantity).max;
}

/** Windows that only touch leave a single number, which no shot is exactly. */
function areApart(one: Ask, other: Ask): boolean {
  const common = Math.min(one.max, other.max) - Math.max(one.min, other.min);
  return common < 0 || (common === 0 && one.max > one.min && other.max > other.min);
}

/** Of all about the same thing the one that begins last and the one that ends first: whatever contradicts any contradicts one of them. */
function extremesOf(asks: readonly Ask[]): ReadonlyMap<string, readonly [latest: Ask, earliest: Ask]> {
  const extremes = new Map<string, readonly [Ask, Ask]>();
  for (const ask of asks) {
    const [latest, earliest] = extremes.get(ask.about) ?? [ask, ask];
    extremes.set(ask.about, [ask.min > latest.min ? ask : latest, ask.max < earliest.max ? ask : earliest]);
  }
  return extremes;
}

function findingOf(ask: Ask, others: readonly Ask[], subject: Subject): RawFinding {
  const [own, ...rivals] = [ask, ...others].map(({ key, span }) => quote(`${key}: ${textAt(subject, span)}`));
  return {
    span: ask.span,
    message: `Found the goal ${own} beside ${rivals.join(' and ')} for the same club; expected goals that one shot can meet.`,
    related: others.map(({ span }) => ({ uri: subject.uri, span, message: 'The other goal' })),
  };
}
