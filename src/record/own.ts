// Reads from the workspace file what a developer adds: derived quantities, relations, checks, shown units; expressions stay text.
import type { Problem } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote, quoteList } from '../measure/quote.ts';
import { dimensions } from '../measure/unit-table.ts';
import { checkpoints } from '../registry/quantity.ts';
import { registryWith, type Registry } from '../registry/registry.ts';
import type { Located } from './document.ts';
import type { Reader } from './entry.ts';
import type { OwnAdditions, OwnCheck, OwnDerived, OwnQuantity, OwnRelation } from './own-document.ts';
import { readOwnQuantity } from './own-quantity.ts';
import { readUnit } from './shot-columns.ts';
import { isEmpty, valueAt, type Pair, type Tree } from './tree.ts';
import { locate, wordAt, wordsAt } from './word.ts';

/** More than a practice can keep apart; each costs a look at every quantity. */
const mostOwn = 200;

/** `reader` knows the workspace's own methods already. */
export function readOwn(tree: Tree, reader: Reader): OwnAdditions {
  const quantities: OwnQuantity[] = [];
  const derived: OwnDerived[] = [];
  const declared = declaredIn(tree);
  const known = (): Reader => ({
    ...reader,
    registry: extended(reader.registry, [...quantities, ...derived], declared.flat()),
  });
  const told = new Set<string>();
  const tell = ({ key }: Pair, problems: readonly Problem[]): void => {
    reader.problems.push(...untold(problems, told));
    if (problems.length > 0) for (const id of [key, ...atCheckpoints(key)]) told.add(id);
  };
  for (const pair of pairsAt(tree, 'quantities', reader)) {
    const problems: Problem[] = [];
    quantities.push(...readOwnQuantity(pair, 'measured', { ...known(), problems }));
    tell(pair, problems);
  }
  for (const pair of pairsAt(tree, 'derived', reader)) {
    const problems: Problem[] = [];
    const is = wordAt(pair.value, 'is');
    const [own] = readOwnQuantity(pair, 'derived', { ...known(), problems });
    if (is === undefined) missing('is', 'the expression that gives it', pair, { ...reader, problems });
    else if (own !== undefined) derived.push({ ...own, is });
    tell(pair, problems);
  }
  const { registry } = known();
  const problems: Problem[] = [];
  const shown = pairsAt(tree, 'show', reader).flatMap((pair) =>
    readShown(pair, { ...reader, registry, problems }),
  );
  reader.problems.push(...untold(problems, told));
  return {
    quantities,
    derived,
    broken: declared.filter((ids) => !ids.some(registry.find)).flat(),
    relations: pairsAt(tree, 'relations', reader).flatMap((pair) => readRelation(pair, reader) ?? []),
    checks: pairsAt(tree, 'checks', reader).flatMap((pair) => readCheck(pair, reader) ?? []),
    told,
    shown,
  };
}

/** Without those that only say that a name is not known whose own declaration tells why. */
export function untold(problems: readonly Problem[], told: ReadonlySet<string>): readonly Problem[] {
  return problems.filter(({ unknown }) => unknown === undefined || !told.has(unknown));
}

function extended(registry: Registry, own: readonly OwnQuantity[], declared: readonly string[]): Registry {
  const methods = [...registry.ownMethods.values()];
  return registryWith({ methods, quantities: own.map(({ quantity }) => quantity), broken: declared });
}

/** The ids that each key means to declare, whatever stands behind it; of what belongs to checkpoints, all that it could. */
function declaredIn(tree: Tree): readonly (readonly string[])[] {
  const keys = ['quantities', 'derived'].flatMap((section) => {
    const value = valueAt(tree, section);
    return value?.kind === 'map' ? [...value.pairs.keys()] : [];
  });
  return keys.map((key) => [key, ...atCheckpoints(key)]);
}

function atCheckpoints(id: string): readonly string[] {
  const [, path] = /^checkpoints\.(.+)$/.exec(id) ?? [];
  if (path === undefined || checkpoints.some((checkpoint) => path.startsWith(`${checkpoint}.`))) return [];
  return checkpoints.map((checkpoint) => `checkpoints.${checkpoint}.${path}`);
}

/** Those with a value; an empty one is said elsewhere. */
function pairsAt(tree: Tree, key: string, reader: Reader): readonly Pair[] {
  const value = valueAt(tree, key);
  if (value?.kind !== 'map') return [];
  const pairs = [...value.pairs.values()];
  const firstLeft = pairs[mostOwn];
  if (firstLeft !== undefined)
    reader.problems.push({
      code: 'wrong-shape',
      span: firstLeft.keySpan,
      found: `${pairs.length} keys under ${quote(key)}`,
      expected: `at most ${mostOwn}; those from here on are not read`,
    });
  return pairs.slice(0, mostOwn).filter((pair) => !isEmpty(pair.value));
}

