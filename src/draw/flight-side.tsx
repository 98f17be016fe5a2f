// The flight seen from the side: its computed way, and what was recorded of launch, apex, carry and descent; to scale.
import { curveMonotoneX, line } from 'd3-shape';
import type { PathPoint } from '../physics/flight.ts';
import type { Value } from '../model/value.ts';
import type { Scene } from './flight-scene.ts';
import { fixed, type Place } from './geometry.ts';
import { Dot } from './key.tsx';
import { kindOf } from './known.ts';
import { Label } from './label.tsx';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export function FromSide({
  scene: { path, recorded, launch, apex, descent },
  ball,
  scale,
  theme,
}: {
  readonly scene: Scene;
  readonly ball: Place;
  /** Units of the picture for a metre. */
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  // Steeper than a real direction allows would point into the ground.
  const landing = recorded?.ahead ?? path?.at(-1)?.ahead;
  const top = path?.reduce((best, point) => (point.up > best.up ? point : best));
  return (
    <g data-part="side">
      {path && <path d={wayOf(path, ball, scale)} {...lineStyle('expected', theme)} data-part="side-path" />}
      {launch && <Slope value={launch} at={ball} along={1} theme={theme} />}
      {descent && landing !== undefined && (
        <Slope value={descent} at={{ x: ball.x + landing * scale, y: ball.y }} along={-1} theme={theme} />
      )}
      {apex?.kind === 'entered' && (
        <Apex
          apex={apex}
          at={{
            x: ball.x + (top?.ahead ?? (landing ?? 0) * 0.6) * scale,
            y: ball.y - apex.value * scale,
          }}
          scale={scale}
          theme={theme}
        />
      )}
      {apex?.kind !== 'entered' && top && (
        <Label
          at={{ x: ball.x + top.ahead * scale, y: ball.y - top.up * scale - 8 }}
          text="apex"
          anchor="middle"
          theme={theme}
        />
      )}
      {recorded && (
        <g data-id={recorded.id} data-part="side-landing">
          {recorded.uAhead > 0 && (
            <path
              d={`M ${fixed(ball.x + (recorded.ahead - recorded.uAhead) * scale)} ${fixed(ball.y)} L ${fixed(ball.x + (recorded.ahead + recorded.uAhead) * scale)} ${fixed(ball.y)}`}
              {...lineStyle('entered', theme)}
              stroke-width="3"
            />
          )}
          <Dot kind="entered" at={{ x: ball.x + recorded.ahead * scale, y: ball.y }} theme={theme} />
        </g>
      )}
      <circle
        cx={ball.x}
        cy={fixed(ball.y)}
        r="3.5"
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.4"
      />
    </g>
  );
}

function wayOf(path: readonly PathPoint[], ball: Place, scale: number): string {
  const way = line<PathPoint>()
    .x(({ ahead }) => ball.x + ahead * scale)
    .y(({ up }) => ball.y - up * scale)
    .curve(curveMonotoneX)
    .digits(2);
  return way(path) ?? '';
}

/** So long are the lines that show a recorded direction, in units of the picture. */
const slopeLength = 44;

/** A recorded angle to the ground, from where the ball leaves it or comes down. */
function Slope({
  value,
  at,
  along,
  theme,
}: {
  readonly value: Value;
  readonly at: Place;
  readonly along: 1 | -1;
  readonly theme: Theme;
}): Picture | null {
  if (value.kind !== 'entered') return null;
  const end = {
    x: at.x + along * slopeLength * Math.cos(value.value),
    y: at.y - slopeLength * Math.sin(value.value),
  };
  return (
    <path
      d={`M ${fixed(at.x)} ${fixed(at.y)} L ${fixed(end.x)} ${fixed(end.y)}`}
      {...lineStyle(kindOf(value), theme)}
      data-id={value.id}
      data-part={along === 1 ? 'launch' : 'descent'}
    />
  );
}

/** A recorded height, with one standard uncertainty to each side; nobody records where along the flight it is. */
function Apex({
  apex,
  at,
  scale,
  theme,
}: {
  readonly apex: Value;
  readonly at: Place;
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  const u = (apex.u ?? 0) * scale;
  return (
    <g data-id={apex.id}>
      <rect
        x={fixed(at.x - 30)}
        y={fixed(at.y - u)}
        width="60"
        height={fixed(2 * u)}
        fill={theme.entered}
        fill-opacity="0.15"
      />
      <path
        d={`M ${fixed(at.x - 30)} ${fixed(at.y)} L ${fixed(at.x + 30)} ${fixed(at.y)}`}
        {...lineStyle('entered', theme)}
        data-part="apex"
      />
      <Label at={{ x: at.x, y: at.y - 8 }} text="apex" anchor="middle" theme={theme} />
    </g>
  );
}
