// Why a quantity is what it is, in words and numbers for whoever shows it: value, verdict, steps, shares, and without each entry.
import { titleWithin } from '../checks/agreement.ts';
import { showValue } from '../measure/show.ts';
import type { JudgedReading } from '../model/agreement-result.ts';
import { explainFrom, type ExplainedStep, type QuantityExplanation, type Without } from '../model/explain.ts';
import { othersSay } from '../model/others-say.ts';
import { findRule } from '../model/rules.ts';
import type { Contributor } from '../model/shares.ts';
import type { OwnModel } from '../model/own-model.ts';
import type { Value } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Analysis } from './result.ts';

export interface ExplainedShare {
  readonly kind: Contributor['kind'];
  /** The id of an entry or assumption, or the name of a step. */
  readonly key: string;
  readonly words: string;
  /** Of the variance, 0..1. */
  readonly share: number;
}

export interface Explained {
  readonly quantity: Quantity;
  readonly kind: Value['kind'];
  /** SI. Of an entry what all entries together say of it. */
  readonly value: number;
  readonly u: number | null;
  /** 95 %, SI; null where there is no uncertainty. */
  readonly interval: { readonly min: number; readonly max: number } | null;
  /** What was entered, reading by reading, and what is to be thought of it. */
  readonly readings: readonly JudgedReading[];
  readonly steps: readonly ExplainedStep[];
  readonly shares: readonly ExplainedShare[];
  readonly without: readonly Without[];
}

/** Undefined where the record says nothing of the quantity. */
export function explainedOf({ account, subject: { registry } }: Analysis, id: string): Explained | undefined {
  const quantity = registry.find(id);
  const value = account?.derivation.values.get(id);
  if (account === undefined || quantity === undefined || value === undefined) return undefined;
  const { outcome, agreement, situation, derivation } = account;
  const fitted = outcome && explainFrom(outcome, id, situation);
  const readings = agreement.entries
    .filter((entry) => entry.id === id)
    .map((entry, _, { length }) =>
      entry.verdict === 'unchecked' ? entry : { ...entry, ...othersSay(entry, length, derivation) },
    );
  const isOfFit = fitted !== undefined && (value.kind === 'entered' || value.value === fitted.value);
  const from = isOfFit ? fitted : plainly(value, derivation.values, fitted, situation.own);
  const shares = from.shares.map((one) => ({
    ...one,
    ...wordsOf(one.from, derivation.values, value, registry),
  }));
  const { steps, without, interval } = from;
  return {
    quantity,
    kind: value.kind,
    value: from.value,
    u: from.u,
    interval,
    readings,
    steps,
    shares: shares.map(({ kind, key, words, share }) => ({ kind, key, words, share })),
    without,
  };
}

/** "Checked, and it fits: the others say 4.0 deg down ± 0.8 deg." */
export function verdictOn(reading: JudgedReading, quantity: Quantity): string {
  const { verdict, implied, uImplied } = reading;
  if (verdict === 'unchecked')
    return implied === null
      ? 'Unchecked: nothing else in this record says anything about it.'
      : 'Unchecked: the other entries say too little about it to call it right or wrong.';
  const others = implied === null ? '' : `: the others say ${showValue(quantity, implied, uImplied)}`;
  return `${verdict === 'fits' ? 'Checked, and it fits' : 'Does not fit'}${others}.`;
}

interface Plain extends Pick<QuantityExplanation, 'value' | 'steps' | 'shares' | 'without'> {
  readonly u: number | null;
  readonly interval: Explained['interval'];
}

/** Of 95 % of a normal distribution, in standard uncertainties. */
const coverage = 1.959964;

/** Of a number that follows from entries alone, by its own steps. */
function plainly(
  value: Value,
  values: ReadonlyMap<string, Value>,
  fitted: QuantityExplanation | undefined,
  own: OwnModel | undefined,
): Plain {
  const { u } = value;
  const shares = [...value.shares].map(([key, share]) => ({ from: contributorOf(key, value), share }));
  const steps = fitted?.steps ?? stepsBehind(value, values, own);
  const interval = u === null ? null : { min: value.value - coverage * u, max: value.value + coverage * u };
  shares.sort((a, b) => b.share - a.share);
  return { value: value.value, u, interval, steps, shares, without: fitted?.without ?? [] };
}

function contributorOf(key: string, { assumed }: Value): Contributor {
  if (key.startsWith('model:')) {
    const rule = key.slice('model:'.length);
    return { kind: 'step', rule, reason: findRule(rule)?.discrepancy.reason ?? '' };
  }
  if (!key.startsWith('assumed:')) return { kind: 'entry', id: key, reading: 0 };
  const id = key.slice('assumed:'.length);
  const assumption = assumed.find((one) => one.id === id);
  return { kind: 'assumption', id, words: assumption?.words ?? id, source: assumption?.source ?? '' };
}

function stepsBehind(
  value: Value,
  values: ReadonlyMap<string, Value>,
  own: OwnModel | undefined,
): readonly ExplainedStep[] {
  const steps = new Map<string, ExplainedStep>();
  const visit = ({ rule: name }: Value): void => {
    const rule = name === undefined || steps.has(name) ? undefined : findRule(name, own);
    if (rule === undefined) return;
    for (const input of rule.inputs) {
      const before = values.get(input);
      if (before !== undefined) visit(before);
    }
    const { formula, source, outputs } = rule;
    steps.set(rule.name, { rule: rule.name, formula, source, outputs });
  };
  visit(value);
  return [...steps.values()];
}

function wordsOf(
  from: Contributor,
  values: ReadonlyMap<string, Value>,
  { id: own }: Value,
  registry: Registry,
): Pick<ExplainedShare, 'kind' | 'key' | 'words'> {
  const { kind } = from;
  if (kind === 'step')
    return { kind, key: from.rule, words: `how exact the step \`${from.rule}\` is: ${from.reason}` };
  if (kind === 'entry') {
    const [quantity, entered] = [registry.find(from.id), values.get(from.id)];
    const shown = quantity && entered ? ` ${showValue(quantity, entered.value, entered.u)}` : '';
    const place = from.reading > 0 ? ` (reading ${from.reading + 1})` : '';
    const itself = from.id === own ? ', the entry itself' : '';
    return { kind, key: from.id, words: `${titleWithin(from.id, registry)}${place}${shown}${itself}` };
  }
  const words =
    kind === 'assumption'
      ? from.words
      : `${from.words}, of ${titleWithin(from.id, registry)} (${from.source})`;
  return { kind, key: from.id, words };
}
