// Which delivery the observed flight allows, and which one a wanted flight asks for; knows no entry of path or face.
import { contextOf } from './context.ts';
import { reachOf } from './intervention.ts';
import { mirroredNumber, mirroredSituation, type Player } from './mirror.ts';
import { posteriorOf } from './posterior.ts';
import { reconcile, textOfFit, type Reconciliation } from './reconciliation.ts';
import { rememberedByText } from './remembered.ts';
import type { Context, Rule } from './rule.ts';
import { flightRules } from './rules/flight.ts';
import { impactRules } from './rules/impact.ts';
import { finishFrom } from '../physics/flight-geometry.ts';
import type { Situation } from './value.ts';

export interface Interval {
  readonly min: number;
  readonly max: number;
}

export interface FlightWindow extends Interval {
  readonly value: number;
  readonly u: number;
}

export const windowIds = [
  'delivery.face_to_path',
  'delivery.path',
  'delivery.face',
  'delivery.obliquity',
] as const;
export type WindowId = (typeof windowIds)[number];

/** Whatever else would say something of path or face than the flight does. */
const otherWitnesses = ['delivery.arc.direction', 'ground.divot.direction'];

/** Of 95 % of a normal distribution, in standard uncertainties. */
const coverage = 1.959964;

/**
 * The 95 % intervals that the observed flight allows, the coach's own entries of path and face left out. Empty where too
 * little of the flight was entered to say anything. `off` are ids of entries that do not fit, and are not believed either.
 */
export function windowsFromFlight(
  situation: Situation,
  off: readonly string[] = [],
): ReadonlyMap<WindowId, FlightWindow> {
  const without = new Set<string>([...windowIds, ...otherWitnesses, ...off]);
  const plain = mirroredSituation(situation);
  const key = `${situation.hand} ${textOfFit(plain, without)}`;
  return windowsFound(key, () => windowsFrom(reconcile(plain, without), situation));
}

const windowsFound = rememberedByText<ReadonlyMap<WindowId, FlightWindow>>(4);

function windowsFrom(at: Reconciliation | undefined, player: Player): ReadonlyMap<WindowId, FlightWindow> {
  const windows = new Map<WindowId, FlightWindow>();
  if (!at) return windows;
  const posterior = posteriorOf(at, player, windowIds);
  for (const id of windowIds) {
    const known = posterior.get(id);
    if (!known) continue;
    const { value, u } = known;
    windows.set(id, { value, u, min: value - coverage * u, max: value + coverage * u });
  }
  return windows;
}

export interface FlightGoal {
  /** SI, signed as this player sees it; a single number is an interval without width. */
  readonly start?: Interval | undefined;
  readonly curve?: Interval | undefined;
  readonly finish?: Interval | undefined;
  /** How far the shot shall carry; what a shape asks of the curve goes with it. */
  readonly carry?: Interval | undefined;
  /** The shape wanted, signs as for a right-handed player; used where start or curve is not given in numbers. */
  readonly shape?:
    | { readonly start: Side | undefined; readonly curve: Side | undefined; readonly large: boolean }
    | undefined;
}

type Side = -1 | 0 | 1;

/** Not every path of its window suits every face of the other: each edge goes with edges of the others, the middles go together. */
export interface GoalWindow extends Interval {
  /** The mean of the corners: where the middle of the goal is met, as far as flight is linear between its edges. */
  readonly middle: number;
}

/**
 * The intervals that would produce the wanted start, curve and finish at the club speed, attack and loft of this record,
 * taken as exact: the corners of the wanted window carried back through flight and impact. Face-to-path alone where
 * only the curve is wanted. `fitted` is the fit of this record, where it is at hand. Empty where speed or loft is not known, or the goal cannot be reached.
 */
