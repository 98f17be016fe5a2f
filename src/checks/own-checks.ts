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

/** Three-valued: only what holds for sure of the values as they stand raises it; a missing value may leave it open. */
function findingsOf({ condition, message, at }: CompiledCheck, subject: Subject): readonly RawFinding[] {
  const { quantities, holds } = condition;
  const known = quantities.map(({ id }) => valueFor(id, subject));
  if (holds(known) !== 1) return [];
  const ids = [...(at === undefined ? [] : [at.value]), ...quantities.map(({ id }) => id)];
  const foremost = ids.find((id) => subject.document.kind === 'swing' && subject.document.entries.has(id));
  const text = filledIn(message.value, (id) =>
    shown(subject.derivation?.values.get(id), subject.registry, subject),
  );
  const others = ids.filter((id) => id !== foremost && relationNamed(id) === undefined);
  return [
    {
      span: placeOf(foremost, subject),
      message: text,
      related: relatedEntries(subject, [...new Set(others)]),
    },
  ];
}

/** As for a right-handed player, as in a fault book; NaN while it, or the hand that it turns on, is not known. */
function valueFor(id: string, { derivation, student, registry }: Subject): number {
  const value = derivation?.values.get(id);
  const hand = student?.document.hand?.value;
  if (value === undefined || (hand === undefined && registry.find(id)?.lateral === true)) return NaN;
  return mirroredNumber(id, value.value, { hand, registry });
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
