// Has the coach's faults judged from what the model makes of a record; remembers what was computed as long as the numbers stay the same.
import type { Followed, Subject } from '../checks/subject.ts';
import { beliefOf } from '../judgement/belief.ts';
import type { CompiledEvidence } from '../judgement/book.ts';
import { claimsOf, type FindSensitivity } from '../judgement/claims.ts';
import { judgeFaults, type Judgement } from '../judgement/judgement.ts';
import { judge, type Beholder, type FaultVerdict, type JudgedLine } from '../judgement/verdict.ts';
import type { Account } from '../model/account.ts';
import { sensitivity, type Sensitivity } from '../model/sensitivity.ts';
import type { Registry } from '../registry/registry.ts';
import type { FaultFile, StudentFile, SwingRecord } from '../record/document.ts';

/** By account, which stays the same object while no number of the record changes. */
const chances = new WeakMap<Account, WeakMap<CompiledEvidence, JudgedLine>>();

const slopes = new WeakMap<Account, Map<string, Sensitivity | undefined>>();

/** Undefined where the record has no fault book. */
export function judgementOf(
  record: SwingRecord,
  books: readonly Followed<FaultFile>[],
  student: StudentFile | undefined,
  account: Account,
  registry: Registry,
  coverage: number,
): Judgement | undefined {
  if (books.length === 0) return undefined;
  const beholder = beholderOf(student, account, registry);
  const verdicts = judgeFaults(record, books, beholder);
  return { ...verdicts, claims: claimsOf(verdicts.stated, beholder, slopesOf(account), coverage) };
}

/** What the numbers of a record say of a fault, stated there or not; undefined where its books do not know it. */
export function verdictOn(
  id: string,
  at: string | undefined,
  { judgement, student, registry }: Pick<Subject, 'judgement' | 'student' | 'registry'>,
  account: Account,
): FaultVerdict | undefined {
  const known = judgement?.faults.get(id);
  return known && judge(known, at, beholderOf(student?.document, account, registry));
}

function beholderOf(student: StudentFile | undefined, account: Account, registry: Registry): Beholder {
  const hand = student?.hand?.value;
  const kept = chances.get(account) ?? new WeakMap<CompiledEvidence, JudgedLine>();
  chances.set(account, kept);
  return { belief: beliefOf(account, hand), hand, registry, chances: kept };
}

/** To change a swing in the model costs more than anything else here, and few keystrokes change what comes of it. */
function slopesOf(account: Account): FindSensitivity {
  const known = slopes.get(account) ?? new Map<string, Sensitivity | undefined>();
  slopes.set(account, known);
  return (cause, effect, step) => {
    const key = `${cause} ${effect} ${step}`;
    if (!known.has(key)) known.set(key, sensitivity(account, cause, effect, step));
    return known.get(key);
  };
}
