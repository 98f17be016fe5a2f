// What a remark is fastened to: an entry of a record by the keys that lead to it, and what it says, whatever line it stands on; knows no review.
import type { Span } from '../measure/measure.ts';
import { collapseSpaces } from '../measure/quote.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import type { SwingRecord } from './document.ts';
import { hashOf } from './fingerprint.ts';
import { headersOf } from './known-keys.ts';
import { lineEnd, lineStart } from './lines.ts';
import { isNumeral } from './plain-word.ts';
import { readTree } from './read-tree.ts';
import { isEmpty, type Tree } from './tree.ts';
import { nameOf, valuesIn } from './value-lines.ts';

export interface Anchor {
  /** The full id of a quantity, or keys and names of items joined by dots: `faults.low-hands`, `goals.1`. */
  readonly about: string;
  /** Key and value; of an item of a list the item. */
  readonly span: Span;
  readonly valueSpan: Span;
  /** What stands there, on one line. */
  readonly value: string;
  /** False of what only holds other keys. */
  readonly isLeaf: boolean;
}

interface Place extends Anchor {
  readonly path: readonly Part[];
}

interface Part {
  readonly name: string;
  readonly isItem: boolean;
}

/** Every place of the record that a remark can be about, in the order of the text; of two by one name the first. */
export function anchorsOf(record: SwingRecord): ReadonlyMap<string, Anchor> {
  return placesOf(record);
}

/** The entry at this offset, else the first one on its line, else the one that goes on there. */
export function anchorAt(record: SwingRecord, offset: number): Anchor | undefined {
  const places = [...placesOf(record).values()];
  const isOver = ({ span }: Place, at: number): boolean => span.start <= at && at < span.end;
  // Inside a measurement in its long form it is the measurement that is spoken of.
  const whole = (place: Place): Place =>
    places.find((other) => record.entries.has(other.about) && isOver(other, place.span.start)) ?? place;
  const at = places.findLast((place) => place.isLeaf && isOver(place, offset));
  if (at !== undefined) return whole(at);
  const [start, end] = [lineStart(record.text, offset), lineEnd(record.text, offset)];
  const first = places.find(({ span }) => span.start >= start && span.start <= end);
  const found = first ?? places.findLast((place) => isOver(place, offset));
  return found && whole(found);
}

/** Longer values are cut, with the beginning of a hash of the whole. */
const longestValue = 240;
const cutValue = / … sha256:([0-9a-f]{12})$/;

/** Whether what stands there now means what `value` says; units, spaces and comments make no difference. */
export function isUnchanged(record: SwingRecord, about: string, value: string, registry: Registry): boolean {
  const place = placesOf(record).get(about);
  if (place === undefined) return false;
  if (collapseSpaces(value) === place.value) return true;
  const [, hash] = cutValue.exec(value) ?? [];
  const meaning = meaningOf(place.path, flowOf(place.tree), hash === undefined ? registry : builtIn);
  if (meaning === undefined) return false;
  return hash === undefined
    ? meaning === meaningOf(place.path, value, registry)
    : hashOf(meaning).startsWith(hash);
}

/** A value of this place with its unit, whatever was written; of what is no measurement the words as they are. */
export function valueWords(record: SwingRecord, about: string, value: string, registry: Registry): string {
  const place = placesOf(record).get(about);
  const meaning = place && meaningOf(place.path, value, registry);
  return meaning?.startsWith(': ') === true && !meaning.includes('\n') ? meaning.slice(2) : value;
}

/** Whether `value` reads as something that may stand in the place of a value: one line of YAML. */
export function isOneValue(value: string): boolean {
  if (/[\r\n]|^\s*[|>&*!]/.test(value)) return false;
  const { tree, isDamaged, problems } = readTree(`x: ${value}\n`, []);
  const own = tree?.kind === 'map' && tree.pairs.size === 1 ? tree.pairs.get('x')?.value : undefined;
  return (
    own !== undefined &&
    !isEmpty(own) &&
    !isDamaged &&
    problems.length === 0 &&
    own.span.end >= 3 + value.trimEnd().length
  );
}

/** What a value says at this place, one line a value. */
function meaningOf(path: readonly Part[], value: string, registry: Registry): string | undefined {
  let text = '';
  for (const [depth, { name, isItem }] of path.entries())
    text += `${'  '.repeat(depth)}${isItem ? '-' : `${JSON.stringify(name)}:`}${depth < path.length - 1 ? '\n' : ` ${value}\n`}`;
  const lines = valuesIn('swing', text, registry);
  return lines?.map((line) => `${line.path.slice(path.length).join('.')}: ${line.value}`).join('\n');
}

interface Placed extends Place {
  readonly tree: Tree;
}

const kept = new WeakMap<SwingRecord, ReadonlyMap<string, Placed>>();

function placesOf(record: SwingRecord): ReadonlyMap<string, Placed> {
  const known = kept.get(record);
  if (known !== undefined) return known;
  const places = new Map<string, Placed>();
  const { tree } = readTree(record.text, headersOf('swing'));
  if (tree !== undefined) gather(tree, [], places);
  kept.set(record, places);
  return places;
}

function gather(tree: Tree, path: readonly Part[], places: Map<string, Placed>): void {
  const children =
    tree.kind === 'map'
      ? [...tree.pairs.values()].map(({ key, keySpan, value }) => ({
          name: key,
          start: keySpan.start,
          value,
        }))
      : tree.kind === 'list'
        ? tree.items.map((value, i) => ({
            name: nameOf(value) ?? String(i + 1),
            start: value.span.start,
            value,
          }))
        : [];
  for (const { name, start, value } of children) {
    const own = [...path, { name, isItem: tree.kind === 'list' }];
    const about = own.map((part) => part.name).join('.');
    if (!places.has(about))
      places.set(about, {
        about,
        path: own,
        span: { start: Math.min(start, value.span.start), end: Math.max(start, value.span.end) },
        valueSpan: value.span,
        value: shortened(value, own),
        isLeaf: value.kind === 'scalar',
        tree: value,
      });
    gather(value, own, places);
  }
}

function shortened(tree: Tree, path: readonly Part[]): string {
  const value = collapseSpaces(flowOf(tree));
  if (value.length <= longestValue) return value;
  const meaning = meaningOf(path, flowOf(tree), builtIn) ?? value;
  return `${value.slice(0, longestValue).replace(/\p{Cs}/gu, '')} … sha256:${hashOf(meaning).slice(0, 12)}`;
}

/** A value as YAML on one line, without comments. */
function flowOf(tree: Tree): string {
  if (tree.kind === 'list') return `[${tree.items.map(innerOf).join(', ')}]`;
  if (tree.kind === 'map') {
    const pairs = [...tree.pairs.values()].map(({ key, value }) => `${wordOf(key)}: ${innerOf(value)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  if (tree.plain === null) return '';
  const { source } = tree;
  return typeof tree.plain === 'string' ? wordOf(source) : source;
}

/** Between braces nothing would be no value at all. */
function innerOf(tree: Tree): string {
  return flowOf(tree) || 'null';
}

const plainWord = /^[\p{L}\p{N}~±+.°%/<>=()-][\p{L}\p{M}\p{N} ~±+.°%/<>=()_'²³^*-]*$/u;

/** Without quotes where YAML takes the words as they are, between braces too. */
function wordOf(source: string): string {
  const isPlain =
    plainWord.test(source) &&
    !/^[-.~]?\s|\s$|^[-.]{3}|^~$|^(?:null|true|false)$/i.test(source) &&
    !isNumeral(source);
  return isPlain ? source : JSON.stringify(source);
}
