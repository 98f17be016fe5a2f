// The flight from the side and from above, one scale for all of it: recorded and computed landing, spread of shots, goal, wind.
import { scaleLinear } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import type { Value } from '../model/value.ts';
import type { Registry } from '../registry/registry.ts';
import { fromSI, toSI } from '../measure/units.ts';
import { FromAbove } from './flight-above.tsx';
import { FromSide } from './flight-side.tsx';
import { sceneOf, type Scene } from './flight-scene.ts';
import {
  besidesSayings,
  computedSaying,
  numberSaying,
  spreadWords,
  whose,
  windWords,
} from './flight-words.ts';
import { fixed } from './geometry.ts';
import { Dot, Key, keyHeight, type KeyItem } from './key.tsx';
import { kindOf, notDrawnWords, valueOf, wordsOf, type Saying } from './known.ts';
import { Label, Lines, linesHeight, notDrawn, notKnown } from './label.tsx';
import { fitted } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';
import { lowerFirst, upperFirst } from '../measure/quote.ts';

const name = 'flight';
const width = 540;
/** Room for what is drawn; the ball lies at its left edge. */
const field = { x: 32, width: 476, side: 150, above: 200 };
const sideMargin = 34;
/** Of a view of which nothing is known, m. */
const usual = { ahead: 150, up: 20 };
/** From above there is always so much to each side, in units of the picture. */
const leastAside = 30;

const numberIds = ['launch_angle', 'apex', 'descent', 'carry', 'start', 'curve', 'finish', 'total'].map(
  (key) => `flight.${key}`,
);

