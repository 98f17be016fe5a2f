// Words on a drawing: a label with the paper's colour round it, labels at the ends of lines, and what is not known; knows no quantity.
import { notDrawnWords, notKnownWords } from './known.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { fitted, keptApart, widthOf, wrapped } from './lettering.ts';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface LabelProps {
  readonly at: Place;
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly tone?: 'ink' | 'soft' | 'entered' | 'expected' | 'alert' | 'goal';
  /** Whether it stands on paper of its own, as over hatching. */
  readonly isBoxed?: boolean;
  readonly theme: Theme;
}

/** Lines may pass behind it: it keeps a rim of paper. */
export function Label(props: LabelProps): Picture {
  const { at, text, anchor = 'start', size = 11, tone = 'soft', isBoxed = false, theme } = props;
  const wide = widthOf(text, size);
  const words = (
    <text
      x={fixed(at.x)}
      y={fixed(at.y)}
      text-anchor={anchor}
      font-size={size}
      fill={theme[tone]}
      stroke={theme.paper}
      stroke-width="3"
      paint-order="stroke"
    >
      {text}
    </text>
  );
  if (!isBoxed) return words;
  return (
    <g>
      <rect
        x={fixed(at.x - { start: 0, middle: wide / 2, end: wide }[anchor] - 2)}
        y={fixed(at.y - size)}
        width={fixed(wide + 4)}
        height={fixed(1.35 * size)}
        rx="2"
        fill={theme.paper}
        data-part="paper"
      />
      {words}
    </g>
  );
}

export interface Callout {
  readonly text: string;
  /** Where the thing is that the words are for. */
  readonly end: Place;
  readonly side: 'left' | 'right';
}

const calloutGap = 15;

/** Words in a column on either side of a drawing, each with a thin line to its thing. */
export function Callouts({
  callouts,
  left,
  right,
  from,
  to,
  width,
  theme,
}: {
  readonly callouts: readonly Callout[];
  /** Where the columns begin, away from the drawing. */
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
  /** Of a column. */
  readonly width: number;
  readonly theme: Theme;
}): Picture {
  return (
    <g>
      {(['left', 'right'] as const).flatMap((side) => {
        const own = callouts.filter((one) => one.side === side);
        const heights = keptApart(
          own.map(({ end }) => end.y),
          calloutGap,
          [from, to],
        );
        const [x, outward] = side === 'left' ? [left, -1] : [right, 1];
        return own.map(({ text, end }, i) => {
          const knee = { x: x - outward * 8, y: heights[i]! };
          const places = [{ x: end.x + outward * 4, y: end.y }, knee, { x: x - outward * 3, y: heights[i]! }];
          return (
            <g key={text}>
              <path d={lineThrough(places)} stroke={theme.soft} stroke-width="0.8" />
              <Label
                at={{ x, y: heights[i]! + 4 }}
                text={fitted(text, width, 11)}
                anchor={side === 'left' ? 'end' : 'start'}
                tone="ink"
                theme={theme}
              />
            </g>
          );
        });
      })}
    </g>
  );
}

const lineHeight = 15;
/** Of the width that lines of small words have, for letters of some systems that are wider than is reckoned with: judgement. */
export const prose = 0.92;

/** In as many lines as it takes. */
export function notKnown(missing: readonly string[], width: number): readonly string[] {
  return notKnownWords(missing).flatMap((words) => wrapped(words, prose * width, 11, 4));
}

/** In as many lines as it takes. */
export function notDrawn(left: readonly string[], width: number): readonly string[] {
  return notDrawnWords(left).flatMap((words) => wrapped(words, prose * width, 11, 4));
}

/** Lines of smaller words below one another; the first one's base line is at y. */
export function Lines({
  lines,
  x,
  y,
  theme,
}: {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  return (
    <g>
      {lines.map((line, i) => (
        <text key={i} x={fixed(x)} y={fixed(y + i * lineHeight)} fill={theme.soft} font-size="11">
          {line}
        </text>
      ))}
    </g>
  );
}

export function linesHeight(lines: readonly string[]): number {
  return lines.length * lineHeight;
}
