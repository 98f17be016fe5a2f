// The face of a club to scale, as the ball sees it, with the spot that was struck; its outline is a plain one of the kind of club.
import { curveCatmullRomClosed, line } from 'd3-shape';
import type { Value } from '../model/value.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { kindOf } from './known.ts';
import { Label } from './label.tsx';
import { EdgeArrow, offScale, type Way } from './off-scale.tsx';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** Units of the picture for a metre. */
const scale = 1650;

/** Round the middle of the face, m: toward the toe, up. Sizes are common practice, no source. */
type Corner = readonly [number, number];
const outlines: Readonly<Record<'wood' | 'blade', readonly Corner[]>> = {
  wood: [
    [-0.048, 0.004],
    [-0.03, 0.022],
    [0.002, 0.028],
    [0.034, 0.022],
    [0.049, 0.002],
    [0.034, -0.02],
    [0, -0.025],
    [-0.034, -0.019],
  ],
  blade: [
    [-0.037, -0.001],
    [-0.022, 0.005],
    [0.024, 0.027],
    [0.035, 0.027],
    [0.041, 0.014],
    [0.038, -0.01],
    [0.029, -0.021],
    [0, -0.023],
    [-0.03, -0.019],
    [-0.037, -0.011],
  ],
};

const outline = line<Place>()
  .x(({ x }) => x)
  .y(({ y }) => y)
  .curve(curveCatmullRomClosed)
  .digits(2);

export function ClubFace({
  across,
  height,
  clubKind,
  hand,
  middle,
  theme,
}: {
  readonly across: Value | undefined;
  readonly height: Value | undefined;
  readonly clubKind: string | undefined;
  readonly hand: 'left' | 'right' | undefined;
  /** Where the middle of the face is. */
  readonly middle: Place;
  readonly theme: Theme;
}): Picture {
  const toe = hand === 'left' ? 1 : -1;
  const at = (toward: number, up: number): Place => ({
    x: middle.x + toe * toward * scale,
    y: middle.y - up * scale,
  });
  const isWood = clubKind !== undefined && /wood|driver|hybrid/.test(clubKind);
  const corners = outlines[isWood ? 'wood' : 'blade'].map(([x, y]) => at(x, y));
  return (
    <g data-part="face">
      <path d={outline(corners) ?? ''} fill={theme.faint} fill-opacity="0.25" stroke={theme.soft} />
      {!isWood && <Grooves at={at} theme={theme} />}
      <path
        d={`${lineThrough([at(-0.003, 0), at(0.003, 0)])} ${lineThrough([at(0, -0.003), at(0, 0.003)])}`}
        stroke={theme.soft}
      />
      {(across ?? height) && <Spot across={across} height={height} at={at} theme={theme} />}
      <Label at={{ x: middle.x + toe * 70, y: middle.y + 54 }} text="toe" anchor="middle" theme={theme} />
      <Label at={{ x: middle.x - toe * 70, y: middle.y + 54 }} text="heel" anchor="middle" theme={theme} />
      <path
        d={lineThrough([
          { x: middle.x - 0.01 * scale, y: middle.y + 51 },
          { x: middle.x + 0.01 * scale, y: middle.y + 51 },
        ])}
        stroke={theme.soft}
        data-part="face-scale"
      />
      <Label at={{ x: middle.x, y: middle.y + 64 }} text="2 cm" anchor="middle" theme={theme} />
    </g>
  );
}

function Grooves({
  at,
  theme,
}: {
  readonly at: (toward: number, up: number) => Place;
  readonly theme: Theme;
}): Picture {
  const heights = [-0.015, -0.0095, -0.004, 0.0015, 0.007];
  return (
    <path
      d={heights.map((up) => lineThrough([at(-0.014, up), at(0.026, up)])).join(' ')}
      stroke={theme.faint}
      stroke-width="0.8"
    />
  );
}

/** From the middle of the face, m: half a face beyond the edge there is no face any more. */
const farthest = { toward: 0.05, up: 0.028 };

function within(value: number, most: number): number {
  return Math.max(-most, Math.min(most, value));
}

/** The way in which it lies farthest off, in shares of what is drawn; undefined where it lies on the face or near it. */
function wayOff(toward: number, up: number, isToeRight: boolean): Way | undefined {
  if (Math.max(Math.abs(toward), Math.abs(up)) <= 1) return undefined;
  if (Math.abs(up) > Math.abs(toward)) return up > 0 ? 'up' : 'down';
  return toward > 0 === isToeRight ? 'right' : 'left';
}

/** A cross where the middle of the ball's mark is, and how sure that is: one standard uncertainty each way. */
function Spot({
  across,
  height,
  at,
  theme,
}: {
  readonly across: Value | undefined;
  readonly height: Value | undefined;
  readonly at: (toward: number, up: number) => Place;
  readonly theme: Theme;
}): Picture {
  const kind = [across, height].some((value) => value && kindOf(value) === 'entered')
    ? 'entered'
    : 'expected';
  const [toward, up] = [across?.value ?? 0, height?.value ?? 0];
  const { x, y } = at(within(toward, farthest.toward), within(up, farthest.up));
  const way = wayOff(toward / farthest.toward, up / farthest.up, at(1, 0).x > at(0, 0).x);
  if (way !== undefined) {
    return (
      <g data-id={(across ?? height)?.id}>
        <EdgeArrow at={{ x, y }} way={way} colour={theme[kind]} />
        <Label
          at={{ x: at(0, 0).x, y: at(0, 0).y + 4 }}
          text={`struck spot ${offScale}`}
          anchor="middle"
          tone="ink"
          isBoxed
          theme={theme}
        />
      </g>
    );
  }
  if (across === undefined || height === undefined) {
    // Of one number alone a line is known and no spot.
    const d = across
      ? `M ${fixed(x)} ${fixed(y - 34)} L ${fixed(x)} ${fixed(y + 34)}`
      : `M ${fixed(x - 52)} ${fixed(y)} L ${fixed(x + 52)} ${fixed(y)}`;
    return <path d={d} {...lineStyle(kind, theme)} data-id={(across ?? height)?.id} />;
  }
  const [rx, ry] = [across, height].map((value) => Math.min(0.02, value.u ?? 0) * scale);
  return (
    <g data-id={across.id}>
      {rx! > 0 && ry! > 0 && (
        <ellipse
          cx={fixed(x)}
          cy={fixed(y)}
          rx={fixed(rx!)}
          ry={fixed(ry!)}
          fill={theme.paper}
          fill-opacity="0.7"
          {...lineStyle(kind, theme)}
          stroke-width="1.4"
        />
      )}
      <circle cx={fixed(x)} cy={fixed(y)} r="2.2" fill={theme[kind]} data-part="struck" />
    </g>
  );
}
