// All that the model makes of a record: what follows from its entries, what they together lead to expect, and how they agree.
import { builtIn } from '../registry/registry.ts';
import { settleAgreement, type Settlement } from './agreement.ts';
import type { Agreement, PosteriorValue } from './agreement-result.ts';
import { derive } from './derive.ts';
import { leastRedundancy, type Outcome } from './elimination.ts';
import { mirroredNumber, type Player } from './mirror.ts';
import { isPossible } from './own-model.ts';
import { mostOfWindows, posteriorOf } from './posterior.ts';
import { extended, refit, type Reconciliation } from './reconciliation.ts';
import { denseRow, rowDot } from './rows.ts';
import { findRule } from './rules.ts';
import { sharesOf, type Share } from './shares.ts';
import type { Assumption, Derivation, Situation, Value } from './value.ts';
import { lowerFirst } from '../measure/quote.ts';

/** The outcome is the fit behind the agreement, for whoever explains a quantity; undefined where there is none. */
export interface Account extends Settlement {
  readonly situation: Situation;
  readonly derivation: Derivation;
}

/** An entry, or an assumption, with less than this share in a variance is not named among what a number came from. */
const leastNamed = 0.01;

/**
 * One truth for each number. What was entered stays as entered. What follows from entries alone stays `derived`; but where
 * further entries speak of it, or one that it would follow from contradicts the rest, the fit's number is taken. What only the
 * fit can give is `expected`. Plain arithmetic is left plain: the windows that hold a fit in the region of sense would pull it.
 */
export function accountOf(situation: Situation): Account {
  const derivation = derive(situation);
  const { agreement, outcome } = settleAgreement(situation);
  if (!outcome) return { situation, derivation, agreement, outcome };
  const off = new Set(agreement.conflicts.map(({ id }) => id));
  const values = new Map(derivation.values);
  const expected = new Map(derivation.expected);
  for (const [id, known] of agreement.posterior) {
    const plain = derivation.values.get(id);
    if (plain?.kind === 'entered') continue;
    const fitted = fittedValue(outcome.last, known, id, situation);
    if (!fitted || (plain && suffices(plain, fitted, off))) continue;
    const value: Value = plain ? { ...fitted, kind: 'derived' } : fitted;
    values.set(id, value);
    expected.set(id, value);
  }
  for (const [id, implied] of impliedValues(outcome, agreement, situation)) {
    const plain = derivation.expected.get(id);
    const own = agreement.conflicts.find((conflict) => conflict.id === id);
    const group = new Set([id, ...(own?.rivals ?? []).map((rival) => rival.id)]);
    const others = new Set([...off].filter((other) => !group.has(other)));
    if (!plain || !suffices(plain, implied, others)) expected.set(id, implied);
  }
  const missing = new Map(derivation.missing);
  for (const numbers of [values, expected])
    for (const [id, value] of numbers) {
      if (value.kind === 'entered' || isPossible(value, situation)) continue;
      numbers.delete(id);
      missing.set(id, missing.get(id) ?? { id, needs: [] });
    }
  for (const id of values.keys()) missing.delete(id);
  return { situation, derivation: { values, expected, missing }, agreement, outcome };
}

/** What the entries say of these quantities without some of them, and the fit that says so. */
export interface OthersAccount {
  readonly at: Reconciliation;
  readonly values: ReadonlyMap<string, Value>;
}

/**
 * Of the quantities `wanted`, led on from the fit of all entries, which is quicker than an account of its own; what is out of that fit
 * stays out. Undefined where there is no fit.
 */
