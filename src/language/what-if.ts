// What if: the quantities that can be moved, and what becomes of the rest, as plain data for sliders and a table; predicts nothing itself.
import { leversOf, whatIfOf, type Setting, type WhatIf } from '../analysis/what-if.ts';
import { goalsOf, mostChangesIn } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { movedWords, spreadOf, standingWords } from '../checks/forecast-words.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import { svgOf } from '../draw/picture.tsx';
import { pictures, sheetsOf } from '../draw/pictures.tsx';
import { cssTheme } from '../draw/theme.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { findUnit, fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';

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

export interface WhatIfRow {
  readonly group: 'Swing and flight' | 'Windows for the goal' | 'Goals' | 'Faults';
  readonly title: string;
  readonly now: string;
  /** The same as now where nothing moves. */
  readonly then: string;
  /** Where 95 of 100 such values lie, or how the chance changes. */
  readonly spread: string;
  /** How far it moves; empty where it does not. */
  readonly moved: string;
}

export interface WhatIfPicture {
  readonly name: string;
  readonly title: string;
  readonly now: string;
  readonly then: string;
}

const foremost = [
  'delivery.low_point.ahead',
  'delivery.attack',
  'delivery.path',
  'delivery.face',
  'delivery.face_to_path',
  'flight.start',
  'flight.launch_angle',
  'flight.curve',
  'flight.carry',
  'flight.finish',
];

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
    rows: [
      ...numberRows(analysis, found),
      ...windowRows(analysis, found),
      ...goalRows(found),
      ...faultRows(found),
    ],
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
  const { value, u } = account!.derivation.values.get(quantity.id)!;
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
    ...[...goal.targets.keys()].map((key) => key.replace(/^flight\./, '')),
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

function numberRows(
  { subject, derivation }: Analysis,
  { prediction, made, goals }: WhatIf,
): readonly WhatIfRow[] {
  const set = new Map(made.map((one) => [one.quantity.id, one]));
  const ids = new Set([...foremost, ...goals.map(({ now }) => now.wanted.quantity.id)]);
  return [...ids].flatMap((id): WhatIfRow[] => {
    const quantity = subject.registry.find(id);
    const [now, outlook, own] = [derivation?.values.get(id), prediction.outlooks.get(id), set.get(id)];
    if (quantity === undefined || (now === undefined && outlook === undefined)) return [];
    const before = now === undefined ? 'not measured' : showValue(quantity, now.value, now.u);
    const row = { group: 'Swing and flight', title: quantity.title, now: before } as const;
    if (own !== undefined)
      return [
        {
          ...row,
          then: showValue(quantity, own.to, own.u),
          spread: spreadOf(quantity, own.to, own.u),
          moved: `${movedWords(quantity, own.to - (now?.value ?? own.to), own.u)}, as set`,
        },
      ];
    if (outlook === undefined) return [{ ...row, then: before, spread: '', moved: '' }];
    const { value, u, difference, uDifference, origin } = outlook;
    const isKnown = value !== null && u !== null;
    return [
      {
        ...row,
        then: isKnown ? showValue(quantity, value, u) : 'not known',
        spread: isKnown ? spreadOf(quantity, value, u) : '',
        moved:
          difference === null
            ? 'nobody can tell how far'
            : `${movedWords(quantity, difference, uDifference)}${origin === 'belief' ? ', by belief' : ''}`,
      },
    ];
  });
}

function windowRows({ subject }: Analysis, { windows }: WhatIf): readonly WhatIfRow[] {
  return windows.flatMap(({ id, now, then }): WhatIfRow[] => {
    const quantity = subject.registry.find(id);
    if (quantity === undefined) return [];
    const [before, after] = [now, then].map((window) =>
      window === undefined ? 'out of reach' : showWindow(quantity, window.min, window.max),
    );
    return [
      {
        group: 'Windows for the goal',
        title: quantity.title,
        now: before!,
        then: after!,
        spread: '',
        moved: '',
      },
    ];
  });
}

function goalRows({ goals }: WhatIf): readonly WhatIfRow[] {
  return goals.map(({ now, then }): WhatIfRow => {
    const { wanted } = now;
    const window =
      wanted.key === 'contact' ? 'ahead of the ball' : showWindow(wanted.quantity, wanted.min, wanted.max);
    return {
      group: 'Goals',
      title: `${wanted.quantity.title} ${window}`,
      now: standingWords(now),
      then: standingWords(then, then.value === now.value ? 'now' : 'then'),
      spread: '',
      moved: '',
    };
  });
}

function faultRows({ faults }: WhatIf): readonly WhatIfRow[] {
  return faults.map(({ now, then }): WhatIfRow => {
    const at = now.at === undefined ? '' : ` at ${now.at.replaceAll('_', ' ')}`;
    return {
      group: 'Faults',
      title: `${now.fault.title ?? now.fault.id.value}${at}`,
      now: verdictWords(now),
      then: verdictWords(then),
      spread: '',
      moved: '',
    };
  });
}

function verdictWords({ verdict, probability }: WhatIf['faults'][number]['then']): string {
  if (probability === undefined) return verdict;
  const percent = Math.round(100 * probability);
  return `${verdict} (${percent === 0 ? 'under 1' : percent === 100 ? 'over 99' : percent} %)`;
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
