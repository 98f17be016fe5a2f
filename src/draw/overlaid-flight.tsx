// Where the balls of two records come down, from above and to scale: shots, or the one flight that is known, each with its 95 % ellipse.
import { scaleLinear } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import { fixed } from './geometry.ts';
import { sayingOf, valueOf, wordsOf, type Saying } from './known.ts';
import { landingsOf, type Landings } from './landings.ts';
import { Letter, sideColour, type OverlayProps, type Side } from './overlaid.tsx';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'overlaid-flight-from-above';
const field = { left: 56, right: 16, top: 34, bottom: 40, width: 582 } as const;
const highest = 420;
const emptyHeight = 36;

export function OverlaidFlight({ first, second, theme }: OverlayProps): Picture {
  const sides = (
    [
      ['A', first],
      ['B', second],
    ] as const
  ).map(([side, analysis]) => ({ side, analysis, landings: landingsOf(analysis) }));
  const known = sides.flatMap(({ landings }) => landings ?? []);
  const missing = sides.flatMap(({ side, landings }) =>
    landings ? [] : [`where the ball comes down (${side})`],
  );
  const words = wordsOf(
    sides.flatMap(({ side, analysis }) => sayings(side, analysis)),
    missing,
  );
  const { across, along, height: whole } = scalesFor(known);
  const height = known.length > 0 ? whole : emptyHeight;
  return (
    <Frame
      name={name}
      title="Both flights from above"
      words={words}
      width={field.width}
      height={height}
      theme={theme}
    >
      {known.length > 0 && <Grid across={across} along={along} height={height} theme={theme} />}
      {sides.map(
        ({ side, landings }) =>
          landings && <Marks key={side} {...{ side, landings, across, along, theme }} />,
      )}
      {/* Above the marks of both, so that no line of the other strikes a letter out. */}
      {sides.map(
        ({ side, landings }) =>
          landings && (
            <Letter
              key={side}
              side={side}
              at={{ x: across(landings.ellipse.right), y: along(landings.ellipse.ahead) }}
              theme={theme}
            />
          ),
      )}
      {missing.length > 0 && (
        <text x={field.left} y={height - 8} fill={theme.soft} font-size="11">
          {`Not known: ${missing.join(', ')}`}
        </text>
      )}
    </Frame>
  );
}

type Scale = (value: number) => number;

/** Metres to the right along the picture and ahead up the picture, one metre the same in both. */
function scalesFor(known: readonly Landings[]): {
  readonly across: Scale;
  readonly along: Scale & { ticks: (count: number) => number[] };
  readonly height: number;
} {
  const edges = known.flatMap(({ places, ellipse: { long } }) =>
    places.flatMap(({ right, ahead }) => [
      { right: right - long, ahead: ahead - long },
      { right: right + long, ahead: ahead + long },
    ]),
  );
  const rights = [...edges.map(({ right }) => right), -5, 5];
  const aheads = edges.length === 0 ? [0, 10] : edges.map(({ ahead }) => ahead);
  const [left, right] = [Math.min(...rights), Math.max(...rights)];
  const [near, far] = [Math.min(...aheads) - 2, Math.max(...aheads) + 2];
  const room = field.width - field.left - field.right;
  const unit = Math.min(room / (right - left), (highest - field.top - field.bottom) / (far - near));
  const height = field.top + (far - near) * unit + field.bottom;
  const middle = (left + right) / 2;
  const half = room / 2 / unit;
  const along = scaleLinear([near, far], [height - field.bottom, field.top]);
  const across = scaleLinear([middle - half, middle + half], [field.left, field.width - field.right]);
  return { across, along, height };
}

function Grid({
  across,
  along,
  height,
  theme,
}: ReturnType<typeof scalesFor> & { readonly theme: Theme }): Picture {
  const line = across(0);
  return (
    <g>
      {along.ticks(5).map((value) => (
        <g key={value}>
          <path
            d={`M ${field.left} ${fixed(along(value))} H ${field.width - field.right}`}
            stroke={theme.faint}
            stroke-width="0.8"
          />
          <text
            x={field.left - 6}
            y={fixed(along(value) + 3.5)}
            text-anchor="end"
            fill={theme.soft}
            font-size="10"
          >
            {`${value} m`}
          </text>
        </g>
      ))}
      <path
        d={`M ${fixed(line)} ${height - field.bottom + 6} V ${field.top - 8}`}
        stroke={theme.soft}
        stroke-dasharray="10 4 2 4"
        data-part="target-line"
      />
      <text x={fixed(line)} y={field.top - 14} text-anchor="middle" fill={theme.soft} font-size="11">
        target
      </text>
      <text x={field.left} y={height - field.bottom + 18} fill={theme.soft} font-size="10">
        ← left
      </text>
      <text
        x={field.width - field.right}
        y={height - field.bottom + 18}
        text-anchor="end"
        fill={theme.soft}
        font-size="10"
      >
        right →
      </text>
    </g>
  );
}

function Marks({
  side,
  landings: { places, ellipse },
  across,
  along,
  theme,
}: {
  readonly side: Side;
  readonly landings: Landings;
  readonly across: Scale;
  readonly along: Scale;
  readonly theme: Theme;
}): Picture {
  const colour = sideColour(side, theme);
  const [x, y] = [across(ellipse.right), along(ellipse.ahead)];
  const unit = Math.abs(across(1) - across(0));
  return (
    <g data-side={side}>
      {places.length > 1 &&
        places.map(({ right, ahead }, i) => (
          <circle
            key={i}
            cx={fixed(across(right))}
            cy={fixed(along(ahead))}
            r="2.6"
            fill={side === 'B' ? colour : theme.paper}
            stroke={colour}
            stroke-width="1.2"
          />
        ))}
      <ellipse
        cx={fixed(x)}
        cy={fixed(y)}
        rx={fixed(ellipse.short * unit)}
        ry={fixed(ellipse.long * unit)}
        transform={`rotate(${fixed((ellipse.direction * 180) / Math.PI)} ${fixed(x)} ${fixed(y)})`}
        stroke={colour}
        stroke-width={side === 'A' ? 1.3 : 2.4}
        stroke-dasharray={places.length > 1 ? undefined : '2 3'}
        data-part="ellipse"
      />
    </g>
  );
}

function sayings(side: Side, analysis: Analysis): readonly Saying[] {
  const { registry, shots } = analysis.subject;
  const shot = shots?.summary;
  return ['flight.carry', 'flight.finish'].flatMap((id): Saying[] => {
    const [mean, quantity] = [shot?.statistics.get(id), registry.find(id)];
    if (mean !== undefined && mean.count > 1 && quantity !== undefined)
      return [
        {
          name: `${side} ${quantity.title}, ${mean.count} shots`,
          number: showValue(quantity, mean.mean, mean.sd),
        },
      ];
    const value = valueOf(analysis, id);
    if (value === undefined) return [];
    const saying = sayingOf(value, registry);
    return [{ ...saying, name: `${side} ${saying.name}` }];
  });
}
