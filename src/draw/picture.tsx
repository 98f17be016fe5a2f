// The frame of every picture: size, words for those who cannot see it, lettering, hatching, and the key beside it; knows no quantity.
import type { ComponentChildren, JSX } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { fixed } from './geometry.ts';
import type { Theme } from './theme.ts';

export interface PictureProps {
  /** Kebab-case, unique among the pictures of a page: ids inside hang on it. */
  readonly name: string;
  /** A few words. */
  readonly title: string;
  /** What is to be seen, in sentences. */
  readonly words: string;
  readonly width: number;
  readonly height: number;
  readonly theme: Theme;
  /** Families of letters; a picture outside of a page knows no variable of it. */
  readonly font?: string;
  readonly children: ComponentChildren;
}

export type Picture = JSX.Element;

export function Frame({
  name,
  title,
  words,
  width,
  height,
  theme,
  font = 'var(--sw-font, system-ui, sans-serif)',
  children,
}: PictureProps): Picture {
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${fixed(width)} ${fixed(height)}`}
      width={fixed(width)}
      height={fixed(height)}
      role="img"
      aria-labelledby={`${name}-title ${name}-words`}
      font-family={font}
      font-size="12"
      fill="none"
      stroke-linecap="round"
      stroke-linejoin="round"
      data-picture={name}
    >
      <title id={`${name}-title`}>{title}</title>
      <desc id={`${name}-words`}>{words}</desc>
      <defs>
        {(Object.keys(hatching) as Hatched[]).map((of) => (
          <HatchDefinition key={of} picture={name} of={of} theme={theme} />
        ))}
      </defs>
      {children}
    </svg>
  );
}

/** The same text for the same picture, for files, hovers and pages. */
export function svgOf(picture: Picture): string {
  return renderToString(picture);
}

/** Windows: what is taught, what a goal asks for, what the flight allows. */
export type Hatched = keyof typeof hatching;

const hatching = {
  taught: { colour: 'taught', turn: 45 },
  goal: { colour: 'goal', turn: -45 },
  allowed: { colour: 'expected', turn: 0 },
} as const satisfies Record<string, { colour: keyof Theme; turn: number }>;

/** Filled with hatching, so that it is told from others without colour. */
export function areaStyle(
  of: Hatched,
  picture: string,
  theme: Theme,
): Readonly<Record<string, string | number>> {
  return { fill: `url(#${hatchId(picture, of)})`, stroke: theme[hatching[of].colour], 'stroke-width': 1 };
}

function hatchId(name: string, of: Hatched): string {
  return `${name}-hatch-${of}`;
}

/** What `areaStyle` of that picture refers to. */
export function HatchDefinition({
  picture,
  of,
  theme,
}: {
  readonly picture: string;
  readonly of: Hatched;
  readonly theme: Theme;
}): Picture {
  const { colour, turn } = hatching[of];
  return (
    <pattern
      id={hatchId(picture, of)}
      width="5"
      height="5"
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <path d="M 0 0 L 0 5" stroke={theme[colour]} stroke-width="1.4" />
    </pattern>
  );
}

/** How sure a line is: written down, computed, as it usually is, or only there to be measured from. */
export type LineKind = 'entered' | 'expected' | 'guessed' | 'rule';

export function lineStyle(kind: LineKind, theme: Theme): Readonly<Record<string, string | number>> {
  if (kind === 'entered') return { stroke: theme.entered, 'stroke-width': 2.2 };
  if (kind === 'expected') return { stroke: theme.expected, 'stroke-width': 2, 'stroke-dasharray': '6 4' };
  if (kind === 'guessed') return { stroke: theme.soft, 'stroke-width': 1.2, 'stroke-dasharray': '1 3.5' };
  return { stroke: theme.soft, 'stroke-width': 1, 'stroke-dasharray': '10 4 2 4' };
}
