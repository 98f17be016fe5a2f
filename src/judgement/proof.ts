// The proofs of a plan as conditions: compiled once, with what is wrong in them placed in the record; judges none.
import type { Problem } from '../measure/measure.ts';
import type { Located, SwingRecord } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { compileExpression } from './expression.ts';

/** Everything that is wrong with the proofs of a plan, in the record's own text. */
export function proofProblems({ plan }: SwingRecord, registry: Registry): readonly Problem[] {
  return plan.flatMap(({ proof }) =>
    proof === undefined
      ? []
      : compileExpression(proof.value, registry).problems.map((problem) => placed(problem, proof)),
  );
}

/** Escapes or folding part the text from what it says: then the whole of it is pointed at. */
function placed(problem: Problem, { value, span }: Located<string>): Problem {
  if (span.end - span.start !== value.length) return { ...problem, span };
  return { ...problem, span: { start: span.start + problem.span.start, end: span.start + problem.span.end } };
}
