// What a reviewer asks of each entry of a record: how it was measured, who checks it, what leans on it, and what doubt would change; judges no swing.
import { accountOf } from '../model/account.ts';
import type { JudgedReading, Verdict } from '../model/agreement-result.ts';
import type { Situation } from '../model/value.ts';
import { isBreaking } from '../record/broken.ts';
import type { Entry, Reading } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { standardUncertainty } from '../registry/registry.ts';
import { explainedOf } from './explained.ts';
import { goalsOf } from './plan.ts';
import type { Analysis, TextRange } from './result.ts';
import { lineTableOf, rangeOf } from './positions.ts';

/** Where the uncertainty of an entry comes from. */
export type Origin = 'stated' | 'method' | 'quantity';

export interface AuditRow {
  readonly quantity: Quantity;
  /** Its place among several readings of one quantity, from 0. */
  readonly reading: number;
  readonly uri: string;
  readonly range: TextRange;
  /** SI, as entered. */
  readonly value: number;
  /** One standard uncertainty, SI, before doubt widens it. */
  readonly u: number;
  readonly origin: Origin;
  readonly method: string | undefined;
  readonly estimate: boolean;
  readonly doubtful: boolean;
  /** Neither a figure, nor a method: somebody's guess, or marked as one. */
  readonly isGuess: boolean;
  /** What the agreement made of it; undefined where it takes no part. */
  readonly judged: JudgedReading | undefined;
  /** What the other readings of the same quantity say, and how far this one is from them, in standard uncertainties. */
  readonly second: { readonly value: number; readonly u: number; readonly apart: number } | undefined;
  /** Share in the variance of each goal quantity, and of all of them on average; 0..1. */
  readonly shares: ReadonlyMap<string, number>;
  readonly weight: number;
  /** The verdict if every uncertainty of the record were twice as large; undefined where nothing is judged. */
  readonly verdictAtTwice: Verdict | undefined;
}

export interface Audit {
  /** The quantities whose uncertainty is shared out: those of the goals, or what a lesson is about where it has none. */
  readonly concluded: readonly Quantity[];
  readonly fromGoals: boolean;
  /** True where goals stand there and none names a quantity that could be read. */
  readonly hasUnreadGoals: boolean;
  /** In the order of the files: the record, the student, the club. */
  readonly rows: readonly AuditRow[];
  /** Guesses that carry a fifth or more of some conclusion and that nobody checks. */
  readonly leanedOn: readonly AuditRow[];
}

/** What a lesson is mostly about, where nobody says. */
const usual = [
  'flight.carry',
  'flight.curve',
  'flight.start',
  'delivery.low_point.ahead',
  'delivery.face_to_path',
];

/** An entry with less redundancy than this hides half of its own error. */
const wellChecked = 0.5;
const muchLeaning = 0.2;

/** Undefined of anything but a swing record. */
export function auditOf(analysis: Analysis): Audit | undefined {
  const { document, subject, account } = analysis;
  if (document.kind !== 'swing' || account === undefined) return undefined;
  const { registry } = subject;
  const wanted = [
    ...new Set(
      goalsOf(subject).flatMap(({ goal }) => [...goal.targets.values()].map(({ quantity }) => quantity.id)),
    ),
  ];
  const ids = (wanted.length > 0 ? wanted : usual).filter((id) => account.derivation.values.has(id));
  const shares = new Map(ids.map((id) => [id, sharesIn(analysis, id)]));
  const twice = accountOf(widened(account.situation, 2)).agreement;
  const rows = sourcesOf(analysis).flatMap(({ uri, text, entry }) => {
    const weighed = entry.readings.map(
      (reading, place) =>
        judgedIn(account.agreement.entries, entry.id, place)?.u ?? figureOf(entry, reading, analysis).u,
    );
    return entry.readings.map((reading, place): AuditRow => {
      const own = figureOf(entry, reading, analysis);
      const part = partOf(place, weighed);
      const shareOf = new Map(ids.map((id) => [id, part * (shares.get(id)?.get(entry.id) ?? 0)]));
      return {
        quantity: entry.quantity,
        reading: place,
        uri,
        range: rangeOf(lineTableOf(text), reading.span),
        ...own,
        judged: judgedIn(account.agreement.entries, entry.id, place),
        second: secondOpinion(entry, place, analysis),
        shares: shareOf,
        weight:
          ids.length === 0 ? 0 : [...shareOf.values()].reduce((sum, share) => sum + share, 0) / ids.length,
        verdictAtTwice:
          twice.status === 'solved' ? judgedIn(twice.entries, entry.id, place)?.verdict : undefined,
      };
    });
  });
  return {
    concluded: ids.flatMap((id) => registry.find(id) ?? []),
    fromGoals: wanted.length > 0,
    hasUnreadGoals:
      wanted.length === 0 &&
      [document, subject.student?.document].some(
        (one) => one?.outline.some(({ name, children }) => name === 'goals' && children.length > 0) === true,
      ),
    rows,
    leanedOn: rows
      .filter(
        ({ isGuess, judged, shares: own }) =>
          isGuess && (judged?.redundancy ?? 0) < wellChecked && Math.max(0, ...own.values()) >= muchLeaning,
      )
      .sort((a, b) => b.weight - a.weight),
  };
}

