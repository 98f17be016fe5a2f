// What may follow in a half-written measurement: unit, direction words, `±`, `by` and the method; knows no file and no YAML.
import { findUnit, unitsOf } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Habit } from './completion-habits.ts';
import type { Proposal } from './completion-item.ts';
import { lowerFirst } from '../measure/quote.ts';

/**
 * What may stand here: a measurement, the `value` of its long form, one that is aimed at, a window, an uncertainty alone,
 * how far a change goes, or how large an effect is.
 */
export type Form = 'measure' | 'long' | 'target' | 'window' | 'uncertainty' | 'step' | 'size';

/** What keys beside the value say already. */
export interface Beside {
  readonly stated: boolean;
  readonly method: boolean;
}

export interface Continuation {
  /** Offsets in the value that a proposal takes the place of. */
  readonly start: number;
  readonly end: number;
  readonly proposals: readonly Proposal[];
}

/** What a method is, in a few words. */
export type Meaning = (method: string) => string | undefined;

const numberAt = /^\s*~?\s*[+\-−]?(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?/;
const most = 2;

/** `value` is the whole value, the cursor at `at`. Undefined where nothing can follow, such as before the number. */
export function continueMeasure(
  value: string,
  at: number,
  quantity: Quantity,
  habit: Habit,
  form: Form,
  meaningOf: Meaning,
  beside: Beside = { stated: false, method: false },
): Continuation | undefined {
  const written = readWritten(value.slice(0, at), quantity);
  if (written === undefined) return undefined;
  const { from, has } = written;
  has.stated ||= beside.stated;
  const rest = value.slice(at);
  if (from === at && !has.by) {
    const next = nextBehind(value, at, quantity);
    if (next === 'other' || (next === 'direction' && !/^\s/.test(rest) && !has.unit)) return undefined;
    if (next === 'direction' && /^\s/.test(rest)) has.direction = true;
  }
  const isMethod = has.by && isMeasured(form) && !beside.method;
  has.method ||= beside.method;
  const end =
    at +
    (isMethod
      ? (/^[^±]*?(?=\s*(?:±|$))/.exec(rest)?.[0].length ?? 0)
      : (/^[^\s.]*/.exec(rest)?.[0].length ?? 0));
  const isLast = value.slice(end).trim() === '';
  const proposals = isMethod
    ? habit.methods.map((name) => method(name, '', meaningOf))
    : [
        ...units(written, quantity, habit, form, isLast),
        ...directions(written, quantity, habit, form, isLast),
        ...tails(written, habit, form, isLast ? meaningOf : undefined),
      ];
  const lead = from === at && /[\d.,]$/.test(value.slice(0, at)) ? ' ' : '';
  return {
    start: from,
    end,
    proposals: lead === '' ? proposals : proposals.map((one) => ({ ...one, text: lead + one.text })),
  };
}

type Next = 'nothing' | 'tail' | 'word' | 'direction' | 'other';

/** What stands behind the cursor already: only before some of it there is room for a word. */
function nextBehind(value: string, at: number, { directions }: Quantity): Next {
  const rest = value.slice(at);
  if (isInNumber(value, at)) return 'other';
  const next = rest.trimStart().toLowerCase();
  if (next === '') return 'nothing';
  if (/^(?:±|\+-|\+\/-|by(?:\s|$))/.test(next)) return 'tail';
  if (directions.some(({ word }) => next.startsWith(word.toLowerCase()))) return 'direction';
  // A word that the cursor touches is written anew; one further on is what a proposal would say again.
  return next.length === rest.length && /^[^\d.]/.test(rest) ? 'word' : 'other';
}

/** Between the digits of a number: whatever is written there parts it. */
export function isInNumber(value: string, at: number): boolean {
  return /[\d.,]$/.test(value.slice(0, at)) && /^[.,]?[.\d]/.test(value.slice(at));
}

interface Written {
  /** Where the word begins that is being written. */
  readonly from: number;
  readonly has: { unit: boolean; direction: boolean; stated: boolean; method: boolean; by: boolean };
}

function readWritten(before: string, quantity: Quantity): Written | undefined {
  let at = Math.max(before.lastIndexOf('..') + 2, 0);
  if (!before.includes('..')) at = 0;
  const number = numberAt.exec(before.slice(at));
  if (number === null) return undefined;
  at += number[0].length;
  // No direction word goes with a number below zero.
  const direction = /[-−]/.test(before.slice(0, at));
  const has = { unit: false, direction, stated: false, method: false, by: false };
  for (;;) {
    at += /^\s*/.exec(before.slice(at))![0].length;
    const rest = before.slice(at);
    const word = wordIn(rest, quantity);
    const sign = /^(?:±|\+-|\+\/-)\s*/.exec(rest);
    const by = /^by\s+/.exec(rest);
    if (sign !== null) {
      const uncertainty = /^[\d.,]+/.exec(rest.slice(sign[0].length));
      if (uncertainty === null) return undefined;
      has.stated = true;
      has.unit = false;
      at += sign[0].length + uncertainty[0].length;
    } else if (by !== null && !has.method) {
      const stated = rest.indexOf('±');
      if (stated === -1) return { from: at + by[0].length, has: { ...has, by: true } };
      has.method = true;
      at += stated;
    } else if (word !== undefined) {
      has[word.kind] = true;
      at += word.length;
    } else return { from: at, has };
  }
}

/** A unit or a direction that is followed by more. */
function wordIn(
  rest: string,
  quantity: Quantity,
): { kind: 'unit' | 'direction'; length: number } | undefined {
  const written = rest.toLowerCase();
  const words = quantity.directions.map(({ word }) => word);
  // Behind "more" there may come "bowed".
  if (words.some((word) => word.startsWith(written))) return undefined;
  const direction = words
    .filter((word) => written.startsWith(word) && /^\s/.test(rest.slice(word.length)))
    .toSorted((a, b) => b.length - a.length)[0];
  if (direction !== undefined) return { kind: 'direction', length: direction.length };
  const two = /^\S+\s\S+(?=\s)/.exec(rest)?.[0];
  const one = /^\S+(?=\s)/.exec(rest)?.[0];
  for (const found of [two, one])
    if (found !== undefined && findUnit(found)?.dimension === quantity.dimension)
      return { kind: 'unit', length: found.length };
  return undefined;
}

function units({ has }: Written, quantity: Quantity, habit: Habit, form: Form, isLast: boolean): Proposal[] {
  if (has.unit || quantity.dimension === 'ratio') return [];
  const names = [habit.unit, quantity.unit, ...unitsOf(quantity.dimension).map(({ name }) => name)].filter(
    (name) => name !== '',
  );
  const open = form !== 'uncertainty' && form !== 'size' && !has.direction && !has.stated && isLast;
  const turns = open ? habit.directions.slice(0, most) : [];
  const by =
    form === 'measure' && isLast && !has.method && habit.method !== undefined ? ` by ${habit.method}` : '';
  const first = habit.unit;
  const whole =
    first === '' || !isLast ? [] : turns.length > 0 ? turns.map((turn) => `${first} ${turn}`) : [first];
  return [
    ...(by === '' ? [] : whole.map((words) => phrase(words + by))),
    ...whole.map(phrase),
    ...names.map((name) => ({
      label: name,
      text: name,
      kind: 'unit' as const,
      detail: `unit of ${lowerFirst(quantity.title)}`,
    })),
  ];
}

function directions(
  { has }: Written,
  quantity: Quantity,
  habit: Habit,
  form: Form,
  isLast: boolean,
): Proposal[] {
  if (form === 'uncertainty' || form === 'size' || has.direction || quantity.directions.length === 0)
    return [];
  if (!has.unit && quantity.dimension !== 'ratio') return [];
  const by =
    form === 'measure' && isLast && !has.method && habit.method !== undefined ? ` by ${habit.method}` : '';
  return [
    ...(by === '' ? [] : habit.directions.slice(0, most).map((word) => phrase(word + by))),
    ...habit.directions.map((word) => ({
      label: word,
      text: word,
      kind: 'word' as const,
      detail: 'direction',
    })),
  ];
}

/** `by` with its method, and `±`; without the meanings where more is written behind the cursor. */
function tails({ has }: Written, habit: Habit, form: Form, meaningOf: Meaning | undefined): Proposal[] {
  const takesUncertainty = isMeasured(form) || form === 'step' || form === 'size';
  if (!takesUncertainty || meaningOf === undefined || (!has.unit && !has.direction && !has.stated)) return [];
  const takesMethod = isMeasured(form) && !has.method;
  return [
    ...(takesMethod
      ? [
          ...habit.methods.map((name) => method(name, 'by ', meaningOf)),
          { label: 'by', text: 'by ', kind: 'word' as const, detail: 'how it was measured', again: true },
        ]
      : []),
    ...(has.stated ? [] : [uncertainty]),
  ];
}

export const uncertainty: Proposal = {
  label: '±',
  text: '± ',
  kind: 'operator',
  detail: 'one standard uncertainty',
  filter: '± +-',
};

function isMeasured(form: Form): boolean {
  return form === 'measure' || form === 'long';
}

function phrase(words: string): Proposal {
  return { label: words, text: words, kind: 'value' };
}

function method(name: string, lead: string, meaningOf: Meaning): Proposal {
  return { label: lead + name, text: lead + name, kind: 'word', detail: meaningOf(name) };
}
