// Whether anything that was entered of the swing lies before a quantity in the whole graph; computes no numbers.
import type { Account } from './account.ts';
import { behind } from './forward-layout.ts';
import { extendedLayout } from './reconciliation.ts';

/** What surrounds a swing says nothing of how it was made. */
const surroundings = ['conditions.', 'club.', 'student.'];

/** False of what only priors speak of: a number of theirs is what usual swings have, whoever plays. */
export function hasEntryBefore({ outcome, derivation }: Account, id: string): boolean {
  if (!outcome) return false;
  const layout = extendedLayout(outcome.last);
  const node = layout.nodeOf.get(id);
  if (node === undefined) return false;
  const before = behind(layout, node);
  return [...layout.nodeOf].some(
    ([one, at]) =>
      before.has(at) &&
      derivation.values.get(one)?.kind === 'entered' &&
      !surroundings.some((part) => one.startsWith(part)),
  );
}
