// Walks a syntax tree against what is allowed, checks dimensions once and builds plain functions; the only place that gives an expression its meaning.
import type { Span } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { arithmetic, type Arithmetic } from './arithmetic.ts';
import { chosen, combine, compare, negate, type Comparison } from './condition.ts';
import { findFunction, functionNames } from './functions.ts';
import { isSame, kindOf, nameOf, plain } from './kind.ts';
import { noted } from './lost-parts.ts';
import { unknownQuantity } from './problem.ts';
import { everythingKnown, type Token } from './scan.ts';
import { leavesOf, type SyntaxNode } from './syntax.ts';
import { say, type Built, type ConditionPart, type NumberPart, type Values, type Walk } from './walk.ts';

export function build(
  tree: SyntaxNode,
  tokens: readonly Token[],
  text: string,
  registry: Registry,
): {
  readonly built: Built | undefined;
  readonly quantities: readonly Quantity[];
} & Pick<Walk, 'problems' | 'lost'> {
  const walk: Walk = { tokens, text, registry, slots: new Map(), problems: [], lost: [] };
  const built = partOf(tree, walk);
  const quantities = [...walk.slots.keys()].flatMap((id) => registry.find(id) ?? []);
  return { built, quantities, problems: walk.problems, lost: walk.lost };
}

const comparisons: ReadonlySet<string> = new Set(['smaller', 'smallerEq', 'larger', 'largerEq']);

function partOf(node: SyntaxNode, walk: Walk): Built | undefined {
  return noted(meaningOf(node, walk), walk);
}

function meaningOf(node: SyntaxNode, walk: Walk): Built | undefined {
  switch (node.kind) {
    case 'leaf':
      return leaf(node, walk);
    case 'group':
      return partOf(node.inner, walk);
    case 'call':
      return call(node, walk);
    case 'operation':
      return operation(node, walk);
    case 'chain':
      return chain(node, walk);
    case 'choice':
      return choice(node, walk);
    case 'nothing':
      return say(
        walk,
        'unreadable-expression',
        { start: 0, end: walk.text.length },
        'nothing',
        'a condition',
      );
    case 'other':
      return refuse(node, walk);
  }
}

function numberOf(node: SyntaxNode, walk: Walk): NumberPart | undefined {
  const part = partOf(node, walk);
  if (part?.sort !== 'condition') return part;
  return say(walk, 'dimensions-do-not-match', part.span, 'a condition', 'a number');
}

function conditionOf(node: SyntaxNode, walk: Walk): ConditionPart | undefined {
  const part = partOf(node, walk);
  if (part?.sort !== 'number') return part;
  return say(
    walk,
    'dimensions-do-not-match',
    part.span,
    nameOf(part.kind),
    'a condition, such as a comparison',
  );
}

function leaf({ name }: SyntaxNode & { kind: 'leaf' }, walk: Walk): NumberPart | undefined {
  const token = walk.tokens[Number(name.slice(1))];
  if (token?.kind === 'number') {
    const { value, unit, span } = token;
    const kind = unit === undefined ? plain : kindOf(unit.dimension, unit.name);
    const bare = unit === undefined ? walk.text.slice(span.start, span.end) : undefined;
    return { sort: 'number', span, kind, compute: () => value, shape: 'constant', bare };
  }
  // `and` and its like may stand where mathjs expects a name.
  if (token?.kind !== 'name') return refuse({ kind: 'other', args: [] }, walk);
  const quantity = walk.registry.find(token.name);
  if (quantity === undefined) {
    walk.problems.push(
      unknownQuantity(token.name, token.span, walk.registry, 'checkpoints.impact.shaft_lean'),
    );
    return undefined;
  }
  const slot = walk.slots.get(quantity.id) ?? walk.slots.size;
  walk.slots.set(quantity.id, slot);
  return {
    sort: 'number',
    span: token.span,
    kind: kindOf(quantity.dimension, quantity.unit),
    compute: (values) => values[slot] ?? NaN,
    shape: 'linear',
    bare: undefined,
  };
}

