// Holds an entry against what the other entries make of it; knows how to compare and to say so, not what is compared.
import { doubtfulFactor } from '../model/combine.ts';
import type { Value } from '../model/value.ts';
import type { Entry } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { findQuantity } from '../registry/registry.ts';
import type { Fix, RawFinding } from './check.ts';
import { notPreferred, replace, textAt } from './fixes.ts';
import type { Subject } from './subject.ts';

/**
 * How many combined standard uncertainties two figures for one thing may lie apart. Three leave an honest pair of normal
 * readings unflagged in 997 of 1000 cases, so that a record with ten comparisons raises a needless warning about once in
 * forty lessons; two would do so in more than a third of them (the normal distribution; the choice is a judgement).
 */
export const threshold = 3;

/** |a − b| over the root of the sum of squares of their standard uncertainties (JCGM 100:2008, eq. 10, for a − b). */
export function apart(a: number, ua: number, b: number, ub: number): number {
  return Math.abs(a - b) / Math.hypot(ua, ub);
}

/** What an entry is expected to be, from which entries, and under which assumptions. */
export type Expectation = Pick<Value, 'value' | 'u' | 'from' | 'assumed'> & Partial<Pick<Value, 'shares'>>;

/**
 * A finding where the entry `id` is more than the threshold from what the model makes of the other entries. `via` are the
 * entries one of which must stand behind that: what came another way belongs to another check.
 */
export function disagreements(subject: Subject, id: string, via: readonly string[]): readonly RawFinding[] {
  const expected = subject.derivation?.expected.get(id);
  if (expected === undefined || !via.some((source) => expected.from.includes(source))) return [];
  return misfits(subject, id, { ...expected, from: foremostFirst(expected, via) });
}

/** Those that the check is about, then the rest by their share in the uncertainty. */
function foremostFirst({ from, shares }: Value, via: readonly string[]): readonly string[] {
  const rest = from.filter((id) => !via.includes(id));
  rest.sort((a, b) => (shares.get(b) ?? 0) - (shares.get(a) ?? 0));
  return [...via.filter((id) => from.includes(id)), ...rest];
}

/** A finding where the entry `id` is more than the threshold from `expected`, which must not rest on the entry itself. */
export function misfits(subject: Subject, id: string, expected: Expectation): readonly RawFinding[] {
  const entry = enteredAt(subject, id);
  const entered = subject.derivation?.values.get(id);
  if (entry === undefined || entered?.kind !== 'entered' || entered.u === null || expected.u === null)
    return [];
  if (!(apart(entered.value, entered.u, expected.value, expected.u) > threshold)) return [];
  const mendsIt = apart(entered.value, entered.u * doubtfulFactor, expected.value, expected.u) <= threshold;
  return [
    {
      span: entry.valueSpan,
      message: misfitSentence(subject, entry.quantity, entered.value, expected),
      related: relatedEntries(subject, expected.from),
      fixes: mendsIt ? doubtfulMark(subject, entry) : [],
    },
  ];
}

/** "Low point 2.0 cm ahead does not fit: attack angle and radius of the arc put it at 16.1 cm ahead ± 1.4 cm." */
function misfitSentence(
  subject: Subject,
  quantity: Quantity,
  entered: number,
  expected: Expectation,
): string {
  const verb = expected.from.length === 1 ? 'puts' : 'put';
  const found = `${quantity.title} ${subject.show(quantity, entered)} does not fit`;
  const others = `${titlesOf(expected.from)} ${verb} it at ${subject.show(quantity, expected.value, expected.u)}`;
  return `${found}: ${others}${assumingOf(expected)}.`;
}

/** The assumptions that weigh most, by their share in the variance. */
function assumingOf({ assumed, shares }: Expectation): string {
  const share = ({ id }: { readonly id: string }): number => shares?.get(`assumed:${id}`) ?? 0;
  const words = [...new Set(assumed.toSorted((a, b) => share(b) - share(a)).map((each) => each.words))];
  if (words.length === 0) return '';
  const more = words.length - mostAssumed;
  const named = more > 0 ? [...words.slice(0, mostAssumed), `${more} more`] : words;
  return `, assuming ${listed(named)}`;
}

const mostAssumed = 2;

const mostNamed = 3;

function titlesOf(ids: readonly string[]): string {
  const titles = ids.map(titleWithin);
  if (titles.length <= mostNamed) return listed(titles);
  const more = titles.length - mostNamed + 1;
  return listed([...titles.slice(0, mostNamed - 1), `${more} more entries`]);
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** "attack angle", "shaft lean at impact": a title within a sentence. */
export function titleWithin(id: string): string {
  const quantity = findQuantity(id);
  if (quantity === undefined) return id;
  const { title, checkpoint } = quantity;
  const lowered = /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
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

function enteredAt(subject: Subject, id: string): Entry | undefined {
  return subject.document.kind === 'swing' ? subject.document.entries.get(id) : undefined;
}

function placedEntry(
  subject: Subject,
  id: string,
): { readonly uri: string; readonly entry: Entry } | undefined {
  const own = enteredAt(subject, id);
  if (own !== undefined) return { uri: subject.uri, entry: own };
  if (subject.student === undefined) return undefined;
  const others = subject.student.document.entries.get(id) ?? subject.club?.entries.get(id);
  return others && { uri: subject.student.uri, entry: others };
}

/** Only what stands unquoted in a flow mapping without being read as something else. */
const plainText = /^[^\s,[\]{}#&*!|>'"%@`:?-][^,[\]{}#:]*$/;

function doubtfulMark(subject: Subject, entry: Entry): readonly Fix[] {
  const only = entry.readings[0];
  const text = textAt(subject, entry.valueSpan);
  if (only === undefined || entry.readings.length > 1 || only.form !== 'short' || !plainText.test(text))
    return [];
  return [
    notPreferred(replace(subject, entry.valueSpan, `{ value: ${text}, doubtful: true }`, 'Mark it doubtful')),
  ];
}
