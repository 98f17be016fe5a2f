// What if: the quantities that can be moved, and what becomes of the rest, as plain data for sliders and a table; predicts nothing itself.
import { leversOf, whatIfOf, type Setting, type WhatIf } from '../analysis/what-if.ts';
import { goalsOf, mostChangesIn } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import { svgOf } from '../draw/picture.tsx';
import { pictures, sheetsOf } from '../draw/pictures.tsx';
import { cssTheme } from '../draw/theme.ts';
import { standingNumber } from '../judgement/standing-number.ts';
import { showValue } from '../measure/show.ts';
import { findUnit, fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { rowsOf, type WhatIfRow } from './what-if-rows.ts';

/** What is moved: a number in the unit of its lever. */
export interface Move {
  readonly id: string;
  readonly value: number;
}

/** A quantity that can be moved; numbers in the unit shown, positive to the right, ahead and up. */
export interface Lever {
  readonly id: string;
  readonly title: string;
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
}

export interface WhatIfAnswer {
  readonly levers: readonly Lever[];
  readonly mostMoves: number;
  /** What a plan could be made for: stated faults, misses and goals of the record, as a plan names them. */
  readonly reasons: readonly Reason[];
  /** What a change of what is moved loads and the student's file notes as injured. */
  readonly cautions: readonly string[];
  readonly rows: readonly WhatIfRow[];
  readonly pictures: readonly WhatIfPicture[];
  /** Titles of what is moved and neither the model nor the fault book makes anything of. */
  readonly without: readonly string[];
}

export interface Reason {
  readonly name: string;
  readonly title: string;
  /** What changes made for it load and the student's file notes as injured. */
  readonly cautions: readonly string[];
}

export interface WhatIfPicture {
  readonly name: string;
  readonly title: string;
  readonly now: string;
  readonly then: string;
}

/** Sections of pictures that follow a change of the delivery. */
const followed = ['strike', 'flight'];

/** Null where the record says too little for the model to go by. */
export function whatIf(analysis: Analysis, moves: readonly Move[]): WhatIfAnswer | null {
  const levers = leversOf(analysis);
  const found = whatIfOf(analysis, settingsOf(analysis, moves));
  if (found === undefined || levers.length === 0) return null;
  return {
    levers: levers.map((quantity) => leverOf(analysis, quantity)),
    mostMoves: mostChangesIn(analysis.subject),
    reasons: reasonsOf(analysis),
    cautions: [...new Set(found.made.flatMap(({ quantity }) => cautionsIn(analysis, quantity.id, [])))],
    rows: rowsOf(analysis, found),
    pictures: picturesOf(analysis, found),
    without: found.prediction.without.map((id) => analysis.subject.registry.find(id)?.title ?? id),
  };
}

/** In SI; at most so many as a plan may have. */
export function settingsOf({ subject }: Analysis, moves: readonly Move[]): readonly Setting[] {
  return moves.slice(0, mostChangesIn(subject)).flatMap(({ id, value }) => {
    const quantity = subject.registry.find(id);
    return quantity === undefined ? [] : [{ id, to: toSI(value, unitOf(quantity)) }];
  });
}

export function unitOf({ shown, unit }: Quantity): string {
  return shown ?? findUnit(unit)?.name ?? unit;
}

/** The window of practice, wide enough for where it is now; in steps that a hand can tell apart. */
function leverOf({ subject, account }: Analysis, quantity: Quantity): Lever {
  const { value, u } = standingNumber(quantity.id, account!)!;
  const unit = unitOf(quantity);
  const kind = subject.club?.kind?.value;
  const { min, max } =
    (kind === undefined ? undefined : quantity.practiceByClub?.[kind]) ??
    quantity.practice ??
    quantity.bounds;
  const ends = [min, max, value].map((end) => fromSI(end, unit));
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const step = stepOf(high - low, quantity.decimals);
  const decimals = Math.max(0, Math.round(-Math.log10(step) + 0.3));
  const side = (sign: 1 | -1): string =>
    quantity.directions.find((word) => word.bearing === undefined && word.sign === sign)?.word ?? '';
  return {
    id: quantity.id,
    title: quantity.title,
    group: quantity.checkpoint?.replaceAll('_', ' ') ?? quantity.section,
    unit,
    decimals,
    sides: [side(1), side(-1)],
    min: Number((Math.floor(low / step) * step).toFixed(decimals)),
    max: Number((Math.ceil(high / step) * step).toFixed(decimals)),
    step,
    now: fromSI(value, unit),
    nowWords: showValue(quantity, value, u),
  };
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

function cautionsIn({ subject }: Analysis, id: string, because: readonly string[]): readonly string[] {
  return cautionsOf({ id, because }, subject).map(({ message }) => message);
}

function reasonsOf(analysis: Analysis): readonly Reason[] {
  const { document, subject } = analysis;
  if (document.kind !== 'swing') return [];
  const faults = (subject.judgement?.stated ?? []).map(({ fault }) => ({
    name: fault.id.value,
    title: fault.title ?? fault.id.value,
  }));
  const misses = document.misses.map(({ miss: { value } }) => ({ name: value, title: `miss: ${value}` }));
  const goals = goalsOf(subject).flatMap(({ goal }) => [
    ...goal.targets.keys(),
    ...(goal.shape === undefined ? [] : ['shape']),
    ...(goal.contact === undefined ? [] : ['contact']),
  ]);
  const named = [...faults, ...misses, ...goals.map((name) => ({ name, title: `goal: ${name}` }))];
  const once = new Map(named.map((reason) => [reason.name, reason]));
  return [...once.values()].map((reason) => ({
    ...reason,
    cautions: cautionsIn(analysis, '', [reason.name]),
  }));
}

function picturesOf(analysis: Analysis, { then, made }: WhatIf): readonly WhatIfPicture[] {
  return pictures
    .filter(({ name }) => followed.includes(name.slice(0, `${name}-`.indexOf('-'))))
    .flatMap((picture) => {
      const later = made.length === 0 ? [] : sheetsOf(picture, then);
      return sheetsOf(picture, analysis).map(({ name, title, draw }, i) => ({
        name,
        title,
        now: svgOf(draw(cssTheme)),
        // Ids inside a picture hang on its name, and a page must not hold one twice.
        then: later[i] === undefined ? '' : svgOf(later[i].draw(cssTheme)).replaceAll(name, `${name}-then`),
      }));
    });
}