function call(node: SyntaxNode & { kind: 'call' }, walk: Walk): NumberPart | undefined {
  const token = node.called.kind === 'leaf' ? walk.tokens[Number(node.called.name.slice(1))] : undefined;
  const span = spanOf(node, walk);
  if (token?.kind !== 'function')
    return say(
      walk,
      'expression-not-allowed',
      token?.span ?? span,
      'a call of what is no function',
      'a sign between the two',
    );
  if (token.name.includes('.'))
    return say(
      walk,
      'expression-not-allowed',
      token.span,
      quote(token.name),
      `a function (${functionNames.join(', ')})`,
    );
  const known = findFunction(token.name);
  if (known === undefined) {
    const nearest = findNearest(token.name, functionNames);
    return say(
      walk,
      'unknown-function',
      token.span,
      quote(token.name),
      `one of ${functionNames.join(', ')}`,
      nearest,
    );
  }
  const args = numbersOf(node.args, walk);
  const count = node.args.length;
  if (count < known.fewest || count > known.most) {
    const wanted = known.fewest === known.most ? String(known.fewest) : `${known.fewest} to ${known.most}`;
    return say(walk, 'unknown-function', token.span, `${quote(token.name)} of ${count} numbers`, wanted);
  }
  if (args === undefined) return undefined;
  const kind = known.give(args.map((arg) => arg.kind));
  if ('expected' in kind) {
    const odd = args[kind.argument]!;
    return say(walk, 'dimensions-do-not-match', odd.span, nameOf(odd.kind), kind.expected);
  }
  const shape = args.every((arg) => arg.shape === 'constant') ? 'constant' : 'curved';
  const computes = args.map((arg) => arg.compute);
  const compute = (values: Values): number => known.compute(computes.map((one) => one(values)));
  return { sort: 'number', span, kind, compute, shape, bare: undefined };
}

/** "3 deg right": a number and a direction word behind it, and how it is written with a sign, where the word has but one. */
function directionBehind(
  { start, end }: Span,
  { tokens, text, registry }: Walk,
): { readonly span: Span; readonly nearest: string | undefined } | undefined {
  const at = tokens.findIndex(
    (token, i) =>
      token.kind === 'name' &&
      token.span.start >= start &&
      token.span.end <= end &&
      tokens[i - 1]?.kind === 'number',
  );
  const [number, name] = [tokens[at - 1], tokens[at]];
  if (number === undefined || name?.kind !== 'name') return undefined;
  const signs = registry.quantities.flatMap(({ directions }) =>
    directions.flatMap(({ word, sign }) => (word === name.name ? [sign] : [])),
  );
  if (signs.length === 0) return undefined;
  const span = { start: number.span.start, end: name.span.end };
  const isNegated = /[-−]\s*$/.test(text.slice(0, number.span.start));
  const plain = text.slice(number.span.start, number.span.end);
  const only = new Set(signs).size === 1 && !isNegated;
  return { span, nearest: only ? `${signs[0] === 1 ? '' : '-'}${plain}` : undefined };
}

