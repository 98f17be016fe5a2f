// What a handout without a planned change shows in their place: what was measured, drawn where it can be, and what a fuller record would show; in words of its language.
import type { Gap, Handout } from '../../analysis/handout.ts';
import type { Analysis } from '../../analysis/result.ts';
import type { Quantity } from '../../registry/quantity.ts';
import { valueOf } from '../known.ts';
import { fixed } from '../geometry.ts';
import { fitted, widthOf } from '../lettering.ts';
import { Frame, type Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import { FigureChange } from './figure-change.tsx';
import { shapeOf, type Shape } from './shape-of.ts';
import { most, shortened, someOf } from './shortened.ts';
import type { Speech } from './speech.ts';
import type { TextKey } from './texts.ts';
import { ArcAndGround, enlargementOf, isEnlarged, PathAndFace } from './strike-change.tsx';
import { isOutside } from '../../registry/registry.ts';
import { TargetMark, wayToTarget } from './target-mark.tsx';

export interface Measured {
  readonly lines: readonly string[];
  /** Undefined where none of it can be drawn. */
  readonly picture: ((theme: Theme) => Picture) | undefined;
  /** Each what a fuller record would show. */
  readonly fuller: readonly string[];
}

interface Entered {
  readonly quantity: Quantity;
  readonly name: string;
  readonly number: string;
}

/** Undefined where changes are planned: those have the room. */
export function measuredOf(handout: Handout, speech: Speech, hasFlight: boolean): Measured | undefined {
  if (handout.changes.length > 0) return undefined;
  const { say } = speech;
  const { shown } = entered(handout.analysis, speech);
  const further = shown.length - most.measured;
  const drawn = cellsOf(shown);
  return {
    lines: [
      ...shown.slice(0, most.measured).map(sentenceOf),
      ...(further > 0 ? [say('others', { count: String(further) })] : []),
      ...impossibleOf(handout, speech),
    ],
    picture:
      drawn.length === 0
        ? undefined
        : (theme) => <MeasuredPicture {...{ drawn, analysis: handout.analysis, speech, theme }} />,
    fuller: [
      ...(hasFlight ? [] : [say('fuller.flight')]),
      ...fullerGaps.filter(([gap]) => handout.gaps.includes(gap)).map(([, key]) => say(key)),
    ],
  };
}

/** What no body, club or ball can do is told and not shown. */
export function impossibleOf({ analysis }: Handout, speech: Speech): readonly string[] {
  const { impossible } = entered(analysis, speech);
  return impossible.length === 0
    ? []
    : [speech.say('impossible', { names: someOf(impossible, most.parts, speech.say) })];
}

function sentenceOf({ name: title, number }: Entered): string {
  return `${title}: ${number}`;
}

/** What is said of a gap that leaves this page empty. */
const fullerGaps = [
  ['faults', 'fuller.faults'],
  ['goals', 'fuller.goals'],
  ['plan', 'fuller.plan'],
] as const satisfies readonly (readonly [Gap, TextKey])[];

/** In the order of the record. */
function entered(
  analysis: Analysis,
  { placed, round }: Speech,
): { readonly shown: readonly Entered[]; readonly impossible: readonly string[] } {
  const { document } = analysis;
  if (document.kind !== 'swing') return { shown: [], impossible: [] };
  const shown: Entered[] = [];
  const impossible: string[] = [];
  for (const { id, quantity, readings } of document.entries.values()) {
    if (readings.length === 0 || !/^(checkpoints|delivery|ground|strike|flight)\./.test(id)) continue;
    const value = valueOf(analysis, id)?.value;
    const name = shortened(placed(quantity), most.title);
    if (value === undefined || isOutside(value, quantity.bounds)) impossible.push(name);
    else shown.push({ quantity, name, number: round(quantity, value) });
  }
  return { shown, impossible };
}

interface Cell extends Entered {
  readonly shape: Shape;
}

/** One of each kind, of the first entry that is seen in it. */
function cellsOf(shown: readonly Entered[]): readonly Cell[] {
  return (['figure', 'above', 'front'] as const).flatMap((shape): Cell[] => {
    const first = shown.find(({ quantity }) => shapeOf(quantity) === shape);
    return first === undefined ? [] : [{ ...first, shape }];
  });
}

const name = 'handout-measured';
const cell = { width: 176, height: 190 } as const;

/** Of a title's letters: smaller where it is long. */
function sizeFor(title: string): number {
  return fixed(Math.max(8, Math.min(11, (cell.width - 8.5) / widthOf(title, 1))));
}

function MeasuredPicture({
  drawn,
  analysis,
  speech: { say, number: written },
  theme,
}: {
  readonly drawn: readonly Cell[];
  readonly analysis: Analysis;
  readonly speech: Speech;
  readonly theme: Theme;
}): Picture {
  const enlargement = enlargementOf([analysis]);
  const note =
    enlargement !== 1 && drawn.some(({ shape }) => isEnlarged(shape))
      ? say('larger', { times: written(enlargement) })
      : undefined;
  const sentences = [...drawn.map(sentenceOf), ...(note === undefined ? [] : [note])];
  return (
    <Frame
      name={name}
      title={say('measured')}
      words={sentences.map((one) => `${one}.`).join(' ')}
      width={cell.width * drawn.length}
      height={cell.height}
      theme={theme}
    >
      {drawn.map(({ shape, quantity, name: title, number }, i) => {
        const middle = cell.width * (i + 0.5);
        const props = { analysis, quantity, kind: 'now', theme } as const;
        const way = wayToTarget(shape, quantity, analysis);
        return (
          <g key={shape} data-id={quantity.id}>
            {shape === 'figure' && (
              <FigureChange {...props} at={{ x: middle, y: 124 }} size={112} picture={`${name}-${i}`} />
            )}
            {shape === 'above' && <PathAndFace {...props} {...{ enlargement }} at={{ x: middle, y: 90 }} />}
            {isEnlarged(shape) && note !== undefined && (
              <text x={middle} y={cell.height - 41} text-anchor="middle" font-size="9.5" fill={theme.soft}>
                {fitted(note, cell.width - 4, 9.5)}
              </text>
            )}
            {shape === 'front' && <ArcAndGround {...props} {...{ enlargement }} at={{ x: middle, y: 92 }} />}
            <TargetMark
              way={way}
              at={
                way === 'up'
                  ? { x: middle + 24, y: 18 }
                  : { x: middle + (way === 'right' ? 74 : -74), y: 138 }
              }
              word={say('target')}
              theme={theme}
            />
            <text
              x={middle}
              y={cell.height - 24}
              text-anchor="middle"
              font-size={sizeFor(title)}
              fill={theme.soft}
            >
              {fitted(title, cell.width - 8, sizeFor(title))}
            </text>
            <text x={middle} y={cell.height - 8} text-anchor="middle" font-size="14" fill={theme.ink}>
              {fitted(number, cell.width - 8, 14)}
            </text>
          </g>
        );
      })}
    </Frame>
  );
}
