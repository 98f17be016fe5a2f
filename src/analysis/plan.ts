// What the plan of a record leads to and how its goals stand, now and then; each computed once for an account and a plan, when asked for.
import type { Account } from '../model/account.ts';
import { unsureLevers } from '../judgement/candidates.ts';
import { faceNeeded, faceReachFor, type FaceReach } from '../judgement/face-need.ts';
import { madeOf, type Foreseer, type Made } from '../judgement/foreseer.ts';
import { standingOf, wantedOf, type Standing, type Wanted } from '../judgement/goal-standing.ts';
import { predict, type Prediction } from '../judgement/prediction.ts';
import { propose, type Proposal as Found, type Unstated } from '../judgement/proposal.ts';
import type { Windows } from '../judgement/room.ts';
import { isForOtherClub, standingsOf } from '../judgement/template.ts';
import { compileExpression } from '../judgement/expression.ts';
import { speedNeeded } from '../judgement/speed-need.ts';
import { beliefAsItStands } from '../judgement/standing-number.ts';
import type { Forecast, GoalForecast, Need } from '../judgement/forecast.ts';
import type { Subject } from '../checks/subject.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Goal, SwingRecord } from '../record/document.ts';

export interface Proposal extends Found {
  /** What each of its standings would need, where that is out of reach. */
  readonly needs: readonly (Need | undefined)[];
}

export interface PlacedGoal {
  /** The file that it stands in. */
  readonly uri: string;
  readonly goal: Goal;
}

export type Known = Pick<
  Subject,
  'document' | 'student' | 'club' | 'template' | 'judgement' | 'registry' | 'workspace' | 'uri'
>;

/** Goals of the record, and those in the student's file that are for this club or for every club and that the record does not set itself. */
export function goalsOf({ document, student, club, uri }: Known): readonly PlacedGoal[] {
  if (document.kind !== 'swing') return [];
  const own = document.goals
    .filter((goal) => isFor(goal, document.club?.value))
    .map((goal) => ({ uri, goal }));
  if (own.length > 0 || student === undefined) return own;
  return student.document.goals
    .filter((goal) => isFor(goal, club?.name.value))
    .map((goal) => ({ uri: student.uri, goal }));
}

function isFor({ club }: Goal, made: string | undefined): boolean {
  return club === undefined || club.value === made;
}

const kept = new WeakMap<Account, WeakMap<SwingRecord, Forecast>>();

/** Undefined where the model has nothing to go by. */
export function forecastOf(subject: Known, account: Account | undefined): Forecast | undefined {
  const { document } = subject;
  if (document.kind !== 'swing' || account?.outcome === undefined) return undefined;
  const before = kept.get(account)?.get(document);
  if (before !== undefined) return before;
  const forecast = forecastAnew(subject, document, account);
  const ofAccount = kept.get(account) ?? new WeakMap<SwingRecord, Forecast>();
  kept.set(account, ofAccount.set(document, forecast));
  return forecast;
}

function forecastAnew(subject: Known, document: SwingRecord, account: Account): Forecast {
  const foreseer = foreseerOf(subject, account);
  const changes = document.plan.flatMap((planned) => {
    const made = madeOf(planned, foreseer);
    return made === undefined ? [] : [{ planned, made }];
  });
  const whole = predict(
    changes.map(({ made }) => made),
    foreseer,
  );
  const player = account.situation;
  const present = beliefAsItStands(account, foreseer.hand);
  const placed = placedWanted(subject, account);
  const standings = placed.map(({ wanted }) =>
    standingOf(wanted, changes.length === 0 ? present : whole.belief, player),
  );
  const made = changes.map((change) => change.made);
  const needs = needsOf(placed, standings, made, whole, foreseer);
  const goals = placed.map(({ uri, wanted }, i): GoalForecast => ({
    uri,
    now: standingOf(wanted, present, player),
    then: standings[i]!,
    need: needs[i],
  }));
  return {
    changes: changes.map(({ planned, made }) => {
      let alone: Prediction | undefined = changes.length === 1 ? whole : undefined;
      // No finding asks for it, so that a keystroke does not pay for it.
      return {
        planned,
        made,
        get prediction() {
          return (alone ??= predict([made], foreseer));
        },
      };
    }),
    whole,
    goals,
  };
}

/** Of what stands too far from any chance, in the order of the standings: each asked for only where it does. */
function needsOf(
  placed: readonly PlacedWanted[],
  standings: readonly Standing[],
  made: readonly Made[],
  prediction: Prediction,
  foreseer: Foreseer,
): Proposal['needs'] {
  const reaches = new Map<readonly Wanted[], FaceReach | undefined>();
  return standings.map((then) => {
    const ofGoal = placed.find(({ wanted }) => wanted === then.wanted)?.ofGoal ?? [];
    const reach = (): FaceReach | undefined => {
      if (!reaches.has(ofGoal)) reaches.set(ofGoal, faceReachFor(ofGoal, made, prediction, foreseer));
      return reaches.get(ofGoal);
    };
    return speedNeeded(then.wanted, then, made, foreseer) ?? faceNeeded(then, reach, foreseer);
  });
}

