// A fault book with its expressions compiled, and the faults that hold once books that extend one another are laid over; knows no record.
import type { Problem } from '../measure/measure.ts';
import type { Evidence, Fault, FaultFile, Located } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { compileExpression, type Expression } from './expression.ts';

export interface CompiledEvidence extends Evidence {
  /** Undefined where it cannot be read. */
  readonly compiled: Expression | undefined;
  /** Placed in the book. */
  readonly problems: readonly Problem[];
}

export interface BookFault {
  /** The book that it stands in. */
  readonly uri: string;
  readonly fault: Fault;
}

export interface PlacedBook {
  readonly uri: string;
  readonly document: FaultFile;
}

/** A text is compiled once for each registry, however often it is asked for. */
const kept = new WeakMap<Registry, WeakMap<Fault, readonly CompiledEvidence[]>>();

export function evidenceOf(fault: Fault, registry: Registry): readonly CompiledEvidence[] {
  const faults = kept.get(registry) ?? new WeakMap<Fault, readonly CompiledEvidence[]>();
  kept.set(registry, faults);
  const known = faults.get(fault) ?? fault.evidence.map((evidence) => compile(evidence, registry));
  faults.set(fault, known);
  return known;
}

/** Everything that is wrong with the expressions of a book, in its own text. */
export function expressionProblems({ faults }: FaultFile, registry: Registry): readonly Problem[] {
  return [...faults.values()].flatMap((fault) =>
    evidenceOf(fault, registry).flatMap(({ problems }) => problems),
  );
}

/** The faults of all books, of which the first ones given win. */
export function faultsOf(books: readonly PlacedBook[]): ReadonlyMap<string, BookFault> {
  const faults = new Map<string, BookFault>();
  for (const { uri, document } of books)
    for (const [id, fault] of document.faults) if (!faults.has(id)) faults.set(id, { uri, fault });
  return faults;
}

function compile(evidence: Evidence, registry: Registry): CompiledEvidence {
  const { expression: compiled, problems } = compileExpression(evidence.expression.value, registry);
  return { ...evidence, compiled, problems: problems.map((problem) => placed(problem, evidence.expression)) };
}

/** Escapes or folding part the text from what it says: then the whole of it is pointed at. */
export function placed(problem: Problem, { value, span }: Located<string>): Problem {
  if (span.end - span.start !== value.length) return { ...problem, span };
  return { ...problem, span: { start: span.start + problem.span.start, end: span.start + problem.span.end } };
}
