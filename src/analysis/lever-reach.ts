// Over what a quantity is moved to see what would be: the windows that somebody gives it, and how far around them; moves nothing.
import { boundsFor, practiceFor, type Room, type Windows } from '../judgement/room.ts';
import type { Account } from '../model/account.ts';
import type { Quantity } from '../registry/quantity.ts';
import { windowsIn } from './plan.ts';
import type { Analysis } from './result.ts';
import type { WhatIf } from './what-if.ts';

/** SI, as this player sees left and right; what is planned as one number is a window without width. */
export interface LeverWindow extends Room {
  readonly of: 'template' | 'goal' | 'plan' | 'practice';
  /** The words that ask for it, where its ends alone would not say it. */
  readonly asked?: string | undefined;
}

export interface Reach extends Room {
  /** What is seen in practice is one only where nobody gives it another. */
  readonly windows: readonly LeverWindow[];
  /** What is possible at all. */
  readonly bounds: Room;
}

/** How far beyond all windows and the present: half as wide again, and no less than twice what a reading without an instrument is off (a judgement). */
const beyond = { share: 0.5, readings: 2 };
/** The same to both sides of the present, where not even practice has a window (a judgement). */
const alone = 4;

/** A window as far as it reaches now, and as it is with what is moved. */
interface Given {
  readonly of: LeverWindow['of'];
  readonly now: Room | undefined;
  readonly then: Room | undefined;
  readonly asked?: string | undefined;
}

/**
 * Asked of each quantity with the number at which it stands now. A slider goes by the windows as they are now, so that it stays while
 * another is moved: never beyond what is possible, and beyond what is seen in practice only as far as a window or the present is.
 */
export function reachesOf(
  analysis: Analysis,
  account: Account,
  found: WhatIf,
): (quantity: Quantity, now: number) => Reach {
  const { situation } = account;
  const taught = windowsIn(analysis.subject, account);
  return (quantity, now) => {
    const bounds = boundsFor(quantity, situation);
    const practice = practiceFor(quantity, situation);
    const given = givenTo(quantity, taught, analysis, found);
    const set = given.flatMap((one) => one.now ?? []);
    const windows = given.flatMap(({ of, then, asked }): LeverWindow[] =>
      then === undefined ? [] : [{ of, min: then.min, max: then.max, asked }],
    );
    if (set.length > 0) return { ...aroundAll(quantity, now, set, { practice, bounds }), windows, bounds };
    const side = alone * quantity.uncertainty.otherwise;
    const reach = practice ?? within({ min: now - side, max: now + side }, bounds);
    const usual =
      practice === undefined ? [] : [{ of: 'practice', min: practice.min, max: practice.max } as const];
    return { ...hull(now, [reach]), windows: [...windows, ...usual], bounds };
  };
}

function givenTo(
  { id }: Quantity,
  taught: Windows,
  { document }: Analysis,
  { goals, windows }: WhatIf,
): readonly Given[] {
  const template = taught.get(id);
  const wanted = goals.find((goal) => goal.now.wanted.quantity.id === id)?.now.wanted;
  const sought = windows.find((window) => window.id === id);
  const plan = document.kind === 'swing' ? document.plan : [];
  const target = plan.find(({ change, to }) => change?.value === id && to !== undefined)?.to?.target;
  const always = (of: Given['of'], room: Room | undefined, asked?: string): Given => {
    return { of, now: room, then: room, asked };
  };
  return [
    always('template', template && { min: template.from, max: template.to }),
    wanted === undefined
      ? { of: 'goal', now: sought?.now, then: sought?.then }
      : always('goal', wanted, wanted.asked),
    always(
      'plan',
      target?.kind === 'window'
        ? { min: target.from, max: target.to }
        : target && { min: target.value, max: target.value },
    ),
  ];
}

function aroundAll(
  { uncertainty }: Quantity,
  now: number,
  windows: readonly Room[],
  { practice, bounds }: { readonly practice: Room | undefined; readonly bounds: Room },
): Room {
  // An open end of a goal lies at what is possible, and draws the slider nowhere.
  const closed = windows.map(({ min, max }) => ({
    min: min > bounds.min ? min : max,
    max: max < bounds.max ? max : min,
  }));
  const ends = hull(now, closed);
  const margin = Math.max(beyond.share * (ends.max - ends.min), beyond.readings * uncertainty.otherwise);
  const wide = { min: ends.min - margin, max: ends.max + margin };
  const usual = practice === undefined ? wide : within(wide, hull(now, [practice, ends]));
  return hull(now, [within(usual, bounds)]);
}

function hull(now: number, rooms: readonly Room[]): Room {
  return {
    min: Math.min(now, ...rooms.map(({ min }) => min)),
    max: Math.max(now, ...rooms.map(({ max }) => max)),
  };
}

function within(room: Room, limits: Room): Room {
  return { min: Math.max(room.min, limits.min), max: Math.min(room.max, limits.max) };
}
