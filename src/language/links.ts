// References between files as links; follows nothing that the analysis has not followed.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { findReferences } from './references.ts';
import type { DocumentLink } from './shapes.ts';

export function findLinks(analysis: Analysis): DocumentLink[] {
  const table = lineTableOf(analysis.document.text);
  return findReferences(analysis).map(({ text, target, opens }) => ({
    range: rangeOf(table, text.span),
    target,
    tooltip: `Open the ${opens}`,
  }));
}
