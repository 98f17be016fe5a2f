// Turns a left-hander's situation into a right-hander's and the values back again; the only place that knows of hands.
import { builtIn } from '../registry/registry.ts';
import type { Situation, Value } from './value.ts';

/** Who swings, and what the ids stand for. */
export type Player = Pick<Situation, 'hand' | 'registry'>;

/** The situation as for a right-handed player; what is said of left and right changes its sign, the wind its side. */
export function mirroredSituation(situation: Situation): Situation {
  if (situation.hand !== 'left') return situation;
  const observations = [...situation.observations].map(
    ([key, o]) => [key, isLateral(o.id, situation) ? { ...o, value: negated(o.value) } : o] as const,
  );
  const { windBearing, readings } = situation;
  const mirroredReadings = [...(readings ?? [])].map(
    ([id, list]) =>
      [id, isLateral(id, situation) ? list.map((r) => ({ ...r, value: negated(r.value) })) : list] as const,
  );
  return {
    ...situation,
    ...(readings ? { readings: new Map(mirroredReadings) } : {}),
    windBearing: windBearing === undefined ? undefined : negated(windBearing),
    observations: new Map(observations),
  };
}

/** What is said by heel and toe lies left or right of the target line as the hand has it. */
const boundToHand: ReadonlySet<string> = new Set(['strike.across']);

/** Whether an entry means nothing to the model while nobody has said which hand plays. */
export function isOfUnknownHand(id: string, { hand }: Pick<Situation, 'hand'>): boolean {
  return hand === undefined && boundToHand.has(id);
}

/** A plain number of that quantity from one hand to the other. */
export function mirroredNumber(id: string, value: number, player: Player): number {
  return player.hand === 'left' && isLateral(id, player) ? negated(value) : value;
}

/** A value computed as for a right-handed player, as it is for this one. */
export function mirroredValue(value: Value, player: Player): Value {
  return player.hand === 'left' && isLateral(value.id, player)
    ? { ...value, value: negated(value.value) }
    : value;
}

function isLateral(id: string, { registry = builtIn }: Player): boolean {
  return registry.find(id)?.lateral ?? false;
}

/** Zero stays plain zero, so that nobody reads "−0". */
function negated(value: number): number {
  return 0 - value;
}
