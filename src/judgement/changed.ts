// Whether a planned change was made: what was asked for against what was measured before and after; knows no file.
import type { PlannedChange } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Measured, MeasuredValue } from './measured.ts';

/** `cannot tell`: the measurement fits what was asked for, and as well what was before. */
export type ChangeState = 'made' | 'in part' | 'too far' | 'not made' | 'cannot tell' | 'not measured';

export interface ChangeOutcome {
  readonly planned: PlannedChange;
  readonly quantity: Quantity;
  readonly state: ChangeState;
  /** What was asked for, SI; both ends are the same for a plain number. */
  readonly target: { readonly from: number; readonly to: number; readonly u: number };
  readonly before: MeasuredValue | undefined;
  readonly after: MeasuredValue | undefined;
  /** How much of the way from before to the target was gone; undefined where nobody measured it before. */
  readonly share: number | undefined;
}

/** Half the width of an interval of 95 % of a normal distribution, in standard deviations. */
export const wide95 = 1.96;

/** Those of the changes that name a quantity and say what it is to be. */
export function judgeChanges(
  plan: readonly PlannedChange[],
  before: Measured,
  after: Measured,
  coverage: number,
  registry: Registry,
): readonly ChangeOutcome[] {
  return plan.flatMap((planned) => {
    const quantity = planned.change && registry.find(planned.change.value);
    const target = targetOf(planned, coverage);
    if (quantity === undefined || target === undefined) return [];
    return [
      judgeChange({
        planned,
        quantity,
        target,
        before: before.of(quantity.id),
        after: after.of(quantity.id),
      }),
    ];
  });
}

function targetOf({ to }: PlannedChange, coverage: number): ChangeOutcome['target'] | undefined {
  const target = to?.target;
  if (target === undefined) return undefined;
  if (target.kind === 'window') return { from: target.from, to: target.to, u: 0 };
  return { from: target.value, to: target.value, u: (target.stated ?? 0) / coverage };
}

function judgeChange(known: Omit<ChangeOutcome, 'state' | 'share'>): ChangeOutcome {
  const { target, before, after } = known;
  if (after === undefined) return { ...known, state: 'not measured', share: undefined };
  const isThere = distance(after.value, target) <= wide95 * Math.hypot(after.u, target.u);
  if (before === undefined) return { ...known, state: isThere ? 'made' : 'not made', share: undefined };
  const asked = nearestOf(before.value, target) - before.value;
  const gone = after.value - before.value;
  const share = asked === 0 ? undefined : gone / asked;
  const hasMoved = Math.abs(gone) > wide95 * Math.hypot(after.u, before.u);
  return { ...known, share, state: stateOf(isThere, hasMoved, share) };
}

function stateOf(isThere: boolean, hasMoved: boolean, share: number | undefined): ChangeState {
  // Nothing was asked of what was there already.
  if (share === undefined) return isThere ? 'made' : 'too far';
  if (isThere) return hasMoved ? 'made' : 'cannot tell';
  if (!hasMoved || share < 0) return 'not made';
  return share > 1 ? 'too far' : 'in part';
}

function distance(value: number, { from, to }: ChangeOutcome['target']): number {
  return Math.max(0, from - value, value - to);
}

function nearestOf(value: number, { from, to }: ChangeOutcome['target']): number {
  return Math.min(to, Math.max(from, value));
}
