// The frame of a small picture that stands in a hover: a card of paper, since nobody knows what colour lies behind it; knows no quantity.
import type { ComponentChildren } from 'preact';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** In units of the picture; a hover shows it a fourth larger, so that its lettering is as large as the hover's own. */
export const card = { width: 260, height: 112 } as const;

export function HoverCard({
  name,
  title,
  words,
  theme,
  children,
}: {
  readonly name: string;
  readonly title: string;
  readonly words: string;
  readonly theme: Theme;
  readonly children: ComponentChildren;
}): Picture {
  return (
    <Frame
      name={name}
      title={title}
      words={words}
      width={card.width}
      height={card.height}
      theme={theme}
      font="system-ui, sans-serif"
    >
      <clipPath id={`${name}-card`}>
        <rect x="1" y="1" width={card.width - 2} height={card.height - 2} rx="4" />
      </clipPath>
      <rect
        x="0.5"
        y="0.5"
        width={card.width - 1}
        height={card.height - 1}
        rx="4"
        fill={theme.paper}
        stroke={theme.faint}
      />
      <g clip-path={`url(#${name}-card)`}>{children}</g>
    </Frame>
  );
}