export function FlightPicture({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { registry } = analysis.subject;
  const scene = sceneOf(analysis);
  const { extent } = scene;
  const ahead = extent.ahead > 0 ? extent.ahead : usual.ahead;
  const scale = Math.min(
    field.width / (ahead * 1.03),
    field.side / Math.max(extent.up, 1),
    field.above / Math.max(extent.left + extent.right, 1),
  );
  const up = Math.max(extent.up > 0 ? extent.up * scale : usual.up, 40);
  const ground = sideMargin + up;
  const line = ground + 64 + Math.max(leastAside, extent.left * scale);
  const bottom = line + Math.max(leastAside, extent.right * scale) + 14;
  const values = numberIds.flatMap((id) => valueOf(analysis, id) ?? []);
  const missing = numberIds.slice(0, 7).flatMap((id) => {
    const title = registry.find(id)?.title ?? id;
    return values.some((value) => value.id === id) ? [] : [lowerFirst(title)];
  });
  const items = keyOf(scene);
  const boxes = boxesOf(scene, values, registry);
  const lines = [...notKnown(missing, width - 32), ...notDrawn(scene.left, width - 32)];
  const rows = 1 + Math.max(-1, ...boxes.map(({ row }) => row));
  const keyAt = bottom + 16 + rows * 36 + 8;
  const height = keyAt + (items.length > 0 ? keyHeight(items, width - 32) : 0) + linesHeight(lines) + 6;
  return (
    <Frame
      name={name}
      title="The flight"
      words={[
        wordsOf(
          [
            ...values.map((value) => numberSaying(value, scene, registry)),
            ...besidesSayings(scene, analysis),
          ],
          missing,
        ),
        ...notDrawnWords(scene.left).map((words) => `${words}.`),
      ].join(' ')}
      width={width}
      height={height}
      theme={theme}
    >
      <clipPath id={`${name}-field`}>
        <rect x="0" y="0" width={width} height={fixed(bottom)} />
      </clipPath>
      <clipPath id={`${name}-above`}>
        <rect x="0" y={fixed(ground + 26)} width={width} height={fixed(bottom - ground - 26)} />
      </clipPath>
      <Label at={{ x: 16, y: 16 }} text="From the side" theme={theme} />
      <Label at={{ x: 16, y: ground + 46 }} text="From above" theme={theme} />
      <Label at={{ x: width - 16, y: 16 }} text="same scale in every direction" anchor="end" theme={theme} />
      <Distances scale={scale} y={ground} analysis={analysis} theme={theme} />
      <g clip-path={`url(#${name}-field)`}>
        <FromSide scene={scene} ball={{ x: field.x, y: ground }} scale={scale} theme={theme} />
      </g>
      <g clip-path={`url(#${name}-above)`}>
        <FromAbove
          scene={scene}
          ball={{ x: field.x, y: line }}
          scale={scale}
          reach={field.width}
          picture={name}
          computedName={scene.computed.by === 'others' ? whose(scene.computed) : undefined}
          theme={theme}
        />
      </g>
      {scene.wind && (
        <Wind from={scene.wind.from} text={windWords(scene.wind, registry)} y={ground + 46} theme={theme} />
      )}
      {boxes.map((box, i) => (
        <NumberBox key={i} box={box} top={bottom + 16} theme={theme} />
      ))}
      <Key items={items} x={16} y={keyAt + 10} width={width - 32} picture={name} theme={theme} />
      <Lines lines={lines} x={16} y={height - linesHeight(lines) + 6} theme={theme} />
    </Frame>
  );
}

const columns = 3;
const columnWidth = 174;

interface Box extends Saying {
  readonly kind: 'entered' | 'expected';
  readonly id: string | undefined;
  readonly row: number;
  readonly column: number;
  /** In columns. */
  readonly wide: number;
}

/** The numbers of the flight, and the place that the others say in as much room as two of them. */
function boxesOf(scene: Scene, values: readonly Value[], registry: Registry): readonly Box[] {
  const { expected, computed } = scene;
  const own = values.map((value, i): Box => {
    const place = { row: Math.floor(i / columns), column: i % columns, wide: 1 };
    return { ...numberSaying(value, scene, registry), kind: kindOf(value), id: value.id, ...place };
  });
  if (expected === undefined || computed.by === 'all') return own;
  const [row, column] = [Math.floor(own.length / columns), own.length % columns];
  const place = column + 2 > columns ? { row: row + 1, column: 0 } : { row, column };
  return [
    ...own,
    {
      ...computedSaying(computed, registry),
      name: upperFirst(whose(computed)),
      kind: 'expected',
      id: undefined,
      ...place,
      wide: 2,
    },
  ];
}

function NumberBox({
  box: { name: title, number, kind, id, row, column, wide },
  top,
  theme,
}: {
  readonly box: Box;
  readonly top: number;
  readonly theme: Theme;
}): Picture {
  const [x, y] = [16 + column * columnWidth, top + row * 36];
  return (
    <g data-id={id}>
      <Dot kind={kind} at={{ x: x + 6, y: y + 16 }} theme={theme} />
      <text x={fixed(x + 18)} y={fixed(y + 13)} fill={theme.soft} font-size="11">
        {fitted(title, wide * columnWidth - 24, 11)}
      </text>
      <text x={fixed(x + 18)} y={fixed(y + 27)} fill={theme.ink} font-size="12">
        {fitted(number, wide * columnWidth - 20, 12)}
      </text>
    </g>
  );
}

/** The ground with its distances, in the unit in which the carry is shown. */
function Distances({
  scale,
  y,
  analysis,
  theme,
}: {
  readonly scale: number;
  readonly y: number;
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const carry = analysis.subject.registry.find('flight.carry');
  const unit = carry?.shown ?? carry?.unit ?? 'm';
  const axis = scaleLinear([0, fromSI(field.width / scale, unit)], [field.x, field.x + field.width]);
  return (
    <g data-part="distances">
      <path
        d={`M ${field.x - 16} ${fixed(y)} L ${field.x + field.width + 16} ${fixed(y)}`}
        stroke={theme.ink}
        stroke-width="1.2"
      />
      {axis.ticks(5).map((tick) => {
        const x = fixed(field.x + toSI(tick, unit) * scale);
        return (
          <g key={tick}>
            <path d={`M ${x} ${fixed(y)} L ${x} ${fixed(y + 5)}`} stroke={theme.soft} />
            <text x={x} y={fixed(y + 17)} text-anchor="middle" fill={theme.soft} font-size="11">
              {`${tick} ${unit}`}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** Blows along its arrow; how strong it is stands beside it. */
function Wind({
  from,
  text,
  y,
  theme,
}: {
  readonly from: number;
  readonly text: string;
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  const centre = { x: width - 34, y: y + 2 };
  // To the right of the picture lies the target, up is left of it.
  const blow = { x: -Math.cos(from), y: Math.sin(from) };
  const [tail, tip] = [-15, 15].map((along) => ({
    x: centre.x + along * blow.x,
    y: centre.y + along * blow.y,
  }));
  const barb = (turn: number): string => {
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const [x, py] = [blow.x * cos - blow.y * sin, blow.x * sin + blow.y * cos];
    return `M ${fixed(tip!.x)} ${fixed(tip!.y)} L ${fixed(tip!.x + 8 * x)} ${fixed(tip!.y + 8 * py)}`;
  };
  return (
    <g data-id="conditions.wind">
      <path
        d={`M ${fixed(tail!.x)} ${fixed(tail!.y)} L ${fixed(tip!.x)} ${fixed(tip!.y)} ${barb(2.6)} ${barb(-2.6)}`}
        stroke={theme.ink}
        stroke-width="1.6"
        data-part="wind"
      />
      <Label at={{ x: width - 60, y }} text={fitted(text, 220, 11)} anchor="end" theme={theme} />
    </g>
  );
}

function keyOf({ recorded, expected, path, shots, ellipse, goals, computed }: Scene): readonly KeyItem[] {
  const items: KeyItem[] = [];
  if (recorded) items.push({ mark: 'entered', text: 'recorded' });
  if (expected) items.push({ mark: 'expected', text: `computed ${whose(computed)}, 95 % of it` });
  else if (path) items.push({ mark: 'expected', text: `computed ${whose(computed)}` });
  if (goals.length > 0) items.push({ mark: 'goal', text: goals.length === 1 ? 'the goal' : 'the goals' });
  if (shots.some(({ isFar }) => !isFar)) items.push({ mark: 'shot', text: 'a shot' });
  if (shots.some(({ isFar }) => isFar))
    items.push({ mark: 'far shot', text: 'left out: far from the others' });
  if (ellipse) items.push({ mark: 'spread', text: spreadWords(ellipse) });
  return items;
}