/** Why nothing is told of a record that is not read to its end: half of it would be left out, and of nothing all would look in order. */
export function whyNoAudit(
  { rows }: Audit,
  { uri, document, findings }: Analysis,
  name: string,
): string | undefined {
  const isEmpty = document.problems.length > 0 && !rows.some((row) => row.uri === uri);
  const first = findings.find(({ severity, code }) => isBreaking(code) || (isEmpty && severity === 'error'));
  return first && `cannot audit \`${name}\`: line ${first.range.start.line + 1}: ${first.message}`;
}

interface Source {
  readonly uri: string;
  readonly text: string;
  readonly entry: Entry;
}

/** Every entry that the model took: the record's own, the student's and those of the club. */
function sourcesOf({ uri, document, subject: { student, club } }: Analysis): readonly Source[] {
  const own = document.kind === 'swing' ? [...document.entries.values()] : [];
  const others = [...(student?.document.entries.values() ?? []), ...(club?.entries.values() ?? [])];
  return [
    ...own.map((entry) => ({ uri, text: document.text, entry })),
    ...(student === undefined
      ? []
      : others.map((entry) => ({ uri: student.uri, text: student.document.text, entry }))),
  ];
}

type Figure = Pick<AuditRow, 'value' | 'u' | 'origin' | 'method' | 'estimate' | 'doubtful' | 'isGuess'>;

function figureOf(
  { quantity }: Entry,
  { measure, doubtful }: Reading,
  { subject: { workspace, registry } }: Analysis,
): Figure {
  const { u, origin } = standardUncertainty(quantity, measure, workspace?.document.coverage ?? 1, registry);
  const { value, method, estimate } = measure;
  const isGuess =
    estimate || (origin === 'quantity' && method === undefined) || (origin !== 'stated' && method === 'eye');
  return { value, u, origin, method, estimate, doubtful, isGuess };
}

function secondOpinion(entry: Entry, place: number, analysis: Analysis): AuditRow['second'] {
  const others = entry.readings
    .filter((_, i) => i !== place)
    .map((reading) => figureOf(entry, reading, analysis))
    .filter(({ u }) => u > 0);
  const own = figureOf(entry, entry.readings[place]!, analysis);
  if (others.length === 0 || !(own.u > 0)) return undefined;
  const weight = others.reduce((sum, { u }) => sum + 1 / u ** 2, 0);
  const value = others.reduce((sum, one) => sum + one.value / one.u ** 2, 0) / weight;
  const u = 1 / Math.sqrt(weight);
  return { value, u, apart: (own.value - value) / Math.hypot(own.u, u) };
}

function judgedIn(entries: readonly JudgedReading[], id: string, place: number): JudgedReading | undefined {
  return entries.find((entry) => entry.id === id && entry.reading === place);
}

function sharesIn(analysis: Analysis, id: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { kind, key, share } of explainedOf(analysis, id)?.shares ?? [])
    // Several readings of one quantity come one by one from a fit, and together from plain arithmetic.
    if (kind === 'entry') found.set(key, (found.get(key) ?? 0) + share);
  return found;
}

/** What part of an entry's weight one of its readings has: each counts by the inverse of its variance. */
function partOf(place: number, us: readonly number[]): number {
  const weights = us.map((u) => 1 / u ** 2);
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return Number.isFinite(sum) && sum > 0 ? weights[place]! / sum : 1 / us.length;
}

/** The same numbers, each as unsure as so many times itself. */
function widened(situation: Situation, times: number): Situation {
  return {
    ...situation,
    observations: new Map([...situation.observations].map(([id, one]) => [id, { ...one, u: times * one.u }])),
    ...(situation.readings && {
      readings: new Map(
        [...situation.readings].map(([id, several]) => [
          id,
          several.map((one) => ({ ...one, u: times * one.u })),
        ]),
      ),
    }),
  };
}
