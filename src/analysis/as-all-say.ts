// A record with what all its entries together say in the place of what was entered, for pictures beside numbers that say it; judges nothing.
import { standingNumber } from '../judgement/standing-number.ts';
import { showValue } from '../measure/show.ts';
import type { Account } from '../model/account.ts';
import type { Value } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Analysis } from './result.ts';

type Standing = NonNullable<ReturnType<typeof standingNumber>>;

/** Whether a number was entered and another is shown for it now; the uncertainties differ nearly always. */
export function isShownOtherwise(value: Value | undefined, standing: Standing, quantity: Quantity): boolean {
  const number = (one: Standing): string => showValue(quantity, one.value, one.u).split(' ± ')[0]!;
  return value?.kind === 'entered' && number(value) !== number(standing);
}

/** An entry for which another number stands is no entry any more, and is drawn as what was computed. */
export function asAllSay(analysis: Analysis, account: Account): Analysis {
  const { derivation, subject } = analysis;
  if (derivation === undefined) return analysis;
  const values = new Map(derivation.values);
  for (const [id, value] of derivation.values) {
    const [quantity, standing] = [subject.registry.find(id), standingNumber(id, account)];
    if (value.kind !== 'entered' || quantity === undefined || standing === undefined) continue;
    const kind = isShownOtherwise(value, standing, quantity) ? 'expected' : value.kind;
    values.set(id, { ...value, ...standing, kind });
  }
  return withValues(analysis, values);
}

export function withValues(analysis: Analysis, values: ReadonlyMap<string, Value>): Analysis {
  if (analysis.derivation === undefined) return analysis;
  const derivation = { ...analysis.derivation, values };
  return { ...analysis, derivation, subject: { ...analysis.subject, derivation } };
}
