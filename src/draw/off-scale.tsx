// What lies beyond the end of a scale: an arrow at the edge instead of a mark that would seem to lie there; knows no quantity.
import { fixed, type Place } from './geometry.ts';
import type { Picture } from './picture.tsx';

export type Way = 'left' | 'right' | 'up' | 'down';

/** To stand beside the arrow, or behind the number that it is for. */
export const offScale = 'off the scale';

/** Its base is where the scale ends, and its tip points to where the thing would be. */
export function EdgeArrow({
  at: { x, y },
  way,
  colour,
}: {
  readonly at: Place;
  readonly way: Way;
  readonly colour: string;
}): Picture {
  const turn = { right: 0, down: 90, left: 180, up: 270 }[way];
  return (
    <path
      d="M 0 -6 L 8 0 L 0 6 Z"
      transform={`translate(${fixed(x)} ${fixed(y)})${turn === 0 ? '' : ` rotate(${turn})`}`}
      fill={colour}
      data-part="off-the-scale"
    />
  );
}
