// The shapes of a strike seen from the front: the head's arc, its lowest point, a cut in the ground; true to the scale that they are given.
import type { Value } from '../model/value.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { kindOf } from './known.ts';
import { Label } from './label.tsx';
import { lineStyle, type Picture } from './picture.tsx';
import type { CutProps } from './strike-front-rows.ts';
import type { Theme } from './theme.ts';

/** As far to each side of the ball as is drawn, m. */
export const reach = 0.28;

export type At = (x: number, up: number) => Place;

/**
 * The head's path as a circle in its plane, seen from the front: ahead = a + R sin θ, above its lowest point
 * R (1 − cos θ) sin i.
 */
export function ArcLine({
  ahead,
  depth,
  radius,
  inclination,
  attack,
  at,
  theme,
}: {
  readonly ahead: Value;
  readonly depth: Value | undefined;
  readonly radius: Value;
  readonly inclination: Value;
  readonly attack: Value | undefined;
  readonly at: At;
  readonly theme: Theme;
}): Picture | null {
  const lowest = -(depth?.value ?? 0);
  const places: Place[] = [];
  for (let step = 0; step <= 48; step++) {
    const x = -reach + (step / 48) * 2 * reach;
    const sine = (x - ahead.value) / radius.value;
    if (Math.abs(sine) >= 1) continue;
    places.push(
      at(x, lowest + radius.value * (1 - Math.sqrt(1 - sine * sine)) * Math.sin(inclination.value)),
    );
  }
  if (places.length < 2) return null;
  return (
    <path
      d={lineThrough(places)}
      {...lineStyle('expected', theme)}
      data-id={(attack ?? ahead).id}
      data-part="arc"
    />
  );
}

/** Its dot on the arc, and the way down to its row. */
export function LowPoint({
  ahead,
  depth,
  text,
  at,
  theme,
}: {
  readonly ahead: Value;
  readonly depth: Value | undefined;
  /** Below it; none where undefined. */
  readonly text: string | undefined;
  readonly at: At;
  readonly theme: Theme;
}): Picture {
  const kind = kindOf(ahead);
  const [low, u] = [
    at(ahead.value, -(depth?.value ?? 0)),
    Math.abs(at(Math.min(1, ahead.u ?? 0), 0).x - at(0, 0).x),
  ];
  return (
    <g data-id={ahead.id}>
      {u > 0 && (
        <rect
          x={fixed(low.x - u)}
          y={at(0, 0).y}
          width={fixed(2 * u)}
          height="34"
          fill={theme[kind]}
          fill-opacity="0.14"
        />
      )}
      <path d={lineThrough([low, { x: low.x, y: at(0, 0).y + 34 }])} stroke={theme[kind]} stroke-width="1" />
      <circle cx={fixed(low.x)} cy={fixed(low.y)} r="4.5" fill={theme[kind]} data-part="low-point" />
      {text !== undefined && (
        <Label at={{ x: low.x, y: at(0, 0).y + 46 }} text={text} anchor="middle" tone="ink" theme={theme} />
      )}
    </g>
  );
}

/** A bowl below the ground from where it starts, as long and as deep as is known: else a line as long, or a notch where it starts. */
export function Cut({
  starts,
  length,
  depth,
  at,
  theme,
}: CutProps & { readonly at: At; readonly theme: Theme }): Picture | null {
  if (starts === undefined) return null;
  const kind = kindOf(starts);
  const from = at(starts.value, 0);
  const to = at(starts.value + (length?.value ?? 0), 0);
  // The curve reaches half as deep as the place that pulls it.
  const bottom = at(0, -2 * (depth?.value ?? 0)).y;
  const bowl = `${lineThrough([from])} Q ${fixed((from.x + to.x) / 2)} ${fixed(bottom)} ${fixed(to.x)} ${fixed(to.y)} Z`;
  return (
    <path
      d={length ? bowl : lineThrough([from, { x: from.x, y: from.y + 10 }])}
      fill={kind === 'entered' && length ? theme.faint : 'none'}
      fill-opacity="0.6"
      {...lineStyle(kind, theme)}
      stroke-width="1.6"
      data-id={starts.id}
      data-part={kind === 'entered' ? 'divot' : 'expected-divot'}
    />
  );
}
