// The one table of small pictures for hovers: which quantity is drawn by which; holds no picture itself.
import type { Analysis } from '../analysis/result.ts';
import { HoverFlightAbove, HoverFlightSide } from './hover-flight.tsx';
import { HoverLowPoint } from './hover-low-point.tsx';
import { HoverAttack, HoverDirections, type HoverDrawn } from './hover-strike.tsx';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const drawnBy: readonly (readonly [RegExp, (drawn: HoverDrawn) => Picture | undefined])[] = [
  [/^delivery\.(path|face|face_to_path)$/, HoverDirections],
  [/^delivery\.attack$/, HoverAttack],
  [/^delivery\.low_point\./, HoverLowPoint],
  [/^ground\.divot\.(starts|length|depth)$/, HoverLowPoint],
  [/^flight\.(start|curve|finish|spin_tilt)$/, HoverFlightAbove],
  [/^flight\.(launch_angle|apex|descent|carry|total|spin|ball_speed|time)$/, HoverFlightSide],
];

/** Undefined where there is no picture of such a quantity, or where nothing is known that could be drawn. */
export function hoverPictureOf(analysis: Analysis, id: string, theme: Theme): Picture | undefined {
  return drawnBy.find(([ids]) => ids.test(id))?.[1]({ analysis, id, theme });
}
