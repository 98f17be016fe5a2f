// The ball on the ground, as large as the Rules of Golf allow it at least, to the scale of whatever picture it lies on.
import { ruleBall } from '../physics/ball.ts';
import { fixed, type Place } from './geometry.ts';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export function BallOnGround({
  at: { x, y },
  scale,
  theme,
}: {
  /** The place on the ground under it. */
  readonly at: Place;
  /** Units of the picture for a metre. */
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  return (
    <circle
      cx={fixed(x)}
      cy={fixed(y - ruleBall.radius * scale)}
      r={fixed(ruleBall.radius * scale)}
      fill={theme.paper}
      stroke={theme.ink}
      stroke-width="1.5"
      data-part="ball"
    />
  );
}
