// What can be folded: keys with what stands below them, and runs of comments; knows nothing of what they mean.
import { lineTableOf, positionAt, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { OutlineNode } from '../record/document.ts';
import { lineText } from './places.ts';
import type { FoldingRange } from './shapes.ts';

/** By first line; where two begin on one line the longer one stands for both. */
export function findFoldingRanges({ document }: Analysis): FoldingRange[] {
  const table = lineTableOf(document.text);
  const byLine = new Map<number, FoldingRange>();
  const keep = (range: FoldingRange): void => {
    const known = byLine.get(range.startLine);
    if (known === undefined || known.endLine < range.endLine) byLine.set(range.startLine, range);
  };
  commentRuns(table).forEach(keep);
  const look = (nodes: readonly OutlineNode[]): void => {
    for (const node of nodes) {
      const startLine = positionAt(table, Math.min(node.span.start, node.nameSpan.start)).line;
      const end = table.text.slice(0, node.span.end).trimEnd().length;
      const endLine = lastLine(table, startLine, positionAt(table, end).line);
      if (endLine > startLine) keep({ startLine, endLine });
      look(node.children);
    }
  };
  look(document.outline);
  return [...byLine.values()].sort((a, b) => a.startLine - b.startLine);
}

/** Without what is blank, and without comments that begin further out than what they would be folded into. */
function lastLine(table: LineTable, first: number, last: number): number {
  const indent = /^\s*/.exec(lineText(table, first))![0].length;
  let line = last;
  while (line > first && isOutside(lineText(table, line), indent)) line -= 1;
  return line;
}

function isOutside(text: string, indent: number): boolean {
  return text.trim() === '' || (/^\s*#/.test(text) && text.search(/\S/) <= indent);
}

/** Two or more lines that hold nothing but a comment. */
function commentRuns(table: LineTable): FoldingRange[] {
  const runs: FoldingRange[] = [];
  let startLine = 0;
  for (let line = 0; line <= table.starts.length; line += 1) {
    if (line < table.starts.length && /^\s*#/.test(lineText(table, line))) continue;
    if (line - startLine > 1) runs.push({ startLine, endLine: line - 1, kind: 'comment' });
    startLine = line + 1;
  }
  return runs;
}