export function missing(key: string, meaning: string, { keySpan }: Pair, { problems }: Reader): void {
  problems.push({
    code: 'missing-key',
    span: keySpan,
    found: `no ${quote(key)}`,
    expected: `${quote(key)}, ${meaning}`,
  });
}

/** Left, a sign of likeness, right, a sign of spread, one standard uncertainty. */
const relation = /^(.*?)(≈|~=?|=)(.*)(±|\+-)(.*)$/su;

function readRelation(pair: Pair, reader: Reader): OwnRelation | undefined {
  if (pair.value.kind !== 'map') return undefined;
  const says = wordAt(pair.value, 'says');
  const isNamed = isNameOf(pair, reader);
  if (says === undefined) {
    missing('says', 'the equation, as in `left ≈ right ± u`', pair, reader);
    return undefined;
  }
  const parts = relation.exec(says.value);
  if (parts === null) {
    reader.problems.push({
      code: 'unreadable-expression',
      span: says.span,
      found: quote(says.value),
      expected: 'an equation with its uncertainty, `left ≈ right ± u`',
    });
    return undefined;
  }
  if (!isNamed) return undefined;
  const [, left = '', like = '', right = '', spread = '', u = ''] = parts;
  let at = 0;
  const take = (part: string): Located<string> => {
    const start = at + part.length - part.trimStart().length;
    at += part.length;
    const value = part.trim();
    return { value, span: within(says, start, start + value.length) };
  };
  const skip = (sign: string): void => void (at += sign.length);
  const one = take(left);
  skip(like);
  const other = take(right);
  skip(spread);
  return {
    name: { value: pair.key, span: pair.keySpan },
    left: one,
    right: other,
    u: take(u),
    says,
    because: wordsAt(pair.value, 'because'),
  };
}

/** Where escapes or folding part the text from what it says, the whole of it is pointed at. */
function within({ value, span }: Located<string>, start: number, end: number): Located<string>['span'] {
  if (span.end - span.start !== value.length) return span;
  return { start: span.start + start, end: span.start + end };
}

const severities = ['error', 'warning', 'information', 'hint'] as const;
/** Of a check or a relation. */
export const ownName = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;

function isNameOf({ key, keySpan }: Pair, { problems }: Reader): boolean {
  if (ownName.test(key)) return true;
  problems.push({
    code: 'unknown-word',
    span: keySpan,
    found: quote(key),
    expected: 'a name in small letters, with hyphens between its words',
  });
  return false;
}

function readCheck(pair: Pair, reader: Reader): OwnCheck | undefined {
  if (pair.value.kind !== 'map') return undefined;
  const { key, keySpan, value } = pair;
  const [when, message] = [wordAt(value, 'when'), wordAt(value, 'message')];
  const isNamed = isNameOf(pair, reader);
  if (when === undefined) missing('when', 'the condition that raises the finding', pair, reader);
  const isEmptyMessage = message?.value.trim() === '';
  if (message === undefined || isEmptyMessage) {
    const place = isEmptyMessage ? { ...pair, keySpan: valueAt(value, 'message')!.span } : pair;
    missing('message', 'what the finding says', place, reader);
  }
  if (when === undefined || message === undefined || isEmptyMessage || !isNamed) return undefined;
  const written = wordAt(value, 'severity')?.value;
  return {
    name: { value: key, span: keySpan },
    when,
    message,
    severity: severities.find((severity) => severity === written) ?? 'warning',
    at: wordAt(value, 'at'),
    because: wordsAt(value, 'because'),
  };
}

function readShown(pair: Pair, { registry, problems }: Reader): readonly (readonly [string, string])[] {
  const { key, value } = pair;
  const word = locate(value);
  if (word === undefined) return [];
  const quantity =
    registry.find(key) ?? registry.quantities.find(({ dimension, unit }) => dimension === key && unit !== '');
  if (quantity === undefined) {
    problems.push(neitherIdNorDimension('unknown-word', pair, registry));
    return [];
  }
  const { unit, problem } = readUnit(word.value, quantity);
  if (problem !== undefined) problems.push({ ...problem, span: word.span });
  return unit === undefined ? [] : [[key, unit]];
}

/** What is wrong with a key that is neither the id of a quantity nor a dimension. */
export function neitherIdNorDimension(code: string, { key, keySpan }: Pair, registry: Registry): Problem {
  const ids = registry.quantities.map(({ id }) => id);
  const nearest = registry.broken.has(key) ? undefined : findNearest(key, [...dimensions, ...ids]);
  return {
    code,
    span: keySpan,
    found: quote(key),
    expected: `the full id of a quantity, or a dimension (${quoteList(dimensions)})`,
    ...(nearest === undefined ? {} : { nearest }),
    unknown: key,
  };
}
