// One planned change at a checkpoint as two figures, now and as it is aimed at, with what changes marked; draws postures and no numbers.
import type { Analysis } from '../../analysis/result.ts';
import type { Value } from '../../model/value.ts';
import { ruleBall } from '../../physics/ball.ts';
import { isSeen, type StanceKey, type View } from '../../physics/pose-anchors.ts';
import { poseKeys, type PoseKey } from '../../physics/pose-readings.ts';
import type { Checkpoint, Quantity } from '../../registry/quantity.ts';
import { depthOfFeet, FeetFromAbove, planOf } from '../feet-from-above.tsx';
import { cameraOf } from '../figure-camera.ts';
import { marksOf } from '../figure-marks.ts';
import { standOf, type Stand } from '../figure-pose.ts';
import { shapesOf, type Camera } from '../figure-shape.ts';
import { fixed, lineThrough, type Place } from '../geometry.ts';
import { valueOf } from '../known.ts';
import type { Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';

const stanceKeys: readonly string[] = [
  'stance_width',
  'ball_position',
  'lead_foot_flare',
  'trail_foot_flare',
  'stance_direction',
] satisfies StanceKey[];

/** Whether a body can show it. */
export function isOnFigure({ checkpoint, key }: Quantity): boolean {
  const isStance = stanceKeys.includes(key) && checkpoint === 'address';
  return checkpoint !== undefined && (isStance || key === 'lead_pressure' || isPoseKey(key));
}

function isPoseKey(key: string): key is PoseKey {
  return (poseKeys as readonly string[]).includes(key);
}

export interface FigureChangeProps {
  readonly analysis: Analysis;
  readonly quantity: Quantity;
  /** Where the figure stands on the picture: its ball on the ground, and units for a stature. */
  readonly at: Place;
  readonly size: number;
  readonly kind: 'now' | 'aim';
  readonly picture: string;
  readonly theme: Theme;
}

/** Feet from above tell a stance better than a body does, so those are drawn larger and alone. */
export function FigureChange(props: FigureChangeProps): Picture {
  const { quantity } = props;
  return stanceKeys.includes(quantity.key) || quantity.key === 'lead_pressure' ? (
    <Feet {...props} />
  ) : (
    <Body {...props} />
  );
}

function Feet({ analysis, quantity, at, size, kind, picture, theme }: FigureChangeProps): Picture {
  const checkpoint = quantity.checkpoint!;
  const stand = standOf(analysis, checkpoint);
  const scale = size / (depthOfFeet(stand) + 0.1);
  const plan = planOf(stand, { origin: { x: at.x, y: at.y }, scale });
  const pressure = quantity.key === 'lead_pressure' ? valueOf(analysis, quantity.id) : undefined;
  const { leadHeelX, trailHeelX } = stand.pose.footing;
  const side = stand.hand === 'left' ? -1 : 1;
  const behind = (x: number): Place => plan.see({ x, y: side * (depthOfFeet(stand) + 0.03), z: 0 });
  const [from, to] = [behind(trailHeelX), behind(leadHeelX)];
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  return (
    <g>
      <FeetFromAbove
        {...{ stand: plain(stand), plan, pressure: shown(pressure, kind), picture, theme }}
        pressureWindow={undefined}
      />
      {quantity.key === 'stance_width' && (
        <g data-id={quantity.id}>
          <path d={lineThrough([from, to])} stroke={colour} stroke-width="2" />
          {[from, to].map(({ x, y }, i) => (
            <path
              key={i}
              d={`M ${fixed(x)} ${fixed(y - 4)} L ${fixed(x)} ${fixed(y + 4)}`}
              stroke={colour}
              stroke-width="2"
            />
          ))}
        </g>
      )}
    </g>
  );
}

/** The colour of what is computed is kept for what is aimed at. */
function shown(value: Value | undefined, kind: 'now' | 'aim'): Value | undefined {
  return value && { ...value, kind: kind === 'aim' ? 'expected' : 'entered' };
}

/** Turns of shoulders and hips would only be in the way of the feet. */
function plain(stand: Stand): Stand {
  return {
    ...stand,
    values: new Map([...stand.values].filter(([key]) => stanceKeys.includes(key))),
    pose: {
      ...stand.pose,
      anchors: {
        ...stand.pose.anchors,
        face_on: { ...stand.pose.anchors.face_on, leadFoot: 'entered', trailFoot: 'entered' },
      },
    },
  };
}

/** Face-on where the change is seen from there; feet are seen from above, with the target where it is face-on. */
export function viewOf(key: string): View {
  return isPoseKey(key) && !isSeen(key, 'face_on') ? 'down_the_line' : 'face_on';
}

function Body({ analysis, quantity, at, size, kind, theme }: FigureChangeProps): Picture {
  const view = viewOf(quantity.key);
  const stand = standOf(analysis, quantity.checkpoint as Checkpoint);
  const scale = size / stand.stature;
  const camera = cameraOf(view, { origin: at, scale, hand: stand.hand });
  const radius = ruleBall.radius * scale;
  const mark = marksOf(stand, view).find(({ key }) => key === quantity.key);
  const place = mark && camera.see(mark.at);
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  return (
    <g>
      <path
        d={`M ${fixed(at.x - 0.62 * size)} ${at.y} L ${fixed(at.x + 0.42 * size)} ${at.y}`}
        stroke={theme.faint}
        stroke-width="1.5"
      />
      {shapesOf(stand.pose.skeleton, stand.stature, camera).map(({ part, outlines }) =>
        part === 'club' ? (
          <Club key={part} {...{ stand, camera, theme }} />
        ) : (
          <g key={part}>
            <path d={outlines.join(' ')} stroke={theme.soft} stroke-width="1.8" fill={theme.paper} />
            <path d={outlines.join(' ')} fill={theme.paper} />
            <path
              d={outlines.join(' ')}
              fill={kind === 'aim' ? theme.goal : theme.soft}
              fill-opacity="0.14"
            />
          </g>
        ),
      )}
      <circle
        cx={fixed(at.x)}
        cy={fixed(at.y - radius)}
        r={fixed(Math.max(2, radius))}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.2"
      />
      {place && (
        <circle
          cx={fixed(place.x)}
          cy={fixed(place.y)}
          r="9"
          stroke={colour}
          stroke-width="2"
          data-id={quantity.id}
        />
      )}
    </g>
  );
}

function Club({
  stand,
  camera,
  theme,
}: {
  readonly stand: Stand;
  readonly camera: Camera;
  readonly theme: Theme;
}): Picture {
  const { joints, clubToe } = stand.pose.skeleton;
  const [end, head] = [camera.see(joints.gripEnd), camera.see(joints.clubHead)];
  const toe = camera.turn(clubToe);
  return (
    <g>
      <path d={lineThrough([end, head])} stroke={theme.ink} stroke-width="1.6" />
      <path
        d={lineThrough([
          { x: head.x - 0.035 * toe.x, y: head.y - 0.035 * toe.y },
          { x: head.x + 0.035 * toe.x, y: head.y + 0.035 * toe.y },
        ])}
        stroke={theme.ink}
        stroke-width="4"
      />
    </g>
  );
}
