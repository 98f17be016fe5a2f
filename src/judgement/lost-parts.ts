// Notes the parts of an expression that give no number whatever is measured, each at its characters; gives no expression its meaning.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import type { Built, Walk } from './walk.ts';

/** The part itself; a constant one that is no number is noted, unless that is so for what it is made of. */
export function noted(part: Built | undefined, walk: Walk): Built | undefined {
  const isLost = part?.sort === 'number' && part.shape === 'constant' && !Number.isFinite(part.compute([]));
  if (!isLost || walk.lost.some(({ span }) => span.start >= part.span.start && span.start < part.span.end))
    return part;
  const span = closed(part.span, walk.text);
  const found = `${quote(walk.text.slice(span.start, span.end))}, which gives no number`;
  walk.lost.push({ code: 'expression-tells-nothing', span, found, expected: 'what can be worked out' });
  return part;
}

/** With the brackets that close what is opened in it. */
function closed({ start, end }: Span, text: string): Span {
  const count = (sign: string): number => text.slice(start, end).split(sign).length;
  let open = count('(') - count(')');
  let stop = end;
  for (; open > 0 && /[\s)]/.test(text.charAt(stop)); stop++) if (text.charAt(stop) === ')') open -= 1;
  return open > 0 ? { start, end } : { start, end: stop };
}
