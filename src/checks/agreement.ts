// Names and places of the entries that a finding speaks of, and how far apart two figures lie; judges none of them.
import { relationNamed } from '../model/own-model.ts';
import type { Entry } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { RawFinding } from './check.ts';
import type { Subject } from './subject.ts';
import { lowerFirst } from '../measure/quote.ts';

/**
 * How many combined standard uncertainties two figures for one thing may lie apart where they are only held against each
 * other. Three leave an honest pair of normal readings unflagged in 997 of 1000 cases (the choice is a judgement).
 */
export const threshold = 3;

/** |a − b| over the root of the sum of squares of their standard uncertainties (JCGM 100:2008, eq. 10, for a − b). */
export function apart(a: number, ua: number, b: number, ub: number): number {
  return Math.abs(a - b) / Math.hypot(ua, ub);
}

const mostNamed = 3;

/** The titles within a sentence, cut after a few. */
export function titlesOf(ids: readonly string[], registry: Registry): readonly string[] {
  const titles = ids.map((id) => titleWithin(id, registry));
  if (titles.length <= mostNamed) return titles;
  return [...titles.slice(0, mostNamed - 1), `${titles.length - mostNamed + 1} more entries`];
}

/** "attack angle", "shaft lean at impact": a title within a sentence; an id that the registry does not hold as it is. */
export function titleWithin(id: string, registry: Registry): string {
  const relation = relationNamed(id);
  if (relation !== undefined) return `the relation \`${relation}\``;
  const quantity = registry.find(id);
  return quantity === undefined ? id : nameWithin(quantity);
}

/** "shaft lean at impact", "carry". */
export function nameWithin({ title, checkpoint }: Quantity): string {
  const lowered = lowerFirst(title);
  return checkpoint === undefined ? lowered : `${lowered} at ${checkpoint.replaceAll('_', ' ')}`;
}

/** The entries with these ids, each with the file that it stands in. */
export function relatedEntries(subject: Subject, ids: readonly string[]): NonNullable<RawFinding['related']> {
  return ids.flatMap((id) => {
    const placed = placedEntry(subject, id);
    const value = subject.derivation?.values.get(id);
    if (placed === undefined || value === undefined) return [];
    const { uri, entry } = placed;
    const message = `${entry.quantity.title} ${subject.show(entry.quantity, value.value, value.u)}`;
    return [{ uri, span: entry.valueSpan, message }];
  });
}

export interface PlacedEntry {
  readonly uri: string;
  readonly entry: Entry;
}

/** Where an entry stands: in the record, or in the student's file. */
export function placedEntry(subject: Subject, id: string): PlacedEntry | undefined {
  const own = subject.document.kind === 'swing' ? subject.document.entries.get(id) : undefined;
  if (own !== undefined) return { uri: subject.uri, entry: own };
  if (subject.student === undefined) return undefined;
  const others = subject.student.document.entries.get(id) ?? subject.club?.entries.get(id);
  return others && { uri: subject.student.uri, entry: others };
}
