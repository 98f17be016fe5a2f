// What a hover says, wherever the cursor stands: asks each kind of place in turn; computes nothing.
import type { Lesson } from '../analysis/lessons.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import { hoverOnCode } from './hover-code.ts';
import { hoverOnEntry } from './hover-entry.ts';
import { hoverOnFault } from './hover-fault.ts';
import { hoverOnFaultBook } from './hover-fault-book.ts';
import { hoverOnKey } from './hover-key.ts';
import { hoverOnOutcome } from './hover-outcome.ts';
import { hoverOnReference } from './hover-reference.ts';
import { hoverOnShots } from './shots.ts';
import { hoverOnTarget } from './hover-target.ts';
import { offsetAt } from './places.ts';
import { hoverOnWorkspace } from './hover-workspace.ts';
import type { Hover, Position } from './shapes.ts';

/** What one kind of place has to say: Markdown lines, and the text that they are about. */
export interface Remark {
  readonly span: Span;
  readonly lines: readonly string[];
  /** The quantity that a page can say more of. */
  readonly why?: string;
}

const places: readonly ((analysis: Analysis, offset: number) => Remark | undefined)[] = [
  hoverOnCode,
  hoverOnEntry,
  hoverOnTarget,
  hoverOnShots,
  hoverOnReference,
  hoverOnWorkspace,
  hoverOnFault,
  hoverOnFaultBook,
  hoverOnKey,
];

/** More than this is a page, not a hover. */
export const mostLines = 12;

/** Gives the address of the page that says why a quantity is what it is; undefined in editors that have no place for one. */
export type WhyAddress = (id: string) => string | undefined;

export function findHover(
  analysis: Analysis,
  position: Position,
  whyAddress: WhyAddress = () => undefined,
  lessons: readonly Lesson[] = [],
): Hover | undefined {
  const table = lineTableOf(analysis.document.text);
  const offset = offsetAt(table, position);
  const outcome = hoverOnOutcome(analysis, offset, lessons);
  for (const place of [...places, () => outcome]) {
    const remark = joined(place(analysis, offset), outcome);
    if (remark === undefined) continue;
    const address = remark.why === undefined ? undefined : whyAddress(remark.why);
    const lines =
      address === undefined
        ? remark.lines.slice(0, mostLines)
        : [...remark.lines.slice(0, mostLines - 1), `[Why?](${address})`];
    const value = lines.join('  \n');
    return { contents: { kind: 'markdown', value }, range: rangeOf(table, remark.span) };
  }
  return undefined;
}

/** What became of it comes first: the next lesson knows better. */
function joined(remark: Remark | undefined, outcome: Remark | undefined): Remark | undefined {
  if (remark === undefined || outcome === undefined || remark === outcome) return remark;
  return { ...remark, lines: [...outcome.lines, ...remark.lines] };
}