export function windowsForGoal(
  situation: Situation,
  goal: FlightGoal,
  fitted?: Reconciliation,
): ReadonlyMap<WindowId, GoalWindow> {
  const none = new Map<WindowId, GoalWindow>();
  const shot = shotWith(situation, fitted);
  const wanted = shot && wantedOf(goal, situation, shot);
  if (!shot || !wanted) return none;

  const corners = cornersOf(wanted.first.interval, wanted.second.interval).map(([first, second]) =>
    solved(shot, [wanted.first.of, wanted.second.of], [first, second]),
  );
  if (!corners.every((corner) => corner !== undefined)) return none;
  const put = (id: WindowId, numbers: readonly number[]): void => {
    const shown = numbers.map((number) => mirroredNumber(id, number, situation));
    const middle = shown.reduce((sum, number) => sum + number, 0) / shown.length;
    none.set(id, { min: Math.min(...shown), max: Math.max(...shown), middle });
  };
  put(
    'delivery.face_to_path',
    corners.map(({ path, face }) => face - path),
  );
  if (wanted.knows === 'curve') return none;
  put(
    'delivery.path',
    corners.map(({ path }) => path),
  );
  put(
    'delivery.face',
    corners.map(({ face }) => face),
  );
  return none;
}

/** As for a right-handed player. Undefined where speed or loft is not known. */
export function shotWith(situation: Situation, fitted?: Reconciliation): Shot | undefined {
  const plain = mirroredSituation(situation);
  const narrow = fitted ?? reconcile(plain);
  if (!narrow) return undefined;
  // Where nothing of the flight was entered the fit ends before it.
  const at = narrow.forward.nodeOf.has('flight.carry') ? narrow : reachOf(narrow);
  const needed = ['delivery.club_speed', 'delivery.delivered_loft'];
  if (posteriorOf(at, { ...situation, hand: 'right' }, needed).size < needed.length) return undefined;
  return shotOf(at, contextOf(plain));
}

export interface Flown {
  readonly start: number;
  readonly curve: number;
  readonly finish: number;
}

/** What the ball does at a path and face, all else as in the record. */
export type Shot = (path: number, face: number) => (Flown & { readonly carry: number }) | undefined;

function shotOf(at: Reconciliation, context: Context): Shot | undefined {
  const impact = impactRules.find((rule) => rule.name === 'impact')!;
  const flight = flightRules.find((rule) => rule.name === 'flight')!;
  if (impact.appliesTo?.(context) === false) return undefined;
  const valueOf = (id: string): number | undefined => {
    const node = at.forward.nodeOf.get(id);
    return node === undefined ? undefined : at.values[node];
  };
  const inputsOf = (rule: Rule, own: ReadonlyMap<string, number>): readonly number[] | undefined => {
    const inputs = rule.inputs.map((id) => own.get(id) ?? valueOf(id));
    return inputs.every((input) => input !== undefined) ? inputs : undefined;
  };
  return (path, face) => {
    const struck = inputsOf(
      impact,
      new Map([
        ['delivery.path', path],
        ['delivery.face', face],
      ]),
    );
    const launch = struck && impact.compute(struck, context);
    if (!launch) return undefined;
    const launched = inputsOf(flight, new Map(impact.outputs.map((id, o) => [id, launch[o]!])));
    const outcome = launched && (flight.roughly ?? flight.compute)(launched, context);
    if (!outcome) return undefined;
    const start = launch[impact.outputs.indexOf('flight.start')]!;
    const [carry, curve] = [outcome[0]!, outcome[1]!];
    const finish = finishFrom(start, curve, carry);
    return finish === undefined ? undefined : { start, curve, finish, carry };
  };
}

interface Wanted {
  readonly first: { readonly of: keyof Flown; readonly interval: Interval };
  readonly second: { readonly of: keyof Flown; readonly interval: Interval };
  /** `curve` where the start was taken as straight only to have a second number. */
  readonly knows: 'both' | 'curve';
}

const degree = Math.PI / 180;

