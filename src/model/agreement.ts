// The verdict on a whole record: which entries cannot all be true, and what all of them together say; knows no single quantity.
import type { Agreement, Conflict, JudgedReading, ReadingRef } from './agreement-result.ts';
import { eliminated, isChecked, strangeness, thresholdFor, type Group, type Outcome } from './elimination.ts';
import { mirroredNumber, mirroredSituation, type Player } from './mirror.ts';
import { mostOfWindows, posteriorOf } from './posterior.ts';
import { readingsOf, type Reading } from './readings.ts';
import { reconcile, textOfFit, type Reconciliation } from './reconciliation.ts';
import { rememberedByText } from './remembered.ts';
import type { Judgement } from './statistics.ts';
import { votesFor } from './votes.ts';
import type { Situation } from './value.ts';

/** The verdict, with the fit behind it for whoever explains a quantity (`explainFrom`); undefined where there is none. */
export interface Settlement {
  readonly agreement: Agreement;
  readonly outcome: Outcome | undefined;
}

/**
 * Every reading against all the others; what contradicts them is named, the worst first. Never throws, always ends, gives no
 * number that is not finite.
 */
export function agree(situation: Situation): Agreement {
  return settleAgreement(situation).agreement;
}

/** What was last found, since half of what a record holds hangs on nothing: to type there changes no fit. */
const outcomes = rememberedByText<Outcome | undefined>(4);

export function settleAgreement(situation: Situation): Settlement {
  const plain = mirroredSituation(situation);
  const found = outcomes(textOfFit(plain), () => {
    const first = reconcile(plain);
    return first && eliminated(first);
  });
  const outcome = found && withReadings(found, readingsOf(plain));
  const agreement = outcome ? presented(outcome, situation) : unsolved(readingsOf(situation));
  return { agreement, outcome };
}

/** The same outcome for a record in which only readings differ that took no part. */
function withReadings({ first, last, threshold, groups }: Outcome, readings: readonly Reading[]): Outcome {
  return {
    first: { ...first, readings },
    last: { ...last, readings },
    threshold,
    groups: groups.map(({ members, at }) => ({ members, at: { ...at, readings } })),
  };
}

function presented(outcome: Outcome, player: Player): Agreement {
  const { first, last, threshold, groups } = outcome;
  const groupOf = new Map(groups.flatMap((group) => group.members.map((i) => [i, group] as const)));
  const place = new Map(last.measured.map((r, i) => [r, i]));
  const entries = last.readings.map((reading, r): JudgedReading => {
    const bare = bareOf(reading, player);
    const i = place.get(r);
    if (i === undefined) return bare;
    const group = groupOf.get(i);
    const { implied, normalised } = judgementOf(outcome, i, group);
    const isJudged = group !== undefined || isChecked(last, i);
    return {
      ...bare,
      implied: implied ? mirroredNumber(reading.id, implied.value, player) : null,
      uImplied: implied?.u ?? null,
      w: isJudged && normalised !== undefined ? mirroredNumber(reading.id, normalised, player) : null,
      redundancy: redundancyOf(group?.at ?? last, i),
      verdict: group ? 'conflict' : isJudged ? 'fits' : 'unchecked',
    };
  });
  const conflicts = groups.flatMap((group) =>
    group.members.map((i): Conflict => {
      const { id, reading, value, u, implied, uImplied, w } = entries[last.measured[i]!]!;
      const outvotedBy = votesFor(group.members.length > 1 ? group.at : last, i);
      const rivals = group.members.filter((other) => other !== i).map((other) => refOf(last, other));
      return {
        id,
        reading,
        value,
        u,
        implied: implied ?? value,
        uImplied: uImplied ?? 0,
        w: w ?? 0,
        outvotedBy,
        rivals,
      };
    }),
  );
  const { chiSquared, freedom, p } = first.statistics;
  const posterior = posteriorOf(last, player);
  return { status: 'solved', chi2: chiSquared, dof: freedom, p, threshold, entries, posterior, conflicts };
}

/**
 * A single misfit is held against the fit without it; rivals each against all the others as they stood, since without
 * them nobody may be left to speak.
 */
function judgementOf(
  { last }: Outcome,
  i: number,
  group: Group | undefined,
): Pick<Judgement, 'implied' | 'normalised'> {
  if (!group) return last.statistics.judgements[i]!;
  if (group.members.length > 1) return group.at.statistics.judgements[i]!;
  const { implied } = last.statistics.judgements[i]!;
  if (!implied) return group.at.statistics.judgements[i]!;
  return { implied, normalised: strangeness(last, i, group.at.problem.measurements[i]!.u) };
}

function refOf({ readings, measured }: Reconciliation, i: number): ReadingRef {
  const { id, reading } = readings[measured[i]!]!;
  return { id, reading };
}

/** None where only windows would show an error. */
function redundancyOf(at: Reconciliation, i: number): number {
  const { redundancy, windows } = at.statistics.judgements[i]!;
  return windows <= mostOfWindows ? redundancy : 0;
}

function bareOf({ id, reading, value, u }: Reading, player: Player): JudgedReading {
  return {
    id,
    reading,
    value: mirroredNumber(id, value, player),
    u,
    implied: null,
    uImplied: null,
    w: null,
    redundancy: 0,
    verdict: 'unchecked',
  };
}

function unsolved(readings: readonly Reading[]): Agreement {
  return {
    status: 'unsolved',
    chi2: 0,
    dof: 0,
    p: 1,
    threshold: thresholdFor(1),
    entries: readings.map((reading) => bareOf(reading, { hand: 'right' })),
    posterior: new Map(),
    conflicts: [],
  };
}
