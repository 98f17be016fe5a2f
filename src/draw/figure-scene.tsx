// What stands round a figure in both views: ground and scale, marks where something was recorded, and the lines below; knows no view's layout.
import type { Value } from '../model/value.ts';
import type { Anchor } from '../physics/pose-anchors.ts';
import { vector } from '../physics/vector.ts';
import type { Field } from './figure-field.ts';
import type { Mark } from './figure-marks.ts';
import type { Stand } from './figure-pose.ts';
import type { Camera } from './figure-shape.ts';
import { anchorWords } from './figure-words.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { kindOf } from './known.ts';
import { Label, prose } from './label.tsx';
import { wrapped } from './lettering.ts';
import { EdgeArrow, offScale, type Way } from './off-scale.tsx';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export function Ground({
  y,
  from,
  to,
  theme,
}: {
  readonly y: number;
  readonly from: number;
  readonly to: number;
  readonly theme: Theme;
}): Picture {
  return <path d={`M ${from} ${y} L ${to} ${y}`} stroke={theme.ink} stroke-width="1.2" data-part="ground" />;
}

/** Of 20 cm. */
export function ScaleBar({
  at: { x, y },
  scale,
  theme,
}: {
  readonly at: Place;
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  const end = fixed(x + 0.2 * scale);
  return (
    <g>
      <path
        d={`M ${x} ${y - 4} L ${x} ${y} L ${end} ${y} L ${end} ${y - 4}`}
        stroke={theme.soft}
        data-part="scale"
      />
      <text x={fixed(x + 0.1 * scale)} y={y - 5} text-anchor="middle" fill={theme.soft} font-size="11">
        20 cm
      </text>
    </g>
  );
}

/** Round where it was written down, a diamond where it was computed, with one standard uncertainty to each side. */
export function Marks({
  marks,
  stand,
  camera,
  field,
  theme,
}: {
  readonly marks: readonly Mark[];
  readonly stand: Stand;
  readonly camera: Camera;
  /** Beyond which an arrow stands for a mark. */
  readonly field: Field;
  readonly theme: Theme;
}): Picture {
  return (
    <g data-part="marks">
      {marks.map((mark) => {
        const value = stand.values.get(mark.key);
        return value && <OneMark key={mark.key} {...{ mark, value, camera, field, theme }} />;
      })}
    </g>
  );
}

/** So far inside of the edges of a field marks end and arrows begin. */
const edgeRoom = 10;

/** Where a mark stands, or the arrow for one that would lie outside of the field. */
export function edgeOf({ x, y }: Place, { width, ground }: Field): Place {
  return {
    x: Math.max(edgeRoom, Math.min(width - edgeRoom, x)),
    y: Math.max(3 * edgeRoom, Math.min(ground + edgeRoom, y)),
  };
}

/** Undefined of what lies inside. */
function wayOut({ x, y }: Place, edge: Place): Way | undefined {
  if (x !== edge.x) return x > edge.x ? 'right' : 'left';
  if (y !== edge.y) return y > edge.y ? 'down' : 'up';
  return undefined;
}

function OneMark({
  mark: { kind, at },
  value,
  camera,
  field,
  theme,
}: {
  readonly mark: Mark;
  readonly value: Value;
  readonly camera: Camera;
  readonly field: Field;
  readonly theme: Theme;
}): Picture {
  const place = camera.see(at);
  const sure = kindOf(value);
  const edge = edgeOf(place, field);
  const way = wayOut(place, edge);
  if (way !== undefined) {
    const isRight = edge.x > field.width / 2;
    return (
      <g data-id={value.id}>
        <EdgeArrow at={edge} way={way} colour={theme[sure]} />
        <Label
          at={{ x: edge.x + (isRight ? 8 : -8), y: edge.y - 10 }}
          text={offScale}
          anchor={isRight ? 'end' : 'start'}
          theme={theme}
        />
      </g>
    );
  }
  const [x, y] = [fixed(place.x), fixed(place.y)];
  const spread = kind === 'angle' ? 0 : Math.min(1, value.u ?? 0) * Math.abs(camera.turn(vector(0, 0, 1)).y);
  const ends =
    kind === 'height'
      ? [
          { x, y: y - spread },
          { x, y: y + spread },
        ]
      : [
          { x: x - spread, y },
          { x: x + spread, y },
        ];
  return (
    <g data-id={value.id} data-part="mark" data-kind={kind}>
      {spread > 0 && <path d={lineThrough(ends)} {...lineStyle(sure, theme)} stroke-width="1.6" />}
      {sure === 'entered' ? (
        <circle
          cx={x}
          cy={y}
          r={kind === 'angle' ? 3 : 4}
          fill={kind === 'angle' ? theme.paper : theme.entered}
          stroke={kind === 'angle' ? theme.entered : theme.paper}
          stroke-width="1.4"
        />
      ) : (
        <path
          d={`M ${x} ${fixed(y - 5)} l 5 5 l -5 5 l -5 -5 Z`}
          fill={theme.paper}
          stroke={theme.expected}
          stroke-width="1.6"
        />
      )}
    </g>
  );
}

/** The trunk's line from the middle of the hips, whose angle was recorded. */
export function TrunkLine({
  stand,
  camera,
  value,
  theme,
}: {
  readonly stand: Stand;
  readonly camera: Camera;
  readonly value: Value;
  readonly theme: Theme;
}): Picture {
  const { pelvis, neck } = stand.pose.skeleton.joints;
  const [from, to] = [camera.see(pelvis), camera.see(neck)];
  const angle = (Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI;
  return (
    <path
      d={lineThrough([from, to])}
      {...lineStyle(kindOf(value), theme)}
      stroke-width="1.4"
      data-id={value.id}
      data-part="trunk-line"
      data-angle={fixed(angle)}
    />
  );
}

const lineHeight = 16;

/** The lines below a figure, broken to its width, and how high they are with the key above them. */
export function footerOf(
  words: readonly string[],
  width: number,
): { readonly lines: readonly string[]; readonly height: number } {
  const lines = words.flatMap((one) => wrapped(`${one}.`, prose * width, 12, 6));
  return { lines, height: 16 + lineHeight * lines.length };
}

/** How the lines are to be read, and beside it what is missing. */
export function Footer({
  anchors,
  lines,
  x,
  y,
  theme,
}: {
  readonly anchors: readonly Anchor[];
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  return (
    <g data-part="footer">
      {anchors.map((anchor, i) => (
        <g key={anchor} transform={`translate(${x + i * 104} ${y})`}>
          <path d="M 0 -4 L 26 -4" {...lineStyle(anchor, theme)} stroke-width="1.6" />
          <text x="32" y="0" fill={theme.soft} font-size="12">
            {anchorWords[anchor]}
          </text>
        </g>
      ))}
      {lines.map((line, i) => (
        <text key={line} x={x} y={fixed(y + 18 + lineHeight * i)} fill={theme.soft} font-size="12">
          {line}
        </text>
      ))}
    </g>
  );
}
