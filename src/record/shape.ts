// Holds a tree against the schema of its kind and says in our own words, at the very key or value, where it differs.
import type { Problem, Span } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote, quoteList } from '../measure/quote.ts';
import type { Registry } from '../registry/registry.ts';
import type { FileKind } from './document.ts';
import { ownKeysAt, prefixAt, type Path } from './id-at.ts';
import { versionKeys } from './kind.ts';
import { keysAt } from './known-keys.ts';
import { expectedAt } from './shape-words.ts';
import { isEmpty, type MapTree, type Pair, type Tree } from './tree.ts';
import {
  validateFaults,
  validateReview,
  validateStudent,
  validateSwing,
  validateTemplate,
  validateWorkspace,
  type ShapeError,
  type Validate,
} from './validators.generated.js';

const validators: Readonly<Record<FileKind, Validate>> = {
  swing: validateSwing,
  student: validateStudent,
  template: validateTemplate,
  faults: validateFaults,
  review: validateReview,
  workspace: validateWorkspace,
};

/** Each costs a look at every key that is known. */
const mostProblems = 1001;

export function checkShape(kind: FileKind, tree: Tree, registry: Registry): readonly Problem[] {
  return errorsIn(kind, tree.plain).flatMap((error) => {
    const place = placeOf(tree, pointerParts(error.instancePath));
    return place === undefined ? [] : problemsOf(error, place, kind, registry);
  });
}

function errorsIn(kind: FileKind, plain: unknown): readonly ShapeError[] {
  const validate = validators[kind];
  return validate(plain) ? [] : (validate.errors ?? []).slice(0, mostProblems);
}

function problemsOf(error: ShapeError, place: Place, kind: FileKind, registry: Registry): readonly Problem[] {
  const { tree, path } = place;
  if (error.keyword === 'additionalProperties' && tree.kind === 'map') {
    const pair = tree.pairs.get(String(error.params.additionalProperty));
    if (pair !== undefined && ownKeysAt(kind, path, registry).includes(pair.key))
      return ownProblems(pair, path, kind, registry);
  }
  const problem = problemOf(error, place, kind, registry);
  return problem === undefined ? [] : [problem];
}

/** The schema does not know a workspace's own quantity: its value is held against the shape of one that it does know. */
function ownProblems(pair: Pair, path: Path, kind: FileKind, registry: Registry): readonly Problem[] {
  const { key, value } = pair;
  const isQuantity = registry.find(`${prefixAt(kind, path)}.${key}`) !== undefined;
  if (!isQuantity) {
    if (value.kind !== 'map')
      return isEmpty(value) ? [] : [wrongShape(value, ['object'], [], kind)].flatMap((one) => one ?? []);
    const here = [...path, key];
    const known = ownKeysAt(kind, here, registry);
    return [...value.pairs.values()].flatMap((below) =>
      known.includes(below.key)
        ? ownProblems(below, here, kind, registry)
        : (unknownKey(below.key, value, here, kind, registry) ?? []),
    );
  }
  const known = standIns[kind] ?? [];
  const isGoal = path[0] === 'goals';
  const at: Path = isGoal ? ['goals', 0, 'carry'] : known;
  const plain: Record<string, unknown> = { [versionKeys[kind]]: 1 };
  if (isGoal) plain.goals = [{ carry: value.plain }];
  else if (at.length === 1) plain[String(at[0])] = value.plain;
  else plain[String(at[0])] = { [String(at[1])]: value.plain };
  return errorsIn(kind, plain).flatMap((error) => {
    const rest = pointerParts(error.instancePath).slice(at.length);
    const place = placeOf(value, rest);
    return place === undefined
      ? []
      : (problemOf(error, { ...place, path: [...at, ...place.path] }, kind, registry) ?? []);
  });
}

