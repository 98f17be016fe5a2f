// Makes checks out of a workspace's own: a condition over the values of a record, with a message of the developer's; judges no other.
import { relationNamed } from '../model/own-model.ts';
import { filledIn } from '../judgement/message.ts';
import type { CompiledCheck } from '../judgement/own.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { Value } from '../model/value.ts';
import type { Span } from '../measure/measure.ts';
import type { Registry } from '../registry/registry.ts';
import { placedEntry, relatedEntries } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { handOf } from './handed.ts';
import type { Subject } from './subject.ts';

/** Codes of a workspace's own begin so, and no built-in one does. */
const ownPrefix = 'own/';

export function ownCode(name: string): string {
  return `${ownPrefix}${name}`;
}

export function checkFrom(own: CompiledCheck): Check {
  const code = ownCode(own.name.value);
  return {
    code,
    severity: own.severity,
    title: own.name.value.replaceAll('-', ' '),
    explanation: `${own.because ?? 'A check of this workspace.'}\n\nIt is raised where this holds: \`${own.when.value}\`.\n\n*Source: the workspace file.*`,
    kinds: ['swing'],
    find: (subject) => findingsOf(own, subject),
  };
}

/**
 * How a check stands in this record. Three-valued: only what holds for sure of the values as they stand raises it; a missing value may
 * leave it open. As long as nobody says which hand plays, it is asked for both: `handed` is what holds for one hand and not for the other.
 */
export function standingOf({ condition }: CompiledCheck, subject: Subject): 'holds' | 'handed' | 'silent' {
  const hand = handOf(subject);
  const holdsFor = (as: 'left' | 'right'): boolean =>
    condition.holds(condition.quantities.map(({ id }) => valueFor(id, as, subject))) === 1;
  if (hand !== undefined) return holdsFor(hand) ? 'holds' : 'silent';
  const [right, left] = [holdsFor('right'), holdsFor('left')];
  if (right && left) return 'holds';
  return right || left ? 'handed' : 'silent';
}

/** The ids that a check is about, and the place of the first one that was entered: there its finding stands. */
export function placeOfOwn(
  { condition: { quantities }, at }: CompiledCheck,
  subject: Subject,
): { readonly span: Span; readonly others: readonly string[] } {
  const ids = [...(at === undefined ? [] : [at.value]), ...quantities.map(({ id }) => id)];
  const foremost = ids.find((id) => subject.document.kind === 'swing' && subject.document.entries.has(id));
  const others = ids.filter((id) => id !== foremost && relationNamed(id) === undefined);
  return { span: placeOf(foremost, subject), others: [...new Set(others)] };
}

function findingsOf(own: CompiledCheck, subject: Subject): readonly RawFinding[] {
  if (standingOf(own, subject) !== 'holds') return [];
  const { span, others } = placeOfOwn(own, subject);
  const message = filledIn(own.message.value, (id) =>
    shown(subject.derivation?.values.get(id), subject.registry, subject),
  );
  return [{ span, message, related: relatedEntries(subject, others) }];
}

/** As for a right-handed player, as in a fault book, for one who plays with this hand; NaN while it is not known. */
function valueFor(id: string, hand: 'left' | 'right', { derivation, registry }: Subject): number {
  const value = derivation?.values.get(id);
  return value === undefined ? NaN : mirroredNumber(id, value.value, { hand, registry });
}

function shown(value: Value | undefined, registry: Registry, { show }: Subject): string {
  const quantity = value && registry.find(value.id);
  return value === undefined || quantity === undefined ? 'no value' : show(quantity, value.value, value.u);
}

/** The entry, or the first line where none of them was entered in the record itself. */
function placeOf(id: string | undefined, subject: Subject): Span {
  const placed = id === undefined ? undefined : placedEntry(subject, id);
  if (placed?.uri === subject.uri) return placed.entry.valueSpan;
  return { start: 0, end: subject.document.text.search(/[\r\n]|$/) };
}
