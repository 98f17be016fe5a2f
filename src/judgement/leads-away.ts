// Whether what is changed leads away from a goal, as good as certainly, and which change does; predicts nothing.
import { normalBelow } from '../model/quantiles.ts';
import type { ForeseenChange, GoalForecast } from './forecast.ts';
import type { Prediction } from './prediction.ts';

type NowAndThen = Pick<GoalForecast, 'now' | 'then'>;

/** A judgement. */
const certain = 0.975;

/** Outside its window then, and moved outward, each with that certainty. */
export function leadsAway(goal: NowAndThen, { outlooks }: Pick<Prediction, 'outlooks'>): boolean {
  const { now, then } = goal;
  const { difference, uDifference } = outlooks.get(now.wanted.quantity.id) ?? setBySelf(goal);
  if (difference === null || uDifference === null) return false;
  if (then.value === undefined || then.u === undefined || (then.chance ?? 1) > 1 - certain) return false;
  return normalBelow((outward(goal) * difference) / Math.max(1e-12, uDifference)) >= certain;
}

/** Of several changes the one that moves the goal farthest outward by itself; each is foreseen alone for it. */
export function mostAway(goal: NowAndThen, changes: readonly ForeseenChange[]): ForeseenChange | undefined {
  if (changes.length < 2) return changes[0];
  const { value: now, wanted } = goal.now;
  const movedBy = ({ made, prediction }: ForeseenChange): number => {
    const difference =
      made.quantity.id === wanted.quantity.id
        ? made.to - (now ?? made.to)
        : (prediction.outlooks.get(wanted.quantity.id)?.difference ?? 0);
    return outward(goal) * difference;
  };
  const moved = changes.map(movedBy);
  return changes[moved.indexOf(Math.max(...moved))];
}

function outward({ then: { value }, now: { wanted } }: NowAndThen): 1 | -1 {
  return value !== undefined && value > wanted.max ? 1 : -1;
}

/** Of what is changed itself no outlook speaks. */
function setBySelf({ now, then }: NowAndThen): {
  readonly difference: number | null;
  readonly uDifference: number | null;
} {
  if (now.value === undefined || then.value === undefined || then.value === now.value)
    return { difference: null, uDifference: null };
  return { difference: then.value - now.value, uDifference: Math.hypot(now.u ?? 0, then.u ?? 0) };
}