/** What a word for a shape means in numbers; curves as shares of the carry. Judgement. */
const words = {
  straightStart: 1.5 * degree,
  mostStart: 6 * degree,
  straightCurve: 0.015,
  usualCurve: 0.08,
  mostCurve: 0.2,
};

/**
 * What the word for a shape asks of start and curve, as for a right-handed player, with so much carry; what it leaves open is left out.
 */
export function windowsOfShape(
  shape: NonNullable<FlightGoal['shape']>,
  carry: number,
): { readonly start: Interval | undefined; readonly curve: Interval | undefined } {
  const [least, most] = shape.large
    ? [words.usualCurve, words.mostCurve]
    : [words.straightCurve, words.usualCurve];
  return {
    start: sided(shape.start, words.straightStart, words.straightStart, words.mostStart),
    curve: sided(shape.curve, words.straightCurve * carry, least * carry, most * carry),
  };
}

function wantedOf(goal: FlightGoal, player: Player, shot: Shot): Wanted | undefined {
  const own = (key: keyof Flown | 'carry'): Interval | undefined => {
    const interval = goal[key];
    if (!interval) return undefined;
    const ends = [interval.min, interval.max].map((end) => mirroredNumber(`flight.${key}`, end, player));
    return { min: Math.min(...ends), max: Math.max(...ends) };
  };
  const carry = shot(0, 0)?.carry;
  if (carry === undefined) return undefined;
  const asked = goal.shape && windowsOfShape(goal.shape, own('carry')?.min ?? carry);
  const start = own('start') ?? asked?.start;
  const curve = own('curve') ?? asked?.curve;
  const finish = own('finish');
  if (start && finish) return both('start', start, 'finish', finish);
  if (start && curve) return both('start', start, 'curve', curve);
  if (curve && finish) return both('curve', curve, 'finish', finish);
  if (!curve) return undefined;
  return { ...both('start', { min: 0, max: 0 }, 'curve', curve), knows: 'curve' };
}

function both(first: keyof Flown, one: Interval, second: keyof Flown, other: Interval): Wanted {
  return { first: { of: first, interval: one }, second: { of: second, interval: other }, knows: 'both' };
}

function sided(side: Side | undefined, straight: number, least: number, most: number): Interval | undefined {
  if (side === undefined) return undefined;
  if (side === 0) return { min: -straight, max: straight };
  return side > 0 ? { min: least, max: most } : { min: -most, max: -least };
}

function cornersOf(first: Interval, second: Interval): readonly (readonly [number, number])[] {
  return [first.min, first.max].flatMap((a) => [second.min, second.max].map((b) => [a, b] as const));
}

/** Newton's steps in path and face, slopes by differences of a tenth of a degree. */
function solved(
  shot: Shot,
  of: readonly [keyof Flown, keyof Flown],
  target: readonly [number, number],
): { readonly path: number; readonly face: number } | undefined {
  let [path, face] = [0, 0];
  const step = 0.1 * degree;
  for (let n = 0; n < 12; n++) {
    const here = shot(path, face);
    const [byPath, byFace] = [shot(path + step, face), shot(path, face + step)];
    if (!here || !byPath || !byFace) return undefined;
    const off = of.map((key, k) => target[k]! - here[key]);
    const [a, b] = of.map((key) => (byPath[key] - here[key]) / step);
    const [c, d] = of.map((key) => (byFace[key] - here[key]) / step);
    const determinant = a! * d! - b! * c!;
    const moves = [(off[0]! * d! - off[1]! * c!) / determinant, (off[1]! * a! - off[0]! * b!) / determinant];
    if (!moves.every(Number.isFinite)) return undefined;
    path += Math.max(-0.2, Math.min(0.2, moves[0]!));
    face += Math.max(-0.2, Math.min(0.2, moves[1]!));
    if (Math.max(...moves.map(Math.abs)) < 0.005 * degree) return { path, face };
  }
  return undefined;
}
