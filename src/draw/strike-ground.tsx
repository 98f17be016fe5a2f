// What a strike is seen against from above: degrees to both sides of the target, and where the player stands; knows no quantity.
import { fixed, lineThrough, ringSector, toward, type Place } from './geometry.ts';
import { Label } from './label.tsx';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const degree = Math.PI / 180;
/** Of the scale to each side, degrees. */
const most = 18;

/** A mark for each degree, true to its angle. */
export function Protractor({
  centre,
  radius,
  theme,
}: {
  readonly centre: Place;
  readonly radius: number;
  readonly theme: Theme;
}): Picture {
  const marks = Array.from({ length: 2 * most + 1 }, (_, i) => i - most);
  const labels = [-10, 0, 10] as const;
  return (
    <g data-part="degrees">
      <path
        d={ringSector(centre, [-most * degree, most * degree], [radius, radius])}
        stroke={theme.soft}
        stroke-width="0.8"
      />
      {marks.map((mark) => (
        <path
          key={mark}
          d={lineThrough([
            toward(centre, mark * degree, radius),
            toward(centre, mark * degree, radius + (mark % 5 === 0 ? 8 : 4)),
          ])}
          stroke={theme.soft}
          stroke-width={mark % 5 === 0 ? 1.2 : 0.8}
        />
      ))}
      {labels.map((label) => {
        const { x, y } = toward(centre, label * degree, radius + 14);
        return (
          <Label
            key={label}
            at={{ x, y }}
            text={label === 0 ? 'target' : `10° ${label < 0 ? 'left' : 'right'}`}
            anchor="middle"
            size={label === 0 ? 11 : 10}
            theme={theme}
          />
        );
      })}
    </g>
  );
}

/** Toes toward the ball: a right-handed player stands left of the ball when the target is up. */
export function Feet({
  hand,
  ball,
  theme,
}: {
  readonly hand: 'left' | 'right' | undefined;
  readonly ball: Place;
  readonly theme: Theme;
}): Picture | null {
  if (hand === undefined) return null;
  const side = hand === 'right' ? -1 : 1;
  const x = ball.x + side * 88;
  return (
    <g data-part="player">
      {[-22, 22].map((along) => (
        <path
          key={along}
          d={footPath({ x, y: ball.y + along }, -side)}
          stroke={theme.soft}
          fill={theme.faint}
          fill-opacity="0.35"
        />
      ))}
      <Label
        at={{ x, y: ball.y + 52 }}
        text={`${hand}-handed player`}
        anchor="middle"

        theme={theme}
      />
    </g>
  );
}

/** A sole of 36 by 14 units, the heel away from the ball. */
function footPath({ x, y }: Place, toes: number): string {
  const [heel, waist, ball, tip] = [-18, -4, 9, 18].map((along) => fixed(x + toes * along));
  return [
    `M ${heel} ${fixed(y)} C ${heel} ${fixed(y - 7)} ${waist} ${fixed(y - 4)} ${waist} ${fixed(y - 4)}`,
    `C ${waist} ${fixed(y - 4)} ${ball} ${fixed(y - 9)} ${tip} ${fixed(y - 4)}`,
    `C ${fixed(x + toes * 21)} ${fixed(y)} ${tip} ${fixed(y + 6)} ${ball} ${fixed(y + 6)}`,
    `C ${waist} ${fixed(y + 6)} ${heel} ${fixed(y + 7)} ${heel} ${fixed(y)} Z`,
  ].join(' ');
}
