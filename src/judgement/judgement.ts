// The coach's faults of one record, judged: each stated one, those that nobody stated, and what causes what; knows no file.
import type { Fault, StatedFault, StatedMiss } from '../record/document.ts';
import { findMiss } from '../registry/registry.ts';
import { faultsOf, type BookFault, type PlacedBook } from './book.ts';
import type { Claim } from './claims.ts';
import { explainMiss, linksBetween, tendsToMiss, type ExplainedMiss, type Link } from './causes.ts';
import { isSeenAt, judge, remarkableFrom, type Beholder, type FaultVerdict } from './verdict.ts';

export interface StatedVerdict extends FaultVerdict {
  readonly stated: StatedFault;
  /** Whether the book says that the fault can be seen at this checkpoint. */
  readonly isSeenHere: boolean;
}

export interface JudgedMiss extends ExplainedMiss {
  readonly stated: StatedMiss;
  /** Faults of the book that tend to it and were not stated. */
  readonly unstated: readonly string[];
  /** Stated faults that tend to it, and that the numbers speak against: they explain nothing. */
  readonly contradicted: readonly string[];
}

export interface Verdicts {
  readonly faults: ReadonlyMap<string, BookFault>;
  /** Those that a book defines, in the order of the record. */
  readonly stated: readonly StatedVerdict[];
  /** Faults that the numbers show and nobody stated, at the checkpoint where they show best. */
  readonly unstated: readonly FaultVerdict[];
  /** Among the stated faults, those that the numbers speak against too. */
  readonly links: readonly Link[];
  /** Stated faults that the numbers speak against wherever they are stated. */
  readonly contradicted: ReadonlySet<string>;
  readonly misses: readonly JudgedMiss[];
}

/** The verdicts, and what each stated fault is believed to do beside what the model says of that. */
export interface Judgement extends Verdicts {
  readonly claims: readonly Claim[];
}

export function judgeFaults(
  record: { readonly faults: readonly StatedFault[]; readonly misses: readonly StatedMiss[] },
  books: readonly PlacedBook[],
  beholder: Beholder,
): Verdicts {
  const faults = faultsOf(books);
  const stated = record.faults.flatMap((one): StatedVerdict[] => {
    const known = faults.get(one.fault.value);
    if (known === undefined) return [];
    const at = one.at?.value;
    return [{ ...judge(known, at, beholder), stated: one, isSeenHere: isSeenAt(known, at) }];
  });
  const names = new Set(record.faults.map(({ fault }) => fault.value));
  const others = [...faults].filter(([id]) => !names.has(id)).map(([, known]) => known);
  const unstated = others.flatMap((known) => shownBest(known, beholder) ?? []);
  const named = [...new Map(stated.map(({ fault }) => [fault.id.value, fault])).values()];
  const links = linksBetween(named, beholder.registry);
  const contradicted = contradictedOf(stated);
  const standing = named.filter(({ id }) => !contradicted.has(id.value));
  const between = links.filter(({ from, to }) => !contradicted.has(from) && !contradicted.has(to));
  const misses = record.misses.flatMap((one): JudgedMiss[] => {
    const miss = findMiss(one.miss.value);
    if (miss === undefined) return [];
    const explained = explainMiss(miss, standing, between, beholder.hand);
    const tending = (ones: readonly Fault[]): readonly string[] =>
      ones.filter((fault) => tendsToMiss(fault, miss, beholder.hand)).map(({ id }) => id.value);
    return [
      {
        ...explained,
        stated: one,
        unstated: tending(others.map(({ fault }) => fault)),
        contradicted: tending(named.filter(({ id }) => contradicted.has(id.value))),
      },
    ];
  });
  return { faults, stated, unstated, links, contradicted, misses };
}

/** One that is stated at several checkpoints stands as long as it stands at one of them. */
function contradictedOf(stated: readonly StatedVerdict[]): ReadonlySet<string> {
  const ids = new Set(stated.map(({ fault }) => fault.id.value));
  for (const { fault, verdict } of stated) if (verdict !== 'contradicted') ids.delete(fault.id.value);
  return ids;
}

/** The verdict at the checkpoint where the evidence is best, if it is good enough anywhere. */
function shownBest(known: BookFault, beholder: Beholder): FaultVerdict | undefined {
  const places = known.fault.at.length === 0 ? [undefined] : known.fault.at.map(({ value }) => value);
  const verdicts = places
    .map((at) => judge(known, at, beholder))
    .filter(({ probability }) => probability !== undefined && probability >= remarkableFrom);
  return verdicts.reduce<FaultVerdict | undefined>(
    (best, one) => (best === undefined || one.probability! > best.probability! ? one : best),
    undefined,
  );
}
