// The quantities that can be moved as plain data for sliders: each with its reach, its steps and the windows on its way; predicts nothing.
import { reachesOf, type LeverWindow, type Reach } from '../analysis/lever-reach.ts';
import type { Analysis } from '../analysis/result.ts';
import type { WhatIf } from '../analysis/what-if.ts';
import { nameWithin } from '../checks/agreement.ts';
import { withClub } from '../checks/forecast-words.ts';
import { standingNumber } from '../judgement/standing-number.ts';
import { upperFirst } from '../measure/quote.ts';
import { showSize, showValue, showWindow, signWord } from '../measure/show.ts';
import { findUnit, fromSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';

/** A quantity that can be moved; numbers in the unit shown, positive to the right, ahead and up. */
export interface Lever {
  readonly id: string;
  /** With its checkpoint. */
  readonly title: string;
  /** Its checkpoint, or else its part of the record. */
  readonly group: string;
  readonly unit: string;
  readonly decimals: number;
  /** What a positive and a negative number are called; empty where a sign says it. */
  readonly sides: readonly [positive: string, negative: string];
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly now: number;
  /** With its spread. */
  readonly nowWords: string;
  readonly bands: readonly LeverBand[];
  /** That neither template nor goal nor plan gives it a window, and how far it goes where not even practice does; else empty. */
  readonly reachWords: string;
}

/** A window on the way of a slider. */
export interface LeverBand {
  readonly of: LeverWindow['of'];
  /** "36..42 cm"; of a plan of one number that number, of a contact its name, of practice also the club. */
  readonly words: string;
  readonly min: number;
  readonly max: number;
}

export function leversIn(
  analysis: Analysis,
  quantities: readonly Quantity[],
  found: WhatIf,
): readonly Lever[] {
  const { account } = analysis;
  if (account === undefined) return [];
  const reachOf = reachesOf(analysis, account, found);
  const { clubKind } = account.situation;
  return quantities.flatMap((quantity) => {
    const now = standingNumber(quantity.id, account);
    if (now === undefined) return [];
    const reach = reachOf(quantity, now.value);
    const unit = unitOf(quantity);
    return [
      {
        id: quantity.id,
        title: upperFirst(nameWithin(quantity)),
        group: upperFirst(quantity.checkpoint?.replaceAll('_', ' ') ?? quantity.section),
        unit,
        sides: [signWord(quantity, 1)?.word ?? '', signWord(quantity, -1)?.word ?? ''],
        ...trackOf(quantity, reach, unit),
        now: fromSI(now.value, unit),
        nowWords: showValue(quantity, now.value, now.u),
        bands: reach.windows.map((window) => bandOf(quantity, window, unit, clubKind)),
        reachWords: reachWords(quantity, reach, now.value),
      },
    ];
  });
}

export function unitOf({ shown, unit }: Quantity): string {
  return shown ?? findUnit(unit)?.name ?? unit;
}

/** Steps that a hand can tell apart; the ends lie on them, and never beyond what is possible for it. */
function trackOf(
  { decimals: written }: Quantity,
  { min, max, bounds }: Reach,
  unit: string,
): Pick<Lever, 'min' | 'max' | 'step' | 'decimals'> {
  const [low, high] = inOrder(min, max, unit);
  const [least, most] = inOrder(bounds.min, bounds.max, unit);
  const step = stepOf(high - low, written);
  // 0.3 is log10 of 2: steps of 2 and 5 need the decimals of the power of ten below them.
  const decimals = Math.max(0, Math.round(-Math.log10(step) + 0.3));
  const onStep = (steps: number): number => Number((steps * step).toFixed(decimals));
  // What lies on a step but for its last binary digit draws no end a whole step farther.
  const [first, last] = [Math.floor(low / step + 1e-6), Math.ceil(high / step - 1e-6)];
  return {
    // A present beyond what is possible stays where it can be seen.
    min: onStep(low >= least && onStep(first) < least ? first + 1 : first),
    max: onStep(high <= most && onStep(last) > most ? last - 1 : last),
    step,
    decimals,
  };
}

function inOrder(min: number, max: number, unit: string): readonly [number, number] {
  const ends = [min, max].map((end) => fromSI(end, unit));
  return [Math.min(...ends), Math.max(...ends)];
}

const mostSteps = 120;

/** 1, 2 or 5 times a power of ten: no finer than is written, and no more steps than an arrow key can be pressed. */
function stepOf(width: number, decimals: number): number {
  for (let power = -decimals; ; power++)
    for (const digit of [1, 2, 5]) {
      const step = power < 0 ? digit / 10 ** -power : digit * 10 ** power;
      if (width / step <= mostSteps) return step;
    }
}

function bandOf(
  quantity: Quantity,
  { of, min, max, asked }: LeverWindow,
  unit: string,
  clubKind: string | undefined,
): LeverBand {
  const [low, high] = inOrder(min, max, unit);
  const words = asked ?? (min === max ? showValue(quantity, min) : showWindow(quantity, min, max));
  return { of, words: of === 'practice' ? `${words}${withClub(clubKind)}` : words, min: low, max: high };
}

function reachWords(quantity: Quantity, { windows, min, max }: Reach, now: number): string {
  if (windows.some(({ of }) => of !== 'practice')) return '';
  const nobody = 'Neither template nor goal nor plan gives it a window';
  return windows.length > 0
    ? `${nobody}.`
    : `${nobody}: it goes up to ${showSize(quantity, Math.max(now - min, max - now))} to each side of now.`;
}
