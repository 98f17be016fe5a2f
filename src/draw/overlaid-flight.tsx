// Where the balls of two records come down, from above and to scale: shots, or the one flight that is known, each with its 95 % ellipse.
import { scaleLinear } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import { lowerFirst } from '../measure/quote.ts';
import { showValue } from '../measure/show.ts';
import { fromSI, toSI } from '../measure/units.ts';
import { fixed } from './geometry.ts';
import { sayingOf, valueOf, wordsOf, type Saying } from './known.ts';
import { landingsOf, type Landings } from './landings.ts';
import { Lines, linesHeight, notKnown } from './label.tsx';
import { wrapped } from './lettering.ts';
import { Letter, sideColour, sidesWords, type OverlayProps, type Side } from './overlaid.tsx';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'overlaid-flight-from-above';
const field = { left: 56, right: 16, top: 34, bottom: 40, width: 582 } as const;
const highest = 420;
/** Of the words of a distance, to each side. */
const sideRoom = 30;

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
  const notes = [
    ...sides.flatMap(({ side, analysis, landings }) =>
      landings ? [drawnWords(side, analysis, landings)] : [],
    ),
    ...sidesWords({ first, second }),
  ].map((note) => `${note}.`);
  const words = [
    wordsOf(
      sides.flatMap(({ side, analysis }) => sayings(side, analysis)),
      missing,
    ),
    ...notes,
  ].join(' ');
  const unit = unitOf(second);
  const { across, along, height: whole } = scalesFor(known, unit);
  const wide = field.width - field.left - field.right;
  const lines = [...notes.flatMap((note) => wrapped(note, wide, 11)), ...notKnown(missing, wide)];
  const drawn = known.length > 0 ? whole : 8;
  const height = drawn + linesHeight(lines) + 8;
  return (
    <Frame
      name={name}
      title="Both flights from above"
      words={words}
      width={field.width}
      height={height}
      theme={theme}
    >
      {known.length > 0 && <Grid {...{ across, along, unit, theme }} height={whole} />}
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
      <Lines lines={lines} x={field.left} y={drawn + 8} theme={theme} />
    </Frame>
  );
}

/** What is drawn of a side; where its shots come down elsewhere than its own entries say, both are told. */
function drawnWords(side: Side, analysis: Analysis, { places, ellipse }: Landings): string {
  const { registry } = analysis.subject;
  const [carry, finish] = ['flight.carry', 'flight.finish'].map((id) => registry.find(id)!);
  const centre = `${showValue(carry!, ellipse.ahead)} ahead, ${showValue(finish!, ellipse.right)}`;
  if (places.length <= 1) return `${side}: one flight, which comes down ${centre}`;
  const others = [carry!, finish!].flatMap((quantity): string[] => {
    const value = valueOf(analysis, quantity.id);
    const mean = analysis.subject.shots?.summary?.statistics.get(quantity.id);
    if (value?.kind !== 'entered' || mean === undefined) return [];
    const [entry, shown] = [value.value, mean.mean].map((one) => showValue(quantity, one));
    return entry === shown ? [] : [`${lowerFirst(quantity.title)} ${entry} (mean of the shots ${shown})`];
  });
  const entries = others.length === 0 ? '' : `; the record’s own entry is ${others.join(', ')}, not drawn`;
  return `${side}: ${places.length} shots, their centre ${centre}${entries}`;
}

/** In which the carry is shown. */
function unitOf({ subject: { registry } }: Analysis): string {
  const carry = registry.find('flight.carry');
  return carry?.shown ?? carry?.unit ?? 'm';
}

/** From metres to the picture; its ticks are round in the unit shown. */
type Scale = ((value: number) => number) & { ticks: (count: number) => readonly number[] };

function scaleOf(
  [from, to]: readonly [number, number],
  range: readonly [number, number],
  unit: string,
): Scale {
  const scale = scaleLinear([fromSI(from, unit), fromSI(to, unit)], range);
  return Object.assign((value: number) => scale(fromSI(value, unit)), {
    ticks: (count: number) => scale.ticks(count),
  });
}

/** Metres to the right along the picture and ahead up the picture, one metre the same in both. */
function scalesFor(
  known: readonly Landings[],
  shown: string,
): { readonly across: Scale; readonly along: Scale; readonly height: number } {
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
  const along = scaleOf([near, far], [height - field.bottom, field.top], shown);
  const across = scaleOf([middle - half, middle + half], [field.left, field.width - field.right], shown);
  return { across, along, height };
}

function Grid({
  across,
  along,
  height,
  unit,
  theme,
}: ReturnType<typeof scalesFor> & { readonly unit: string; readonly theme: Theme }): Picture {
  const line = across(0);
  const foot = height - field.bottom + 6;
  const sides = across
    .ticks(7)
    .map((value) => ({ value, x: across(toSI(value, unit)) }))
    .filter(({ x }) => x >= field.left + sideRoom && x <= field.width - sideRoom);
  return (
    <g>
      {along.ticks(5).map((value) => {
        const y = along(toSI(value, unit));
        return (
          <g key={value}>
            <path
              d={`M ${field.left} ${fixed(y)} H ${field.width - field.right}`}
              stroke={theme.faint}
              stroke-width="0.8"
            />
            <text x={field.left - 6} y={fixed(y + 3.5)} text-anchor="end" fill={theme.soft} font-size="10">
              {`${value} ${unit}`}
            </text>
          </g>
        );
      })}
      <path
        d={`M ${fixed(line)} ${foot} V ${field.top - 8}`}
        stroke={theme.soft}
        stroke-dasharray="10 4 2 4"
        data-part="target-line"
      />
      <text x={fixed(line)} y={field.top - 14} text-anchor="middle" fill={theme.soft} font-size="11">
        target
      </text>
      {sides.map(({ value, x }) => (
        <g key={value} data-part="side">
          <path d={`M ${fixed(x)} ${foot - 6} V ${foot}`} stroke={theme.soft} />
          <text x={fixed(x)} y={foot + 12} text-anchor="middle" fill={theme.soft} font-size="10">
            {value === 0 ? '0' : `${Math.abs(value)} ${unit} ${value < 0 ? 'left' : 'right'}`}
          </text>
        </g>
      ))}
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