export function accountWithout(
  { situation, outcome }: Account,
  without: ReadonlySet<string>,
  wanted: readonly string[],
): OthersAccount | undefined {
  if (outcome === undefined) return undefined;
  const { problem, measured, readings } = outcome.last;
  const us = problem.measurements.map(({ u }, i) => (without.has(readings[measured[i]!]!.id) ? Infinity : u));
  const led = refit(outcome.last, us);
  if (led === undefined) return undefined;
  const at = extended(led);
  const values = new Map<string, Value>();
  for (const [id, known] of posteriorOf(at, situation, wanted)) {
    const value = fittedValue(at, known, id, situation);
    if (value !== undefined && isPossible(value, situation)) values.set(id, value);
  }
  return { at, values };
}

/** Whether the number that follows from entries alone says all that there is to say. */
function suffices(plain: Value, fitted: Value, off: ReadonlySet<string>): boolean {
  return fitted.from.every((id) => plain.from.includes(id)) && !plain.from.some((id) => off.has(id));
}

/** Undefined where no entry carries it, or hardly anything but what is assumed of the quantity itself. */
function fittedValue(
  at: Reconciliation,
  { value, u }: PosteriorValue,
  id: string,
  player: Player,
): Value | undefined {
  const node = at.forward.nodeOf.get(id);
  if (node === undefined) return undefined;
  const y = at.moves(node);
  const shares = sharesOf(at, y, u * u);
  const own = shares.find(({ from }) => from.kind === 'assumption' && from.id === id);
  if ((own?.share ?? 0) > 0.5) return undefined;
  const fitted = valueFrom(at, shares, { id, value, u, rule: at.forward.ruleOf(node)?.name }, player);
  if (fitted.from.length > 0) return fitted;
  const from = isInformed(at, node, u * u) ? foremostEntries(at, y) : [];
  return from.length > 0 ? { ...fitted, from } : undefined;
}

/** So much of the variance that it has before any entry is gone where entries speak of a quantity, however sure they are. */
const mostLeft = 0.25;

function isInformed({ forward, slopes }: Reconciliation, node: number, variance: number): boolean {
  const before = denseRow(slopes, node).reduce(
    (sum, slope, j) => sum + (slope * forward.parameters[j]!.u) ** 2,
    0,
  );
  return variance < mostLeft * before;
}

/** Where all entries are so sure that none has a share to speak of: those with the largest ones among them. */
function foremostEntries({ problem, fit, readings, measured }: Reconciliation, y: Float64Array): string[] {
  const strengths = problem.measurements.map(({ u }, k) => (rowDot(fit.slopes, k, y) / u) ** 2);
  const strongest = Math.max(0, ...strengths);
  const ids = strengths.flatMap((strength, k) =>
    strength > 0 && strength >= leastNamed * strongest ? [readings[measured[k]!]!.id] : [],
  );
  return [...new Set(ids)].sort();
}

/** What all others make of each entry that they check; of one that was read several times what they make of all its readings. */
function impliedValues(outcome: Outcome, { entries }: Agreement, player: Player): ReadonlyMap<string, Value> {
  const { last } = outcome;
  const values = new Map<string, Value>();
  const places = new Map<string, number[]>();
  for (const [i, r] of last.measured.entries())
    places.set(entries[r]!.id, [...(places.get(entries[r]!.id) ?? []), i]);
  for (const [id, [first, ...others]] of places) {
    const { implied, uImplied, verdict } = entries[last.measured[first!]!]!;
    if (others.length > 0) {
      const value = impliedOfSeveral(last, id, new Set([first!, ...others]), player);
      if (value) values.set(id, value);
      continue;
    }
    if (implied === null || uImplied === null || verdict === 'unchecked') continue;
    const at = fitAgainst(outcome, first!);
    const isOut = at.problem.measurements[first!]!.u === Infinity;
    const redundancy = isOut ? 1 : at.statistics.judgements[first!]!.redundancy;
    // Without the measurement itself every move is larger by 1/r.
    const y = at.statistics.moves(first!).map((move) => move / redundancy);
    const bare = { id, value: implied, u: uImplied, rule: undefined };
    values.set(id, valueFrom(at, sharesOf(at, y, uImplied * uImplied, new Set([first!])), bare, player));
  }
  return values;
}

