// What a coach is likely to write for a quantity (unit, direction, method) and which entries come next, from this record, the one before, template, faults and plan; computes nothing.
import { readerOf } from '../checks/reach.ts';
import { practiceFor } from '../judgement/room.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Measure } from '../measure/measure.ts';
import type { Entry, SwingRecord } from '../record/document.ts';
import { practiceWith, type Registry } from '../registry/registry.ts';
import type { Quantity } from '../registry/quantity.ts';
import { entriesOf } from './entries.ts';

export interface Habit {
  readonly unit: string;
  /** The likeliest first; empty where the quantity has none. */
  readonly directions: readonly string[];
  /** True where practice knows the likeliest direction alone. */
  readonly isOneSided: boolean;
  /** By which it was measured the last time, or what is like it in this record. */
  readonly method: string | undefined;
  /** All that may stand after `by`, the likeliest first. */
  readonly methods: readonly string[];
}

/** What is known of how the student's lessons were measured. */
export interface Past {
  readonly analysis: Analysis;
  /** The student's record before this one. */
  readonly earlier: SwingRecord | undefined;
  /** Each quantity as it was measured the last time, in whichever lesson that was. */
  readonly usual: ReadonlyMap<string, Entry>;
}

export function habitOf(quantity: Quantity, { analysis, usual: past }: Past): Habit {
  const own = entriesOf(analysis.document).filter(({ id }) => id !== quantity.id);
  const entry = past.get(quantity.id);
  const last = entry?.readings.at(-1)?.measure;
  const alike = own.filter((entry) => entry.quantity.key === quantity.key);
  const near = own.filter(
    ({ quantity: { dimension, section } }) =>
      dimension === quantity.dimension && section === quantity.section,
  );
  const window = analysis.subject.template?.document.windows.get(quantity.id)?.window;
  const pick = (of: (measure: Measure) => string | undefined): string | undefined =>
    (last === undefined ? undefined : of(last)) ?? latest(alike, of) ?? latest(near, of);
  const unit = pick((measure) => measure.unit) ?? window?.unit ?? quantity.unit;
  const { subject } = analysis;
  const practice = practiceFor(quantity, readerOf(subject, subject.club?.kind?.value));
  const sign = practice === undefined ? 1 : Math.sign(practice.min + practice.max);
  const words = quantity.directions.map(({ word }) => word);
  const usual = quantity.directions.find((direction) => direction.sign === sign)?.word;
  // Who named none the last time names none again.
  const { methodNames, findMethod } = analysis.subject.registry;
  const isGood = (name: string): boolean => findMethod(name)?.isRefused !== true;
  const method = last === undefined ? pick((measure) => measure.method) : last.method;
  return {
    unit,
    directions: unique([last?.direction, window?.direction, usual, ...words]).filter((word) =>
      words.includes(word),
    ),
    isOneSided: practice !== undefined && practice.min * practice.max > 0 && last?.direction === undefined,
    method: method !== undefined && isGood(method) ? method : undefined,
    methods: unique([method, ...Object.keys(quantity.uncertainty.by), ...methodNames]).filter(isGood),
  };
}

/** The keys of a mapping of quantities below `prefix`, what is most likely measured next first; the others stay in their order. */
export function rankKeys(
  keys: readonly string[],
  prefix: string,
  analysis: Analysis,
  earlier: SwingRecord | undefined,
): readonly string[] {
  const wanted = [wantedIds(analysis, earlier), [...(earlier?.entries.keys() ?? [])]];
  const kind = analysis.subject.club?.kind?.value;
  const rank = (key: string): number => {
    const id = `${prefix}.${key}`;
    for (const [group, ids] of wanted.entries()) {
      const at = ids.findIndex((other) => other === id || other.startsWith(`${id}.`));
      if (at !== -1) return group * 1000 + at;
    }
    const quantity = analysis.subject.registry.find(id);
    return quantity !== undefined && practiceWith(quantity, kind) === undefined ? 3001 : 3000;
  };
  return keys
    .map((key) => [key, rank(key)] as const)
    .sort((a, b) => a[1] - b[1])
    .map(([key]) => key);
}

/** Full ids: what the template asks for, what would show the stated faults, what the plan's proofs need. */
export function wantedIds(
  { document, subject }: Analysis,
  earlier: SwingRecord | undefined,
): readonly string[] {
  const template = [...(subject.template?.document.windows.keys() ?? [])];
  if (document.kind !== 'swing') return template;
  const stated = new Set(document.faults.map(({ fault }) => fault.value));
  const evidence = subject.faultBooks.flatMap(({ document: { faults } }) =>
    [...faults.values()].flatMap(({ id, evidence: shown }) =>
      stated.has(id.value)
        ? shown.flatMap(({ expression }) => idsIn(expression.value, subject.registry))
        : [],
    ),
  );
  const proofs = [...document.plan, ...(earlier?.plan ?? [])].flatMap(({ change, proof }) => [
    ...(change === undefined ? [] : [change.value]),
    ...(proof === undefined ? [] : idsIn(proof.value, subject.registry)),
  ]);
  return unique([...template, ...evidence, ...proofs]);
}

/** The method by which this entry was measured the last time. */
function latest(entries: readonly Entry[], of: (measure: Measure) => string | undefined): string | undefined {
  for (const { readings } of [...entries].reverse()) {
    for (const { measure } of readings) {
      const found = of(measure);
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

/** Ids in an expression, or in a sentence. */
function idsIn(words: string, registry: Registry): readonly string[] {
  return (words.match(/[a-z_]+(?:\.[a-z_]+)+/g) ?? []).filter((id) => registry.find(id) !== undefined);
}

export function unique(words: readonly (string | undefined)[]): string[] {
  return [...new Set(words.filter((word) => word !== undefined))];
}
