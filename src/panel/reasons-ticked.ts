// Which reasons are ticked before a plan is written; knows no page.
import type { Reason } from '../language/what-if.ts';

/**
 * What the coach said, as far as it is a reason still; before that the only one there is, unless what is moved leads away from it.
 *
 * @param said undefined while nothing was ticked or taken back
 */
export function reasonsTicked(
  reasons: readonly Pick<Reason, 'name' | 'away'>[],
  said: readonly string[] | undefined,
): readonly string[] {
  if (said !== undefined) return said.filter((name) => reasons.some((reason) => reason.name === name));
  return reasons.length === 1 && reasons[0]!.away.length === 0 ? [reasons[0]!.name] : [];
}
