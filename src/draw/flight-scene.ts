// What is known of a flight, in metres from the ball, and the scale that it all fits into; knows no shape and no colour.
import { flightPathOf } from '../analysis/flight-path.ts';
import type { Analysis } from '../analysis/result.ts';
import { intervalOf } from '../judgement/goal-standing.ts';
import { landingsOf, type Ellipse } from '../model/shots.ts';
import type { Value } from '../model/value.ts';
import type { Interval } from '../model/windows.ts';
import type { PathPoint } from '../physics/flight.ts';
import { expectedOf, valueOf } from './known.ts';

/** √χ²₀.₉₅ with 2 degrees of freedom, √(−2 ln 0.05): the semi-axes of a normal spread's 95 % ellipse in standard deviations. */
export const factor95 = Math.sqrt(-2 * Math.log(0.05));

/** Seen from above, m. */
export interface Spot {
  readonly ahead: number;
  readonly right: number;
}

export interface Landing extends Spot {
  readonly uAhead: number;
  readonly uRight: number;
  /** The carry that it comes from. */
  readonly id: string;
}

export interface Scene {
  readonly path: readonly PathPoint[] | undefined;
  readonly recorded: Landing | undefined;
  readonly expected: Landing | undefined;
  readonly start: Value | undefined;
  readonly launch: Value | undefined;
  readonly apex: Value | undefined;
  readonly descent: Value | undefined;
  readonly shots: readonly Spot[];
  readonly ellipse: Ellipse | undefined;
  readonly goal: { readonly carry: Interval | undefined; readonly finish: Interval | undefined } | undefined;
  readonly wind: { readonly from: number; readonly speed: number } | undefined;
  /** As far ahead, up, and to each side as anything reaches, m. */
  readonly extent: {
    readonly ahead: number;
    readonly up: number;
    readonly left: number;
    readonly right: number;
  };
}

export function sceneOf(analysis: Analysis): Scene {
  const { shots: listed } = analysis.subject;
  const path = flightPathOf(analysis);
  const [carry, finish, start, launch, apex, descent, speed] = [
    'flight.carry',
    'flight.finish',
    'flight.start',
    'flight.launch_angle',
    'flight.apex',
    'flight.descent',
    'conditions.wind',
  ].map((id) => possible(valueOf(analysis, id), analysis));
  const recorded = carry?.kind === 'entered' ? landingAt(carry, finish) : undefined;
  const expected = expectedLanding(analysis, path, recorded === undefined ? carry : undefined, finish);
  const bearing = analysis.account?.situation.windBearing;
  const known = {
    path,
    recorded,
    expected,
    start,
    launch,
    apex,
    descent,
    shots: landingsOf(
      (listed?.shots ?? []).map(
        ({ measures }) => new Map([...measures].map(([id, { value }]) => [id, value] as const)),
      ),
    ).map(([ahead, right]) => ({ ahead, right })),
    ellipse: listed?.summary?.ellipse,
    goal: goalOf(analysis),
    wind:
      bearing !== undefined && speed && speed.value > 0 ? { from: bearing, speed: speed.value } : undefined,
  };
  return { ...known, extent: extentOf(known) };
}

/**
 * Where the computed way ends, as sure as what the other entries say of carry and curve; without a way where a carry that
 * was not entered leads.
 */
function expectedLanding(
  analysis: Analysis,
  path: Scene['path'],
  carry: Value | undefined,
  finish: Value | undefined,
): Landing | undefined {
  const end = path?.at(-1);
  if (end === undefined) return carry && landingAt(carry, finish);
  const [byCarry, byCurve] = ['flight.carry', 'flight.curve'].map((id) => expectedOf(analysis, id));
  const { ahead, right } = end;
  return { ahead, right, uAhead: byCarry?.u ?? 0, uRight: byCurve?.u ?? 0, id: 'flight.carry' };
}

/** What lies beyond all bounds would leave no scale for the rest. */
function possible(value: Value | undefined, { subject }: Analysis): Value | undefined {
  const bounds = value && subject.registry.find(value.id)?.bounds;
  return bounds && value.value >= bounds.min && value.value <= bounds.max ? value : undefined;
}

/** The carry is the straight way to the landing; without a finish the ball is taken to come down on the target line. */
function landingAt(carry: Value, finish: Value | undefined): Landing | undefined {
  if (!(carry.value > 0)) return undefined;
  const right = finish && Math.abs(finish.value) <= carry.value ? finish.value : 0;
  const ahead = Math.sqrt(carry.value * carry.value - right * right);
  return { ahead, right, uAhead: carry.u ?? 0, uRight: finish?.u ?? 0, id: carry.id };
}

function goalOf({ document, subject }: Analysis): Scene['goal'] {
  if (document.kind !== 'swing' || document.goals[0] === undefined) return undefined;
  const { targets } = document.goals[0];
  const interval = (key: string): Interval | undefined => {
    const found = targets.get(key) ?? targets.get(`flight.${key}`);
    const bounds = subject.registry.find(`flight.${key}`)?.bounds;
    if (found === undefined || bounds === undefined) return undefined;
    const window = intervalOf(found.target, found.quantity);
    return window.min >= bounds.min && window.max <= bounds.max ? window : undefined;
  };
  const [carry, finish] = [interval('carry'), interval('finish')];
  return (carry ?? finish) ? { carry, finish } : undefined;
}

function extentOf({
  path,
  recorded,
  expected,
  apex,
  shots,
  ellipse,
  goal,
}: Omit<Scene, 'extent'>): Scene['extent'] {
  const spots: Spot[] = [...(path ?? []), ...shots];
  for (const landing of [recorded, expected]) {
    if (landing === undefined) continue;
    const { ahead, right, uAhead, uRight } = landing;
    const [far, wide] = [factor95 * uAhead, factor95 * uRight];
    spots.push({ ahead: ahead + far, right: right + wide }, { ahead, right: right - wide });
  }
  if (ellipse) {
    const far = factor95 * ellipse.long;
    spots.push({ ahead: ellipse.ahead + far, right: ellipse.right + far });
    spots.push({ ahead: ellipse.ahead, right: ellipse.right - far });
  }
  const { carry, finish } = goal ?? {};
  spots.push({ ahead: carry?.max ?? 0, right: finish?.max ?? 0 }, { ahead: 0, right: finish?.min ?? 0 });
  const most = (numbers: readonly number[]): number => Math.max(0, ...numbers.filter(Number.isFinite));
  return {
    ahead: most(spots.map(({ ahead }) => ahead)),
    up: most([...(path ?? []).map(({ up }) => up), apex?.value ?? 0]),
    left: most(spots.map(({ right }) => -right)),
    right: most(spots.map(({ right }) => right)),
  };
}
