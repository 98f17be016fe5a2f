// The hover on a planned change, a proof and a prediction: what became of it in the next lesson, and what a proof asks for; computes nothing itself.
import { courseOf, type HeldPlan } from '../analysis/courses.ts';
import type { Lesson } from '../analysis/lessons.ts';
import { changeWords, dayOf, predictionWords, proofWords } from '../analysis/outcome-words.ts';
import type { Analysis } from '../analysis/result.ts';
import { nameWithin } from '../checks/agreement.ts';
import { sidesOf } from '../checks/proof-words.ts';
import { proofAsks, type ProofAsks } from '../judgement/proof.ts';
import { upperFirst } from '../measure/quote.ts';
import type { Span } from '../measure/measure.ts';
import type { Remark } from './hover.ts';
import { escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

/** Whether a hover here has to know what became of the plan, for which other records have to be read. */
export function isInPlan({ document }: Analysis, offset: number): boolean {
  if (document.kind !== 'swing') return false;
  return document.outline.some(
    ({ name, nameSpan, span }) =>
      (name === 'plan' || name === 'predicted') && holds({ start: nameSpan.start, end: span.end }, offset),
  );
}

export function hoverOnOutcome(
  analysis: Analysis,
  offset: number,
  lessons: readonly Lesson[],
): Remark | undefined {
  const own = lessons.find(({ uri }) => uri === analysis.uri);
  const held = own && courseOf(own, lessons)?.held;
  if (held === undefined) return ofProof(analysis, offset);
  const said = wordsAt(held, offset);
  if (said === undefined) return undefined;
  return {
    span: said.span,
    lines: [`**${said.title}**, in the lesson of ${dayOf(held.next)}:`, ...said.lines.map(escapeMarkdown)],
  };
}

/** Before any later lesson: what its signs stand for. */
function ofProof({ document, subject }: Analysis, offset: number): Remark | undefined {
  const plan = document.kind === 'swing' ? document.plan : [];
  const proof = plan.flatMap((planned) => planned.proof ?? []).find(({ span }) => holds(span, offset));
  const words = proof === undefined ? [] : asked(proofAsks(proof.value, subject.registry));
  return proof === undefined || words.length === 0
    ? undefined
    : { span: proof.span, lines: words.map((one) => `**Proof**: ${escapeMarkdown(one)}`) };
}

/** A sentence, or nothing where no sign has a side. */
function asked(asks: ProofAsks): readonly string[] {
  const sides = sidesOf(asks);
  return sides === '' ? [] : [`${upperFirst(sides)}.`];
}

interface Said {
  readonly span: Span;
  readonly title: string;
  readonly lines: readonly string[];
}

function wordsAt({ outcome }: HeldPlan, offset: number): Said | undefined {
  for (const one of outcome.changes) {
    const spans = [one.planned.change?.span, one.planned.to?.span];
    const span = spans.find((place) => place !== undefined && holds(place, offset));
    if (span !== undefined) return { span, title: 'Change', lines: [changeWords(one)] };
  }
  for (const one of outcome.proofs)
    if (holds(one.proof.span, offset)) {
      const span = one.proof.span;
      return { span, title: 'Proof', lines: [...asked(one.asks), proofWords(one)] };
    }
  for (const { entry } of outcome.predictions) {
    const span = [entry.keySpan, entry.valueSpan].find((place) => holds(place, offset));
    if (span === undefined) continue;
    const own = outcome.predictions.filter((other) => other.entry === entry);
    const lines = own.map(
      (one) => `${one.origin === 'not said' ? '' : `By ${one.origin}: `}${predictionWords(one)}`,
    );
    return { span, title: `Prediction of ${nameWithin(entry.quantity)}`, lines };
  }
  return undefined;
}
