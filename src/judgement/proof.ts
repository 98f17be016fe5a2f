// The proofs of a plan as conditions: what is wrong in them, and what they ask for; judges none.
import type { Problem } from '../measure/measure.ts';
import { collapseSpaces } from '../measure/quote.ts';
import { parseMeasure } from '../measure/parse.ts';
import { signWord } from '../measure/show.ts';
import type { Located, SwingRecord } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
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

export type Comparing = '<' | '<=' | '>' | '>=';

/** What a proof asks for, as it is written. */
export interface ProofAsks {
  readonly text: string;
  /** None where it cannot be read. */
  readonly quantities: readonly Quantity[];
  /** One quantity against one number, SI; undefined where it asks for anything else. */
  readonly limit:
    { readonly quantity: Quantity; readonly sign: Comparing; readonly value: number } | undefined;
}

const comparison = /^([\w.]+)\s*(<=|>=|<|>)\s*(-?\s*[\d.]+\s*[^\s<>=()]*)$/;
const turnedComparison = /^(-?\s*[\d.]+\s*[^\s<>=()]*?)\s*(<=|>=|<|>)\s*([\w.]+)$/;
/** What has a name of its own. */
const difference = /delivery\.face\s*-\s*delivery\.path(?![\w.])/;
export const turned = { '>': '<', '>=': '<=', '<': '>', '<=': '>=' } as const;

export function proofAsks(text: string, registry: Registry): ProofAsks {
  const { expression } = compileExpression(text, registry);
  if (expression === undefined) return { text, quantities: [], limit: undefined };
  return { text, quantities: expression.quantities, limit: limitIn(text, registry) };
}

function limitIn(text: string, registry: Registry): ProofAsks['limit'] {
  const named = collapseSpaces(text).replace(difference, 'delivery.face_to_path');
  const [, id, sign, limit] = comparison.exec(named) ?? [];
  const [, before, other, behind] = turnedComparison.exec(named) ?? [];
  const quantity = registry.find(id ?? behind ?? '');
  const number = (limit ?? before)?.replace(/-\s+/, '-');
  if (quantity === undefined || number === undefined) return undefined;
  const { value } = parseMeasure(number, quantity, { window: 'no', methods: [] });
  if (value?.kind !== 'measure') return undefined;
  return { quantity, sign: (sign as Comparing) ?? turned[other as Comparing], value: value.value };
}

/** Whether left and right, ahead and behind, or up and down say what a sign says of it. */
export function hasSides({ directions }: Quantity): boolean {
  return directions.some(({ bearing }) => bearing === undefined);
}

/** As a side says it: less than −2 deg of what goes up and down is more than 2 deg down. */
export function byItsSide({ quantity, sign, value }: NonNullable<ProofAsks['limit']>): Comparing {
  return hasSides(quantity) && value < 0 ? turned[sign] : sign;
}

/** Of a limit of zero the side on which it is met; undefined of any other, and of what has no sides. */
export function sideOf({ quantity, sign, value }: NonNullable<ProofAsks['limit']>): string | undefined {
  if (value !== 0) return undefined;
  const wanted = sign.startsWith('>') ? 1 : -1;
  return signWord(quantity, wanted)?.word;
}

/** The words for plus and minus of all that is asked for, each pair once. */
export function signsIn({
  quantities,
}: Pick<ProofAsks, 'quantities'>): readonly (readonly [plus: string, minus: string])[] {
  const pairs = quantities.flatMap((quantity) => {
    const [plus, minus] = [signWord(quantity, 1), signWord(quantity, -1)];
    return plus === undefined || minus === undefined ? [] : [[plus.word, minus.word] as const];
  });
  return [...new Map(pairs.map((pair) => [pair.join(), pair])).values()];
}
