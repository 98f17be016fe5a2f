// Holds a plan against the lesson that came after it: changes made, proofs met, predictions come true; knows no file and no date.
import { origins, type Origin } from '../record/change.ts';
import type { Entry, Located, PlannedChange } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { chanceOf } from './chance.ts';
import { judgeChanges, wide95, type ChangeOutcome } from './changed.ts';
import { compileExpression } from './expression.ts';
import type { Measured, MeasuredValue } from './measured.ts';
import { proofAsks, type ProofAsks } from './proof.ts';
import { verdictOf, type Verdict } from './verdict.ts';

/** `cannot tell`: measured, and near enough to the limit for both. */
export type ProofState = 'met' | 'not met' | 'cannot tell' | 'not measured' | 'unreadable';

export interface ProofOutcome {
  readonly proof: Located<string>;
  readonly asks: ProofAsks;
  readonly state: ProofState;
  /** That it is met; undefined where it was not measured. */
  readonly probability: number | undefined;
  readonly values: readonly { readonly quantity: Quantity; readonly value: MeasuredValue }[];
  readonly missing: readonly Quantity[];
}

export type PredictionState = 'inside' | 'outside' | 'not measured' | 'not tested' | 'no interval';
export type PredictionOrigin = Origin | 'not said';

export interface PredictionOutcome {
  readonly entry: Entry;
  readonly origin: PredictionOrigin;
  readonly state: PredictionState;
  /** SI, signed; u is undefined where no ± was written. */
  readonly predicted: { readonly value: number; readonly u: number | undefined };
  readonly after: MeasuredValue | undefined;
  /** Measured less predicted, SI. */
  readonly miss: number | undefined;
  /** Standard uncertainty of the miss, SI. */
  readonly u: number | undefined;
}

/** How far the changes were made on which the predictions rest. */
export type Followed = 'as planned' | 'in part' | 'not known' | 'not at all';

export interface Outcome {
  readonly changes: readonly ChangeOutcome[];
  readonly proofs: readonly ProofOutcome[];
  readonly predictions: readonly PredictionOutcome[];
  readonly followed: Followed;
}

/** A plan with what was measured in its own lesson. */
export interface Planned {
  readonly plan: readonly PlannedChange[];
  readonly predicted: ReadonlyMap<string, Entry>;
  readonly measured: Measured;
  /** How many standard uncertainties a written ± stands for. */
  readonly coverage: number;
  readonly registry: Registry;
}

export function judgeOutcome(planned: Planned, after: Measured): Outcome {
  const { plan, predicted, measured, coverage, registry } = planned;
  const changes = judgeChanges(plan, measured, after, coverage, registry);
  const followed = followedIn(changes);
  const proofs = judgeProofs(plan, after, registry);
  const predictions = [...predicted.values()].flatMap((entry) =>
    judgePrediction(entry, after, followed, coverage),
  );
  return { changes, proofs, predictions, followed };
}

/** In the order of the plan; changes without a proof are left out. */
export function judgeProofs(
  plan: readonly PlannedChange[],
  measured: Measured,
  registry: Registry,
): readonly ProofOutcome[] {
  return plan.flatMap(({ proof }) => (proof === undefined ? [] : [judgeProof(proof, measured, registry)]));
}

/** Whether the lesson says anything of the plan at all. */
export function saysAnything({ changes, proofs, predictions }: Outcome): boolean {
  return (
    changes.some(({ after }) => after !== undefined) ||
    proofs.some(({ probability }) => probability !== undefined) ||
    predictions.some(({ after }) => after !== undefined)
  );
}

/** One change that was not made is enough for predictions of all of them together not to be tested. */
function followedIn(changes: readonly ChangeOutcome[]): Followed {
  const has = (...states: readonly ChangeOutcome['state'][]): boolean =>
    changes.some(({ state }) => states.includes(state));
  if (has('not made')) return 'not at all';
  if (has('in part', 'too far')) return 'in part';
  return has('not measured', 'cannot tell') ? 'not known' : 'as planned';
}

function judgeProof(proof: Located<string>, after: Measured, registry: Registry): ProofOutcome {
  const { expression } = compileExpression(proof.value, registry);
  const asks = proofAsks(proof.value, registry);
  const nothing = { proof, asks, probability: undefined, values: [], missing: [] };
  if (expression === undefined) return { ...nothing, state: 'unreadable' };
  const { quantities } = expression;
  const { probability } = chanceOf(expression, after.joint(quantities.map(({ id }) => id)));
  const values = quantities.flatMap((quantity) => {
    const value = after.of(quantity.id);
    return value === undefined ? [] : [{ quantity, value }];
  });
  const missing = quantities.filter(({ id }) => after.of(id) === undefined);
  return { proof, asks, state: proofState(probability), probability, values, missing };
}

/** By the limits of a verdict: at even chances a proof shows nothing. */
function proofState(probability: number | undefined): ProofState {
  if (probability === undefined) return 'not measured';
  return proofStates[verdictOf(probability)];
}

const proofStates: Readonly<Record<Verdict, ProofState>> = {
  supported: 'met',
  contradicted: 'not met',
  'cannot tell': 'cannot tell',
};

/**
 * The difference d of measurement and prediction against u = √(u²(measured) + u²(predicted)): inside where |d| ≤ 1.96 u, so that
 * of honest predictions 95 in 100 are inside (d/u is the zeta score of ISO 13528, from memory). The two are taken as independent:
 * they come from lessons apart.
 */
function judgePrediction(
  entry: Entry,
  after: Measured,
  followed: Followed,
  coverage: number,
): readonly PredictionOutcome[] {
  const measured = after.of(entry.id);
  return entry.readings.map(({ measure }): PredictionOutcome => {
    const { value, stated, method } = measure;
    const u = stated === undefined ? undefined : stated / coverage;
    const miss = measured && measured.value - value;
    const combined = measured && u !== undefined ? Math.hypot(measured.u, u) : undefined;
    return {
      entry,
      origin: origins.find((origin) => origin === method) ?? 'not said',
      state: predictionState(miss, combined, u, followed),
      predicted: { value, u },
      after: measured,
      miss,
      u: combined,
    };
  });
}

function predictionState(
  miss: number | undefined,
  combined: number | undefined,
  u: number | undefined,
  followed: Followed,
): PredictionState {
  if (u === undefined) return 'no interval';
  if (followed === 'not at all') return 'not tested';
  if (miss === undefined || combined === undefined) return 'not measured';
  return Math.abs(miss) <= wide95 * combined ? 'inside' : 'outside';
}
