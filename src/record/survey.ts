// Looks over a tree that was read with errors for what was left open or ran on over several lines; repairs nothing.
import { isCollection, isPair, isScalar, type Node } from 'yaml';
import type { Span } from '../measure/measure.ts';

export interface KeyPlace extends Span {
  readonly isPlain: boolean;
  /** True where the colon after it is missing. */
  readonly isAlone: boolean;
  readonly isInFlow: boolean;
}

export interface Survey {
  /** Quoted texts whose closing quote is missing. */
  readonly openQuotes: readonly Span[];
  /** Lists and mappings in brackets, the outer before the inner. */
  readonly brackets: readonly (Span & { readonly isOpen: boolean })[];
  readonly keys: readonly KeyPlace[];
  /** Values of several lines that are not in brackets. */
  readonly longScalars: readonly Span[];
}

export function surveyOf(root: Node | undefined, text: string): Survey {
  const openQuotes: Span[] = [];
  const brackets: (Span & { isOpen: boolean })[] = [];
  const keys: KeyPlace[] = [];
  const longScalars: Span[] = [];

  const look = (node: Node): void => {
    const [start, end] = node.range ?? [0, 0];
    if (isCollection(node)) {
      const isFlow = node.flow === true;
      // A pair in a list in brackets is a mapping without brackets of its own.
      if (isFlow && /[[{]/.test(text.charAt(start))) {
        const closer = text[start] === '{' ? '}' : ']';
        brackets.push({ start, end, isOpen: end - start < 2 || text[end - 1] !== closer });
      }
      for (const item of node.items) {
        if (!isPair(item)) look(item as Node);
        else {
          const key = item.key as Node;
          const [from, to] = key.range ?? [0, 0];
          keys.push({
            start: from,
            end: to,
            isPlain: isScalar(key) && key.type === 'PLAIN',
            isAlone: item.value === null,
            isInFlow: isFlow,
          });
          look(key);
          if (item.value !== null) look(item.value as Node);
        }
      }
      return;
    }
    if (!isScalar(node)) return;
    const isQuoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
    if (isQuoted && (end - start < 2 || text[end - 1] !== text[start])) openQuotes.push({ start, end });
    const feed = text.indexOf('\n', start);
    if (feed !== -1 && feed < end) longScalars.push({ start, end });
  };
  if (root !== undefined) look(root);
  return { openQuotes, brackets, keys, longScalars };
}
