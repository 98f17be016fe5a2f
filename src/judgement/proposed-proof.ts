// What a proposed change is proved by in the next record: the evidence of its fault gone, a goal's edge reached, or half of the way gone; runs no model.
import { mirroredNumber } from '../model/mirror.ts';
import { fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { evidenceOf } from './book.ts';
import type { BookFault } from './book.ts';
import { chanceOf } from './chance.ts';
import { compileExpression } from './expression.ts';
import type { Foreseer } from './foreseer.ts';
import type { Standing } from './goal-standing.ts';
import { enough } from './nearness.ts';
import type { Prediction } from './prediction.ts';

const opposite: Readonly<Record<string, string>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };
const turned: Readonly<Record<string, string>> = { '<': '>', '<=': '>=', '>': '<', '>=': '<=' };

/**
 * That the first evidence of the fault that is one quantity against one number holds no longer: what is measured before what is not.
 * Undefined where there is none, or where this record meets it already.
 */
export function proofAgainst(
  { fault }: BookFault,
  { account, registry, hand }: Foreseer,
): string | undefined {
  const found = evidenceOf(fault, registry).flatMap(({ compiled, expression }) => {
    const match = /^\s*([\w.]+)\s*(<=?|>=?)\s*(-?)\s*([\d.]+\s*[^\s<>=()]*)\s*$/.exec(expression.value);
    const [quantity] = compiled?.quantities ?? [];
    if (match === null || compiled?.margin === undefined || quantity === undefined) return [];
    if (quantity.id !== match[1]) return [];
    const isTurned = quantity.lateral && hand === 'left';
    if (quantity.lateral && hand === undefined) return [];
    const now = account.derivation.values.get(quantity.id)?.value;
    // Above zero where the evidence holds.
    if (now !== undefined && !(compiled.margin([isTurned ? 0 - now : now]) > 0)) return [];
    const [, id, sign, minus, number] = match as unknown as readonly [string, string, string, string, string];
    const proved = opposite[sign]!;
    const side = isTurned && Number.parseFloat(number) !== 0 ? (minus === '' ? '-' : '') : minus;
    return [
      {
        isMeasured: now !== undefined,
        text: `${id} ${isTurned ? turned[proved]! : proved} ${side}${number.trim()}`,
      },
    ];
  });
  return (found.find(({ isMeasured }) => isMeasured) ?? found[0])?.text;
}

/** In the unit shown, with no more decimals than it takes to lie between the two. */
export function proofHalfWay({ id, unit, decimals }: Quantity, from: number, to: number): string {
  const half = fromSI((from + to) / 2, unit);
  const isBetween = (value: number): boolean => (toSI(value, unit) - from) * (toSI(value, unit) - to) < 0;
  const rounded = [0, decimals, decimals + 1].map((digits) => Number(half.toFixed(digits)));
  const value = rounded.find(isBetween) ?? half;
  return `${id} ${to > from ? '>' : '<'} ${value}${unit === '' ? '' : ` ${unit}`}`;
}

/**
 * The proof, unless it would more likely fail than not with all going as predicted: then the edge of a goal for what it is read from,
 * and where that is too far as well, half of the way that is predicted, as long as that leads toward the proof.
 */
export function proofWithin(
  proof: string,
  { outlooks, belief }: Prediction,
  now: readonly Standing[],
  { account: { derivation, situation }, registry }: Foreseer,
): string {
  const { expression } = compileExpression(proof, registry);
  const [quantity, ...others] = expression?.quantities ?? [];
  if (expression === undefined || quantity === undefined || others.length > 0) return proof;
  // Of what nobody foresees to move, no prediction speaks.
  if (!outlooks.has(quantity.id)) return proof;
  const { means, covariance } = belief.of([quantity.id]);
  const then = mirroredNumber(quantity.id, means[0]!, situation);
  const comes = (condition: string): boolean | undefined => {
    const compiled = compileExpression(condition, registry).expression;
    const chance = compiled && chanceOf(compiled, { means: Float64Array.of(then), covariance }).probability;
    return chance === undefined ? undefined : chance >= enough;
  };
  if (comes(proof) !== false) return proof;
  const edge = now
    .filter(({ wanted }) => wanted.quantity.id === quantity.id)
    .flatMap((goal) => proofAtEdge(quantity, goal))
    .find((condition) => comes(condition) === true);
  if (edge !== undefined) return edge;
  const from = derivation.values.get(quantity.id)?.value;
  const { margin } = expression;
  if (from === undefined || margin === undefined || !(margin([then]) > margin([from]))) return proof;
  return proofHalfWay(quantity, from, then);
}

/** That the edge is crossed behind which the record lies. */
function proofAtEdge({ id, unit }: Quantity, { value, wanted: { min, max } }: Standing): readonly string[] {
  if (value === undefined || (value >= min && value <= max)) return [];
  const edge = Number(fromSI(value < min ? min : max, unit).toPrecision(6));
  return [`${id} ${value < min ? '>=' : '<='} ${edge}${unit === '' ? '' : ` ${unit}`}`];
}
