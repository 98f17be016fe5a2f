// The table of quantities and methods as a value, built-in or with a workspace's own in it; knows nothing of records or of physics.
import { comparatives, contacts, methods, misses, quantities, shapes } from './generated.ts';
import type { DirectionWord } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import type { Contact, Method, Miss, Quantity, Range, Shape } from './quantity.ts';

const shapeByWord: ReadonlyMap<string, Shape> = new Map(shapes.map((s) => [s.word, s]));
const contactByWord: ReadonlyMap<string, Contact> = new Map(
  contacts.flatMap((contact) => [contact.word, ...contact.also].map((word) => [word, contact] as const)),
);
const missByWord: ReadonlyMap<string, Miss> = new Map(misses.map((m) => [m.word, m]));

/**
 * What can be measured, and how. It is handed from floor to floor and never changes, since two workspaces with different
 * quantities of their own may be open side by side.
 */
export interface Registry {
  /** All that it has beyond the built-in one, as text: of the same key, the same look-ups. Empty for the built-in one. */
  readonly key: string;
  readonly quantities: readonly Quantity[];
  /** The quantities that only this workspace has. */
  readonly own: readonly Quantity[];
  readonly methods: readonly Method[];
  /** The workspace's own before the built-in ones. */
  readonly methodNames: readonly string[];
  /** The quantity with this full id, or undefined. */
  readonly find: (id: string) => Quantity | undefined;
  readonly findMethod: (name: string) => Method | undefined;
  /** Ids that the workspace declares in a way that cannot be read: nothing can be measured by them, and none is misspelt. */
  readonly broken: ReadonlySet<string>;
  /** The workspace's own figures by method, which win over a quantity's own. */
  readonly ownMethods: ReadonlyMap<string, Method>;
  /** The key, so that a text that something is kept by says which registry it is good for. */
  readonly toJSON: () => string;
}

export const builtIn: Registry = registryOf('', quantities, { methods: [] });

/** The quantity with this full id in the built-in table. */
export const findQuantity = builtIn.find;

/** What a workspace adds to the built-in table; none of its quantities has the id of a built-in one. */
export interface Additions {
  /** One with the name of a built-in one says how sure it is in some dimensions; the others stay. */
  readonly methods: readonly Method[];
  readonly quantities?: readonly Quantity[];
  /** Units in which a quantity, or else all of a dimension, is shown: by full id or dimension. */
  readonly shown?: readonly (readonly [string, string])[];
  /** Ids that are declared in a way that cannot be read. */
  readonly broken?: readonly string[];
}

/** The registries of the workspaces that were last asked for, so that the same additions give the same object. */
const kept = new Map<string, Registry>();
const mostKept = 16;

/** The same object for the same additions, as long as no more than a few workspaces are open. */
export function registryWith(additions: Additions): Registry {
  const { methods: own, quantities: further = [], shown = [], broken = [] } = additions;
  if (own.length + further.length + shown.length + broken.length === 0) return builtIn;
  const key = JSON.stringify(additions);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const units = new Map(shown);
  const all = [...quantities, ...further];
  const registry = registryOf(key, units.size === 0 ? all : all.map((one) => shownIn(one, units)), additions);
  kept.set(key, registry);
  const [oldest] = kept.keys();
  if (kept.size > mostKept) kept.delete(oldest!);
  return registry;
}

function shownIn(quantity: Quantity, units: ReadonlyMap<string, string>): Quantity {
  const unit = units.get(quantity.id) ?? units.get(quantity.dimension);
  return unit === undefined || unit === quantity.unit ? quantity : { ...quantity, shown: unit };
}

