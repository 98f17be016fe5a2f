// Has the coach's faults judged from what the model makes of a record; remembers what was computed as long as the numbers stay the same.
import type { Followed } from '../checks/subject.ts';
import { beliefOf } from '../judgement/belief.ts';
import type { CompiledEvidence } from '../judgement/book.ts';
import { judgeFaults, type Judgement } from '../judgement/judgement.ts';
import type { JudgedLine } from '../judgement/verdict.ts';
import type { Account } from '../model/account.ts';
import type { Registry } from '../registry/registry.ts';
import type { FaultFile, StudentFile, SwingRecord } from '../record/document.ts';

/** By account, which stays the same object while no number of the record changes. */
const chances = new WeakMap<Account, WeakMap<CompiledEvidence, JudgedLine>>();

/** Undefined where the record has no fault book. */
export function judgementOf(
  record: SwingRecord,
  books: readonly Followed<FaultFile>[],
  student: StudentFile | undefined,
  account: Account,
  registry: Registry,
): Judgement | undefined {
  if (books.length === 0) return undefined;
  const hand = student?.hand?.value;
  const kept = chances.get(account) ?? new WeakMap<CompiledEvidence, JudgedLine>();
  chances.set(account, kept);
  return judgeFaults(record, books, { belief: beliefOf(account, hand), hand, registry, chances: kept });
}