/** A place at which the schema takes what may stand after a quantity. */
const standIns: Partial<Readonly<Record<FileKind, Path>>> = {
  swing: ['delivery', 'attack'],
  template: ['delivery', 'attack'],
  student: ['stature'],
};

interface Place {
  readonly tree: Tree;
  readonly path: Path;
}

function problemOf(
  error: ShapeError,
  { tree, path }: Place,
  kind: FileKind,
  registry: Registry,
): Problem | undefined {
  switch (error.keyword) {
    case 'additionalProperties':
      return tree.kind === 'map'
        ? unknownKey(String(error.params.additionalProperty), tree, path, kind, registry)
        : undefined;
    case 'required':
      return missingKey(String(error.params.missingProperty), tree);
    case 'type':
      return wrongShape(tree, ([] as string[]).concat(error.params.type as string | string[]), path, kind);
    case 'enum':
      return unknownWord(tree, wordsOf(error.params.allowedValues), path, kind);
    case 'pattern':
      return unknownWord(tree, String(error.params.pattern).slice(2, -2).split('|'), path, kind);
    case 'minimum':
    case 'maximum':
    case 'exclusiveMinimum': {
      const bound = `${bounds[error.keyword]} ${String(error.params.limit)}`;
      return { code: 'number-out-of-range', span: tree.span, found: written(tree), expected: bound };
    }
  }
}

const bounds = {
  minimum: 'a number of at least',
  maximum: 'a number of at most',
  exclusiveMinimum: 'a number above',
} as const;

function unknownKey(
  key: string,
  tree: MapTree,
  path: Path,
  kind: FileKind,
  registry: Registry,
): Problem | undefined {
  const pair = tree.pairs.get(key);
  if (pair === undefined) return undefined;
  const known = keysAt(kind, path, registry);
  // Where the user names the keys, their reader says which of them it does not know.
  if (known === undefined) return undefined;
  const free = known.filter((name) => !tree.pairs.has(name));
  const isBroken = isDeclaredAt(kind, path, key, registry);
  const nearest = isBroken ? undefined : findNearest(key, free);
  return {
    code: 'unknown-key',
    span: pair.keySpan,
    found: `the key ${quote(key)}`,
    expected: isBroken
      ? 'its declaration in `swingwright.yaml` to be whole'
      : (homeOf(key, path, kind, registry) ?? expectKey(free, nearest)),
    ...(nearest === undefined ? {} : { nearest }),
  };
}

/** Whether the workspace declares such a quantity, or one below such a key, in a way that cannot be read. */
function isDeclaredAt(kind: FileKind, path: Path, key: string, { broken }: Registry): boolean {
  const prefix = broken.size === 0 ? undefined : prefixAt(kind, path);
  if (prefix === undefined) return false;
  const id = `${prefix}.${key}`;
  return broken.has(id) || [...broken].some((declared) => declared.startsWith(`${id}.`));
}

/** The near key and a few others; those that are known where none is near. */
function expectKey(free: readonly string[], nearest: string | undefined): string {
  if (free.length === 0) return 'no further key here';
  if (nearest === undefined) return quoteList(free);
  const others = free.filter((name) => name !== nearest);
  if (others.length <= mostOthers) return quoteList([nearest, ...others]);
  return `${[nearest, ...others.slice(0, mostOthers)].map(quote).join(', ')}, …`;
}

const mostOthers = 3;

/** Where a quantity's key belongs that stands at the wrong place; undefined where it is no quantity's. */
function homeOf(key: string, path: Path, kind: FileKind, registry: Registry): string | undefined {
  if (kind !== 'swing' && kind !== 'template') return undefined;
  const here = path.join('.');
  const homes = new Set((homesIn(registry).get(key) ?? []).filter((home) => home !== here));
  if (homes.size === 0) return undefined;
  if (homes.size > 3) return `it under one of the checkpoints (${quoteList([...homes])})`;
  return `it under ${quoteList([...homes])}`;
}

