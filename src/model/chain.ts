// Decides, from names alone, which step gives which quantity and what would have to be entered; computes no numbers.
import type { Rule } from './rule.ts';

/** The step that gives each id that is not at hand itself. */
export type Chain = ReadonlyMap<string, Rule>;

/**
 * Forward chaining in the order of `rules`, round after round until nothing is added. Each id is given once, by the
 * first step that can, and only from ids given before it: so no chain can run in a circle.
 *
 * @param atHand ids that are entered or assumed.
 */
export function chainFrom(rules: readonly Rule[], atHand: ReadonlySet<string>): Chain {
  const chain = new Map<string, Rule>();
  const isGiven = (id: string): boolean => atHand.has(id) || chain.has(id);
  let open = rules.filter((rule) => !rule.outputs.every(isGiven));
  for (;;) {
    const waiting = open.filter((rule) => {
      if (!rule.inputs.every(isGiven)) return true;
      for (const id of rule.outputs) if (!isGiven(id)) chain.set(id, rule);
      return false;
    });
    if (waiting.length === open.length) return chain;
    open = waiting;
  }
}

/**
 * The fewest ids that would have to be entered for each id that some step could give; an id is never among its own
 * needs. Ids that no set of entries can give are left out.
 *
 * @param given ids that are entered, assumed or derived. @param isEnterable whether a record has a place for the id.
 */
export function needsOf(
  rules: readonly Rule[],
  given: ReadonlySet<string>,
  isEnterable: (id: string) => boolean,
): ReadonlyMap<string, readonly string[]> {
  const direct = new Map<Rule, readonly string[]>(
    rules.map((rule) => [rule, rule.inputs.filter((id) => !given.has(id))]),
  );
  const fewest = new Map(direct);
  const isPossible = (needs: readonly string[]): boolean => needs.every(isEnterable);
  for (let changed = true; changed;) {
    changed = false;
    for (const rule of rules) {
      const needs = fewest.get(rule)!;
      const better = rules
        .filter((other) => other !== rule && other.outputs.some((id) => needs.includes(id)))
        .map((other) => reduced(substituted(needs, other.outputs, fewest.get(other)!), fewest))
        .find(
          (candidate) => isPossible(candidate) && (candidate.length < needs.length || !isPossible(needs)),
        );
      if (!better) continue;
      fewest.set(rule, better);
      changed = true;
    }
  }
  const result = new Map<string, readonly string[]>();
  for (const rule of rules) {
    for (const id of rule.outputs) {
      if (given.has(id)) continue;
      for (const needs of [fewest.get(rule)!, reduced(direct.get(rule)!, fewest)]) {
        const known = result.get(id);
        const isUsable = needs.length > 0 && !needs.includes(id) && isPossible(needs);
        if (isUsable && (!known || needs.length < known.length)) result.set(id, needs);
      }
    }
  }
  return result;
}

function substituted(
  needs: readonly string[],
  outputs: readonly string[],
  instead: readonly string[],
): string[] {
  return [...new Set([...needs.filter((id) => !outputs.includes(id)), ...instead])];
}

/** Without what the rest of the needs already gives by some step. */
function reduced(needs: readonly string[], fewest: ReadonlyMap<Rule, readonly string[]>): readonly string[] {
  let left = needs;
  for (const [rule, inputs] of fewest) {
    const isGiven = (id: string): boolean =>
      !inputs.includes(id) && rule.outputs.some((output) => output === id);
    if (left.some(isGiven) && inputs.every((id) => left.includes(id)))
      left = left.filter((id) => !isGiven(id));
  }
  return left;
}
