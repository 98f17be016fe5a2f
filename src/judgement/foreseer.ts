// What predictions of a plan are made from: the account of the record, the faults that it states, and each change as a number; predicts nothing.
import type { Measure, Window } from '../measure/measure.ts';
import type { Account } from '../model/account.ts';
import { withFaceHeld } from '../model/held-face.ts';
import type { Change } from '../model/intervention.ts';
import type { PlannedChange } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { isOutside, type Registry } from '../registry/registry.ts';
import type { BookFault } from './book.ts';

export interface Foreseer {
  readonly account: Account;
  readonly hand: 'left' | 'right' | undefined;
  readonly registry: Registry;
  /** How many standard uncertainties a written ± stands for. */
  readonly coverage: number;
  /** Those that the record states and a book defines. */
  readonly faults: readonly BookFault[];
}

/** A change as a number: SI, as this player sees left and right. */
export interface Made {
  readonly quantity: Quantity;
  readonly to: number;
  /** How exactly it will be made. */
  readonly u: number;
  readonly because: readonly string[];
}

export function changeOf({ quantity, to, u }: Made): Change {
  return { id: quantity.id, kind: 'to', amount: to, u };
}

/** What the model is asked: the changes with the face kept where they say nothing of it, and what comes with them besides. */
export function changesOf(
  made: readonly Made[],
  account: Account,
  further: readonly Change[] = [],
): readonly Change[] {
  return withFaceHeld(account, [...made.map(changeOf), ...further]);
}

/** A change is made to a quarter of how far it goes, where nothing else is said: a judgement. */
const exactness = 0.25;

/** Nobody knows that a change was made better than the best way of measuring it reads. */
export function exactnessOf({ uncertainty }: Quantity, from: number | undefined, to: number): number {
  if (from === undefined) return uncertainty.otherwise;
  return Math.max(
    exactness * Math.abs(to - from),
    Math.min(uncertainty.otherwise, ...Object.values(uncertainty.by)),
  );
}

/** A window is as likely in all of it (JCGM 100:2008, 4.3.7). */
export function madeOf({ change, to, because }: PlannedChange, foreseer: Foreseer): Made | undefined {
  const { account, registry, coverage } = foreseer;
  const quantity = change === undefined ? undefined : registry.find(change.value);
  if (quantity === undefined || to === undefined || isDerived(quantity.id, account)) return undefined;
  const reasons = because.map(({ value }) => value);
  const { target } = to;
  if (isImpossible(target, quantity)) return undefined;
  if (target.kind === 'measure') {
    const now = account.derivation.values.get(quantity.id)?.value;
    const u =
      target.stated === undefined ? exactnessOf(quantity, now, target.value) : target.stated / coverage;
    return { quantity, to: target.value, u, because: reasons };
  }
  const u = (target.to - target.from) / Math.sqrt(12);
  return { quantity, to: (target.from + target.to) / 2, u, because: reasons };
}

/** What a workspace computes by a formula of its own follows from its inputs, and nobody can set out to change it by itself. */
export function isDerived(id: string, { situation }: Account): boolean {
  return situation.own?.rules.some(({ outputs }) => outputs.includes(id)) === true;
}

/** Nothing is foreseen of what cannot be. */
export function isImpossible(target: Measure | Window, { bounds }: Quantity): boolean {
  const ends = target.kind === 'window' ? [target.from, target.to] : [target.value];
  return ends.some((end) => isOutside(end, bounds));
}