const keptHomes = new WeakMap<Registry, ReadonlyMap<string, readonly string[]>>();

function homesIn(registry: Registry): ReadonlyMap<string, readonly string[]> {
  const homes = keptHomes.get(registry) ?? findHomes(registry);
  keptHomes.set(registry, homes);
  return homes;
}

function findHomes({ quantities }: Registry): ReadonlyMap<string, readonly string[]> {
  const homes = new Map<string, string[]>();
  for (const { id, key, section } of quantities) {
    if (section === 'student' || section === 'club') continue;
    const home = id.slice(0, id.lastIndexOf('.'));
    homes.set(key, [...(homes.get(key) ?? []), home]);
  }
  return homes;
}

function missingKey(key: string, tree: Tree): Problem {
  const first = tree.kind === 'map' ? [...tree.pairs.values()][0]?.keySpan : undefined;
  return {
    code: 'missing-key',
    span: first ?? { start: tree.span.start, end: tree.span.start },
    found: `no ${quote(key)}`,
    expected: `the version of the format, ${quote(`${key}: 1`)}, in the first line`,
  };
}

function unknownWord(tree: Tree, words: readonly string[], path: Path, kind: FileKind): Problem {
  const isInQuotes = tree.kind === 'scalar' && typeof tree.plain === 'string' && words.includes(tree.source);
  if (path.length === 1 && path[0] === versionKeys[kind])
    return {
      code: 'unsupported-version',
      span: tree.span,
      found: isInQuotes
        ? `the version of the format in quotes, ${quote(`"${tree.source}"`)}`
        : `version ${written(tree)} of the format`,
      expected: isInQuotes ? `the number ${quoteList(words)} without quotes` : quoteList(words),
    };
  if (tree.kind !== 'scalar')
    return { code: 'wrong-shape', span: firstLineOf(tree), found: written(tree), expected: quoteList(words) };
  const nearest = findNearest(tree.source, words);
  return {
    code: 'unknown-word',
    span: tree.span,
    found: written(tree),
    expected: quoteList(words),
    ...(nearest === undefined ? {} : { nearest }),
  };
}

function wrongShape(tree: Tree, types: readonly string[], path: Path, kind: FileKind): Problem | undefined {
  // What is written as a date is looked at where dates are read.
  if (kind === 'swing' && path.length === 1 && path[0] === 'date' && tree.kind === 'scalar') return undefined;
  return {
    code: 'wrong-shape',
    span: firstLineOf(tree),
    found: written(tree),
    expected: expectedAt(path, types),
  };
}

function written(tree: Tree): string {
  if (tree.kind === 'map') return 'a mapping (keys with values)';
  return tree.kind === 'list' ? 'a list' : quote(tree.source);
}

/** A mapping or a list of several lines is pointed at where it begins. */
function firstLineOf(tree: Tree): Span {
  if (tree.kind === 'scalar') return tree.span;
  const first = tree.kind === 'map' ? [...tree.pairs.values()][0]?.keySpan : tree.items[0]?.span;
  const { start, end } = tree.span;
  const isInBrackets = first === undefined || first.start > start;
  return isInBrackets ? { start, end } : { start, end: Math.min(end, first.end) };
}

function wordsOf(allowed: unknown): readonly string[] {
  return (allowed as readonly unknown[]).filter((word) => word !== null).map(String);
}

function pointerParts(pointer: string): readonly string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
}

function placeOf(root: Tree, pointer: readonly string[]): Place | undefined {
  let tree: Tree | undefined = root;
  const path: (string | number)[] = [];
  for (const part of pointer) {
    path.push(tree.kind === 'list' ? Number(part) : part);
    tree =
      tree.kind === 'map'
        ? tree.pairs.get(part)?.value
        : tree.kind === 'list'
          ? tree.items[Number(part)]
          : undefined;
    if (tree === undefined) return undefined;
  }
  return { tree, path };
}
