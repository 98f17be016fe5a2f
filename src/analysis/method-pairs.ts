// Gathers from records what was measured twice: by two methods, and twice by one; judges nothing.
import type { SwingRecord } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import {
  compareMethods,
  repeatabilityOf,
  scatterOf,
  type MethodComparison,
  type Repeatability,
} from '../model/method-comparison.ts';
import type { Pair } from '../model/method-comparison.ts';
import type { Analysis } from './result.ts';

/** One quantity by two methods over all records; `one` and `other` in the order of the method table. SI. */
export interface PairedMethods {
  readonly quantity: Quantity;
  readonly one: string;
  readonly other: string;
  readonly pairs: readonly Pair[];
  /** By how much one measurement of each scatters about the means that were paired: a variance. */
  readonly scatter: number;
  /** Undefined where there are too few pairs. */
  readonly comparison: MethodComparison | undefined;
}

/** One quantity measured several times by one method. SI. */
export interface RepeatedMethod {
  readonly quantity: Quantity;
  readonly method: string;
  readonly repeatability: Repeatability;
}

export interface MethodAgreement {
  readonly records: number;
  readonly paired: readonly PairedMethods[];
  readonly repeated: readonly RepeatedMethod[];
}

/**
 * Of each entry with several readings. Of one method the mean counts in a pair, and what one reading scatters about it is told beside; doubtful readings, estimates and those without a
 * method are left out. A quantity is the same at every checkpoint only if it has the same id.
 */
export function methodAgreementOf(analyses: readonly Analysis[]): MethodAgreement {
  const pairs = new Map<string, Gathered>();
  const repeats = new Map<string, { quantity: Quantity; method: string; things: number[][] }>();
  const records = analyses.filter(({ document }) => document.kind === 'swing');
  for (const { document, subject } of records)
    for (const { quantity, byMethod } of entriesOf(document as SwingRecord)) {
      const order = subject.registry.methodNames;
      const names = [...byMethod.keys()].sort((a, b) => order.indexOf(a) - order.indexOf(b));
      for (const method of names) {
        const values = byMethod.get(method)!;
        if (values.length < 2) continue;
        const key = `${quantity.id} ${method}`;
        const known = repeats.get(key) ?? { quantity, method, things: [] };
        known.things.push(values);
        repeats.set(key, known);
      }
      for (const [i, one] of names.entries())
        for (const other of names.slice(i + 1)) {
          const key = `${quantity.id} ${one} ${other}`;
          const known = pairs.get(key) ?? { quantity, one, other, values: [] };
          known.values.push([byMethod.get(one)!, byMethod.get(other)!]);
          pairs.set(key, known);
        }
    }
  return {
    records: records.length,
    paired: [...pairs.values()].map(pairedOf).sort((a, b) => byId(a.quantity, b.quantity)),
    repeated: [...repeats.values()]
      .flatMap(({ quantity, method, things }) => {
        const repeatability = repeatabilityOf(things);
        return repeatability === undefined ? [] : [{ quantity, method, repeatability }];
      })
      .sort((a, b) => byId(a.quantity, b.quantity)),
  };
}

interface Gathered extends Pick<PairedMethods, 'quantity' | 'one' | 'other'> {
  /** What each entry has by the one method and by the other. */
  readonly values: (readonly [readonly number[], readonly number[]])[];
}

function pairedOf({ quantity, one, other, values }: Gathered): PairedMethods {
  const pairs = values.map(([first, second]) => ({ one: mean(first), other: mean(second) }));
  const scatters = [scatterOf(values.map(([first]) => first)), scatterOf(values.map(([, second]) => second))];
  const scatter = scatters.reduce((sum, { variance }) => sum + variance, 0);
  return { quantity, one, other, pairs, scatter, comparison: compareMethods(pairs, scatters) };
}

function entriesOf(
  record: SwingRecord,
): readonly { readonly quantity: Quantity; readonly byMethod: ReadonlyMap<string, number[]> }[] {
  return [...record.entries.values()]
    .filter(({ readings }) => readings.length > 1)
    .map(({ quantity, readings }) => {
      const byMethod = new Map<string, number[]>();
      for (const { measure, doubtful } of readings) {
        const { method, estimate, value } = measure;
        if (doubtful || estimate || method === undefined) continue;
        byMethod.set(method, [...(byMethod.get(method) ?? []), value]);
      }
      return { quantity, byMethod };
    });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function byId(a: Quantity, b: Quantity): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
