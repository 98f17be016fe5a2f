// What a stated fault is believed to do, held against the model of this swing; belief and physics stay apart. Knows no other record.
import { differenceToSI } from '../measure/units.ts';
import { faceIds, isFaceFree, pathId } from '../model/held-face.ts';
import { scaleOf } from '../model/scales.ts';
import { mirroredNumber, type Player } from '../model/mirror.ts';
import { normalBelow } from '../model/quantiles.ts';
import type { Sensitivity } from '../model/sensitivity.ts';
import type { BelievedEffect } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { evidenceOf, type BookFault } from './book.ts';
import { evidenceQuantities, perQuantity } from './cause-quantity.ts';
import { favours } from './causes.ts';
import type { StatedVerdict } from './judgement.ts';
import type { Beholder, JudgedLine } from './verdict.ts';

/** Whether what is said goes the way of the belief. */
export type Answer = 'agrees' | 'opposite' | 'no say';

/** What physics, or history, says of an effect, in the terms of the belief. */
export interface Said {
  readonly answer: Answer;
  /** How probable it is that the effect goes as believed; undefined where nothing is known. */
  readonly probability: number | undefined;
  /** SI, signed as this player sees it: for `over` of the cause, in the direction in which the fault holds. */
  readonly amount: number | undefined;
  readonly u: number | undefined;
  /** Against a believed size, only where the direction agrees. */
  readonly size: 'as believed' | 'larger' | 'smaller' | undefined;
  /** Why there is no say, for the reader; undefined where there is a number. */
  readonly reason: string | undefined;
}

export interface Claim extends BookFault {
  readonly stated: StatedVerdict;
  readonly effect: BelievedEffect;
  readonly quantity: Quantity;
  /** As this player sees it; 1 where it makes the number larger. */
  readonly sign: 1 | -1;
  /** The quantity of the evidence that is taken for the cause; undefined where there is none, or it holds neither way. */
  readonly cause: Quantity | undefined;
  /** Why there is no cause, for the reader; undefined where there is one. */
  readonly noCause: string | undefined;
  /** The way in which the cause goes where the fault holds, as this player sees it. */
  readonly toward: 1 | -1;
  /** SI, above zero: how much of the cause the amounts are for. */
  readonly over: number;
  /** Whether that is what the belief is for, or how far the evidence is exceeded, or only a step to compare by. */
  readonly overIs: 'per' | 'whole fault' | 'step';
  /** SI, signed as this player sees it; undefined where the book says no size. */
  readonly amount: number | undefined;
  readonly u: number | undefined;
  readonly physics: Said;
}

/** From here on a direction is sure (a judgement, as in most of science: nineteen to one). */
export const sureFrom = 0.95;

/** A size without ± is a rule of thumb, taken as good to a quarter of itself (a judgement). */
const thumb = 0.25;

/** Beyond so many standard uncertainties two sizes differ: 95 % of a normal distribution lie within, on both sides. */
const differFrom = 1.96;

export type FindSensitivity = (cause: string, effect: string, step: number) => Sensitivity | undefined;

/** @param coverage how many standard uncertainties a written ± stands for */
export function claimsOf(
  stated: readonly StatedVerdict[],
  beholder: Beholder,
  find: FindSensitivity,
  coverage: number,
): readonly Claim[] {
  return stated.flatMap((one) =>
    one.fault.tendsTo.flatMap((effect) => claimOf(one, effect, { beholder, find, coverage }) ?? []),
  );
}

interface Judging {
  readonly beholder: Beholder;
  readonly find: FindSensitivity;
  readonly coverage: number;
}

interface Cause {
  readonly quantity: Quantity;
  /** As for a right-handed player, as the book is written. */
  readonly toward: 1 | -1;
}

function claimOf(one: StatedVerdict, effect: BelievedEffect, judging: Judging): Claim | undefined {
  const { quantity, sign, size } = effect;
  if (quantity === undefined || sign === undefined) return undefined;
  const { beholder, coverage } = judging;
  const causes = causesOf(one, effect, beholder.registry);
  const found = causes.map((cause) => ({ cause, slope: slopeOf(cause, quantity, judging) }));
  // A fault with two lines of evidence is told by the one from which the model knows a way.
  const { cause, slope } = found.find((each) => isSome(each.slope)) ?? found[0] ?? {};
  const mirrored = (id: string, value: number): number => mirroredNumber(id, value, playerOf(beholder));
  const exceeded = cause === undefined ? undefined : exceededBy(one.lines, cause, beholder);
  const over = size?.per?.amount ?? exceeded ?? stepOf(cause?.quantity);
  const isSized = size !== undefined && (size.per !== undefined || exceeded !== undefined);
  const believed = {
    amount: isSized ? mirrored(quantity.id, sign * size.amount) : undefined,
    u: isSized ? (size.stated === undefined ? thumb * size.amount : size.stated / coverage) : undefined,
    sign: mirrored(quantity.id, sign) as 1 | -1,
  };
  const toward = cause === undefined ? 1 : (mirrored(cause.quantity.id, cause.toward) as 1 | -1);
  const noCause = cause === undefined ? noCauseOf(one, quantity, beholder.registry) : undefined;
  const moved = slope && { amount: slope.slope * toward * over, u: slope.u * over };
  const isUnknownSide = beholder.hand === undefined && [quantity, cause?.quantity].some((q) => q?.lateral);
  return {
    fault: one.fault,
    uri: one.uri,
    stated: one,
    effect,
    quantity,
    sign: believed.sign,
    cause: cause?.quantity,
    noCause,
    toward,
    over,
    overIs: size?.per !== undefined ? 'per' : exceeded !== undefined ? 'whole fault' : 'step',
    amount: believed.amount,
    u: believed.u,
    physics: isUnknownSide
      ? noSay('which hand plays is not known')
      : noCause !== undefined
        ? noSay(noCause)
        : cause !== undefined && isOfHeldFace(cause, quantity, judging)
          ? noSay('the model keeps the face where it points while the path moves')
          : physicsOf(moved, believed),
  };
}

