// The flight from the side and from above, one scale for all of it: recorded and computed landing, spread of shots, goal, wind.
import { scaleLinear } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import { fromSI, toSI } from '../measure/units.ts';
import { FromAbove } from './flight-above.tsx';
import { FromSide } from './flight-side.tsx';
import { sceneOf, type Scene } from './flight-scene.ts';
import { fixed } from './geometry.ts';
import { Dot, Key, keyHeight, type KeyItem } from './key.tsx';
import { notDrawnWords, kindOf, sayingOf, valueOf, wordsOf } from './known.ts';
import { Label, Lines, linesHeight, notDrawn, notKnown } from './label.tsx';
import { fitted } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';
import { lowerFirst } from '../measure/quote.ts';

const name = 'flight';
const width = 752;
/** Room for what is drawn; the ball lies at its left edge. */
const field = { x: 32, width: 680, side: 190, above: 220 };
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
  const lines = [...notKnown(missing, width - 32), ...notDrawn(scene.left, width - 32)];
  const rows = Math.ceil(values.length / columns);
  const keyAt = bottom + 16 + rows * 36 + 8;
  const height = keyAt + (items.length > 0 ? keyHeight(items, width - 32) : 0) + linesHeight(lines) + 6;
  return (
    <Frame
      name={name}
      title="The flight"
      words={[
        wordsOf([...values.map((value) => sayingOf(value, registry)), ...shotsSaying(scene)], missing),
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
      <Label
        at={{ x: width - 16, y: 16 }}
        text="same scale in every direction"
        anchor="end"
        size={10}
        theme={theme}
      />
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
          theme={theme}
        />
      </g>
      {scene.wind && <Wind {...scene.wind} y={ground + 46} analysis={analysis} theme={theme} />}
      {values.map((value, i) => (
        <NumberBox
          key={value.id}
          x={16 + (i % columns) * columnWidth}
          y={bottom + 16 + Math.floor(i / columns) * 36}
          saying={sayingOf(value, registry)}
          kind={kindOf(value)}
          id={value.id}
          theme={theme}
        />
      ))}
      <Key items={items} x={16} y={keyAt + 10} width={width - 32} picture={name} theme={theme} />
      <Lines lines={lines} x={16} y={height - linesHeight(lines) + 6} theme={theme} />
    </Frame>
  );
}

const columns = 4;
const columnWidth = 182;

function NumberBox({
  x,
  y,
  saying,
  kind,
  id,
  theme,
}: {
  readonly x: number;
  readonly y: number;
  readonly saying: { readonly name: string; readonly number: string };
  readonly kind: 'entered' | 'expected';
  readonly id: string;
  readonly theme: Theme;
}): Picture {
  return (
    <g data-id={id}>
      <Dot kind={kind} at={{ x: x + 6, y: y + 16 }} theme={theme} />
      <text x={fixed(x + 18)} y={fixed(y + 13)} fill={theme.soft} font-size="11">
        {fitted(saying.name, columnWidth - 24, 11)}
      </text>
      <text x={fixed(x + 18)} y={fixed(y + 27)} fill={theme.ink} font-size="12">
        {fitted(saying.number, columnWidth - 24, 12)}
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
            <text x={x} y={fixed(y + 17)} text-anchor="middle" fill={theme.soft} font-size="10">
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
  speed,
  y,
  analysis,
  theme,
}: {
  readonly from: number;
  readonly speed: number;
  readonly y: number;
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const quantity = analysis.subject.registry.find('conditions.wind');
  const text = quantity ? `wind ${showValue(quantity, speed)}` : 'wind';
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
      <Label at={{ x: width - 60, y }} text={fitted(text, 200, 11)} anchor="end" theme={theme} />
    </g>
  );
}

function keyOf({ recorded, expected, path, shots, ellipse, goals }: Scene): readonly KeyItem[] {
  const items: KeyItem[] = [];
  if (recorded) items.push({ mark: 'entered', text: 'recorded' });
  if (expected ?? path) items.push({ mark: 'expected', text: 'computed, 95 % of it' });
  if (goals.length > 0) items.push({ mark: 'goal', text: goals.length === 1 ? 'the goal' : 'the goals' });
  if (shots.length > 0) items.push({ mark: 'shot', text: 'a shot' });
  if (ellipse) items.push({ mark: 'spread', text: `95 % of shots that spread as these ${ellipse.count}` });
  return items;
}

function shotsSaying({ shots }: Scene): readonly { readonly name: string; readonly number: string }[] {
  return shots.length === 0 ? [] : [{ name: 'Shots drawn', number: String(shots.length) }];
}
