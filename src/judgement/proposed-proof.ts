// What a proposed change is proved by in the next record: the evidence of its fault gone, a goal's edge reached, or half of the way gone; runs no model.
import type { Account } from '../model/account.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { evidenceOf } from './book.ts';
import type { BookFault } from './book.ts';
import { chanceOf } from './chance.ts';
import { compileExpression } from './expression.ts';
import type { Foreseer, Made } from './foreseer.ts';
import type { Standing } from './goal-standing.ts';
import { enough } from './nearness.ts';
import type { Prediction } from './prediction.ts';
import { turned, type Comparing } from './proof.ts';
import { standsAt } from './standing-number.ts';

const opposite: Readonly<Record<string, string>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };

/**
 * That the first evidence of the fault that is one quantity against one number holds no longer: what is measured before what is not.
 * Undefined where there is none, or where this record meets it already, by what was entered or by what all entries together say.
 *
 * @param aim what is changed; where the evidence is of that, nothing that the aim would not meet
 */
export function proofAgainst(
  { fault }: BookFault,
  { account, registry, hand }: Foreseer,
  aim?: Pick<Made, 'quantity' | 'to'>,
): string | undefined {
  const found = evidenceOf(fault, registry).flatMap(({ compiled, expression }) => {
    const match = /^\s*([\w.]+)\s*(<=?|>=?)\s*(-?)\s*([\d.]+\s*[^\s<>=()]*)\s*$/.exec(expression.value);
    const [quantity] = compiled?.quantities ?? [];
    if (match === null || compiled?.margin === undefined || quantity === undefined) return [];
    if (quantity.id !== match[1]) return [];
    const isTurned = quantity.lateral && hand === 'left';
    if (quantity.lateral && hand === undefined) return [];
    const { margin } = compiled;
    const now = numbersNow(quantity.id, account);
    // Above zero where the evidence holds.
    if (now.some((value) => !(margin([isTurned ? 0 - value : value]) > 0))) return [];
    const aimed = aim?.quantity.id === quantity.id ? aim.to : undefined;
    if (aimed !== undefined && !(margin([isTurned ? 0 - aimed : aimed]) < 0)) return [];
    const [, id, sign, minus, number] = match as unknown as readonly [string, string, string, string, string];
    const proved = opposite[sign]!;
    const side = isTurned && Number.parseFloat(number) !== 0 ? (minus === '' ? '-' : '') : minus;
    return [
      {
        isMeasured: now.length > 0,
        text: `${id} ${isTurned ? turned[proved as Comparing] : proved} ${side}${number.trim()}`,
      },
    ];
  });
  return (found.find(({ isMeasured }) => isMeasured) ?? found[0])?.text;
}

/** What all entries together say, from where predictions start, and what was entered; SI, as this player sees left and right. */
function numbersNow(id: string, account: Account): readonly number[] {
  const entered = account.derivation.values.get(id)?.value;
  return entered === undefined ? [] : [standsAt(id, account) ?? entered, entered];
}

/**
 * That half of the way to the aim is gone. Where what was entered and what all entries together say are two numbers, it is the way from
 * the nearer one, so that neither meets it; where the entry lies beyond the aim, from what all entries say. Undefined where there is no
 * way to go.
 */
export function proofOnTheWay(quantity: Quantity, to: number, account: Account): string | undefined {
  const [standing, entered] = numbersNow(quantity.id, account);
  if (standing === undefined || entered === undefined) return undefined;
  const isNearer = (to - entered) * (to - standing) > 0 && Math.abs(to - entered) < Math.abs(to - standing);
  return proofHalfWay(quantity, isNearer ? entered : standing, to);
}

/** In the unit shown, with no more decimals than it takes to lie between the two; undefined where these lie too close for that. */
export function proofHalfWay({ id, unit, decimals }: Quantity, from: number, to: number): string | undefined {
  const half = fromSI((from + to) / 2, unit);
  const isBetween = (value: number): boolean => (toSI(value, unit) - from) * (toSI(value, unit) - to) < 0;
  const rounded = [0, decimals, decimals + 1].map((digits) => Number(half.toFixed(digits)));
  const value = rounded.find(isBetween);
  if (value === undefined) return undefined;
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
  { account, registry }: Foreseer,
): string {
  const { expression } = compileExpression(proof, registry);
  const [quantity, ...others] = expression?.quantities ?? [];
  if (expression === undefined || quantity === undefined || others.length > 0) return proof;
  // Of what nobody foresees to move, no prediction speaks.
  if (!outlooks.has(quantity.id)) return proof;
  const { means, covariance } = belief.of([quantity.id]);
  const then = mirroredNumber(quantity.id, means[0]!, account.situation);
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
  const [from] = numbersNow(quantity.id, account);
  const { margin } = expression;
  if (from === undefined || margin === undefined || !(margin([then]) > margin([from]))) return proof;
  return proofOnTheWay(quantity, then, account) ?? proof;
}

/** That the edge is crossed behind which the record lies. */
function proofAtEdge({ id, unit }: Quantity, { value, wanted: { min, max } }: Standing): readonly string[] {
  if (value === undefined || (value >= min && value <= max)) return [];
  const edge = Number(fromSI(value < min ? min : max, unit).toPrecision(6));
  return [`${id} ${value < min ? '>=' : '<='} ${edge}${unit === '' ? '' : ` ${unit}`}`];
}
