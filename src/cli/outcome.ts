// The `outcome` command: what became of the plan of one record, and of the plan before it, as text or JSON.
import { jsonText } from './formats/json-text.ts';
import { proofText } from '../checks/proof-words.ts';
import pc from 'picocolors';
import { planCautions } from '../analysis/cautions.ts';
import { courseOf, lastPlanOf, type Course, type HeldPlan, type LastPlan } from '../analysis/courses.ts';
import { findLessons, type Lesson } from '../analysis/lessons.ts';
import {
  changeNumbers,
  changeWords,
  courseInShort,
  lastPlanInShort,
  predictionNumbers,
  predictionWords,
  proofNumbers,
  proofWords,
} from '../analysis/outcome-words.ts';
import type { ChangeOutcome } from '../judgement/changed.ts';
import type { MeasuredValue } from '../judgement/measured.ts';
import type { Outcome, PredictionOutcome, ProofOutcome } from '../judgement/outcome.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

/** Prints what became of the plans at `path`; 2 where it cannot be read or is no record, 1 where there is no plan, here or before. */
export async function outcome(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const lessons = await findLessons(analysis, practiceAround(signal));
  const own = lessons.find(({ uri }) => uri === analysis.uri) ?? alone(analysis);
  const course = courseOf(own, lessons);
  const last = lastPlanOf(own, lessons);
  process.stdout.write(format === 'json' ? json(own, course, last) : text(course, last));
  return course === undefined && last === undefined ? 1 : 0;
}

/** A record without a student has no other lessons. */
function alone(analysis: Lesson['analysis']): Lesson {
  const { uri, document } = analysis;
  if (document.kind !== 'swing') return { uri, analysis, date: undefined, club: undefined };
  return { uri, analysis, date: document.date?.value, club: document.club?.value };
}

/** Of every plan that is shown. */
function cautionsIn(course: Course | undefined, last: LastPlan | undefined): readonly string[] {
  const plans = [last?.plan, course?.plan].flatMap((lesson) => lesson?.analysis ?? []);
  return [...new Set(plans.flatMap(planCautions))];
}

function text(course: Course | undefined, last: LastPlan | undefined): string {
  const cautions = cautionsIn(course, last);
  const blocks = [
    ...(last === undefined ? [] : [lastText(last)]),
    ...(course === undefined
      ? []
      : [heldText(`This plan. ${courseInShort(course)}`, course.held, course.held?.next)]),
    ...(cautions.length === 0
      ? []
      : [['Caution', ...cautions.map((line) => printable(`  ${line}`))].join('\n')]),
  ];
  return blocks.length === 0 ? 'No plan in this record, and none before it.\n' : `${blocks.join('\n\n')}\n`;
}

function heldText(title: string, held: HeldPlan | undefined, other: Lesson | undefined): string {
  const { changes = [], proofs = [], predictions = [] } = held?.outcome ?? {};
  const rows = [
    ...(other === undefined ? [] : [`  ${toPath(other.uri)}`]),
    ...changes.map((one) => `  Change ${one.quantity.id}: ${changeWords(one)}`),
    ...proofs.map((one) => `  Proof ${proofText(one.asks)}: ${proofWords(one)}`),
    ...predictions.map(
      (one) => `  Prediction of ${one.entry.id}${originWords(one)}: ${predictionWords(one)}`,
    ),
  ];
  return [pc.bold(printable(title)), ...rows.map(printable)].join('\n');
}

/** At a lesson after the one that decided the plan only numbers are told: a second verdict would stand against the first. */
function lastText(last: LastPlan): string {
  const title = lastPlanInShort(last);
  const { decided, plan } = last;
  if (decided === undefined) return heldText(title, last, plan);
  const { changes, proofs, predictions } = last.outcome;
  const rows = [
    `  ${toPath(plan.uri)}`,
    `  ${toPath(decided.next.uri)}`,
    '  Later, in this lesson, which decides nothing anew',
    ...changes.map((one) => `    Change ${one.quantity.id}: ${changeNumbers(one)}`),
    ...proofs.map((one) => `    Proof ${proofText(one.asks)}: ${proofNumbers(one)}`),
    ...predictions.map(
      (one) => `    Prediction of ${one.entry.id}${originWords(one)}: ${predictionNumbers(one)}`,
    ),
  ];
  return [pc.bold(printable(title)), ...rows.map(printable)].join('\n');
}

function originWords({ origin }: PredictionOutcome): string {
  return origin === 'not said' ? '' : ` by ${origin}`;
}

function json(own: Lesson, course: Course | undefined, last: LastPlan | undefined): string {
  const shown = {
    format: 1,
    file: toPath(own.uri),
    plan:
      course === undefined
        ? null
        : {
            state: course.state,
            summary: courseInShort(course),
            next: course.held === undefined ? null : lessonJson(course.held.next),
            outcome: course.held === undefined ? null : outcomeJson(course.held.outcome),
          },
    lastPlan:
      last === undefined
        ? null
        : {
            plan: lessonJson(last.plan),
            summary: lastPlanInShort(last),
            decidedBy: last.decided === undefined ? null : lessonJson(last.decided.next),
            outcome: outcomeJson((last.decided ?? last).outcome),
          },
    cautions: cautionsIn(course, last),
  };
  return jsonText(shown);
}

function lessonJson(lesson: Lesson) {
  return { file: toPath(lesson.uri), date: lesson.date ?? null, club: lesson.club ?? null };
}

export function outcomeJson({ changes, proofs, predictions, followed }: Outcome) {
  return {
    followed,
    changes: changes.map(changeJson),
    proofs: proofs.map(proofJson),
    predictions: predictions.map(predictionJson),
  };
}

function changeJson({ quantity, state, target, before, after, share }: ChangeOutcome) {
  return {
    quantity: quantity.id,
    state,
    unit: quantity.unit,
    target: { from: tidy(fromSI(target.from, quantity.unit)), to: tidy(fromSI(target.to, quantity.unit)) },
    before: valueJson(quantity, before),
    after: valueJson(quantity, after),
    share: share === undefined ? null : tidy(share),
  };
}

function proofJson({ proof, state, probability, values, missing }: ProofOutcome) {
  return {
    proof: proof.value,
    state,
    probability: probability === undefined ? null : Number(probability.toFixed(4)),
    values: Object.fromEntries(
      values.map(({ quantity, value }) => [
        quantity.id,
        { ...valueJson(quantity, value), unit: quantity.unit },
      ]),
    ),
    missing: missing.map(({ id }) => id),
  };
}

function predictionJson({
  entry: { quantity },
  origin,
  state,
  predicted,
  after,
  miss,
  u,
}: PredictionOutcome) {
  const difference = (value: number | undefined): number | null =>
    value === undefined ? null : tidy(differenceFromSI(value, quantity.unit));
  return {
    quantity: quantity.id,
    by: origin === 'not said' ? null : origin,
    state,
    unit: quantity.unit,
    predicted: { value: tidy(fromSI(predicted.value, quantity.unit)), u: difference(predicted.u) },
    measured: valueJson(quantity, after),
    miss: difference(miss),
    u: difference(u),
    standardUncertainties: miss === undefined || u === undefined ? null : tidy(miss / u),
  };
}

function valueJson({ unit }: Quantity, value: MeasuredValue | undefined) {
  if (value === undefined) return null;
  return {
    value: tidy(fromSI(value.value, unit)),
    u: tidy(differenceFromSI(value.u, unit)),
    how: value.how,
    ...(value.shots === undefined ? {} : { shots: value.shots }),
    fitsItsRecord: !value.isInDoubt,
  };
}