function operation(node: SyntaxNode & { kind: 'operation' }, walk: Walk): Built | undefined {
  const { name, args, implicit } = node;
  const span = spanOf(node, walk);
  const worded = implicit ? directionBehind(span, walk) : undefined;
  if (worded !== undefined)
    return say(
      walk,
      'unreadable-expression',
      worded.span,
      quote(walk.text.slice(worded.span.start, worded.span.end)),
      'a sign in the place of a direction; right, ahead and up are positive',
      worded.nearest,
    );
  if (implicit)
    return say(
      walk,
      'unreadable-expression',
      span,
      'two values with nothing between them',
      'a sign between them',
    );
  if (name === 'equal' || name === 'unequal')
    return say(
      walk,
      'expression-not-allowed',
      span,
      'a test for equality',
      '`<` or `>`, since two measured numbers are never exactly equal',
    );
  if (comparisons.has(name)) return chain({ kind: 'chain', names: [name], args }, walk);
  if (name === 'and' || name === 'or') {
    const [a, b] = args.map((arg) => conditionOf(arg, walk));
    return a && b && combine(name, a, b, span);
  }
  if (name === 'not') {
    const condition = partOf(args[0]!, walk);
    if (condition?.sort !== 'number') return condition && negate(condition, span);
    const expected = 'a condition in brackets, as in `not (flight.carry > 100 m)`';
    return say(
      walk,
      'dimensions-do-not-match',
      condition.span,
      `${nameOf(condition.kind)} behind \`not\``,
      expected,
    );
  }
  if (!Object.hasOwn(arithmetic, name)) return refuse(node, walk);
  const parts = numbersOf(args, walk);
  return parts !== undefined ? arithmetic[name as Arithmetic](parts, span, walk) : undefined;
}

function chain({ names, args }: SyntaxNode & { kind: 'chain' }, walk: Walk): ConditionPart | undefined {
  if (!names.every((name) => comparisons.has(name))) return refuse({ kind: 'other', args }, walk);
  const parts = numbersOf(args, walk);
  if (parts === undefined) return undefined;
  const links = names.map((name, i) => compare(name as Comparison, parts[i]!, parts[i + 1]!, walk));
  return links.reduce((all, link, i) => {
    if (i === 0) return link;
    return all && link && combine('and', all, link, { start: all.span.start, end: link.span.end });
  }, links[0]);
}

function choice(node: SyntaxNode & { kind: 'choice' }, walk: Walk): Built | undefined {
  const [condition, yes, no] = [
    conditionOf(node.args[0], walk),
    partOf(node.args[1], walk),
    partOf(node.args[2], walk),
  ];
  if (condition === undefined || yes === undefined || no === undefined) return undefined;
  const span = spanOf(node, walk);
  if (yes.sort === 'condition' && no.sort === 'condition') {
    const holds = chosen(condition.holds, yes.holds, no.holds);
    const over = chosen(condition.over, yes.over, no.over);
    const all = [condition.margins, yes.margins, no.margins];
    const margins = all.every((one) => one !== undefined) ? all.flat() : undefined;
    return { sort: 'condition', span, holds, over, margins, margin: undefined };
  }
  if (yes.sort === 'number' && no.sort === 'number' && isSame(yes.kind, no.kind)) {
    const compute = chosen(condition.holds, yes.compute, no.compute);
    return { sort: 'number', span, kind: yes.kind, compute, shape: 'curved', bare: undefined };
  }
  const [a, b] = [yes, no].map((part) => (part.sort === 'condition' ? 'a condition' : nameOf(part.kind)));
  return say(walk, 'dimensions-do-not-match', span, `${a} or else ${b}`, 'the same on both sides of `:`');
}

function refuse(node: SyntaxNode, walk: Walk): undefined {
  const span = spanOf(node, walk);
  return say(
    walk,
    'expression-not-allowed',
    span,
    quote(walk.text.slice(span.start, span.end)),
    everythingKnown,
  );
}

/** From the first to the last name or number below the node; the whole text where there is none. */
function spanOf(node: SyntaxNode, walk: Walk): Span {
  const spans = leavesOf(node).flatMap((name) => walk.tokens[Number(name.slice(1))]?.span ?? []);
  if (spans.length === 0) return { start: 0, end: walk.text.length };
  return {
    start: Math.min(...spans.map(({ start }) => start)),
    end: Math.max(...spans.map(({ end }) => end)),
  };
}

/** All of the arguments as numbers, or undefined where one is none. */
function numbersOf(nodes: readonly SyntaxNode[], walk: Walk): readonly NumberPart[] | undefined {
  const parts = nodes.map((node) => numberOf(node, walk));
  const known = parts.filter((part) => part !== undefined);
  return known.length === parts.length ? known : undefined;
}
