// The measure notation as a regular expression, for validators that know nothing else; reads no text itself.
import type { Notation } from './measure.ts';
import { findUnit, unitsOf } from './units.ts';

/**
 * What may be written of a quantity: `number` for one measurement, `window` for `A..B`. Nothing that the parser takes is refused.
 * Beyond what an expression of this kind can see it takes a window whose numbers are turned round, a direction or a ± said twice, a direction after
 * a sign where ± stands between, a number too large, an uncertainty of 0, `by` right behind a word, a `~` on its own, and a wind from nowhere. It
 * has neither look-around nor flags, so that any validator can run it. Each space and each digit belongs to one part only, so
 * that a long text that fits nowhere is given up in a time that grows with its length alone.
 */
export function patternOf(notation: Notation, methods: readonly string[], what: 'number' | 'window'): string {
  return whole(
    what === 'number' ? numberOf(notation, methods) : `(?:${windowOf(notation)}|${wordsOf(notation)})\\s*`,
  );
}

/** A number or a window. */
export function patternOfEither(notation: Notation, methods: readonly string[]): string {
  return whole(`${numberOf(notation, methods)}|${windowOf(notation)}\\s*`);
}

/** One standard uncertainty on its own. */
export function patternOfSpread(notation: Pick<Notation, 'dimension'>): string {
  return whole(`(?:(?:${sign})\\s*)?\\+?${digits}\\s*${partOf(unitOf(notation))}`);
}

export function patternOfMethod(methods: readonly string[]): string {
  return whole(`${methodOf(methods)}\\s*`);
}

/** An empty text is no value yet. */
function whole(inner: string): string {
  return `^\\s*(?:${inner})?$`;
}

const digits = '(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?';
const sign = '±|\\+/?[-−]';

/** Each part carries the spaces behind it. The number may be missing: unit, direction and method then wait for it. */
function numberOf(notation: Notation, methods: readonly string[]): string {
  const words = partOf(wordsOf(notation));
  const spread = `(?:${sign})\\s*\\+?${digits}\\s*${words}`;
  const by = `[Bb][Yy]\\s+${methodOf(methods)}\\s*`;
  // Each at most once, in either order, but an expression that says so would be twice as long.
  const tail = `(?:${spread}|${by}){0,2}`;
  return `(?:~\\s*)?(?:[-−]${digits}\\s*${partOf(unitOf(notation))}|(?:\\+?${digits}\\s*)?${words})${tail}`;
}

function partOf(inner: string): string {
  return inner === '' ? '' : `(?:${inner}\\s*)?`;
}

/** The first side has a direction only where the second has one or is zero, and neither has a sign then. */
function windowOf(notation: Notation): string {
  const unit = optionalAfterSpace(unitOf(notation));
  const plain = `[-+−]?${digits}${unit}\\s*\\.\\.\\s*[-+−]?${digits}${unit}`;
  if (notation.directions.length === 0) return plain;
  const directed = `\\+?${digits}${optionalAfterSpace(wordsOf(notation))}\\s*\\.\\.\\s*\\+?${digits}\\s*${directedWords(notation)}`;
  const toZero = `\\+?${digits}\\s*${directedWords(notation)}\\s*\\.\\.\\s*[-+−]?(?:0+(?:\\.0*)?|\\.0+)${unit}`;
  return `(?:${plain}|${directed}|${toZero})`;
}

/** `UNIT`, `UNIT DIRECTION` or `DIRECTION`; behind a sign the direction may follow at once. */
function wordsOf(notation: Notation): string {
  const unit = unitOf(notation);
  if (notation.directions.length === 0) return unit;
  const direction = directionOf(notation);
  return `(?:${unit}(?:\\s+${direction})?|${closeUnits(notation)}${direction})`;
}

function directedWords(notation: Notation): string {
  return `(?:(?:${unitOf(notation)}\\s+)?|${closeUnits(notation)})${directionOf(notation)}`;
}

function directionOf({ directions }: Notation): string {
  return anyOf(directions.map(({ word }) => inAnyCase(word)));
}

function closeUnits(notation: Notation): string {
  const signs = spellingsOf(notation).filter((one) => one === '°' || one === '%');
  return signs.length === 0 ? '' : `(?:[${signs.join('')}]\\s*)?`;
}

function optionalAfterSpace(inner: string): string {
  if (inner === '') return '';
  return `(?:\\s*(?:${inner}))?`;
}

function unitOf({ dimension }: Pick<Notation, 'dimension'>): string {
  return anyOf(spellingsOf({ dimension }).map(spelled));
}

function spellingsOf({ dimension }: Pick<Notation, 'dimension'>): readonly string[] {
  return unitsOf(dimension)
    .flatMap(({ name, aliases }) => [name, ...aliases])
    .filter((spelling) => spelling !== '');
}

/** In any letter case where the table takes it in any. */
function spelled(spelling: string): Letters {
  const isFree = [spelling.toLowerCase(), spelling.toUpperCase()].every(
    (one) => findUnit(one)?.name === findUnit(spelling)?.name,
  );
  return isFree ? inAnyCase(spelling) : [...spelling].map((one) => (one === ' ' ? '\\s+' : escape(one)));
}

/** "-" and "_" count as spaces, at the ends too. */
function methodOf(methods: readonly string[]): string {
  const name = anyOf(methods.map((method) => inAnyCase(method.replace(/[-_]/g, ' '), '[-_\\s]+')));
  return `(?:[-_][-_\\s]*)?${name}(?:[-_\\s]*[-_])?`;
}

/** Letter by letter, an expression for each. */
type Letters = readonly string[];

function inAnyCase(words: string, space = '\\s+'): Letters {
  return [...words].map((letter) => {
    if (letter === ' ') return space;
    const cases = [...new Set([letter.toUpperCase(), letter.toLowerCase()])];
    const isPair = cases.length === 2 && cases.every((one) => [...one].length === 1);
    return isPair ? `[${cases.join('')}]` : escape(letter);
  });
}

/** What words have in common at their beginning is written once. */
function anyOf(words: readonly Letters[]): string {
  const isEndHere = words.some(({ length }) => length === 0);
  const byFirst = new Map<string, Letters[]>();
  for (const [first, ...rest] of words)
    if (first !== undefined) byFirst.set(first, [...(byFirst.get(first) ?? []), rest]);
  const branches = [...byFirst].map(([first, rests]) => first + anyOf(rests));
  if (branches.length === 0) return '';
  const [only = ''] = branches;
  if (branches.length === 1 && !isEndHere) return only;
  return `(?:${branches.join('|')})${isEndHere ? '?' : ''}`;
}

function escape(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}
