// The player down the line at a checkpoint, to scale: bend, depths and the shaft against the ground; draws what is known solid and the rest as it usually is.
import type { Analysis } from '../analysis/result.ts';
import { vector } from '../physics/vector.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import { BallOnGround } from './ball-on-ground.tsx';
import { cameraOf, unitsForStature } from './figure-camera.ts';
import { fieldOf } from './figure-field.ts';
import { marksOf } from './figure-marks.ts';
import { standOf } from './figure-pose.ts';
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
  seenValues,
} from './figure-words.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { LabelColumn, labelsHeight, labelsWidth } from './label-column.tsx';
import { Frame, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const top = 14;

export function FigureDownTheLine({
  analysis,
  theme,
  checkpoint,
  name = 'figure-down-the-line',
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
  const side = stand.hand === 'left' ? -1 : 1;
  const field = fieldOf(analysis, 'down_the_line', checkpoint);
  const { origin } = field;
  const column = { x: field.width + 14, width: labelsWidth, top };
  const width = column.x + column.width;
  const camera = cameraOf('down_the_line', { origin, scale, hand: stand.hand });
  const windows = windowsAt(analysis, checkpoint);
  const marks = marksOf(stand, 'down_the_line');
  const placeOf = new Map<string, Place>(marks.map(({ key, at }) => [key, edgeOf(camera.see(at), field)]));
  const labels = seenValues(stand, 'down_the_line')
    .filter(([key]) => placeOf.has(key))
    .map(([key, value]) => labelOf(value, placeOf.get(key), windows.get(key), registry));
  const missing = missingOf(stand, 'down_the_line', registry);
  const misfits = misfitWords(stand, 'down_the_line', analysis);
  const footer = footerOf(
    [
      ...misfits,
      ...(missing.length > 0 ? [`Not known: ${missing.join(', ')}`] : []),
      ...(stand.supposed.length > 0 ? [drawnAs(stand.supposed)] : []),
    ],
    width - 24,
  );
  const bottom = Math.max(field.ground + 40, column.top + labelsHeight(labels));
  const title = checkpointTitle(checkpoint);
  const trunk = stand.values.get('forward_bend');
  const toes = camera.see(vector(0, side * stand.pose.at.toeLine, 0));
  return (
    <Frame
      name={name}
      title={`${title}, down the line`}
      words={figureWords(labels, missing, misfits, stand)}
      width={width}
      height={bottom + 14 + footer.height}
      theme={theme}
    >
      <text x="12" y="20" fill={theme.ink} font-size="14">
        {title}
      </text>
      <LabelColumn labels={labels} x={column.x} top={column.top} bottom={bottom} theme={theme} />
      <g data-part="toe-line">
        <path
          d={lineThrough([
            { x: toes.x, y: field.ground - 0.62 * unitsForStature },
            { x: toes.x, y: field.ground + 8 },
          ])}
          {...lineStyle('rule', theme)}
          stroke-opacity="0.8"
        />
        <text x={fixed(toes.x)} y={field.ground + 20} text-anchor="middle" fill={theme.soft} font-size="11">
          line of the toes
        </text>
      </g>
      <Ground y={field.ground} from={8} to={field.width - 16} theme={theme} />
      <Figure {...{ stand, camera, theme }} view="down_the_line" />
      <FigureWindows {...{ windows, stand, camera, theme }} view="down_the_line" picture={name} />
      {trunk && <TrunkLine {...{ stand, camera, theme }} value={trunk} />}
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <Marks {...{ marks, stand, camera, field, theme }} />
      <ScaleBar
        at={{ x: side === 1 ? 12 : field.width - 16 - 0.2 * scale, y: field.ground + 26 }}
        scale={scale}
        theme={theme}
      />
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
