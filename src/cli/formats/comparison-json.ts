// A comparison as JSON: numbers in the units shown, stable names; compares nothing.
import { jsonText } from './json-text.ts';
import type {
  Comparison,
  Difference,
  Figure,
  QuantityChange,
  ShotsOf,
  TemplateComparison,
} from '../../analysis/comparison.ts';
import { differenceFromSI, fromSI } from '../../measure/units.ts';
import { strictnessOf } from '../../judgement/template.ts';
import type { Standing } from '../../judgement/goal-standing.ts';
import type { Quantity } from '../../registry/quantity.ts';
import { outcomeJson } from '../outcome.ts';
import { tidy } from '../shots.ts';

export function comparisonJson(first: string, second: string, comparison: Comparison): string {
  const { entries, computed, predicted, shots, findings, goals, held, ...rest } = comparison;
  const json = {
    format: 1,
    first,
    second,
    isSame: rest.isSame,
    head: rest.words.map(({ of, before, after }) => ({ of, before: before ?? null, after: after ?? null })),
    sameEntries: rest.sameEntries,
    entries: entries.map(changeJson),
    computed: computed.map(changeJson),
    shots: shots.map(({ quantity, state, before, after, difference }) => ({
      quantity: quantity.id,
      state,
      unit: unitOf(quantity),
      before: shotsJson(quantity, before),
      after: shotsJson(quantity, after),
      ...differenceJson(quantity, difference),
    })),
    faults: rest.faults.map(({ fault, at, state, before, after }) => ({
      fault,
      at: at ?? null,
      state,
      before:
        before === undefined ? null : { verdict: before.verdict, probability: before.probability ?? null },
      after: after === undefined ? null : { verdict: after.verdict, probability: after.probability ?? null },
    })),
    misses: rest.misses,
    others: rest.signed.map(({ key, state, before, after }) => ({
      key,
      state,
      before: before ?? null,
      after: after ?? null,
    })),
    findings: findings.map(({ state, finding: { code, severity, message, range } }) => ({
      state,
      code,
      severity,
      message,
      range,
    })),
    goals: goals.map(({ key, quantity, state, before, after }) => ({
      goal: key,
      quantity: quantity.id,
      state,
      unit: unitOf(quantity),
      before: standingJson(quantity, before),
      after: standingJson(quantity, after),
    })),
    plan: rest.plan.map(({ change, state, before, after }) => ({
      change,
      state,
      before: before ?? null,
      after: after ?? null,
    })),
    predicted: predicted.map(changeJson),
    held: held === undefined ? null : { planOf: held.plan, outcome: outcomeJson(held.outcome) },
  };
  return jsonText(json);
}

export function templateJson(
  record: string,
  template: string,
  { title, rows, isForOtherClub }: TemplateComparison,
): string {
  const json = {
    format: 1,
    record,
    template,
    title: title ?? null,
    isForOtherClub,
    windows: rows.map(({ window, edges, figure, outsideBy, state }) => {
      const { quantity } = window;
      const unit = unitOf(quantity);
      return {
        quantity: quantity.id,
        unit,
        strict: strictnessOf(window),
        window:
          edges === undefined
            ? null
            : { from: tidy(fromSI(edges.from, unit)), to: tidy(fromSI(edges.to, unit)) },
        value: figureJson(quantity, figure),
        state,
        outsideBy: outsideBy === undefined ? null : tidy(outsideBy),
      };
    }),
  };
  return jsonText(json);
}

function changeJson({ quantity, state, before, after, difference, aspects }: QuantityChange) {
  return {
    quantity: quantity.id,
    state,
    unit: unitOf(quantity),
    before: figureJson(quantity, before),
    after: figureJson(quantity, after),
    ...differenceJson(quantity, difference),
    changed: aspects,
  };
}

/** The unit shown, which a workspace can choose. */
function unitOf({ shown, unit }: Quantity): string {
  return shown ?? unit;
}

function figureJson(quantity: Quantity, figure: Figure | undefined) {
  if (figure === undefined) return null;
  const unit = unitOf(quantity);
  return {
    value: tidy(fromSI(figure.value, unit)),
    u: figure.u === null ? null : tidy(differenceFromSI(figure.u, unit)),
    kind: figure.kind,
  };
}

function differenceJson(quantity: Quantity, { value, u, size }: Difference) {
  const unit = unitOf(quantity);
  return {
    difference: value === undefined ? null : tidy(differenceFromSI(value, unit)),
    u: u === undefined ? null : tidy(differenceFromSI(u, unit)),
    size,
  };
}

function shotsJson(quantity: Quantity, shots: ShotsOf | undefined) {
  if (shots === undefined) return null;
  const unit = unitOf(quantity);
  const spread = (value: number | undefined): number | null =>
    value === undefined ? null : tidy(differenceFromSI(value, unit));
  return {
    count: shots.count,
    mean: tidy(fromSI(shots.mean, unit)),
    u: spread(shots.u),
    sd: spread(shots.sd),
  };
}

function standingJson(quantity: Quantity, standing: Standing | undefined) {
  if (standing === undefined) return null;
  const unit = unitOf(quantity);
  const { wanted, value, u, chance } = standing;
  return {
    from: tidy(fromSI(wanted.min, unit)),
    to: tidy(fromSI(wanted.max, unit)),
    value: value === undefined ? null : tidy(fromSI(value, unit)),
    u: u === undefined ? null : tidy(differenceFromSI(u, unit)),
    chance: chance === undefined ? null : Number(chance.toFixed(4)),
  };
}
