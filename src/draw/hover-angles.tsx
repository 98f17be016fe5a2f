// Angles at the ball, small, for a hover: lines against a line that they are measured from, each with its words; knows no quantity.
import { fixed, lineThrough, ringSector, toward, type Place } from './geometry.ts';
import { card, HoverCard } from './hover-card.tsx';
import { Callouts, Label, type Callout } from './label.tsx';
import { lineStyle, type LineKind, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface AngleLine {
  readonly id: string;
  /** From the line of reference, rad, toward the lower edge positive. */
  readonly angle: number;
  readonly u: number | null;
  readonly kind: LineKind;
  readonly text: string;
  /** An arrow through the ball, or what stands square to its line behind the ball. */
  readonly shape: 'arrow' | 'bar';
  /** What the hover is about is drawn stronger; an expectation is what the other entries say of that. */
  readonly role: 'own' | 'beside' | 'expectation';
}

/** Between two lines, named at its middle. */
export interface AngleBetween {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly kind: LineKind;
}

interface Angles {
  readonly name: string;
  readonly title: string;
  readonly words: string;
  readonly lines: readonly AngleLine[];
  readonly between: AngleBetween | undefined;
  /** Where the target is: 1 on the right of the picture, −1 on its left. */
  readonly target: 1 | -1;
  /** The ground under the ball, where it is seen from the front. */
  readonly seen: 'from above' | 'from the front';
  readonly theme: Theme;
}

/** Angles up to this one are drawn three times as large, since a few degrees are what matters; rad. */
const small = (10 * Math.PI) / 180;
const larger = 3;
/** No angle at the ball is drawn steeper than this, rad. */
const steepest = (75 * Math.PI) / 180;
/** What the others expect reaches farther than what was entered, so that it is seen where both lie on one line. */
const reach = { ahead: 72, expected: 84, back: 24, bar: 15, ball: 6, aside: 40 } as const;
const y = 50;
const column = 124;
const middleOfBetween = 40;

/** Undefined where nothing can be drawn of such angles. */
export function HoverAngles({
  name,
  title,
  words,
  lines,
  between,
  target,
  seen,
  theme,
}: Angles): Picture | undefined {
  const widest = Math.max(...lines.map(({ angle }) => Math.abs(angle)));
  if (lines.length === 0 || !(widest <= steepest)) return undefined;
  const factor = widest <= small ? larger : 1;
  const ball: Place = { x: target === 1 ? 34 : card.width - 34, y };
  const along = (angle: number): number =>
    target * (Math.PI / 2 + Math.max(-steepest, Math.min(steepest, angle * factor)));
  const end = ({ angle, role }: Pick<AngleLine, 'angle' | 'role'>): Place =>
    toward(ball, along(angle), lengthAt(angle * factor, role));
  const edge = target === 1 ? card.width - 8 : 8;
  const callouts: readonly Callout[] = [
    ...lines.map((line) => ({ text: line.text, end: end(line) })),
    ...(between
      ? [{ text: between.text, end: toward(ball, along((between.from + between.to) / 2), middleOfBetween) }]
      : []),
  ].map((one) => ({ ...one, side: target === 1 ? 'right' : 'left' }));
  return (
    <HoverCard name={name} title={title} words={words} theme={theme}>
      <path
        d={lineThrough([
          { x: ball.x - target * reach.back, y },
          { x: ball.x + target * (reach.expected + 2), y },
        ])}
        {...lineStyle('rule', theme)}
      />
      {seen === 'from the front' && (
        <path
          d={lineThrough([
            { x: ball.x - target * reach.back, y: y + reach.ball },
            { x: ball.x + target * reach.ahead, y: y + reach.ball },
          ])}
          stroke={theme.ink}
          stroke-width="1.2"
          data-part="ground"
        />
      )}
      {lines.map(
        ({ id, angle, u, role }) =>
          role === 'own' &&
          u !== null &&
          u > 0 && (
            <path
              key={id}
              d={ringSector(ball, [along(angle - u), along(angle + u)], [0, lengthAt(angle * factor, role)])}
              fill={theme.faint}
              fill-opacity="0.5"
            />
          ),
      )}
      {between && (
        <path
          d={ringSector(
            ball,
            [along(between.from), along(between.to)],
            [middleOfBetween - 4, middleOfBetween + 4],
          )}
          {...lineStyle(between.kind, theme)}
          fill={theme.faint}
          data-id={between.id}
        />
      )}
      {[...lines].sort(ownLast).map((line) => (
        <Line key={`${line.id} ${line.kind}`} line={line} ball={ball} end={end} along={along} theme={theme} />
      ))}
      <circle
        cx={ball.x}
        cy={ball.y}
        r={reach.ball}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.5"
      />
      <Callouts
        callouts={callouts}
        left={card.width - column}
        right={column}
        from={12}
        to={card.height - 26}
        width={card.width - column - 6}
        theme={theme}
      />
      <Label
        at={{ x: target === 1 ? 8 : card.width - 8, y: card.height - 7 }}
        text={factor === 1 ? `${seen}, true angles` : `${seen}, angles × ${factor}`}
        anchor={target === 1 ? 'start' : 'end'}
        theme={theme}
      />
      <Label
        at={{ x: edge, y: card.height - 7 }}
        text={target === 1 ? 'target →' : '← target'}
        anchor={target === 1 ? 'end' : 'start'}
        theme={theme}
      />
    </HoverCard>
  );
}

function ownLast(one: AngleLine, other: AngleLine): number {
  return Number(one.role === 'own') - Number(other.role === 'own');
}

/** Of a line, so that a steep one ends before the words below. */
function lengthAt(drawn: number, role: AngleLine['role']): number {
  const sine = Math.sin(Math.min(steepest, Math.abs(drawn)));
  return Math.min(role === 'expectation' ? reach.expected : reach.ahead, reach.aside / Math.max(sine, 0.01));
}

function Line({
  line,
  ball,
  end,
  along,
  theme,
}: {
  readonly line: AngleLine;
  readonly ball: Place;
  readonly end: (line: AngleLine) => Place;
  readonly along: (angle: number) => number;
  readonly theme: Theme;
}): Picture {
  const { id, angle, kind, shape, role } = line;
  const style = { ...lineStyle(kind, theme), 'stroke-width': role === 'own' ? 2.6 : 1.4 };
  const direction = along(angle);
  const tip = end(line);
  const named = role === 'expectation' ? { 'data-part': 'others' } : { 'data-id': id };
  const degrees = fixed((angle * 180) / Math.PI);
  if (shape === 'bar') {
    const middle = toward(ball, direction, -reach.ball - 3);
    const ends = [-1, 1].map((side) => toward(middle, direction + (side * Math.PI) / 2, reach.bar));
    return (
      <g {...named} data-angle={degrees}>
        <path d={lineThrough(ends)} {...style} stroke-width="4.5" stroke-dasharray="none" />
        <path d={lineThrough([middle, tip])} {...style} stroke-width={role === 'own' ? 1.8 : 1.2} />
      </g>
    );
  }
  return (
    <g {...named} data-angle={degrees}>
      <path d={lineThrough([toward(ball, direction, -reach.back), tip])} {...style} />
      <path
        d={lineThrough([toward(tip, direction + 2.7, 9), tip, toward(tip, direction - 2.7, 9)])}
        {...style}
        stroke-dasharray="none"
      />
    </g>
  );
}
