// Which entries a quantity that nobody entered follows from, by the names of the steps alone; computes no numbers.
import type { OwnModel } from './own-model.ts';
import type { Rule } from './rule.ts';
import { rules } from './rules.ts';

/**
 * The entries that this quantity stands for: itself where it was entered. What the workspace defines stands for whatever of its
 * inputs was entered, as if its expression stood in its place; what a step of the model gives, only where all of its inputs do.
 */
export function enteredBehind(
  id: string,
  isEntered: (id: string) => boolean,
  own: OwnModel | undefined,
): readonly string[] {
  const definitions = new Map(
    (own?.rules ?? []).flatMap((rule) => rule.outputs.map((output) => [output, rule])),
  );
  const known = new Map<string, readonly string[]>();
  const behind = (of: string): readonly string[] => {
    const before = known.get(of);
    if (before !== undefined) return before;
    // Whoever comes round to the same id again finds nothing behind it that way.
    known.set(of, []);
    const found = isEntered(of) ? [of] : behindSteps(of);
    known.set(of, found);
    return found;
  };
  const behindSteps = (of: string): readonly string[] => {
    const definition = definitions.get(of);
    if (definition !== undefined) return [...new Set(definition.inputs.flatMap(behind))];
    return (givers().get(of) ?? []).flatMap(({ inputs }) => {
      const parts = inputs.map(behind);
      return parts.every((part) => part.length > 0) ? parts.flat() : [];
    });
  };
  return behind(id);
}

let kept: ReadonlyMap<string, readonly Rule[]> | undefined;

/** The steps of the model that give each id, forward or backward. */
function givers(): ReadonlyMap<string, readonly Rule[]> {
  if (kept !== undefined) return kept;
  const found = new Map<string, Rule[]>();
  for (const rule of rules) for (const id of rule.outputs) found.set(id, [...(found.get(id) ?? []), rule]);
  return (kept = found);
}
