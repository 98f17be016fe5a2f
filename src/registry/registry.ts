// Looks up quantities, methods and kinds of club in the generated table; knows nothing of records or of physics.
import { comparatives, methods, misses, quantities, shapes } from './generated.ts';
import type { DirectionWord } from '../measure/measure.ts';
import type { Method, Miss, Quantity, Range, Shape } from './quantity.ts';

const byId: ReadonlyMap<string, Quantity> = new Map(quantities.map((q) => [q.id, q]));
const methodByName: ReadonlyMap<string, Method> = new Map(methods.map((m) => [m.name, m]));
const shapeByWord: ReadonlyMap<string, Shape> = new Map(shapes.map((s) => [s.word, s]));
const missByWord: ReadonlyMap<string, Miss> = new Map(misses.map((m) => [m.word, m]));

/** The quantity with this full id, or undefined. */
export function findQuantity(id: string): Quantity | undefined {
  return byId.get(id);
}

export function findMethod(name: string): Method | undefined {
  return methodByName.get(name);
}

/** What a word for the shape of a shot means, or undefined where the trade has no such word. */
export function findShape(word: string): Shape | undefined {
  return shapeByWord.get(word);
}

/** What is seen in practice with this kind of club; with any club where the kind is unknown or makes no difference. */
export function practiceWith(quantity: Quantity, clubKind: string | undefined): Range | undefined {
  const byClub = quantity.practiceByClub;
  if (byClub === undefined || clubKind === undefined || !Object.hasOwn(byClub, clubKind))
    return quantity.practice;
  return byClub[clubKind];
}

/** What a word for a miss means, or undefined where the trade has no such word. */
export function findMiss(word: string): Miss | undefined {
  return missByWord.get(word);
}

/**
 * The words that say which way a change of this quantity goes: its own direction words, comparatives such as "wider", `more`
 * and `less`, and these before a direction word ("more bowed"). Words of the compass say of no change which way it goes.
 */
export function changeWords(quantity: Quantity): readonly DirectionWord[] {
  const known = changeWordsOf.get(quantity) ?? findChangeWords(quantity);
  changeWordsOf.set(quantity, known);
  return known;
}

const changeWordsOf = new WeakMap<Quantity, readonly DirectionWord[]>();

function findChangeWords({ id, checkpoint, directions }: Quantity): readonly DirectionWord[] {
  const path = checkpoint === undefined ? id : id.replace(`.${checkpoint}.`, '.');
  const own = directions.filter(({ bearing }) => bearing === undefined);
  const comparing = comparatives.filter(({ of }) => of.includes(path));
  const all: readonly DirectionWord[] = [
    ...own,
    ...comparing.flatMap(({ more }) => more.map((word) => ({ word, sign: 1 as const }))),
    ...comparing.flatMap(({ less }) => less.map((word) => ({ word, sign: -1 as const }))),
    { word: 'more', sign: 1 },
    { word: 'less', sign: -1 },
    ...own.map(({ word, sign }) => ({ word: `more ${word}`, sign })),
    ...own.map(({ word, sign }): DirectionWord => ({ word: `less ${word}`, sign: sign === 1 ? -1 : 1 })),
  ];
  return all.filter(({ word }, at) => all.findIndex((one) => one.word === word) === at);
}

export const methodNames: readonly string[] = methods.map((m) => m.name);

/**
 * The standard uncertainty (SI) to use for one measurement of `quantity`: what the coach stated, else the method's
 * for this quantity or dimension, else the quantity's own. An estimate (`~`) doubles whatever is not stated.
 * `overrides` are a workspace's own figures by method and dimension (SI).
 */
export function standardUncertainty(
  quantity: Quantity,
  measure: { stated: number | undefined; method: string | undefined; estimate: boolean },
  coverage: number,
  overrides: ReadonlyMap<string, Method> = new Map(),
): { readonly u: number; readonly origin: 'stated' | 'method' | 'quantity' } {
  if (measure.stated !== undefined) return { u: measure.stated / coverage, origin: 'stated' };
  const factor = measure.estimate ? 2 : 1;
  if (measure.method !== undefined) {
    const own = overrides.get(measure.method)?.uncertainty[quantity.dimension]?.u;
    const u =
      own ??
      quantity.uncertainty.by[measure.method] ??
      findMethod(measure.method)?.uncertainty[quantity.dimension]?.u;
    if (u !== undefined) return { u: u * factor, origin: 'method' };
  }
  return { u: quantity.uncertainty.otherwise * factor, origin: 'quantity' };
}
