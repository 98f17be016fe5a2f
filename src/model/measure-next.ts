// Which quantities that are not entered yet would make others surer, and by how much, before anybody measures; knows no file and no words.
import type { Account } from './account.ts';
import { contextOf } from './context.ts';
import { forwardRules } from './forward-rules.ts';
import { dot } from './linear-algebra.ts';
import { mirroredSituation } from './mirror.ts';
import { parameterPrior } from './parameter-priors.ts';
import { mostOfWindows } from './posterior.ts';
import { readingsOf } from './readings.ts';
import { reconcile, type Reconciliation } from './reconciliation.ts';
import { denseRow } from './rows.ts';
import type { Rule } from './rule.ts';
import { windowVariance } from './statistics.ts';
import type { Observation, Situation } from './value.ts';

/** What could be measured, and how well it usually is: a standard uncertainty, SI. */
export interface Candidate {
  readonly id: string;
  readonly u: number;
}

export interface Narrowing {
  readonly id: string;
  /** Standard uncertainties, SI, before and after. */
  readonly before: number;
  readonly after: number;
  /** False where so far windows of practice say more of it than entries do. */
  readonly wasKnown: boolean;
  readonly isKnown: boolean;
}

export interface Suggestion extends Candidate {
  /** What it would narrow, in the order of the goals; what it leaves as good as it is, is left out. */
  readonly narrowings: readonly Narrowing[];
}

export interface Question {
  /** The quantities that are to become surer. */
  readonly goals: readonly string[];
  readonly candidates: readonly Candidate[];
  /** Among the candidates: what comes before all others, in this order, whatever it narrows. */
  readonly first: readonly string[];
  /** How many more are wanted than those that come first. */
  readonly most: number;
}

/** A standard uncertainty that stays within this share of itself is as good as it was. */
const leastNarrowing = 0.05;

/** So uncertain that it says nothing, yet a number: the fit bounds it. */
const vague = 1e300;

/**
 * One after another, each on top of those before it, what makes the goals surest: the largest sum of ln(u before / u after), which
 * is the expected information of a linear fit (Lindley 1956, Ann. Math. Stat. 27:986). A coach who needs two entries together, of
 * which neither says anything alone, is not told so.
 */
export function measureNext(
  { situation, agreement }: Pick<Account, 'situation' | 'agreement'>,
  { goals, candidates, first, most }: Question,
): readonly Suggestion[] {
  let present = withoutConflicts(mirroredSituation(situation), agreement.conflicts);
  const byId = new Map(candidates.map((candidate) => [candidate.id, candidate]));
  const suggestions: Suggestion[] = [];
  const asked = first.flatMap((id) => byId.get(id) ?? []);
  /** What each candidate that opens steps gave when it was last asked. */
  const gains = new Map<string, number>();
  while (suggestions.length < asked.length + most) {
    const rest = [...byId.values()].filter(({ id }) => !present.observations.has(id));
    const forced = asked[suggestions.length];
    const best = bestOf(present, goals, forced ? [forced] : rest, gains);
    if (!best || (!forced && best.narrowings.length === 0)) break;
    const { id, u, value, narrowings } = best;
    suggestions.push({ id, u, narrowings });
    present = entering(present, [{ id, value, u }]);
  }
  return suggestions;
}

interface Prospect extends Suggestion {
  readonly gain: number;
  /** What is expected to be read. */
  readonly value: number;
}

/**
 * The candidate that alone would do most for the goals. One that opens steps takes a fit of its own, so it is passed over where
 * even what it gave earlier is too little: on top of more entries it hardly gives more (Minoux 1978).
 */
function bestOf(
  present: Situation,
  goals: readonly string[],
  candidates: readonly Candidate[],
  gains: Map<string, number>,
): Prospect | undefined {
  const entered = new Set(readingsOf(present).flatMap(({ id, use }) => (use === 'measured' ? [id] : [])));
  const open = stepsWith(present, entered);
  const linked = new Set(open.rules.flatMap(({ inputs, outputs }): string[] => [...inputs, ...outputs]));
  const opens = ({ id }: Candidate): boolean =>
    open.askedFor.has(id) && stepsWith(present, new Set([...entered, id])).text !== open.text;
  const opening = new Set(candidates.filter(opens));
  const others = candidates.filter((candidate) => !opening.has(candidate));
  // What follows from none of the present entries needs a place in the fit before one can say what it would do.
  const laid = [...others.map(({ id }) => id), ...goals].filter(
    (id) => linked.has(id) && !entered.has(id) && !isAssumed(id, present),
  );
  const base = reconcile(entering(present, vagueOnes(present, laid)));
  const before = new Map(goals.map((goal) => [goal, standingOf(present, base, goal)]));
  let best: Prospect | undefined;
  for (const candidate of others) {
    const prospect = prospectOf(present, base, candidate, before);
    if (best === undefined || prospect.gain > best.gain) best = prospect;
  }
  for (const candidate of opening) {
    if (best !== undefined && (gains.get(candidate.id) ?? Infinity) < best.gain) continue;
    const at = reconcile(entering(present, vagueOnes(present, [...laid, candidate.id])));
    const prospect = prospectOf(present, at ?? base, candidate, before);
    gains.set(candidate.id, prospect.gain);
    if (best === undefined || prospect.gain > best.gain) best = prospect;
  }
  return best;
}

interface Standing {
  readonly variance: number;
  readonly isKnown: boolean;
}