/** Undefined where nothing is wanted, or nothing that is known helps. Throws what `throwIfAborted` throws. */
export function proposalOf(
  subject: Known,
  account: Account | undefined,
  throwIfAborted: () => void,
): Proposal | undefined {
  if (subject.document.kind !== 'swing' || account?.outcome === undefined) return undefined;
  const placed = placedWanted(subject, account);
  const foreseer = wideForeseerOf(subject, account);
  const found = propose({
    foreseer,
    wanted: placed.map(({ wanted }) => wanted),
    unstated: unstatedIn(subject),
    windows: windowsIn(subject, account),
    mostChanges: mostChangesIn(subject),
    throwIfAborted,
  });
  if (found === undefined) return undefined;
  const { standings, changes, prediction } = found;
  return { ...found, needs: needsOf(placed, standings, changes, prediction, foreseer) };
}

/** What the model could change for a goal, were it known well enough for anybody to tell that it was changed. */
export function tooUnsureToChange(subject: Known, account: Account | undefined): readonly Quantity[] {
  return account?.outcome === undefined
    ? []
    : unsureLevers(foreseerOf(subject, account), windowsIn(subject, account));
}

/** Faults that the numbers show and nobody stated, which a proposal may be made of too. */
function unstatedIn({ judgement }: Known): readonly Unstated[] {
  return judgement?.unstated ?? [];
}

function wideForeseerOf(subject: Known, account: Account): Foreseer {
  const foreseer = foreseerOf(subject, account);
  return { ...foreseer, faults: [...foreseer.faults, ...unstatedIn(subject)] };
}

/** Those of a template that is for this kind of club. */
export function windowsIn({ template, student }: Known, { derivation, situation }: Account): Windows {
  if (template === undefined || isForOtherClub(template.document, situation.clubKind)) return new Map();
  const standings = standingsOf(template.document, derivation, student?.document.hand?.value);
  return new Map(standings.flatMap(({ id, edges }) => (edges === undefined ? [] : [[id, edges]])));
}

/**
 * What a prediction of this record must not leave out: what its goals ask for, and what the proofs will be read from.
 *
 * @param proofs those of the record's own plan where left out
 */
export function askedFor(
  { document, registry }: Known,
  { goals }: Forecast,
  proofs: readonly string[] = document.kind === 'swing'
    ? document.plan.flatMap(({ proof }) => (proof === undefined ? [] : [proof.value]))
    : [],
): readonly string[] {
  const read = proofs.flatMap((proof) => compileExpression(proof, registry).expression?.quantities ?? []);
  return [...new Set([...goals.map(({ now }) => now.wanted.quantity.id), ...read.map(({ id }) => id)])];
}

/** Each goal as it stands in the record, and as it will with what is proposed instead of the plan that is there. */
export function goalsWith({ standings, needs }: Proposal, { goals }: Forecast): readonly GoalForecast[] {
  return goals.flatMap((goal) => {
    const { span, quantity } = goal.now.wanted;
    const at = standings.findIndex(
      ({ wanted }) => wanted.span === span && wanted.quantity.id === quantity.id,
    );
    return at < 0 ? [] : [{ ...goal, then: standings[at]!, need: needs[at] }];
  });
}

/** Thrown to leave a search and come back to it. */
const pause = new Error('The search goes on later.');

/**
 * The same search in steps: it stops after each candidate, so that whoever asks can see to other things. What has been computed
 * is kept by the model, and going on costs little.
 */
export function* proposalInSteps(
  subject: Known,
  account: Account | undefined,
): Generator<undefined, Proposal | undefined> {
  for (let steps = 1; ; steps++) {
    let left = steps;
    try {
      return proposalOf(subject, account, () => {
        if (left === 0) throw pause;
        left -= 1;
      });
    } catch (error) {
      if (error !== pause) throw error;
    }
    yield;
  }
}

/** What some of the proposed changes lead to. */
export function predictionOf(subject: Known, account: Account, changes: Proposal['changes']): Prediction {
  return predict(changes, wideForeseerOf(subject, account));
}

/** What a student can work on until the next lesson: a rule of practice that a workspace can change. */
export function mostChangesIn({ workspace }: Pick<Known, 'workspace'>): number {
  return workspace?.document.mostChanges ?? 3;
}

interface PlacedWanted {
  readonly uri: string;
  readonly wanted: Wanted;
  /** All that the same goal wants, this among it. */
  readonly ofGoal: readonly Wanted[];
}

export function placedWanted(subject: Known, account: Account): readonly PlacedWanted[] {
  const belief = beliefAsItStands(account, subject.student?.document.hand?.value);
  return goalsOf(subject).flatMap(({ uri, goal }) => {
    const ofGoal = wantedOf(goal, belief, account.situation, subject.registry);
    return ofGoal.map((wanted) => ({ uri, wanted, ofGoal }));
  });
}

export function foreseerOf({ judgement, registry, workspace, student }: Known, account: Account): Foreseer {
  return {
    account,
    hand: student?.document.hand?.value,
    registry,
    coverage: workspace?.document.coverage ?? 1,
    // What the numbers speak for comes first.
    faults: (judgement?.stated ?? [])
      .filter(({ verdict }) => verdict !== 'contradicted')
      .toSorted((a, b) => (b.probability ?? 0.5) - (a.probability ?? 0.5)),
  };
}
