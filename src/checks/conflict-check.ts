// Makes a check out of the conflicts that the agreement found under one code: one finding each, on the entry that fits worst.
import { doubtfulFactor } from '../model/combine.ts';
import { othersSay } from '../model/others-say.ts';
import type { Agreement, Conflict, ReadingRef } from '../model/agreement-result.ts';
import type { Span } from '../measure/measure.ts';
import type { Entry, Reading } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import {
  nameWithin,
  placedEntry,
  relatedEntries,
  titlesOf,
  titleWithin,
  type PlacedEntry,
} from './agreement.ts';
import type { Check, Fix, RawFinding } from './check.ts';
import { conflictKinds } from './conflict-kinds.ts';
import { notPreferred, replace, textAt } from './fixes.ts';
import type { Subject } from './subject.ts';
import { lowerFirst } from '../measure/quote.ts';

export function conflictCheck(check: Omit<Check, 'kinds' | 'find'>): Check {
  return { ...check, kinds: ['swing'], find: (subject) => conflictFindings(subject, check.code) };
}

export function conflictFindings(subject: Subject, code: string): readonly RawFinding[] {
  const { agreement } = subject;
  if (agreement === undefined) return [];
  return foremost(agreement).flatMap((found) =>
    found.code === code ? findingOf(found.conflict, subject, agreement) : [],
  );
}

interface Coded {
  readonly code: string;
  readonly conflict: Conflict;
}

/** Of those that nobody can tell apart only one, so that each misfit is said once. */
function foremost({ conflicts }: Agreement): readonly Coded[] {
  const said = new Set<Conflict>();
  return conflicts.flatMap((conflict): Coded[] => {
    if (said.has(conflict)) return [];
    const group = conflicts.filter(
      (other) => other === conflict || conflict.rivals.some((rival) => isSame(rival, other)),
    );
    for (const member of group) said.add(member);
    const kind = conflictKinds.find(({ isAbout }) => group.some(isAbout))!;
    const suited = group.filter(kind.isAbout);
    const preferred = kind.blamed.flatMap((id) => suited.filter((member) => member.id === id));
    return [{ code: kind.code, conflict: preferred[0] ?? laterReading(suited) }];
  });
}

/** Of several readings of one thing the later one, which was held against those before it. */
function laterReading([first, ...others]: readonly Conflict[]): Conflict {
  return others
    .filter(({ id }) => id === first!.id)
    .reduce((latest, other) => (other.reading > latest.reading ? other : latest), first!);
}

function isSame(a: ReadingRef, b: ReadingRef): boolean {
  return a.id === b.id && a.reading === b.reading;
}

function findingOf(conflict: Conflict, subject: Subject, agreement: Agreement): readonly RawFinding[] {
  const placed = placedEntry(subject, conflict.id);
  const reading = placed?.entry.readings[conflict.reading];
  if (placed === undefined || reading === undefined) return [];
  const isOwn = placed.uri === subject.uri;
  const { entry } = placed;
  const span = isOwn ? spanOf(entry, reading) : referenceTo(entry, subject);
  const elsewhere = isOwn ? [] : relatedEntries(subject, [conflict.id]);
  const others = conflict.outvotedBy.filter(
    (id) => id !== conflict.id && !conflict.rivals.some((rival) => rival.id === id),
  );
  return [
    {
      span,
      message: sentenceOf(conflict, entry.quantity, subject),
      related: [
        ...elsewhere,
        ...relatedEntries(subject, others),
        ...conflict.rivals.flatMap((rival) => relatedReading(rival, subject, agreement)),
      ],
      fixes: isOwn && mendsIt(conflict, agreement) ? doubtfulMark(subject, reading) : [],
    },
  ];
}

function spanOf({ readings, valueSpan }: Entry, { span }: Reading): Span {
  return readings.length > 1 ? span : valueSpan;
}

/** Where the record names the file that the entry stands in. */
function referenceTo({ id }: Entry, { document }: Subject): Span {
  const nothing = { start: 0, end: 0 };
  if (document.kind !== 'swing') return nothing;
  const named = id.startsWith('club.') ? document.club : document.student;
  return (named ?? document.student)?.span ?? nothing;
}

/** "Attack 1.0 deg down does not fit: shaft lean and low point together say 4.6 deg down ± 0.9 deg." */
function sentenceOf(conflict: Conflict, quantity: Quantity, subject: Subject): string {
  const { id, value, rivals, outvotedBy } = conflict;
  const readings = placedEntry(subject, id)?.entry.readings.length ?? 1;
  const others = othersSay(conflict, readings, subject.derivation);
  const implied = subject.show(quantity, others.implied, others.uImplied);
  const own = outvotedBy.includes(id) ? [`the other ${lowerFirst(quantity.title)}`] : [];
  const voters = [
    ...own,
    ...titlesOf(
      outvotedBy.filter((voter) => voter !== id),
      subject.registry,
    ),
  ];
  const say = voters.length === 1 ? 'says' : 'together say';
  const found = `${quantity.title} ${subject.show(quantity, value)} does not fit: ${listed(voters)} ${say} ${implied}`;
  return `${found}${rivalWords(rivals, id, subject.registry)}.`;
}

function rivalWords(rivals: readonly ReadingRef[], id: string, registry: Registry): string {
  if (rivals.length === 0) return '';
  if (rivals.every((rival) => rival.id === id))
    return rivals.length === 1 ? '; the two cannot both be true' : '; they cannot all be true';
  const names = rivals.map((rival) => titleWithin(rival.id, registry));
  if (names.length === 1) return `, or ${names[0]!} is off: the two cannot both be true`;
  return `, or one of ${listed(names)} is off: they cannot all be true`;
}

function relatedReading(
  { id, reading }: ReadingRef,
  subject: Subject,
  { entries }: Agreement,
): NonNullable<RawFinding['related']> {
  const placed: PlacedEntry | undefined = placedEntry(subject, id);
  const at = placed?.entry.readings[reading];
  const judged = entries.find((one) => isSame(one, { id, reading }));
  if (placed === undefined || at === undefined || judged === undefined) return [];
  const { quantity } = placed.entry;
  const message = `Perhaps this one is off: ${nameWithin(quantity)} ${subject.show(quantity, judged.value, judged.u)}`;
  return [{ uri: placed.uri, span: spanOf(placed.entry, at), message }];
}

/** Somewhat below the threshold, since the others move a little once the entry counts for something again. */
const margin = 0.9;

function mendsIt({ value, u, implied, uImplied }: Conflict, { threshold }: Agreement): boolean {
  return Math.abs(value - implied) <= margin * threshold * Math.hypot(doubtfulFactor * u, uImplied);
}

/** Only what stands unquoted in a flow mapping without being read as something else. */
const plainText = /^[^\s,[\]{}#&*!|>'"%@`:?-][^,[\]{}#:]*$/;

function doubtfulMark(subject: Subject, { form, doubtful, span }: Reading): readonly Fix[] {
  const text = textAt(subject, span);
  if (doubtful || form !== 'short' || !plainText.test(text)) return [];
  return [notPreferred(replace(subject, span, `{ value: ${text}, doubtful: true }`, 'Mark it doubtful'))];
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