/** Of a quantity that no step has to do with nothing but the window of practice is known. */
function standingOf(present: Situation, at: Reconciliation | undefined, id: string): Standing {
  const node = at?.forward.nodeOf.get(id);
  if (!at || node === undefined) {
    const own = present.observations.get(id)?.u;
    const u = own ?? parameterPrior(id, contextOf(present), true).u;
    return { variance: u * u, isKnown: own !== undefined };
  }
  return standing(at, denseRow(at.slopes, node), at.moves(node));
}

function standing({ forward }: Reconciliation, gradient: Float64Array, moves: Float64Array): Standing {
  const variance = dot(gradient, moves);
  return { variance, isKnown: windowVariance(forward.parameters, moves) <= mostOfWindows * variance };
}

/**
 * A measurement of a node with slopes c and variance u² changes the covariance A⁻¹ into A⁻¹ − A⁻¹c cᵀA⁻¹/(u² + cᵀA⁻¹c) (Sherman &
 * Morrison 1950, Ann. Math. Stat. 21:124): with y = A⁻¹g the spread of a goal becomes y − A⁻¹c (cᵀy)/(u² + cᵀA⁻¹c).
 */
function prospectOf(
  present: Situation,
  at: Reconciliation | undefined,
  { id, u }: Candidate,
  before: ReadonlyMap<string, Standing>,
): Prospect {
  const node = at?.forward.nodeOf.get(id);
  if (!at || node === undefined) return alone(present, { id, u }, before.get(id));
  const spread = at.moves(node);
  const weight = 1 / weightGained(present, { id, u }) + dot(denseRow(at.slopes, node), spread);
  const after = (goal: string): Standing => {
    const place = at.forward.nodeOf.get(goal);
    if (place === undefined) return before.get(goal)!;
    const gradient = denseRow(at.slopes, place);
    const shared = dot(gradient, spread) / weight;
    return standing(
      at,
      gradient,
      at.moves(place).map((move, j) => move - spread[j]! * shared),
    );
  };
  return { id, u, value: at.values[node]!, ...narrowed(before, after) };
}

/** What an entry adds to 1/σ² of its own node: where it takes the place of an assumption, that of the assumption is lost. */
function weightGained(present: Situation, { id, u }: Candidate): number {
  const context = contextOf(present);
  const lost = parameterPrior(id, context, false).u;
  const left = parameterPrior(id, context, true).u;
  const isReplaced = isAssumed(id, present);
  return Math.max(1e-12 / (u * u), 1 / (u * u) + (isReplaced ? 1 / (left * left) - 1 / (lost * lost) : 0));
}

/** Of what no step has to do with: it says something of itself. */
function alone(present: Situation, { id, u }: Candidate, own: Standing | undefined): Prospect {
  const value = parameterPrior(id, contextOf(present), true).mean;
  const after = { variance: u * u, isKnown: true };
  return { id, u, value, ...narrowed(new Map(own && [[id, own]]), () => after) };
}

function narrowed(
  before: ReadonlyMap<string, Standing>,
  after: (goal: string) => Standing,
): Pick<Prospect, 'narrowings' | 'gain'> {
  const narrowings: Narrowing[] = [];
  let gain = 0;
  for (const [id, was] of before) {
    const is = after(id);
    if (!(is.variance > 0 && is.variance < was.variance && was.variance < Infinity)) continue;
    const [from, to] = [Math.sqrt(was.variance), Math.sqrt(is.variance)];
    gain += Math.log(from / to);
    if (to <= (1 - leastNarrowing) * from)
      narrowings.push({ id, before: from, after: to, wasKnown: was.isKnown, isKnown: is.isKnown });
  }
  return { narrowings, gain };
}

function isAssumed(id: string, present: Situation): boolean {
  return parameterPrior(id, contextOf(present), false).kind === 'evidence';
}

interface OpenSteps {
  readonly rules: readonly Rule[];
  /** The same text, the same steps. */
  readonly text: string;
  /** Whether another id is entered makes no difference to them. */
  readonly askedFor: ReadonlySet<string>;
}

/** The steps that are open with these entries; an entry opens some, and changes what others take. */
function stepsWith(present: Situation, entered: ReadonlySet<string>): OpenSteps {
  const askedFor = new Set<string>();
  const rules = forwardRules(contextOf(present), (id) => {
    askedFor.add(id);
    return entered.has(id);
  });
  return { rules, text: rules.map(({ name, inputs }) => `${name}:${inputs.join()}`).join(' '), askedFor };
}

function vagueOnes(present: Situation, ids: readonly string[]): readonly Observation[] {
  return ids.map((id) => ({ id, value: parameterPrior(id, contextOf(present), true).mean, u: vague }));
}

function entering(present: Situation, added: readonly Observation[]): Situation {
  const observations = new Map(present.observations);
  for (const observation of added)
    if (!observations.has(observation.id)) observations.set(observation.id, observation);
  return { ...present, observations };
}

/** Readings that do not fit are believed no more here than elsewhere. */
function withoutConflicts(
  situation: Situation,
  conflicts: readonly { readonly id: string; readonly reading: number }[],
): Situation {
  if (conflicts.length === 0) return situation;
  const isOff = (id: string, reading: number): boolean =>
    conflicts.some((conflict) => conflict.id === id && conflict.reading === reading);
  const readings = new Map(
    readingsOf(situation).map(({ id }) => {
      const known = situation.readings?.get(id) ?? [];
      const all = known.length > 0 ? known : [{ ...situation.observations.get(id)!, doubtful: false }];
      return [id, all.map((one, reading) => (isOff(id, reading) ? { ...one, u: vague } : one))] as const;
    }),
  );
  return { ...situation, readings };
}
