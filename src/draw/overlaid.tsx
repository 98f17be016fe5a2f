// What pictures of two records laid over one another have in common: how each side is drawn, and its letter; knows no quantity.
import type { Value } from '../model/value.ts';
import type { Analysis } from '../analysis/result.ts';
import { fixed, type Place } from './geometry.ts';
import type { IntervalRow } from './interval-rows.tsx';
import { kindOf, rowOf, valueOf } from './known.ts';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface OverlayProps {
  readonly first: Analysis;
  readonly second: Analysis;
  readonly theme: Theme;
}

type Hand = 'left' | 'right';

/** Which hand each is drawn with; the right one where nobody says. */
export function handsOf({ first, second }: Pick<OverlayProps, 'first' | 'second'>): readonly [Hand, Hand] {
  const [a, b] = [first, second].map(({ subject }) => subject.student?.document.hand?.value ?? 'right');
  return [a!, b!];
}

/** Of body and arc: how they are held is compared, not on which side of the ball. */
export function mirrorWords(props: Pick<OverlayProps, 'first' | 'second'>): readonly string[] {
  const [a, b] = handsOf(props);
  return a === b ? [] : [`A plays ${a}-handed and is drawn as in a mirror`];
}

/** Of club and ball along the target line: left and right stay where they are. */
export function sidesWords(props: Pick<OverlayProps, 'first' | 'second'>): readonly string[] {
  const [a, b] = handsOf(props);
  return a === b ? [] : [`A plays ${a}-handed, B ${b}-handed; left and right are as they are, not mirrored`];
}

/** The first is thin and pale, the second bold; each line bears its letter, so that colour alone says nothing. */
export type Side = 'A' | 'B';

export function sideColour(side: Side, theme: Theme): string {
  return side === 'A' ? theme.soft : theme.entered;
}

/** Solid what was written down, dashed what was computed, as in every picture. */
export function sideStyle(side: Side, value: Value, theme: Theme): Readonly<Record<string, string | number>> {
  return {
    ...lineStyle(kindOf(value), theme),
    stroke: sideColour(side, theme),
    'stroke-width': side === 'A' ? 1.3 : 2.6,
  };
}

export function Letter({
  side,
  at,
  theme,
}: {
  readonly side: Side;
  readonly at: Place;
  readonly theme: Theme;
}): Picture {
  const colour = sideColour(side, theme);
  return (
    <g>
      <circle
        cx={fixed(at.x)}
        cy={fixed(at.y)}
        r="7.5"
        fill={theme.paper}
        stroke={colour}
        stroke-width="1.4"
      />
      <text
        x={fixed(at.x)}
        y={fixed(at.y + 3.6)}
        text-anchor="middle"
        fill={colour}
        font-size="10"
        font-weight="600"
      >
        {side}
      </text>
    </g>
  );
}

/** Two rows for each quantity, one a record, on one scale. */
export function overlaidRows(
  ids: readonly string[],
  { first, second }: OverlayProps,
  unit: string,
): readonly IntervalRow[] {
  return ids.flatMap((id) =>
    (
      [
        ['A', first],
        ['B', second],
      ] as const
    ).flatMap(([side, analysis]): IntervalRow[] => {
      const value = valueOf(analysis, id);
      if (value === undefined) return [];
      const row = rowOf(value, unit, analysis.subject.registry);
      return [{ ...row, name: `${side}  ${row.name}` }];
    }),
  );
}

/** What one of the records does not know, in words for the picture. */
export function missingWords(
  titles: Readonly<Record<string, string>>,
  { first, second }: OverlayProps,
): readonly string[] {
  return Object.entries(titles).flatMap(([id, title]) => {
    const sides = [valueOf(first, id) ? '' : 'A', valueOf(second, id) ? '' : 'B'].filter(
      (side) => side !== '',
    );
    return sides.length === 0 ? [] : [`${title} (${sides.join(', ')})`];
  });
}
