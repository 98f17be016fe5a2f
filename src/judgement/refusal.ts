// Where a part of an expression stands, and how one that is not allowed is refused; knows no meaning of any part.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { everythingKnown } from './scan.ts';
import { leavesOf, type SyntaxNode } from './syntax.ts';
import { say, type Walk } from './walk.ts';

export function refuse(node: SyntaxNode, walk: Walk): undefined {
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
export function spanOf(node: SyntaxNode, walk: Walk): Span {
  const spans = leavesOf(node).flatMap((name) => walk.tokens[Number(name.slice(1))]?.span ?? []);
  if (spans.length === 0) return { start: 0, end: walk.text.length };
  return {
    start: Math.min(...spans.map(({ start }) => start)),
    end: Math.max(...spans.map(({ end }) => end)),
  };
}
