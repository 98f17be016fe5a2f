// What a hover says, wherever the cursor stands: asks each kind of place in turn; computes nothing.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Lesson } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import type { ThemeName } from '../draw/theme.ts';
import type { Span } from '../measure/measure.ts';
import { hoverOnCode } from './hover-code.ts';
import { hoverOnEntry } from './hover-entry.ts';
import { hoverOnFault } from './hover-fault.ts';
import { hoverOnFaultBook } from './hover-fault-book.ts';
import { hoverOnGoal } from './hover-goal.ts';
import { hoverOnKey } from './hover-key.ts';
import { hoverOnOutcome, isInPlan } from './hover-outcome.ts';
import { hoverPicture } from './hover-picture.ts';
import { hoverOnPlan } from './hover-plan.ts';
import { hoverOnReference } from './hover-reference.ts';
import { hoverOnRemark } from './hover-remark.ts';
import { hoverOnShots } from './shots.ts';
import { hoverOnTarget } from './hover-target.ts';
import { holds, offsetAt } from './places.ts';
import { hoverOnWorkspace } from './hover-workspace.ts';
import type { Hover, Position } from './shapes.ts';

/** What one kind of place has to say: Markdown lines, and the text that they are about. */
export interface Remark {
  readonly span: Span;
  readonly lines: readonly string[];
  /** Rows of a table that stands below the lines, with what belongs to it above and below; empty ones only part them. */
  readonly table?: readonly string[];
  /** The quantity that a page can say more of. */
  readonly why?: string;
}

type Place = (
  analysis: Analysis,
  offset: number,
  lessons: readonly Lesson[] | undefined,
) => Remark | undefined;

const places: readonly Place[] = [
  hoverOnCode,
  hoverOnEntry,
  hoverOnPlan,
  hoverOnGoal,
  hoverOnTarget,
  hoverOnShots,
  hoverOnReference,
  hoverOnRemark,
  hoverOnWorkspace,
  hoverOnFault,
  hoverOnFaultBook,
  hoverOnKey,
];

/** More than this is a page, not a hover. */
export const mostLines = 12;

/** So many stay above a table that is too long. */
const fewLines = 4;

/** What a hover may hold beyond what every editor shows. */
export interface HoverRoom {
  /** The address of the page that says why a quantity is what it is; undefined in editors that have no place for one. */
  readonly whyAddress?: (id: string) => string | undefined;
  /** The colours of pictures; undefined where the editor shows none. */
  readonly pictures?: ThemeName | undefined;
}

/** Whether a hover here has something to say of the student's other records, so that they are worth looking for. */
export function wantsLessons(analysis: Analysis, position: Position): boolean {
  const { document, subject } = analysis;
  const offset = offsetAt(lineTableOf(document.text), position);
  if (isInPlan(analysis, offset)) return true;
  return (subject.judgement?.claims ?? []).some(({ stated }) => holds(stated.stated.fault.span, offset));
}

/** `lessons` are all records of the student; undefined where nobody has looked for them. */
export function findHover(
  analysis: Analysis,
  position: Position,
  { whyAddress, pictures }: HoverRoom = {},
  lessons?: readonly Lesson[],
): Hover | undefined {
  const table = lineTableOf(analysis.document.text);
  const offset = offsetAt(table, position);
  const outcome = hoverOnOutcome(analysis, offset, lessons ?? []);
  for (const place of [...places, () => outcome]) {
    const remark = joined(place(analysis, offset, lessons), outcome);
    if (remark === undefined) continue;
    const address = remark.why === undefined ? undefined : whyAddress?.(remark.why);
    const rows = remark.table?.slice(0, mostLines - Math.min(remark.lines.length, fewLines)) ?? [];
    const most = mostLines - rows.filter((row) => /[^-| ]/.test(row)).length;
    const lines =
      address === undefined
        ? remark.lines.slice(0, most)
        : [...remark.lines.slice(0, most - 1), `[Why?](${address})`];
    const picture = remark.why && pictures ? hoverPicture(analysis, remark.why, pictures) : undefined;
    const value = [...pictured(lines, picture), ...(rows.length === 0 ? [] : [rows.join('\n')])].join('\n\n');
    return { contents: { kind: 'markdown', value }, range: rangeOf(table, remark.span) };
  }
  return undefined;
}

/** Below the number that it is drawn of, since a long hover is cut at its end. */
function pictured([first, ...others]: readonly string[], picture: string | undefined): readonly string[] {
  const rest = others.join('  \n');
  if (picture === undefined) return [[first, ...others].join('  \n')];
  return [first ?? '', picture, rest].filter((block) => block !== '');
}

/** What became of it comes first: the next lesson knows better. */
function joined(remark: Remark | undefined, outcome: Remark | undefined): Remark | undefined {
  if (remark === undefined || outcome === undefined || remark === outcome) return remark;
  return { ...remark, lines: [...outcome.lines, ...remark.lines] };
}