function noCauseOf({ fault }: StatedVerdict, { id }: Quantity, registry: Registry): string {
  return evidenceQuantities(fault, registry).some((quantity) => quantity.id === id)
    ? 'the evidence is of the same quantity as the effect'
    : 'the evidence names no quantity that goes one way';
}

/** What the face does while the path moves, the model does not know: a plan takes the coach's word for it too. */
function isOfHeldFace(cause: Cause, { id }: Quantity, judging: Judging): boolean {
  const path = judging.beholder.registry.find(pathId);
  if (path === undefined || !faceIds.includes(id) || !isFaceFree(cause.quantity.id)) return false;
  return cause.quantity.id === path.id || isSome(slopeOf(cause, path, judging));
}

function physicsOf(
  moved: { readonly amount: number; readonly u: number } | undefined,
  believed: Pick<Claim, 'sign' | 'amount' | 'u'>,
): Said {
  if (moved === undefined) return noSay('the model of this record does not reach it');
  if (moved.amount === 0 && moved.u === 0) return noSay('the model knows no way from the one to the other');
  return saidOf(moved.amount, moved.u, believed, normalBelow);
}

/** The answer to a belief of an effect that is `amount` ± `u`; `below` is the distribution of their quotient. */
export function saidOf(
  amount: number,
  u: number,
  believed: Pick<Claim, 'sign' | 'amount' | 'u'>,
  below: (t: number) => number,
): Said {
  const probability = u > 0 ? below((believed.sign * amount) / u) : believed.sign * amount > 0 ? 1 : 0;
  const answer = probability >= sureFrom ? 'agrees' : probability <= 1 - sureFrom ? 'opposite' : 'no say';
  const reason = answer === 'no say' ? 'it is too uncertain which way it goes' : undefined;
  return { answer, probability, amount, u, size: sizeOf(answer, amount, u, believed), reason };
}

export function noSay(reason: string): Said {
  return {
    answer: 'no say',
    probability: undefined,
    amount: undefined,
    u: undefined,
    size: undefined,
    reason,
  };
}

function sizeOf(
  answer: Answer,
  amount: number,
  u: number,
  believed: Pick<Claim, 'amount' | 'u'>,
): Said['size'] {
  if (answer !== 'agrees' || believed.amount === undefined || believed.u === undefined) return undefined;
  const apart = Math.abs(amount) - Math.abs(believed.amount);
  if (Math.abs(apart) <= differFrom * Math.hypot(u, believed.u)) return 'as believed';
  return apart > 0 ? 'larger' : 'smaller';
}

function playerOf({ hand, registry }: Beholder): Player {
  return { hand: hand ?? 'right', registry };
}

/** The quantities of the evidence here that are taken for the cause, each with the way in which the fault holds. */
function causesOf(
  { fault, lines }: StatedVerdict,
  effect: BelievedEffect,
  registry: Registry,
): readonly Cause[] {
  const only = perQuantity(fault, effect, registry);
  if (only === undefined && effect.size?.per !== undefined) return [];
  // A cause that the book names may be seen at another checkpoint than the one stated.
  const evidence = only === undefined ? lines.map((line) => line.evidence) : evidenceOf(fault, registry);
  const found = new Map<string, Cause>();
  for (const { compiled } of evidence)
    for (const quantity of compiled?.quantities ?? []) {
      if ((only !== undefined && quantity.id !== only.id) || quantity.id === effect.quantity?.id) continue;
      const toward = ([1, -1] as const).find((sign) => favours(compiled!, quantity, sign));
      if (toward !== undefined && !found.has(quantity.id)) found.set(quantity.id, { quantity, toward });
    }
  return [...found.values()];
}

function slopeOf({ quantity, toward }: Cause, effect: Quantity, { beholder, find }: Judging) {
  const size = toward * scaleOf(quantity.id, beholder.registry);
  const step = mirroredNumber(quantity.id, size, playerOf(beholder));
  return find(quantity.id, effect.id, step);
}

function isSome(slope: Sensitivity | undefined): boolean {
  return slope !== undefined && (slope.slope !== 0 || slope.u !== 0);
}

/** How far the cause is beyond the edge at which the fault no longer holds; undefined where it does not, or that is not linear. */
function exceededBy(
  lines: readonly JudgedLine[],
  { quantity }: Cause,
  { belief }: Beholder,
): number | undefined {
  for (const { evidence } of lines) {
    const { compiled } = evidence;
    const slot = compiled?.quantities.findIndex(({ id }) => id === quantity.id) ?? -1;
    if (compiled?.margin === undefined || slot < 0) continue;
    const { margin: marginOf, quantities } = compiled;
    const { means, covariance } = belief.of(quantities.map(({ id }) => id));
    const margin = marginOf(means);
    const slopes = quantities.map((_, i) => marginOf(means.with(i, means[i]! + 1)) - margin);
    const variance = slopes.reduce(
      (sum, a, i) => sum + slopes.reduce((row, b, j) => row + a * b * covariance[i * slopes.length + j]!, 0),
      0,
    );
    const distance = margin / Math.abs(slopes[slot]!);
    if (Number.isFinite(distance) && margin > Math.sqrt(variance)) return distance;
  }
  return undefined;
}

/** An amount of a cause that people can picture: one of its unit, or five of a hundred. */
function stepOf(quantity: Quantity | undefined): number {
  if (quantity === undefined) return 1;
  return differenceToSI(quantity.dimension === 'fraction' ? 5 : 1, quantity.unit);
}
