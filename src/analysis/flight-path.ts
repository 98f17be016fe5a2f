// The flight that a record's numbers give, for who draws or tells it: one way through the air, and one carry and finish where it ends.
import { accountWithout, type Account, type OthersAccount } from '../model/account.ts';
import { contextOf } from '../model/context.ts';
import { flightInputs, meanPath } from '../model/flights.ts';
import { mirroredNumber, mirroredSituation } from '../model/mirror.ts';
import { reachOf } from '../model/intervention.ts';
import type { Reconciliation } from '../model/reconciliation.ts';
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
  /** How the ball is launched; undefined of a record that the model was not asked about. */
  readonly launch: Launch | undefined;
}

interface Launch {
  readonly situation: Situation;
  /** The fit that stands behind the numbers, with every step. */
  readonly at: () => Reconciliation;
  readonly values: ReadonlyMap<string, Value>;
}

/** What says where the ball comes down. */
const landing: ReadonlySet<string> = new Set(['flight.carry', 'flight.curve', 'flight.finish']);

const othersOf = new WeakMap<Account, OthersAccount | undefined>();

/** Carry and finish come from one and the same computation. */
export function computedFlightOf({ account, derivation }: Analysis): ComputedFlight {
  const others = account?.situation.observations.has('flight.carry') ? withoutLanding(account) : undefined;
  const isByOthers = others?.values.has('flight.carry') === true;
  const values = isByOthers ? others.values : derivation?.values;
  const [carry, finish] = ['flight.carry', 'flight.finish'].map((id) => values?.get(id));
  const by = isByOthers ? 'others' : 'all';
  if (account?.outcome === undefined || values === undefined) return { by, carry, finish, launch: undefined };
  const { situation, outcome } = account;
  const at = isByOthers ? () => others.at : () => reachOf(outcome.last);
  return { by, carry, finish, launch: { situation, at, values } };
}

/**
 * It ends where carry and finish say; undefined where nothing says how far the ball flies, or too little how it is launched.
 */
export function flightPathOf({ carry, finish, launch }: ComputedFlight): FlightPath | undefined {
  const path = carry && launch && launchedPath(launch);
  return path && ledTo(carry, finish, path);
}

function withoutLanding(account: Account): OthersAccount | undefined {
  if (othersOf.has(account)) return othersOf.get(account);
  const found = accountWithout(account, landing, ['flight.carry', 'flight.finish', ...flightInputs]);
  othersOf.set(account, found);
  return found;
}

function launchedPath({ situation, at, values }: Launch): FlightPath | undefined {
  const { forward, values: fitted } = at();
  const inputs = flightInputs.map((id) => {
    const value = values.get(id);
    if (value !== undefined) return mirroredNumber(id, value.value, situation);
    // The weather that nobody wrote down is what the model has taken for it.
    return id.startsWith('conditions.') ? fitted[forward.nodeOf.get(id) ?? -1] : undefined;
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