/** Rivals are judged by the fit in which all of them still stood. */
function fitAgainst({ last, groups }: Outcome, i: number): Reconciliation {
  return groups.find(({ members }) => members.length > 1 && members.includes(i))?.at ?? last;
}

/**
 * All readings of one quantity count as one with the sum of their weights: to take it out of the fit is to take its weight off
 * 1/σ². Undefined where the others say too little, or windows say more than they do.
 */
function impliedOfSeveral(
  at: Reconciliation,
  id: string,
  own: ReadonlySet<number>,
  player: Player,
): Value | undefined {
  const node = at.forward.nodeOf.get(id)!;
  const y = at.moves(node);
  const variance = rowDot(at.slopes, node, y);
  let weight = 0;
  let weighted = 0;
  for (const i of own) {
    const { value, u } = at.problem.measurements[i]!;
    weight += 1 / (u * u);
    weighted += value / (u * u);
  }
  const redundancy = 1 - variance * weight;
  if (!(variance > 0 && redundancy >= leastRedundancy)) return undefined;
  const shares = sharesOf(at, y, variance * redundancy, own);
  const windows = shares.reduce((sum, { from, share }) => sum + (from.kind === 'window' ? share : 0), 0);
  if (windows > mostOfWindows) return undefined;
  const value = (at.values[node]! - variance * weighted) / redundancy;
  const u = Math.sqrt(variance / redundancy);
  return valueFrom(at, shares, { id, value: mirroredNumber(id, value, player), u, rule: undefined }, player);
}

type Bare = Pick<Value, 'id' | 'value' | 'u' | 'rule'>;

function valueFrom(at: Reconciliation, all: readonly Share[], bare: Bare, player: Player): Value {
  const from = new Set<string>();
  const assumed: Assumption[] = [];
  const shares = new Map<string, number>();
  for (const { from: source, share } of all) {
    const key = keyOf(source);
    shares.set(key, share + (shares.get(key) ?? 0));
    if (share < leastNamed) continue;
    if (source.kind === 'entry') from.add(source.id);
    if (source.kind === 'assumption' || (source.kind === 'window' && !isEntered(at, source.id)))
      assumed.push(assumptionOf(at, source, player));
    const foundation = source.kind === 'step' ? foundationOf(at, source.rule) : undefined;
    if (foundation) assumed.push(foundation);
  }
  return { ...bare, kind: 'expected', from: [...from].sort(), assumed, shares };
}

/** The window of an entered cause only keeps the fit in the region of sense: to speak of it would confuse. */
function isEntered({ readings }: Reconciliation, id: string): boolean {
  return readings.some((reading) => reading.id === id && reading.use === 'measured');
}

/** What else a step rests on at this solution. */
function foundationOf({ forward, values }: Reconciliation, name: string): Assumption | undefined {
  const rule = findRule(name);
  if (!rule?.restsOn) return undefined;
  const inputs = rule.inputs.map((id) => values[forward.nodeOf.get(id) ?? -1] ?? 0);
  return rule.restsOn(inputs, forward.context);
}

function keyOf(source: Share['from']): string {
  if (source.kind === 'entry') return source.id;
  return source.kind === 'step' ? `model:${source.rule}` : `assumed:${source.id}`;
}

function assumptionOf(
  { forward }: Reconciliation,
  { kind, id, words, source }: Extract<Share['from'], { kind: 'assumption' | 'window' }>,
  player: Player,
): Assumption {
  const { mean, u } = forward.parameters.find(({ key }) => key === id)!;
  return {
    id,
    value: mirroredNumber(id, mean, player),
    u,
    words: kind === 'window' ? usual(id, player) : words,
    source,
  };
}

/** "a usual release ratio": what a window of practice takes of a quantity that nobody entered. */
function usual(id: string, { registry = builtIn }: Player): string {
  const title = registry.find(id)?.title ?? id;
  return `a usual ${lowerFirst(title)}`;
}
