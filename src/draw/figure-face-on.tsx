// The player face-on at a checkpoint, to scale, over the feet seen from above; draws what is known solid and the rest as it usually is.
import type { Analysis } from '../analysis/result.ts';
import type { StanceKey } from '../physics/pose-anchors.ts';
import type { PoseKey } from '../physics/pose-readings.ts';
import { vector } from '../physics/vector.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import { BallOnGround } from './ball-on-ground.tsx';
import { depthOfFeet, FeetFromAbove, planOf, type Plan } from './feet-from-above.tsx';
import { cameraOf, unitsForStature } from './figure-camera.ts';
import { fieldOf } from './figure-field.ts';
import { marksOf } from './figure-marks.ts';
import { standOf, type Stand } from './figure-pose.ts';
import { Figure } from './figure.tsx';
import { edgeOf, Footer, footerOf, Ground, Marks, ScaleBar, TrunkLine } from './figure-scene.tsx';
import { FigureWindows, windowsAt } from './figure-windows.tsx';
import {
  checkpointTitle,
  drawnAs,
  figureWords,
  labelOf,
  misfitWords,
  missingOf,
  missingOfStance,
  placelessValues,
  seenValues,
} from './figure-words.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { kindOf, valueOf } from './known.ts';
import { LabelColumn, labelsHeight, labelsWidth } from './label-column.tsx';
import { widthOf } from './lettering.ts';
import { Frame, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const top = 14;

export function FigureFaceOn({
  analysis,
  theme,
  checkpoint,
  name = 'figure-face-on',
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
  readonly checkpoint: Checkpoint;
  /** Another one where a page holds several. */
  readonly name?: string;
}): Picture {
  const { registry } = analysis.subject;
  const stand = standOf(analysis, checkpoint);
  const scale = unitsForStature / stand.stature;
  const sign = stand.hand === 'left' ? -1 : 1;
  const field = fieldOf(analysis, 'face_on', checkpoint);
  const { origin } = field;
  const column = { x: field.width + 14, width: labelsWidth, top };
  const width = column.x + column.width;
  const camera = cameraOf('face_on', { origin, scale, hand: stand.hand });
  const floor = field.ground + 30 + depthOfFeet(stand) * scale;
  const plan = planOf(stand, { origin: { x: origin.x, y: floor }, scale });
  const windows = windowsAt(analysis, checkpoint);
  const pressure = valueOf(analysis, `checkpoints.${checkpoint}.lead_pressure`);
  const stance = checkpoint === 'address' ? stand.values.get('stance_direction') : undefined;
  const marks = marksOf(stand, 'face_on');
  const placeOf = new Map<string, Place>(marks.map(({ key, at }) => [key, edgeOf(camera.see(at), field)]));
  const seen = seenValues(stand, 'face_on').filter(([key]) => checkpoint === 'address' || placeOf.has(key));
  const shown = new Set([...seen.map(([, { id }]) => id), ...(pressure ? [pressure.id] : [])]);
  const labels = [
    ...seen.map(([key, value]) =>
      labelOf(value, placeOf.get(key) ?? placeOnPlan(key, stand, plan), windows.get(key), registry),
    ),
    ...(pressure ? [labelOf(pressure, soleMiddle(stand, plan), windows.get('lead_pressure'), registry)] : []),
    ...(stance ? [labelOf(stance, toesMiddle(stand, plan), windows.get('stance_direction'), registry)] : []),
    ...placelessValues(analysis, stand, shown).map((value) =>
      labelOf(value, undefined, windows.get(value.id.split('.').at(-1)!), registry),
    ),
  ];
  const missing = [
    ...missingOf(stand, 'face_on', registry),
    ...missingOfStance(stand, registry),
    ...(pressure ? [] : ['pressure in the lead foot']),
  ];
  const misfits = misfitWords(stand, 'face_on', analysis);
  const footer = footerOf(
    [
      ...misfits,
      ...(missing.length > 0 ? [`Not known: ${missing.join(', ')}`] : []),
      ...(stand.supposed.length > 0 ? [drawnAs(stand.supposed)] : []),
    ],
    width - 24,
  );
  const bottom = Math.max(floor + 26, column.top + labelsHeight(labels));
  const title = checkpointTitle(checkpoint);
  const trunk = stand.values.get('spine_tilt');
  return (
    <Frame
      name={name}
      title={`${title}, face-on`}
      words={figureWords(labels, missing, misfits, stand)}
      width={width}
      height={bottom + 14 + footer.height}
      theme={theme}
    >
      <text x="12" y="20" fill={theme.ink} font-size="14">
        {title}
      </text>
      <text
        x={sign === 1 ? field.width - 16 : 12}
        y={sign === 1 ? 20 : 38}
        text-anchor={sign === 1 ? 'end' : 'start'}
        fill={theme.soft}
        font-size="12"
      >
        {sign === 1 ? 'target →' : '← target'}
      </text>
      <LabelColumn labels={labels} x={column.x} top={column.top} bottom={bottom} theme={theme} />
      <HeelLine
        {...{ stand, plan, theme }}
        width={field.width}
        top={Math.max(30, field.ground - 0.9 * unitsForStature)}
      />
      <Ground y={field.ground} from={8} to={field.width - 16} theme={theme} />
      <Figure {...{ stand, camera, theme }} view="face_on" />
      <FigureWindows {...{ windows, stand, camera, theme }} view="face_on" picture={name} />
      {trunk && <TrunkLine {...{ stand, camera, theme }} value={trunk} />}
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <Marks {...{ marks, stand, camera, theme }} field={field} />
      <FeetFromAbove
        {...{ stand, plan, pressure, theme }}
        pressureWindow={windows.get('lead_pressure')}
        picture={name}
      />
      {checkpoint === 'address' && <StanceWidth {...{ stand, plan, theme }} />}
      <text x="12" y={fixed(floor - 6)} fill={theme.soft} font-size="11">
        from above
      </text>
      <ScaleBar at={{ x: 12, y: field.ground + 26 }} scale={scale} theme={theme} />
      <Footer
        anchors={['entered', 'expected', 'guessed']}
        lines={footer.lines}
        x={12}
        y={bottom + 14}
        theme={theme}
      />
    </Frame>
  );
}

/** Through the inside of the lead heel, from which the ball's position is told: down the figure and on over the feet. */
function HeelLine({
  stand: { pose, values },
  plan,
  top: from,
  width,
  theme,
}: {
  readonly stand: Stand;
  readonly plan: Plan;
  readonly top: number;
  /** Of the field, in which its name stays. */
  readonly width: number;
  readonly theme: Theme;
}): Picture {
  const at = plan.see(vector(pose.footing.leadHeelX - 0.033, 0, 0));
  const text = 'inside of the lead heel';
  const half = widthOf(text, 11) / 2;
  const x = Math.max(half + 4, Math.min(width - half - 4, at.x));
  return (
    <g data-id={values.get('ball_position')?.id} data-part="heel-line">
      <path d={lineThrough([{ x: at.x, y: from }, at])} {...lineStyle('rule', theme)} stroke-opacity="0.8" />
      <text x={fixed(x)} y={fixed(at.y + 18)} text-anchor="middle" fill={theme.soft} font-size="11">
        {text}
      </text>
    </g>
  );
}

/** From the middle of one heel to that of the other, behind them. */
function StanceWidth({
  stand,
  plan,
  theme,
}: {
  readonly stand: Stand;
  readonly plan: Plan;
  readonly theme: Theme;
}): Picture | null {
  const value = stand.values.get('stance_width');
  if (value === undefined) return null;
  const { leadHeelX, trailHeelX } = stand.pose.footing;
  const [from, to] = [trailHeelX, leadHeelX].map((x) => plan.see(behindHeels(x, stand)));
  return (
    <g data-id={value.id} data-part="stance-width">
      <path d={lineThrough([from!, to!])} {...lineStyle(kindOf(value), theme)} stroke-width="1.4" />
      {[from!, to!].map(({ x, y }, i) => (
        <path
          key={i}
          d={`M ${fixed(x)} ${fixed(y - 4)} L ${fixed(x)} ${fixed(y + 4)}`}
          {...lineStyle('entered', theme)}
          stroke-width="1.4"
        />
      ))}
    </g>
  );
}

function behindHeels(x: number, stand: Stand) {
  const side = stand.hand === 'left' ? -1 : 1;
  return vector(x, side * (depthOfFeet(stand) + 0.005 * stand.stature), 0);
}

function placeOnPlan(key: PoseKey | StanceKey, stand: Stand, plan: Plan): Place | undefined {
  const { joints } = stand.pose.skeleton;
  const { leadHeelX } = stand.pose.footing;
  if (key === 'stance_width') return plan.see(behindHeels(leadHeelX, stand));
  if (key === 'lead_foot_flare') return plan.see(joints.leadToe);
  if (key === 'trail_foot_flare') return plan.see(joints.trailToe);
  if (key === 'ball_position') return plan.see(vector(0, 0, 0));
  return undefined;
}

/** Between the tips of both feet, which turn with the stance. */
function toesMiddle({ pose }: Stand, plan: Plan): Place {
  const { leadToe, trailToe } = pose.skeleton.joints;
  return plan.see(vector((leadToe.x + trailToe.x) / 2, (leadToe.y + trailToe.y) / 2, 0));
}

function soleMiddle({ pose }: Stand, plan: Plan): Place {
  const { leadHeel, leadToe } = pose.skeleton.joints;
  return plan.see(vector((leadHeel.x + leadToe.x) / 2, (leadHeel.y + leadToe.y) / 2, 0));
}
