// The picture of one planned change: as it is now on the left, as it is aimed at on the right, with the numbers below; computes nothing.
import type { HandoutChange } from '../../analysis/handout.ts';
import type { Analysis } from '../../analysis/result.ts';
import { fitted, widthOf } from '../lettering.ts';
import { fixed, type Place } from '../geometry.ts';
import { Frame, type Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import { FigureChange } from './figure-change.tsx';
import { shapeOf } from './shape-of.ts';
import type { Speech } from './speech.ts';
import { ArcAndGround, enlargementOf, isEnlarged, PathAndFace, Scale } from './strike-change.tsx';
import { TargetMark, wayToTarget } from './target-mark.tsx';

const width = 330;
const half = width / 2;
/** Of the numbers: as large as both of them have room for. */
const letters = { least: 10, inTwo: 12, most: 15 } as const;
/** How much wider letters are in bold: judgement, of usual fonts. */
const bold = 1.12;

export function ChangePicture({
  change,
  analysis,
  name,
  speech,
  theme,
}: {
  readonly change: HandoutChange;
  readonly analysis: Analysis;
  readonly name: string;
  readonly speech: Speech;
  readonly theme: Theme;
}): Picture {
  const { quantity, now, aim, then } = change;
  const { say, placed, round, window } = speech;
  const seen = shapeOf(quantity) ?? 'scale';
  const shape = seen === 'figure' && then === undefined ? 'scale' : seen;
  const enlargement = enlargementOf([analysis, then]);
  const note =
    isEnlarged(shape) && enlargement !== 1 ? say('larger', { times: speech.number(enlargement) }) : undefined;
  const base = { figure: 128, above: 128, front: 64, scale: 30 }[shape];
  const numbers = {
    now: now === undefined ? say('unknown') : round(quantity, now.value),
    aim: aim === undefined ? say('unknown') : window(quantity, aim.from, aim.to),
  };
  const sentenceOf = (kind: 'now' | 'aim'): string => `${say(kind)} ${numbers[kind]}`;
  const fitting = (now: string, aim: string): number =>
    (half - 8) / Math.max(widthOf(now, 1), bold * widthOf(aim, 1));
  const inLine = fitting(sentenceOf('now'), sentenceOf('aim'));
  const isWhole = inLine >= letters.least;
  const linesOf = (kind: 'now' | 'aim'): readonly string[] =>
    isWhole ? [sentenceOf(kind)] : [say(kind), numbers[kind]];
  const wanted = isWhole ? inLine : fitting(numbers.now, numbers.aim);
  const size = fixed(Math.max(letters.least, Math.min(isWhole ? letters.most : letters.inTwo, wanted)));
  const below = isWhole ? 0 : letters.inTwo + 2;
  const height = base + (note === undefined ? 44 : 62) + below;
  const side = (kind: 'now' | 'aim'): Picture | null => {
    const middle = kind === 'now' ? half / 2 : half + half / 2;
    const whose = kind === 'now' ? analysis : then;
    if (shape === 'scale' || whose === undefined) {
      const value = kind === 'now' ? now?.value : aim?.from;
      const to = kind === 'aim' ? aim?.to : undefined;
      return (
        <Scale
          {...{ quantity, kind, theme, value }}
          {...(to === undefined ? {} : { to })}
          at={{ x: middle, y: base - 8 }}
        />
      );
    }
    const props = { analysis: whose, quantity, kind, theme };
    if (shape === 'figure')
      return <FigureChange {...props} at={figureAt(quantity.key, middle, base)} size={118} picture={name} />;
    if (shape === 'above')
      return <PathAndFace {...props} {...{ enlargement }} at={{ x: middle, y: base - 36 }} />;
    return <ArcAndGround {...props} {...{ enlargement }} at={{ x: middle, y: base - 24 }} />;
  };
  return (
    <Frame
      name={name}
      title={placed(quantity)}
      words={[
        say('changeWords', { name: placed(quantity), ...numbers }),
        ...(note === undefined ? [] : [`${note}.`]),
      ].join(' ')}
      width={width}
      height={height}
      theme={theme}
    >
      {side('now')}
      {side('aim')}
      {shape !== 'scale' &&
        [half / 2, half + half / 2].map((middle) => (
          <TargetMark
            key={middle}
            way={wayToTarget(shape, quantity, analysis)}
            at={markAt(wayToTarget(shape, quantity, analysis), middle, base)}
            word={say('target')}
            theme={theme}
          />
        ))}
      <path
        d={`M ${half - 7} ${fixed(base / 2 - 9)} l 12 9 l -12 9`}
        stroke={theme.soft}
        stroke-width="2.4"
      />
      {note !== undefined && (
        <text x={half} y={height - 32 - below} text-anchor="middle" font-size="12" fill={theme.soft}>
          {fitted(note, width, 12)}
        </text>
      )}
      {(['now', 'aim'] as const).flatMap((kind) =>
        linesOf(kind).map((line, i) => (
          <text
            key={`${kind} ${i}`}
            x={kind === 'now' ? half / 2 : half + half / 2}
            y={height - 8 - (i === 0 ? below : 0)}
            text-anchor="middle"
            font-size={size}
            font-weight={kind === 'aim' ? 600 : 400}
            fill={kind === 'aim' ? theme.goal : theme.ink}
          >
            {fitted(line, (half - 6) / (kind === 'aim' ? bold : 1), size)}
          </text>
        )),
      )}
    </Frame>
  );
}

/** At the head of the line to the target; else below the ground, on the target's side. */
function markAt(way: ReturnType<typeof wayToTarget>, middle: number, base: number): Place {
  return way === 'up'
    ? { x: middle + 24, y: base - 108 }
    : { x: middle + (way === 'right' ? 74 : -74), y: base + 12 };
}

/** Feet are seen from above, below the ball of the plan; a body stands on the ground. */
function figureAt(key: string, middle: number, base: number): { readonly x: number; readonly y: number } {
  const isFeet = /^(stance_|ball_position|lead_foot|trail_foot|lead_pressure)/.test(key);
  return isFeet ? { x: middle, y: base - 12 } : { x: middle + 12, y: base - 4 };
}
