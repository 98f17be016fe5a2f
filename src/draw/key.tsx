// What the marks of a picture stand for, side by side below it; knows no quantity.
import { fixed, type Place } from './geometry.ts';
import { widthOf } from './lettering.ts';
import { areaStyle, lineStyle, type Hatched, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface KeyItem {
  readonly mark: 'entered' | 'expected' | 'shot' | 'far shot' | 'spread' | Hatched;
  readonly text: string;
}

export interface KeyProps {
  readonly items: readonly KeyItem[];
  readonly x: number;
  /** The base line of the first row. */
  readonly y: number;
  readonly width: number;
  readonly picture: string;
  readonly theme: Theme;
}

const [markWidth, gap, rowHeight] = [24, 20, 18];

export function Key({ items, x, y, width, picture, theme }: KeyProps): Picture {
  return (
    <g data-part="key">
      {placed(items, width).map(({ item, at }) => (
        <g key={item.text} transform={`translate(${fixed(x + at.x)} ${fixed(y + at.y)})`}>
          <Glyph mark={item.mark} picture={picture} theme={theme} />
          <text x={markWidth} y="0" fill={theme.soft} font-size="11">
            {item.text}
          </text>
        </g>
      ))}
    </g>
  );
}

export function keyHeight(items: readonly KeyItem[], width: number): number {
  return rowHeight * (1 + Math.max(0, ...placed(items, width).map(({ at }) => at.y / rowHeight)));
}

function placed(items: readonly KeyItem[], width: number): readonly { item: KeyItem; at: Place }[] {
  let [x, y] = [0, 0];
  return items.map((item) => {
    const wide = markWidth + widthOf(item.text, 11);
    if (x > 0 && x + wide > width) [x, y] = [0, y + rowHeight];
    const at = { x, y };
    x += wide + gap;
    return { item, at };
  });
}

/** Round and solid for what was written down, a diamond and dashed for what was computed. */
function Glyph({
  mark,
  picture,
  theme,
}: {
  readonly mark: KeyItem['mark'];
  readonly picture: string;
  readonly theme: Theme;
}): Picture {
  if (mark === 'entered' || mark === 'expected')
    return (
      <g>
        <path d="M 0 -4 L 18 -4" {...lineStyle(mark, theme)} />
        <Dot kind={mark} at={{ x: 9, y: -4 }} theme={theme} />
      </g>
    );
  if (mark === 'shot') return <Cross at={{ x: 9, y: -4 }} theme={theme} />;
  if (mark === 'far shot') return <Ring at={{ x: 9, y: -4 }} theme={theme} />;
  if (mark === 'spread')
    return <ellipse cx="9" cy="-4" rx="9" ry="4.5" stroke={theme.ink} stroke-width="1.2" />;
  return <rect x="0" y="-9" width="18" height="10" {...areaStyle(mark, picture, theme)} />;
}

export function Dot({
  kind,
  at: { x, y },
  theme,
}: {
  readonly kind: 'entered' | 'expected';
  readonly at: Place;
  readonly theme: Theme;
}): Picture {
  if (kind === 'entered') return <circle cx={fixed(x)} cy={fixed(y)} r="4.5" fill={theme.entered} />;
  return (
    <path
      d={`M ${fixed(x)} ${fixed(y - 5.5)} l 5.5 5.5 l -5.5 5.5 l -5.5 -5.5 Z`}
      fill={theme.paper}
      stroke={theme.expected}
      stroke-width="1.8"
    />
  );
}

/** One shot. */
export function Cross({ at: { x, y }, theme }: { readonly at: Place; readonly theme: Theme }): Picture {
  return (
    <path
      d={`M ${fixed(x - 3)} ${fixed(y - 3)} l 6 6 m 0 -6 l -6 6`}
      stroke={theme.ink}
      stroke-width="1.2"
      data-part="shot"
    />
  );
}

/** One shot that lies far from the others. */
export function Ring({ at, theme }: { readonly at: Place; readonly theme: Theme }): Picture {
  return (
    <circle
      cx={fixed(at.x)}
      cy={fixed(at.y)}
      r="3.5"
      fill="none"
      stroke={theme.ink}
      stroke-width="1.2"
      data-part="far-shot"
    />
  );
}
