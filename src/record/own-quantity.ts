// Reads one quantity of a workspace's own: what it says itself, and what it takes from the one that it is like; knows no expression.
import type { Notation } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote, quoteList, upperFirst } from '../measure/quote.ts';
import { showWindow } from '../measure/show.ts';
import { findUnit } from '../measure/units.ts';
import {
  checkpoints,
  type Checkpoint,
  type Quantity,
  type Range,
  type Section,
} from '../registry/quantity.ts';
import { nearestId, type Registry } from '../registry/registry.ts';
import type { Reader } from './entry.ts';
import { missing } from './own.ts';
import { directionsOf } from './own-directions.ts';
import { checkWidth, uncertaintyAt, unknownWithin } from './own-uncertainty.ts';
import type { OwnQuantity } from './own-document.ts';
import { readHere } from './read-here.ts';
import { valueAt, type Pair, type Tree } from './tree.ts';
import { wordAt, wordsAt, wordsOf } from './word.ts';

/** Where an id of an own quantity may begin. */
export const sections = [
  'checkpoints',
  'delivery',
  'ground',
  'strike',
  'flight',
  'conditions',
  'student',
  'club',
] as const satisfies readonly Section[];

/** What a workspace's own windows come from where it does not say. */
const ownSource = 'the workspace file';

/** One for each checkpoint that it belongs to; none where it cannot be read, which the problems say. */
export function readOwnQuantity(
  pair: Pair,
  kind: 'measured' | 'derived',
  reader: Reader,
): readonly OwnQuantity[] {
  if (pair.value.kind !== 'map') return [];
  const places = placesOf(pair, reader);
  return places.flatMap((place, at) => {
    // What is wrong is said once, however many checkpoints there are.
    const quiet: Reader = at === 0 ? reader : { ...reader, problems: [] };
    if (isTaken(place.id, pair, quiet)) return [];
    const quantity = quantityAt(place, pair, kind, quiet);
    return quantity === undefined ? [] : [{ quantity, keySpan: pair.keySpan }];
  });
}

interface Place {
  readonly id: string;
  readonly section: Section;
  readonly checkpoint: Checkpoint | undefined;
  readonly key: string;
}

const idPattern = /^[a-z][a-z0-9_]*(?:\.[a-z][a-z0-9_]*)+$/;

function placesOf({ key: id, keySpan, value }: Pair, { problems }: Reader): readonly Place[] {
  const [first = '', second = '', ...rest] = id.split('.');
  const section = sections.find((known) => known === first);
  if (section === undefined || !idPattern.test(id)) {
    const nearest = section === undefined ? findNearest(first, sections) : undefined;
    problems.push({
      code: 'unknown-word',
      span: keySpan,
      found: quote(id),
      expected: `an id in small letters below one of ${quoteList(sections)}`,
      ...(nearest === undefined ? {} : { nearest: [nearest, ...id.split('.').slice(1)].join('.') }),
    });
    return [];
  }
  const key = id.slice(id.lastIndexOf('.') + 1);
  if (section !== 'checkpoints') return [{ id, section, checkpoint: undefined, key }];
  const named = checkpoints.find((checkpoint) => checkpoint === second);
  if (named !== undefined && rest.length > 0) return [{ id, section, checkpoint: named, key }];
  const path = id.slice('checkpoints.'.length);
  const at = wordsOf(valueAt(value, 'at')).map((word) => word.value);
  const chosen = checkpoints.filter((checkpoint) => at.includes(checkpoint));
  if (chosen.length === 0)
    problems.push({
      code: 'missing-key',
      span: keySpan,
      found: 'no checkpoint',
      expected: `${quote('at')} with the checkpoints that it belongs to, or an id such as ${quote(`checkpoints.impact.${path}`)}`,
    });
  return chosen.map((checkpoint) => ({ id: `checkpoints.${checkpoint}.${path}`, section, checkpoint, key }));
}

/** True where the id, or one that it begins with or that begins with it, is known already. */
function isTaken(id: string, { keySpan }: Pair, { registry, problems }: Reader): boolean {
  const same = registry.find(id);
  const other =
    same ??
    registry.quantities.find((known) => id.startsWith(`${known.id}.`) || known.id.startsWith(`${id}.`));
  if (other === undefined) return false;
  problems.push({
    code: 'quantity-already-known',
    span: keySpan,
    found:
      same === undefined
        ? `${quote(id)}, beside the quantity ${quote(other.id)}`
        : `${quote(id)}, which is known already (${other.title})`,
    expected: 'an id of its own, which no other one begins with',
  });
  return true;
}

