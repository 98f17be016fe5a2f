// The strikes of two records from above, laid over one another: path, face and start of the ball; draws what is known of each.
import type { Analysis } from '../analysis/result.ts';
import type { Value } from '../model/value.ts';
import { fixed, lineThrough, toward, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight } from './interval-rows.tsx';
import { valueOf, wordsOf } from './known.ts';
import { Lines, linesHeight, notKnown } from './label.tsx';
import { wrapped } from './lettering.ts';
import {
  Letter,
  missingWords,
  overlaidRows,
  sidesWords,
  sideStyle,
  type OverlayProps,
  type Side,
} from './overlaid.tsx';
import { Frame, lineStyle, type Picture } from './picture.tsx';
import { betweenIn } from './strike-above-notes.ts';
import type { Theme } from './theme.ts';

const name = 'overlaid-strike-from-above';
const ball: Place = { x: 106, y: 282 };
const field = { width: 212, height: 396 };
/** Of the words under the numbers. */
const besideWidth = 358;
const reach = { back: 84, ahead: 150, face: 26, start: 220 } as const;
const ids = {
  'delivery.path': 'path',
  'delivery.face': 'face',
  'flight.start': 'start of the ball',
} as const;

export function OverlaidAbove(props: OverlayProps): Picture {
  const { first, second, theme } = props;
  const rows = overlaidRows(
    ['delivery.path', 'delivery.face', 'delivery.face_to_path', 'flight.start'],
    props,
    'deg',
  );
  const missing = missingWords(ids, props);
  const notes = [
    ...sidesWords(props),
    ...(['first', 'second'] as const).flatMap((one) => {
      const note = betweenIn(props[one]);
      return note === undefined ? [] : [`${one === 'first' ? 'A' : 'B'}: ${note}`];
    }),
  ];
  const lines = [
    ...notKnown(missing, besideWidth),
    ...notes.flatMap((note) => wrapped(`${note}.`, besideWidth, 11)),
  ];
  const height = Math.max(field.height, rowsHeight(rows) + 45 + Math.max(15, linesHeight(lines)));
  return (
    <Frame
      name={name}
      title="Both strikes from above"
      words={[wordsOf(rows, missing), ...notes.map((note) => `${note}.`)].join(' ')}
      width={field.width + 370}
      height={height}
      theme={theme}
    >
      <path
        d={lineThrough([toward(ball, 0, -reach.back), toward(ball, 0, reach.start + 22)])}
        {...lineStyle('rule', theme)}
      />
      <text x={ball.x} y={ball.y - reach.start - 30} text-anchor="middle" fill={theme.soft} font-size="11">
        target
      </text>
      {(
        [
          ['A', first],
          ['B', second],
        ] as const
      ).map(([side, analysis]) => {
        const [path, face, start] = Object.keys(ids).map((id) => valueOf(analysis, id));
        return (
          <g key={side} data-side={side}>
            {path && <Path side={side} value={path} theme={theme} />}
            {face && <Face side={side} value={face} theme={theme} />}
            {start && <Start side={side} start={start} end={arrival(side, start, analysis)} theme={theme} />}
          </g>
        );
      })}
      {/* Above the lines of both, so that no line of the other strikes a letter out. */}
      <Letters side="A" analysis={first} theme={theme} />
      <Letters side="B" analysis={second} theme={theme} />
      <circle cx={ball.x} cy={ball.y} r="7" fill={theme.paper} stroke={theme.ink} stroke-width="1.5" />
      <IntervalRows
        rows={rows}
        tick={(value) => `${value}°`}
        ends={['left', 'right']}
        x={field.width}
        y={16}
        labelWidth={180}
        scaleWidth={170}
        picture={name}
        theme={theme}
      />
      <Lines lines={lines} x={field.width} y={height + 3 - linesHeight(lines)} theme={theme} />
    </Frame>
  );
}

interface PartProps {
  readonly side: Side;
  readonly theme: Theme;
}

/** At the tail of the path and where the ball arrives, where the lines lie apart. */
function Letters({ side, analysis, theme }: PartProps & { readonly analysis: Analysis }): Picture {
  const [path, start] = ['delivery.path', 'flight.start'].map((id) => valueOf(analysis, id));
  return (
    <g>
      {path && <Letter side={side} at={toward(ball, path.value, -tailOf(side))} theme={theme} />}
      {start && <Letter side={side} at={arrival(side, start, analysis)} theme={theme} />}
    </g>
  );
}

function tailOf(side: Side): number {
  return reach.back + (side === 'A' ? 0 : 18);
}

function Path({ side, value, theme }: PartProps & { readonly value: Value }): Picture {
  const style = sideStyle(side, value, theme);
  const end = toward(ball, value.value, reach.ahead);
  return (
    <g data-id={value.id} data-angle={degrees(value.value)}>
      <path d={lineThrough([toward(ball, value.value, -tailOf(side)), end])} {...style} />
      <path
        d={lineThrough([toward(end, value.value + 2.7, 9), end, toward(end, value.value - 2.7, 9)])}
        {...style}
        stroke-dasharray="none"
      />
    </g>
  );
}

function Face({ side, value, theme }: PartProps & { readonly value: Value }): Picture {
  const middle = toward(ball, value.value, -8);
  const [left, right] = [-1, 1].map((way) => toward(middle, value.value + (way * Math.PI) / 2, reach.face));
  return (
    <g data-id={value.id} data-angle={degrees(value.value)}>
      <path
        d={lineThrough([left!, right!])}
        {...sideStyle(side, value, theme)}
        stroke-width={side === 'A' ? 2.5 : 5}
      />
    </g>
  );
}

/** Where the ball is drawn to: it comes down in the direction start + asin(curve / carry). */
function arrival(side: Side, start: Value, analysis: Analysis): Place {
  const share = shareOf(valueOf(analysis, 'flight.curve'), valueOf(analysis, 'flight.carry'));
  return toward(ball, start.value + Math.asin(share), lengthOf(side));
}

function lengthOf(side: Side): number {
  return reach.start - (side === 'A' ? 0 : 22);
}

/** Leaves along its start. */
function Start({
  side,
  start,
  end,
  theme,
}: PartProps & { readonly start: Value; readonly end: Place }): Picture {
  const bend = toward(ball, start.value, lengthOf(side) / 2);
  return (
    <g data-id={start.id} data-angle={degrees(start.value)}>
      <path
        d={`M ${ball.x} ${ball.y} Q ${fixed(bend.x)} ${fixed(bend.y)} ${fixed(end.x)} ${fixed(end.y)}`}
        {...sideStyle(side, start, theme)}
        stroke-width={side === 'A' ? 1 : 1.8}
      />
    </g>
  );
}

function shareOf(curve: Value | undefined, carry: Value | undefined): number {
  if (curve === undefined || carry === undefined || !(carry.value > 0)) return 0;
  return Math.max(-1, Math.min(1, curve.value / carry.value));
}

function degrees(angle: number): number {
  return fixed((angle * 180) / Math.PI);
}
