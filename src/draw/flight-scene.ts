// What is known of a flight, in metres from the ball, and the scale that it all fits into; knows no shape and no colour.
import {
  computedFlightOf,
  flightPathOf,
  type ComputedFlight,
  type FlightPath,
} from '../analysis/flight-path.ts';
import { counted } from '../measure/counted.ts';
import { goalsOf } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { intervalOf } from '../judgement/goal-standing.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { landingsOf, type Ellipse } from '../model/shots.ts';
import type { Value } from '../model/value.ts';
import type { Interval } from '../model/windows.ts';
import type { Quantity } from '../registry/quantity.ts';
import { sayingOf, valueOf } from './known.ts';
import { lowerFirst } from '../measure/quote.ts';
import { isOutside } from '../registry/registry.ts';

/** √χ²₀.₉₅ with 2 degrees of freedom, √(−2 ln 0.05): the semi-axes of a normal spread's 95 % ellipse in standard deviations. */
export const factor95 = Math.sqrt(-2 * Math.log(0.05));

/** Seen from above, m. */
export interface Spot {
  readonly ahead: number;
  readonly right: number;
}

export interface ShotSpot extends Spot {
  /** Far from the others: not among those that the ellipse goes by. */
  readonly isFar: boolean;
}

export interface Landing extends Spot {
  readonly uAhead: number;
  readonly uRight: number;
  /** The carry that it comes from. */
  readonly id: string;
}

export interface Zone {
  readonly carry: Interval | undefined;
  readonly finish: Interval | undefined;
  /** In the words of the goal; undefined where there is but one. */
  readonly name: string | undefined;
}

export interface Scene {
  readonly path: FlightPath | undefined;
  readonly recorded: Landing | undefined;
  /** Where the computed way ends; undefined where that is the recorded place. */
  readonly expected: Landing | undefined;
  /** Whose numbers way and expected place are, and which ones. */
  readonly computed: ComputedFlight;
  readonly start: Value | undefined;
  readonly launch: Value | undefined;
  readonly apex: Value | undefined;
  readonly descent: Value | undefined;
  readonly shots: readonly ShotSpot[];
  readonly ellipse: Ellipse | undefined;
  /** Each goal for itself: what one asks of the carry and another of the finish is no place that anybody wants. */
  readonly goals: readonly Zone[];
  readonly wind: { readonly from: number; readonly speed: number } | undefined;
  /** What cannot be drawn to any scale, in words: "carry 900 m (possible: 0..500 m)". */
  readonly left: readonly string[];
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
  const computed = computedFlightOf(analysis);
  const path = possible(computed.carry, analysis) && flightPathOf(computed);
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
  const expected = computed.by === 'all' && recorded ? undefined : expectedLanding(computed, path, analysis);
  const far = new Set(listed?.summary?.outliers);
  const shots = (listed?.shots ?? []).flatMap(({ measures }, place) =>
    landingsOf([new Map([...measures].map(([id, { value }]) => [id, value] as const))]).map(
      ([ahead, right]): ShotSpot => ({ ahead, right, isFar: far.has(place) }),
    ),
  );
  const wanted = zonesOf(analysis);
  const bearing = analysis.account?.situation.windBearing;
  const known = {
    path,
    recorded,
    expected,
    computed,
    start,
    launch,
    apex,
    descent,
    shots: shots.filter((shot) => isWithin(shot, analysis)),
    ellipse: listed?.summary?.ellipse,
    goals: wanted.zones,
    wind:
      bearing !== undefined && speed && speed.value > 0 ? { from: bearing, speed: speed.value } : undefined,
  };
  return { ...known, extent: extentOf(known), left: [...leftOf(analysis, shots), ...wanted.left] };
}

/** At the end of the way, where there is one. */
function expectedLanding(
  { carry, finish }: ComputedFlight,
  path: Scene['path'],
  analysis: Analysis,
): Landing | undefined {
  const [far, aside] = [carry, finish].map((value) => possible(value, analysis));
  const end = path?.at(-1);
  if (far === undefined || end === undefined) return far && landingAt(far, aside);
  return { ahead: end.ahead, right: end.right, uAhead: far.u ?? 0, uRight: aside?.u ?? 0, id: far.id };
}

/** What lies beyond all bounds would leave no scale for the rest. */
function possible(value: Value | undefined, { subject }: Analysis): Value | undefined {
  const bounds = value && subject.registry.find(value.id)?.bounds;
  return bounds && !isOutside(value.value, bounds) ? value : undefined;
}

/**
 * The carry is the straight way to the landing; without a finish the ball is taken to come down on the target line. Undefined where
 * it would come down farther aside than it flies.
 */
