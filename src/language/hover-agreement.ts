// What a hover says of how an entry stands to the others: what they expect of it, and whether it is checked; judges nothing.
import { flightLineFor } from './windows.ts';
import type { Analysis } from '../analysis/result.ts';
import { verdictOn } from '../analysis/explained.ts';
import { showValue } from '../measure/show.ts';
import type { JudgedReading } from '../model/agreement-result.ts';
import { nonlinear } from '../model/drawn-interval.ts';
import type { Value } from '../model/value.ts';
import type { Entry, Reading } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { assumptionsOf, foremostOf, list, nameOf } from './words.ts';

/** At most three lines: what the others expect, the verdict, and what the flight alone allows. */
export function standingOf(analysis: Analysis, entry: Entry, at: Reading | undefined): readonly string[] {
  const { derivation, document, subject } = analysis;
  if (derivation === undefined || document.kind !== 'swing' || document.entries.get(entry.id) !== entry)
    return [];
  return [
    ...expectation(
      entry,
      subject.registry,
      derivation.expected.get(entry.id),
      derivation.values.get(entry.id),
    ),
    ...verdict(analysis, entry, at),
    ...absence(analysis, entry),
    ...flightLineFor(analysis, entry.id),
  ];
}

function expectation(
  { quantity, readings }: Entry,
  registry: Registry,
  expected: Value | undefined,
  entered: Value | undefined,
): readonly string[] {
  if (expected === undefined) return [];
  const origin = expected.from.length > 0 ? ` (from ${foremostOf(expected, registry)})` : '';
  const assumed = assumptionsOf(expected);
  const about = nonlinear.has(expected.id) ? 'about ' : '';
  const line = `The other entries expect ${about}${showValue(quantity, expected.value, expected.u)}${origin}`;
  const apart =
    readings.length === 0 || entered === undefined ? undefined : distance(entered, expected)?.toFixed(1);
  const distant = apart === undefined ? '' : `: ${apart} times the combined uncertainty apart`;
  return [`${line}${distant}.${assumed === '' ? '' : ` Assumes ${assumed}.`}`];
}

function distance(entered: Value, expected: Value): number | undefined {
  if (expected.u === null || entered.u === null) return undefined;
  const spread = Math.hypot(expected.u, entered.u);
  return spread > 0 ? Math.abs(entered.value - expected.value) / spread : undefined;
}

/** Of one reading, or of the one among several that there is most to say of. */
function verdict(
  { agreement }: Analysis,
  { id, readings, quantity }: Entry,
  at: Reading | undefined,
): string[] {
  const judged = agreement?.entries.filter((one) => one.id === id) ?? [];
  const place = at === undefined ? -1 : readings.indexOf(at);
  const worst = (of: JudgedReading['verdict']): JudgedReading | undefined =>
    judged.find((one) => one.verdict === of);
  const chosen =
    judged.find(({ reading }) => reading === place) ??
    worst('conflict') ??
    worst('fits') ??
    worst('unchecked');
  // What the others say stands in the line before.
  return chosen === undefined ? [] : [verdictOn(chosen, quantity).replace(/: the others say .*$/, '.')];
}

function absence({ derivation, subject }: Analysis, { id }: Entry): readonly string[] {
  const missing = derivation?.missing.get(id);
  if (missing === undefined || derivation?.expected.has(id) === true) return [];
  if (missing.needs.length === 0) return ['No number comes out of what is entered for it.'];
  const needs = missing.needs.map((need) => nameOf(need, subject.registry));
  return [`Nothing else in the record speaks of it yet: that would take ${list(needs, 4)}.`];
}
