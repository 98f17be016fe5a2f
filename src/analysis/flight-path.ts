// The flight that a record's numbers give, for who draws or tells it: one way through the air, and one carry and finish where it ends.
import { accountOf, type Account } from '../model/account.ts';
import { contextOf } from '../model/context.ts';
import { flightInputs, meanPath } from '../model/flights.ts';
import { mirroredNumber, mirroredSituation } from '../model/mirror.ts';
import { extended } from '../model/reconciliation.ts';
import type { Situation, Value } from '../model/value.ts';
import type { Analysis } from './result.ts';

/** From the ball to where it comes down. */
export type FlightPath = NonNullable<ReturnType<typeof meanPath>>;

/** As this player sees left and right. */
export interface ComputedFlight {
  /**
   * Whose numbers these are. Of a record with a carry those of all entries but carry, curve and finish, so that they can be held
   * against what was seen; where these say nothing of the carry, and where none was entered, those of all entries together.
   */
  readonly by: 'others' | 'all';
  readonly carry: Value | undefined;
  readonly finish: Value | undefined;
  /** Where the numbers come from; undefined of a record that the model was not asked about. */
  readonly account: Account | undefined;
}

/** What says where the ball comes down. */
const landing: ReadonlySet<string> = new Set(['flight.carry', 'flight.curve', 'flight.finish']);

const othersOf = new WeakMap<Account, Account>();

/** Carry and finish come from one and the same computation. */
export function computedFlightOf({ account, derivation }: Analysis): ComputedFlight {
  const others = account?.situation.observations.has('flight.carry') ? withoutLanding(account) : undefined;
  const [by, from] = others?.derivation.values.has('flight.carry')
    ? (['others', others] as const)
    : (['all', account] as const);
  const values = by === 'others' ? others?.derivation.values : derivation?.values;
  const [carry, finish] = ['flight.carry', 'flight.finish'].map((id) => values?.get(id));
  return { by, carry, finish, account: from };
}

/**
 * It ends where carry and finish say; undefined where nothing says how far the ball flies, or too little how it is launched.
 */
export function flightPathOf({ carry, finish, account }: ComputedFlight): FlightPath | undefined {
  const path = carry && account && launchedPath(account);
  return path && ledTo(carry, finish, path);
}

function withoutLanding(account: Account): Account {
  const before = othersOf.get(account);
  if (before !== undefined) return before;
  const { observations, readings, ...rest } = account.situation;
  const others: Situation = {
    ...rest,
    observations: withoutThose(observations),
    ...(readings && { readings: withoutThose(readings) }),
  };
  const found = accountOf(others);
  othersOf.set(account, found);
  return found;
}

function withoutThose<T>(all: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  return new Map([...all].filter(([id]) => !landing.has(id)));
}

function launchedPath({ situation, derivation, outcome }: Account): FlightPath | undefined {
  if (outcome === undefined) return undefined;
  const { forward, values } = extended(outcome.last);
  const inputs = flightInputs.map((id) => {
    const value = derivation.values.get(id);
    if (value !== undefined) return mirroredNumber(id, value.value, situation);
    // The weather that nobody wrote down is what the model has taken for it.
    return id.startsWith('conditions.') ? values[forward.nodeOf.get(id) ?? -1] : undefined;
  });
  if (!inputs.every((input) => input !== undefined)) return undefined;
  const path = meanPath(inputs, contextOf(mirroredSituation(situation)));
  return path?.map((point) => ({ ...point, right: mirroredNumber('flight.finish', point.right, situation) }));
}

/**
 * The same way turned and drawn out over the ground until it ends where carry and finish say: what a record says besides of the
 * landing, such as a total, and what contradicts it, the launch alone does not know.
 */
function ledTo(carry: Value, finish: Value | undefined, path: FlightPath): FlightPath | undefined {
  const end = path.at(-1)!;
  const far = Math.hypot(end.ahead, end.right);
  const right = finish?.value ?? (carry.value * end.right) / far;
  if (!(far > 0) || !(carry.value > Math.abs(right))) return undefined;
  const stretch = carry.value / far;
  const turn = Math.asin(right / carry.value) - Math.atan2(end.right, end.ahead);
  const [cos, sin] = [stretch * Math.cos(turn), stretch * Math.sin(turn)];
  return path.map(({ ahead, right: side, ...point }) => ({
    ...point,
    ahead: ahead * cos - side * sin,
    right: ahead * sin + side * cos,
  }));
}