function landingAt(carry: Value, finish: Value | undefined): Landing | undefined {
  if (!(carry.value > 0) || Math.abs(finish?.value ?? 0) > carry.value) return undefined;
  const right = finish?.value ?? 0;
  const ahead = Math.sqrt(carry.value * carry.value - right * right);
  return { ahead, right, uAhead: carry.u ?? 0, uRight: finish?.u ?? 0, id: carry.id };
}

function zonesOf(analysis: Analysis): { readonly zones: readonly Zone[]; readonly left: readonly string[] } {
  const left: string[] = [];
  const asked = goalsOf(analysis.subject).flatMap(({ goal: { targets, shape } }, i): Zone[] => {
    const interval = (key: string): Interval | undefined => {
      const found = targets.get(key);
      if (found === undefined) return undefined;
      const { target, quantity } = found;
      const window = intervalOf(target, quantity);
      if (![window.min, window.max].some((end) => isOutside(end, quantity.bounds))) return window;
      left.push(
        `the goal’s ${beyond(quantity, target.kind === 'window' ? showWindow(quantity, target.from, target.to) : showValue(quantity, target.value))}`,
      );
      return undefined;
    };
    const [carry, finish] = [interval('carry'), interval('finish')];
    return (carry ?? finish) ? [{ carry, finish, name: shape?.value ?? `goal ${i + 1}` }] : [];
  });
  return { zones: asked.length > 1 ? asked : asked.map((one) => ({ ...one, name: undefined })), left };
}

function isWithin({ ahead, right }: Spot, { subject: { registry } }: Analysis): boolean {
  const [carry, finish] = ['carry', 'finish'].map((key) => registry.find(`flight.${key}`)?.bounds);
  return (
    (carry === undefined || Math.hypot(ahead, right) <= carry.max) &&
    (finish === undefined || Math.abs(right) <= finish.max)
  );
}

const placing = ['launch_angle', 'apex', 'descent', 'carry', 'start', 'curve', 'finish'];

/** Which entries and shots have no place on the picture, and why. */
function leftOf(analysis: Analysis, shots: readonly Spot[]): readonly string[] {
  const { registry } = analysis.subject;
  const values = placing.flatMap((key) => valueOf(analysis, `flight.${key}`) ?? []);
  const impossible = values.filter((value) => possible(value, analysis) === undefined);
  const [carry, finish] = ['carry', 'finish'].map((key) =>
    possible(valueOf(analysis, `flight.${key}`), analysis),
  );
  const aside = carry !== undefined && finish !== undefined && Math.abs(finish.value) > carry.value;
  const far = shots.filter((shot) => !isWithin(shot, analysis)).length;
  return [
    ...impossible.flatMap(({ id, value }) => {
      const quantity = registry.find(id);
      return quantity === undefined ? [] : [beyond(quantity, showValue(quantity, value))];
    }),
    ...(aside ? ['finish, which is farther aside than the ball flies'] : []),
    ...(carry === undefined && finish?.kind === 'entered'
      ? [
          `${lowerFirst(sayingOf(finish, registry).name)} ${sayingOf(finish, registry).number}, without a carry that it could be drawn at`,
        ]
      : []),
    ...(far === 0 ? [] : [`${counted(far, 'shot')} farther than a ball flies`]),
  ];
}

function beyond(quantity: Quantity, number: string): string {
  const { min, max } = quantity.bounds;
  return `${lowerFirst(quantity.title)} ${number} (possible: ${showWindow(quantity, min, max)})`;
}

function extentOf({
  path,
  recorded,
  expected,
  apex,
  shots,
  ellipse,
  goals,
}: Omit<Scene, 'extent' | 'left' | 'computed'>): Scene['extent'] {
  const spots: Spot[] = [...(path ?? []), ...shots];
  for (const landing of [recorded, expected]) {
    if (landing === undefined) continue;
    const { ahead, right, uAhead, uRight } = landing;
    // Known to one direction only, nothing of it is drawn.
    const isSpread = uAhead > 0 && uRight > 0;
    const [far, wide] = isSpread ? [factor95 * uAhead, factor95 * uRight] : [0, 0];
    spots.push({ ahead: ahead + far, right: right + wide }, { ahead, right: right - wide });
  }
  if (ellipse) {
    const far = factor95 * ellipse.long;
    spots.push({ ahead: ellipse.ahead + far, right: ellipse.right + far });
    spots.push({ ahead: ellipse.ahead, right: ellipse.right - far });
  }
  for (const { carry, finish } of goals)
    spots.push({ ahead: carry?.max ?? 0, right: finish?.max ?? 0 }, { ahead: 0, right: finish?.min ?? 0 });
  const most = (numbers: readonly number[]): number => Math.max(0, ...numbers.filter(Number.isFinite));
  return {
    ahead: most(spots.map(({ ahead }) => ahead)),
    up: most([...(path ?? []).map(({ up }) => up), apex?.value ?? 0]),
    left: most(spots.map(({ right }) => -right)),
    right: most(spots.map(({ right }) => right)),
  };
}