function registryOf(
  key: string,
  all: readonly Quantity[],
  { methods: own, broken = [] }: Additions,
): Registry {
  const byId = new Map(all.map((quantity) => [quantity.id, quantity]));
  const byName = new Map(methods.map((method) => [method.name, method]));
  for (const method of own) {
    const uncertainty = { ...byName.get(method.name)?.uncertainty, ...method.uncertainty };
    byName.set(method.name, { ...method, uncertainty });
  }
  return {
    key,
    quantities: all,
    own: all.slice(quantities.length),
    methods: [...byName.values()],
    methodNames: [...new Set([...own.map(({ name }) => name), ...byName.keys()])],
    broken: new Set(broken),
    ownMethods: new Map(own.map((method) => [method.name, method])),
    find: (id) => byId.get(id),
    findMethod: (name) => byName.get(name),
    toJSON: () => key,
  };
}

/**
 * The id that a mistyped one most resembles, key by key: what most ids have in common makes none of them alike. Who leaves out the
 * section most likely means the quantity of that key. None of what the workspace itself declares is mistyped, even where its
 * declaration cannot be read.
 */
export function nearestId(name: string, { quantities: known, broken }: Registry): string | undefined {
  if (broken.has(name)) return undefined;
  const ids = known.map(({ id }) => id);
  const named = ids.find((id) => id.endsWith(`.${name}`));
  if (named !== undefined) return named;
  const parts = name.split('.');
  let alike = ids.map((id) => id.split('.')).filter(({ length }) => length === parts.length);
  for (const [at, part] of parts.entries()) {
    const keys = [...new Set(alike.map((keysOf) => keysOf[at]!))];
    const key = keys.includes(part) ? part : nearestKey(part, keys);
    alike = alike.filter((keysOf) => keysOf[at] === key);
  }
  return alike[0]?.join('.');
}

/** A short word that begins otherwise is another word: `wand` is no slip for `hands`. */
function nearestKey(part: string, keys: readonly string[]): string | undefined {
  const near = findNearest(part, keys);
  const begins = near?.charAt(0).toLowerCase() === part.charAt(0).toLowerCase();
  return part.length > shortWord || begins ? near : undefined;
}

const shortWord = 4;

/** What else was to be expected of an id that is not known. */
export function expectId(name: string, { broken }: Registry, example: string): string {
  return broken.has(name)
    ? 'its declaration in `swingwright.yaml` to be whole'
    : `the full id of a quantity, such as \`${example}\``;
}

/** What a word for the shape of a shot means, or undefined where the trade has no such word. */
export function findShape(word: string): Shape | undefined {
  return shapeByWord.get(word);
}

/** What a word for the strike that is wanted means, or undefined where it is no such word. */
export function findContact(word: string): Contact | undefined {
  return contactByWord.get(word);
}

/** Allowance for the last bit that a conversion of units may cost: `100 %` or `48 in` are not outside. */
const rounding = 1e-9;

export function isOutside(value: number, range: Pick<Range, 'min' | 'max'>): boolean {
  const allowance = rounding * Math.max(1, Math.abs(range.min), Math.abs(range.max));
  return value < range.min - allowance || value > range.max + allowance;
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

/**
 * The standard uncertainty (SI) to use for one measurement of `quantity`: what the coach stated, else the method's
 * for this quantity or dimension, else the quantity's own. An estimate (`~`) doubles whatever is not stated.
 */
export function standardUncertainty(
  quantity: Quantity,
  measure: { stated: number | undefined; method: string | undefined; estimate: boolean },
  coverage: number,
  registry: Registry = builtIn,
): { readonly u: number; readonly origin: 'stated' | 'method' | 'quantity' } {
  if (measure.stated !== undefined) return { u: measure.stated / coverage, origin: 'stated' };
  const factor = measure.estimate ? 2 : 1;
  if (measure.method !== undefined) {
    const own = registry.ownMethods.get(measure.method);
    const u =
      own?.ofQuantities?.[quantity.id]?.u ??
      own?.uncertainty[quantity.dimension]?.u ??
      quantity.uncertainty.by[measure.method] ??
      registry.findMethod(measure.method)?.uncertainty[quantity.dimension]?.u;
    if (u !== undefined) return { u: u * factor, origin: 'method' };
  }
  return { u: quantity.uncertainty.otherwise * factor, origin: 'quantity' };
}
