// What planned changes lead to: through the model where it reaches, through a belief of a fault book where only that does; knows no goal.
import type { Account } from '../model/account.ts';
import { intervene, type Change, type Effect, type Intervention } from '../model/intervention.ts';
import type { Joint } from '../model/joint.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Belief } from './belief.ts';
import { believedEffects } from './believed-effects.ts';
import { changeOf, changesOf, type Foreseer, type Made } from './foreseer.ts';
import { beliefAsItStands, startsFrom } from './standing-number.ts';

export type Origin = 'model' | 'belief';

/** SI, as this player sees left and right. */
export interface Outlook {
  readonly quantity: Quantity;
  readonly origin: Origin;
  /** Null where only how far it moves is known. */
  readonly value: number | null;
  readonly u: number | null;
  readonly difference: number | null;
  readonly uDifference: number | null;
}

export interface Prediction {
  /** What moves, but for what is changed itself; by id. Through a belief where one has a noticeable part in it. */
  readonly outlooks: ReadonlyMap<string, Outlook>;
  /** What is held where it is while the path moves: the face. */
  readonly kept: readonly Outlook[];
  /** What is known of everything once the changes are made, for goals and proofs. */
  readonly belief: Belief;
  /** Changes that neither the model nor a belief makes anything of. */
  readonly without: readonly string[];
}

const leastBelieved = 0.1;

export function predict(made: readonly Made[], foreseer: Foreseer): Prediction {
  const { account, registry } = foreseer;
  const plain = intervene(account, changesOf(made, account));
  const believed = believedEffects(made, foreseer);
  const changes = changesOf(made, account, believed);
  const whole = believed.length === 0 ? plain : intervene(account, changes);
  const changed = new Set(made.map(({ quantity }) => quantity.id));
  const held = changes.flatMap(({ id, kind }) => (kind === 'kept' ? [id] : []));
  const outlooks = new Map<string, Outlook>();
  const kept: Outlook[] = [];
  for (const [id, effect] of whole?.effects ?? []) {
    const quantity = registry.find(id);
    if (quantity === undefined || changed.has(id)) continue;
    const origin = believed.length > 0 && isBelieved(effect, plain?.effects.get(id)) ? 'belief' : 'model';
    const outlook: Outlook = { ...asItStands(effect, account), quantity, origin };
    if (held.includes(id)) kept.push(outlook);
    else outlooks.set(id, outlook);
  }
  for (const { id, amount, u } of believed) {
    const quantity = registry.find(id);
    if (quantity === undefined || outlooks.has(id)) continue;
    const now = account.derivation.values.get(id);
    const isKnown = now !== undefined && now.u !== null;
    outlooks.set(id, {
      quantity,
      origin: 'belief',
      value: isKnown ? now.value + amount : null,
      u: isKnown ? Math.hypot(now.u, u) : null,
      difference: amount,
      uDifference: u,
    });
  }
  const reached = new Set(believed.flatMap(({ by }) => by));
  return {
    outlooks,
    kept,
    belief: beliefAfter(whole, outlooks, made.map(changeOf), foreseer),
    without: (plain?.unreached ?? [...changed]).filter((id) => changed.has(id) && !reached.has(id)),
  };
}

/** Whether a belief has more than a tenth in how far it moves; what is less than that is the model's word. */
function isBelieved({ difference }: Effect, before: Effect | undefined): boolean {
  if (difference === null || before === undefined || before.difference === null) return true;
  return Math.abs(difference - before.difference) > leastBelieved * Math.abs(difference);
}

/** From the number that stands for it in the record, by as far as it moves; a formula of the workspace's own is kept to the letter. */
function asItStands(effect: Effect, account: Account): Effect {
  if (account.situation.own?.rules.some(({ outputs }) => outputs.includes(effect.id)) === true) return effect;
  const now = startsFrom(effect.id, account);
  if (now === undefined || effect.value === null || effect.difference === null) return effect;
  return { ...effect, value: now + effect.difference };
}

function beliefAfter(
  whole: Intervention | undefined,
  outlooks: ReadonlyMap<string, Outlook>,
  changes: readonly Change[],
  { account, hand }: Foreseer,
): Belief {
  const now = beliefAsItStands(account, hand);
  const player = account.situation;
  const set = new Map(changes.map((change) => [change.id, change]));
  return {
    of: (ids): Joint => {
      const before = now.of(ids);
      const joint = whole?.joint(ids) ?? before;
      const means = joint.means.slice();
      const covariance = joint.covariance.slice();
      for (const [at, id] of ids.entries()) {
        const [own, outlook] = [set.get(id), outlooks.get(id)];
        if (!Number.isNaN(means[at]!)) {
          const moved = outlook?.value ?? null;
          if (own === undefined && moved !== null) means[at] = mirroredNumber(id, moved, player);
          else if (own === undefined && outlook === undefined && !Number.isNaN(before.means[at]!))
            means[at] = before.means[at]!;
          continue;
        }
        const place = at * (ids.length + 1);
        if (own !== undefined) {
          means[at] = mirroredNumber(id, own.amount, player);
          covariance[place] = own.u ** 2;
        } else if (outlook !== undefined) {
          means[at] = outlook.value === null ? NaN : mirroredNumber(id, outlook.value, player);
          covariance[place] = (outlook.u ?? 0) ** 2;
        } else if (whole?.lost.includes(id) !== true) {
          means[at] = before.means[at]!;
          covariance[place] = before.covariance[place]!;
        }
      }
      return { means, covariance };
    },
  };
}
