// The one table of steps of the forward graph, in the order in which they are tried; knows nothing of entries.
// Each is a pure function with its inexactness beside it, so that a least-squares fit can walk the same table.
import { rulesOfFit } from './forward-rules.ts';
import type { OwnModel } from './own-model.ts';
import type { Rule } from './rule.ts';
import { arcRules } from './rules/arc.ts';
import { faceRules } from './rules/face.ts';
import { flightRules } from './rules/flight.ts';
import { impactRules } from './rules/impact.ts';

/** From causes to effects; where two steps give the same quantity at once, the earlier one is taken. */
export const rules: readonly Rule[] = [...faceRules, ...arcRules, ...impactRules, ...flightRules];

const byName: ReadonlyMap<string, Rule> = new Map(
  [...rulesOfFit(), ...rules].map((rule) => [rule.name, rule]),
);

/** The step of that name, with its formula, source and inexactness. */
export function findRule(name: string, own?: OwnModel): Rule | undefined {
  return byName.get(name) ?? own?.rules.find((rule) => rule.name === name);
}
