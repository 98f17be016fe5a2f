// Which shapes that are wanted nothing is held against, and why; a goal that is passed over in silence would seem to stand.
import { askedOf, wantedOf } from '../judgement/goal-standing.ts';
import { beliefAsItStands } from '../judgement/standing-number.ts';
import type { Account } from '../model/account.ts';
import type { Located } from '../record/document.ts';
import { findShape } from '../registry/registry.ts';
import { goalsOf, type Known } from './plan.ts';

export interface UnheldGoal {
  /** The file that it stands in. */
  readonly uri: string;
  readonly shape: Located<string>;
  readonly reason: string;
}

/** In the order of the goals. */
export function unheldGoals(subject: Known, account: Account | undefined): readonly UnheldGoal[] {
  if (account === undefined) return [];
  const { situation } = account;
  const belief = beliefAsItStands(account, subject.student?.document.hand?.value);
  return goalsOf(subject).flatMap(({ uri, goal }): UnheldGoal[] => {
    const { shape, targets } = goal;
    const word = shape && findShape(shape.value);
    if (shape === undefined || word === undefined) return [];
    const isInNumbers = askedOf(word).every((key) => targets.has(key));
    const isHeld = wantedOf(goal, belief, situation, subject.registry).some(({ key }) => key === 'shape');
    if (isHeld || isInNumbers) return [];
    const reason =
      situation.hand === undefined
        ? "nobody says which hand plays, so that left and right cannot be told; `hand` in the student's file says it"
        : 'how far the ball carries is not known, and what a shape asks of the curve is a share of that';
    return [{ uri, shape, reason }];
  });
}
