// What if: the quantities that can be moved, and what becomes of the rest, as plain data for sliders and a table; predicts nothing itself.
import { leversOf, whatIfOf, type Setting, type WhatIf } from '../analysis/what-if.ts';
import { goalsOf, mostChangesIn } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { titleWithin } from '../checks/agreement.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import { goalWords } from '../checks/forecast-words.ts';
import { svgOf } from '../draw/picture.tsx';
import { pictures, sheetsOf } from '../draw/pictures.tsx';
import { cssTheme } from '../draw/theme.ts';
import { leadsAway } from '../judgement/leads-away.ts';
import { upperFirst } from '../measure/quote.ts';
import { toSI } from '../measure/units.ts';
import { leversIn, unitOf, type Lever } from './what-if-levers.ts';
import { rowsOf, type WhatIfRow } from './what-if-rows.ts';

export type { Lever, LeverBand } from './what-if-levers.ts';

/** What is moved: a number in the unit of its lever. */
export interface Move {
  readonly id: string;
  readonly value: number;
}

export interface WhatIfAnswer {
  /** In the registry's order. */
  readonly levers: readonly Lever[];
  /** Their ids, with what the plan and the fault book change first. */
  readonly suggested: readonly string[];
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
  /** Of a goal that what is moved leads away from: what it asks for, now and then, as sentences. */
  readonly away: readonly string[];
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
  const suggested = leversOf(analysis);
  const found = whatIfOf(analysis, settingsOf(analysis, moves));
  if (found === undefined || suggested.length === 0) return null;
  const { registry } = analysis.subject;
  const ids = suggested.map(({ id }) => id);
  const isLever = new Set(ids);
  return {
    levers: leversIn(
      analysis,
      registry.quantities.filter(({ id }) => isLever.has(id)),
      found,
    ),
    suggested: ids,
    mostMoves: mostChangesIn(analysis.subject),
    reasons: reasonsOf(analysis, found),
    cautions: [...new Set(found.made.flatMap(({ quantity }) => cautionsIn(analysis, quantity.id, [])))],
    rows: rowsOf(analysis, found),
    pictures: picturesOf(found),
    without: found.prediction.without.map((id) => upperFirst(titleWithin(id, registry))),
  };
}

/** In SI; at most so many as a plan may have. */
export function settingsOf({ subject }: Analysis, moves: readonly Move[]): readonly Setting[] {
  return moves.slice(0, mostChangesIn(subject)).flatMap(({ id, value }) => {
    const quantity = subject.registry.find(id);
    return quantity === undefined ? [] : [{ id, to: toSI(value, unitOf(quantity)) }];
  });
}

function cautionsIn({ subject }: Analysis, id: string, because: readonly string[]): readonly string[] {
  return cautionsOf({ id, because }, subject).map(({ message }) => message);
}

function reasonsOf(analysis: Analysis, found: WhatIf): readonly Reason[] {
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
    away: found.goals
      .filter((goal) => goal.now.wanted.key === reason.name && leadsAway(goal, found.prediction))
      .map((goal) => `${upperFirst(goalWords(goal))}.`),
  }));
}

function picturesOf({ now, then, made }: WhatIf): readonly WhatIfPicture[] {
  return pictures
    .filter(({ name }) => followed.includes(name.slice(0, `${name}-`.indexOf('-'))))
    .flatMap((picture) => {
      const later = made.length === 0 ? [] : sheetsOf(picture, then);
      return sheetsOf(picture, now).map(({ name, title, draw }, i) => ({
        name,
        title,
        now: svgOf(draw(cssTheme)),
        // Ids inside a picture hang on its name, and a page must not hold one twice.
        then: later[i] === undefined ? '' : svgOf(later[i].draw(cssTheme)).replaceAll(name, `${name}-then`),
      }));
    });
}
