// The strikes of two records from the front, laid over one another: arc and low point above one ground, to scale; draws what is known of each.
import type { Analysis } from '../analysis/result.ts';
import { BallOnGround } from './ball-on-ground.tsx';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight } from './interval-rows.tsx';
import { valueOf, wordsOf } from './known.ts';
import { Lines, linesHeight, notKnown } from './label.tsx';
import { wrapped } from './lettering.ts';
import {
  handsOf,
  Letter,
  mirrorWords,
  missingWords,
  overlaidRows,
  sideColour,
  sideStyle,
  type OverlayProps,
  type Side,
} from './overlaid.tsx';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'overlaid-strike-from-front';
/** Units of the picture for a metre; both ways, so that angles are true. */
const scale = 900;
const field = { width: 582, height: 190 };
const origin: Place = { x: 265, y: 110 };
/** As far to each side as there is room, m. */
const reach = 0.26;
const ids = {
  'delivery.low_point.ahead': 'low point',
  'delivery.arc.radius': 'radius of the arc',
  'delivery.arc.inclination': 'inclination of the arc',
} as const;

export function OverlaidFront(props: OverlayProps): Picture {
  const { first, second, theme } = props;
  const target = handsOf(props)[1] === 'left' ? -1 : 1;
  const at = (x: number, up: number): Place => ({
    x: origin.x + target * x * scale,
    y: origin.y - up * scale,
  });
  const rows = overlaidRows(['delivery.low_point.ahead', 'ground.divot.starts'], props, 'cm');
  const missing = missingWords(ids, props);
  const notes = mirrorWords(props);
  const lines = [
    ...notKnown(missing, field.width - 40),
    ...notes.flatMap((note) => wrapped(`${note}.`, field.width - 40, 11)),
  ];
  const below = field.height + rowsHeight(rows);
  return (
    <Frame
      name={name}
      title="Both strikes from the front"
      words={[wordsOf(rows, missing), ...notes.map((note) => `${note}.`)].join(' ')}
      width={field.width}
      height={below + 9 + Math.max(15, linesHeight(lines))}
      theme={theme}
    >
      <path
        d={lineThrough([at(-reach - 0.03, 0), at(reach + 0.06, 0)])}
        stroke={theme.ink}
        stroke-width="1.2"
      />
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <Swing side="A" analysis={first} at={at} theme={theme} />
      <Swing side="B" analysis={second} at={at} theme={theme} />
      {/* Above the lines of both, so that no line of the other strikes a letter out. */}
      <LowPointLetter side="A" analysis={first} at={at} theme={theme} />
      <LowPointLetter side="B" analysis={second} at={at} theme={theme} />
      <path
        d={`M 20 ${field.height - 20} l 0 4 l ${0.1 * scale} 0 l 0 -4`}
        stroke={theme.soft}
        data-part="scale"
      />
      <text x={20 + 0.05 * scale} y={field.height - 21} text-anchor="middle" fill={theme.soft} font-size="10">
        10 cm
      </text>
      <text
        x={target === 1 ? field.width - 8 : 8}
        y="20"
        text-anchor={target === 1 ? 'end' : 'start'}
        fill={theme.soft}
        font-size="11"
      >
        {target === 1 ? 'target →' : '← target'}
      </text>
      <IntervalRows
        rows={rows}
        positive={target === 1 ? 'rightward' : 'leftward'}
        tick={(value) => `${value} cm`}
        ends={['behind', 'ahead']}
        x={20}
        y={field.height}
        labelWidth={190}
        scaleWidth={350}
        picture={name}
        theme={theme}
      />
      <Lines lines={lines} x={20} y={below + 16} theme={theme} />
    </Frame>
  );
}

/** So far below its low point a side has its letter, m. */
const markedAt: Readonly<Record<Side, number>> = { A: 0.022, B: 0.042 };

function LowPointLetter({ side, analysis, at, theme }: SwingProps): Picture | null {
  const [ahead, depth] = ['delivery.low_point.ahead', 'delivery.low_point.depth'].map((id) =>
    valueOf(analysis, id),
  );
  if (ahead === undefined) return null;
  return <Letter side={side} at={at(ahead.value, -(depth?.value ?? 0) - markedAt[side])} theme={theme} />;
}

interface SwingProps {
  readonly side: Side;
  readonly analysis: Analysis;
  readonly at: (x: number, up: number) => Place;
  readonly theme: Theme;
}

/** A circle in its plane, seen from the front: ahead = a + R sin θ, above its lowest point R (1 − cos θ) sin i. */
function Swing({ side, analysis, at, theme }: SwingProps): Picture | null {
  const [ahead, depth, radius, inclination] = [
    'delivery.low_point.ahead',
    'delivery.low_point.depth',
    'delivery.arc.radius',
    'delivery.arc.inclination',
  ].map((id) => valueOf(analysis, id));
  if (ahead === undefined) return null;
  const lowest = -(depth?.value ?? 0);
  const places: Place[] = [];
  if (radius !== undefined && inclination !== undefined)
    for (let step = 0; step <= 48; step++) {
      const x = -reach + (step / 48) * 2 * reach;
      const sine = (x - ahead.value) / radius.value;
      if (Math.abs(sine) < 1)
        places.push(
          at(x, lowest + radius.value * (1 - Math.sqrt(1 - sine * sine)) * Math.sin(inclination.value)),
        );
    }
  const low = at(ahead.value, lowest);
  const mark = at(ahead.value, lowest - markedAt[side]);
  const spread = (ahead.u ?? 0) * scale;
  return (
    <g data-side={side}>
      {places.length > 1 && (
        <path
          d={lineThrough(places)}
          {...sideStyle(side, { ...ahead, kind: 'expected' }, theme)}
          data-part="arc"
        />
      )}
      <g data-id={ahead.id}>
        <path d={lineThrough([low, mark])} {...sideStyle(side, ahead, theme)} />
        <path
          d={`M ${fixed(mark.x - spread)} ${fixed(mark.y)} L ${fixed(mark.x + spread)} ${fixed(mark.y)}`}
          {...sideStyle(side, ahead, theme)}
        />
        <circle
          cx={fixed(low.x)}
          cy={fixed(low.y)}
          r="4"
          fill={sideColour(side, theme)}
          data-part="low-point"
        />
      </g>
    </g>
  );
}
