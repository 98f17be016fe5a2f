// The way of the ball through the air that a record's numbers give, for who draws it; adds no number to what the model says.
import { contextOf } from '../model/context.ts';
import { flightInputs, meanPath } from '../model/flights.ts';
import { mirroredNumber, mirroredSituation } from '../model/mirror.ts';
import type { Analysis } from './result.ts';

/** Undefined where the record says too little of how the ball is launched. As this player sees left and right. */
export function flightPathOf({ account }: Analysis): ReturnType<typeof meanPath> {
  if (account?.outcome === undefined) return undefined;
  const { situation, derivation, outcome } = account;
  const { nodeOf } = outcome.last.forward;
  const inputs = flightInputs.map((id) => {
    const value = derivation.values.get(id);
    if (value !== undefined) return mirroredNumber(id, value.value, situation);
    // The weather that nobody wrote down is what the model has taken for it.
    return id.startsWith('conditions.') ? outcome.last.values[nodeOf.get(id) ?? -1] : undefined;
  });
  if (!inputs.every((input) => input !== undefined)) return undefined;
  const path = meanPath(inputs, contextOf(mirroredSituation(situation)));
  return path?.map((point) => ({ ...point, right: mirroredNumber('flight.finish', point.right, situation) }));
}