function quantityAt(
  { id, section, checkpoint, key }: Place,
  pair: Pair,
  kind: 'measured' | 'derived',
  reader: Reader,
): Quantity | undefined {
  const { value } = pair;
  const like = likeOf(value, checkpoint, reader);
  if (like === 'unknown') return undefined;
  const unit = unitOf(value, like, pair, reader);
  if (unit === undefined) return undefined;
  const isAlike = like?.dimension === unit.dimension;
  const notation: Notation = {
    dimension: unit.dimension,
    unit: unit.name,
    directions: directionsOf(valueAt(value, 'directions'), reader) ?? (isAlike ? like.directions : []),
    decimals: decimalsOf(value) ?? (isAlike ? like.decimals : 1),
  };
  const source = wordsAt(value, 'source');
  const bounds = rangeAt('bounds', value, notation, source, reader) ?? (isAlike ? like.bounds : undefined);
  const practice = practiceWithin(bounds, value, notation, source, reader);
  const uncertainty = uncertaintyAt(value, notation, reader) ?? (isAlike ? like.uncertainty : undefined);
  const words = titleOf(value, reader) ?? key.replaceAll('_', ' ');
  if (bounds === undefined && !valueAt(value, 'bounds'))
    missing('bounds', 'the window that is possible', pair, reader);
  const isComputed = kind === 'derived' && !valueAt(value, 'uncertainty');
  const read = uncertainty ?? (isComputed && bounds ? unknownWithin(practice ?? bounds) : undefined);
  if (read === undefined && !valueAt(value, 'uncertainty'))
    missing('uncertainty', 'one standard uncertainty where nothing better is known', pair, reader);
  if (bounds === undefined || read === undefined) return undefined;
  checkWidth(value, read, notation, bounds, reader);
  return {
    id,
    section,
    ...(checkpoint === undefined ? {} : { checkpoint }),
    key,
    title: upperFirst(words),
    meaning: wordsAt(value, 'meaning') ?? like?.meaning ?? '',
    from: wordsAt(value, 'from') ?? like?.from ?? '',
    to: wordsAt(value, 'to') ?? like?.to ?? '',
    ...notation,
    lateral: lateralOf(value) ?? like?.lateral ?? false,
    bounds,
    practice: practice ?? (isAlike && !valueAt(value, 'bounds') ? like.practice : undefined),
    practiceByClub: isAlike && !practice && !valueAt(value, 'bounds') ? like.practiceByClub : undefined,
    uncertainty: read,
  };
}

/** The named quantity, at the same checkpoint where there is such a one. */
export function findLike(
  name: string,
  checkpoint: Checkpoint | undefined,
  registry: Registry,
): Quantity | undefined {
  const here = name.replace(/^checkpoints\.(?:[a-z_]+\.)?(?=[a-z_]+$)/, `checkpoints.${checkpoint}.`);
  return (checkpoint && registry.find(here)) ?? registry.find(name);
}

/** One that is not known is a problem. */
function likeOf(
  value: Tree,
  checkpoint: Checkpoint | undefined,
  { registry, problems }: Reader,
): Quantity | 'unknown' | undefined {
  const word = wordAt(value, 'like');
  if (word === undefined) return undefined;
  const quantity = findLike(word.value, checkpoint, registry);
  if (quantity !== undefined) return quantity;
  const nearest = nearestId(word.value, registry);
  problems.push({
    code: 'unknown-word',
    span: word.span,
    found: quote(word.value),
    expected: registry.broken.has(word.value)
      ? 'a quantity that is known; its own declaration stands further down, or cannot be read'
      : 'the full id of a quantity that is known, or that stands above',
    ...(nearest === undefined ? {} : { nearest }),
    unknown: word.value,
  });
  return 'unknown';
}

function unitOf(
  value: Tree,
  like: Quantity | undefined,
  pair: Pair,
  reader: Reader,
): (Pick<Notation, 'dimension'> & { readonly name: string }) | undefined {
  const word = wordAt(value, 'unit');
  if (word === undefined) {
    if (like !== undefined) return { name: like.unit, dimension: like.dimension };
    missing('unit', 'the unit of a bare number, or `like` with a quantity to take it from', pair, reader);
    return undefined;
  }
  if (word.value === 'ratio') return { name: '', dimension: 'ratio' };
  const unit = findUnit(word.value);
  if (unit === undefined)
    reader.problems.push({
      code: 'unknown-unit',
      span: word.span,
      found: quote(word.value),
      expected: 'a unit, such as `cm` or `deg`, or `ratio` for a plain number',
    });
  return unit;
}

function decimalsOf(value: Tree): number | undefined {
  const plain = valueAt(value, 'decimals')?.plain;
  return typeof plain === 'number' && Number.isInteger(plain) && plain >= 0 && plain <= 6 ? plain : undefined;
}

/** Undefined, and said to be so, where it has nothing in it. */
function titleOf(value: Tree, { problems }: Reader): string | undefined {
  const title = wordsAt(value, 'title');
  if (title === undefined || title.trim() !== '') return title;
  const expected = 'what the quantity is called, or no `title`';
  problems.push({
    code: 'wrong-shape',
    span: valueAt(value, 'title')!.span,
    found: 'an empty title',
    expected,
  });
  return undefined;
}

function lateralOf(value: Tree): boolean | undefined {
  const plain = valueAt(value, 'lateral')?.plain;
  return typeof plain === 'boolean' ? plain : undefined;
}

/** Nothing is usual that is not possible. */
function practiceWithin(
  bounds: Range | undefined,
  value: Tree,
  notation: Notation,
  source: string | undefined,
  reader: Reader,
): Range | undefined {
  const practice = rangeAt('practice', value, notation, source, reader);
  if (practice === undefined || bounds === undefined) return practice;
  const { min, max } = bounds;
  if (practice.min >= min && practice.max <= max) return practice;
  reader.problems.push({
    code: 'number-out-of-range',
    span: valueAt(value, 'practice')!.span,
    found: `${quote(showWindow(notation, practice.min, practice.max))}, which is not all possible`,
    expected: `a window within the bounds, ${quote(showWindow(notation, min, max))}`,
  });
  return undefined;
}

function rangeAt(
  key: string,
  value: Tree,
  notation: Notation,
  source: string | undefined,
  reader: Reader,
): Range | undefined {
  const options = { window: 'only', methods: reader.registry.methodNames } as const;
  const read = readHere(valueAt(value, key), notation, options, reader);
  return read?.kind === 'window' && read.from < read.to
    ? { min: read.from, max: read.to, source: source ?? ownSource }
    : undefined;
}
