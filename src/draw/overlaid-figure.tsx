// The player of two records at one checkpoint, laid over one another to scale: the second as a body, the first as its outline; draws what both know.
import { BallOnGround } from './ball-on-ground.tsx';
import { checkpointsWithEntries, standOf, type Stand } from './figure-pose.ts';
import { showValue } from '../measure/show.ts';
import type { StanceKey, View } from '../physics/pose-anchors.ts';
import { poseKeys, type PoseKey } from '../physics/pose-readings.ts';
import { vector } from '../physics/vector.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { cameraOf, mirrored, unitsForStature } from './figure-camera.ts';
import { Ground, ScaleBar } from './figure-scene.tsx';
import type { Camera } from './figure-shape.ts';
import { checkpointTitle, misfitWords, seenValues } from './figure-words.ts';
import { fixed } from './geometry.ts';
import { sayingOf } from './known.ts';
import { Lines, linesHeight } from './label.tsx';
import { fitted, wrapped } from './lettering.ts';
import { DashedBody, SolidBody } from './overlaid-body.tsx';
import { Letter, mirrorWords, type OverlayProps } from './overlaid.tsx';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const views = {
  face_on: { title: 'face-on', width: 476, ballShare: 0.53 },
  down_the_line: { title: 'down the line', width: 366, ballShare: 0.83 },
} as const;
const rowHeight = 17;
/** Room above the highest thing, for the title. */
const above = 52;

export interface OverlaidView {
  readonly checkpoint: Checkpoint;
  readonly view: View;
  /** "Impact, face-on". */
  readonly title: string;
}

/** Where both records say something of the body and not the same. */
export function overlaidViews({
  first,
  second,
}: Pick<OverlayProps, 'first' | 'second'>): readonly OverlaidView[] {
  const inSecond = new Set(checkpointsWithEntries(second));
  return checkpointsWithEntries(first)
    .filter((checkpoint) => inSecond.has(checkpoint))
    .flatMap((checkpoint) => {
      const [a, b] = [standOf(first, checkpoint), standOf(second, checkpoint)];
      return (Object.keys(views) as View[])
        .filter((view) => showsPosture(view, differing(a, b, view)))
        .map((view) => ({ checkpoint, view, title: titleOf(checkpoint, view) }));
    });
}

export function OverlaidFigure({
  first,
  second,
  theme,
  checkpoint,
  view,
}: OverlayProps & Pick<OverlaidView, 'checkpoint' | 'view'>): Picture {
  const [a, b] = [standOf(first, checkpoint), standOf(second, checkpoint)];
  const { width, ballShare } = views[view];
  // Who plays the other way round is drawn as in a mirror, and the picture says so: postures are compared, not sides.
  const { hand } = b;
  const scale = unitsForStature / b.stature;
  const ground = above + scale * Math.max(...[a, b].map(highestOf));
  const origin = { x: width * (hand === 'left' ? 1 - ballShare : ballShare), y: ground };
  const cameraFor = (one: Stand): Camera => {
    const own = cameraOf(view, { origin, scale, hand: one.hand });
    return one.hand === hand ? own : mirrored(own, origin);
  };
  const cameras = { a: cameraFor(a), b: cameraFor(b) };
  const name = `overlaid-${view.replaceAll('_', '-')}-${checkpoint.replaceAll('_', '-')}`;
  const rows = differing(a, b, view).map((key) => rowOf(key, a, b, second.subject.registry));
  const title = titleOf(checkpoint, view);
  const notes = [
    ...mirrorWords({ first, second }),
    ...misfitWords(a, view, first).map((misfit) => `A: ${misfit}`),
    ...misfitWords(b, view, second).map((misfit) => `B: ${misfit}`),
  ];
  const lines = notes.flatMap((note) => wrapped(note, width - 24, 11));
  const rowsEnd = ground + 48 + rowHeight * rows.length;
  return (
    <Frame
      name={name}
      title={`${title}, both records`}
      words={[...rows.map((row) => `${row.name}: A ${row.a}, B ${row.b}`), ...notes]
        .map((one) => `${one}.`)
        .join(' ')}
      width={width}
      height={rowsEnd + 8 + linesHeight(lines)}
      theme={theme}
    >
      <text x="12" y="20" fill={theme.ink} font-size="13">
        {checkpointTitle(checkpoint)}
      </text>
      {view === 'face_on' && (
        <text
          x={hand === 'left' ? 12 : width - 12}
          y={hand === 'left' ? 38 : 20}
          text-anchor={hand === 'left' ? 'start' : 'end'}
          fill={theme.soft}
          font-size="11"
        >
          {hand === 'left' ? '← target' : 'target →'}
        </text>
      )}
      <Ground y={ground} from={8} to={width - 8} theme={theme} />
      <SolidBody {...{ view, theme }} stand={b} camera={cameras.b} />
      <DashedBody {...{ name, view, theme }} stand={a} camera={cameras.a} />
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <HeadLetters {...{ a, b, cameras, theme }} />
      <ScaleBar at={{ x: hand === 'left' ? width - 90 : 12, y: ground + 24 }} scale={scale} theme={theme} />
      <g data-part="numbers">
        {rows.map((row, i) => (
          <Row key={row.name} row={row} y={ground + 48 + rowHeight * i} width={width} theme={theme} />
        ))}
      </g>
      <Lines lines={lines} x={12} y={rowsEnd + 2} theme={theme} />
    </Frame>
  );
}

/** On either side of the two heads, each by its own. */
function HeadLetters({
  a,
  b,
  cameras,
  theme,
}: {
  readonly a: Stand;
  readonly b: Stand;
  readonly cameras: Readonly<Record<'a' | 'b', Camera>>;
  readonly theme: Theme;
}): Picture {
  const atA = cameras.a.see(middleOfHead(a.pose.skeleton.joints));
  const atB = cameras.b.see(middleOfHead(b.pose.skeleton.joints));
  const outward = atA.x <= atB.x ? -1 : 1;
  return (
    <g data-part="letters">
      {(
        [
          ['A', atA, outward],
          ['B', atB, -outward],
        ] as const
      ).map(([side, at, away]) => (
        <Letter key={side} side={side} at={{ x: at.x + away * 36, y: at.y - 10 }} theme={theme} />
      ))}
    </g>
  );
}

function middleOfHead({ leadEar, neck }: Stand['pose']['skeleton']['joints']) {
  return vector(leadEar.x, (leadEar.y + neck.y) / 2, leadEar.z);
}

interface NumberRow {
  readonly name: string;
  readonly a: string;
  readonly b: string;
}

function Row({
  row,
  y,
  width,
  theme,
}: {
  readonly row: NumberRow;
  readonly y: number;
  readonly width: number;
  readonly theme: Theme;
}): Picture {
  const [nameWidth, step] = [width * 0.4, width * 0.29];
  return (
    <g>
      <text x="12" y={y} fill={theme.soft} font-size="11">
        {fitted(row.name, nameWidth - 16, 11)}
      </text>
      {(['a', 'b'] as const).map((side, i) => (
        <text key={side} x={fixed(nameWidth + i * step)} y={y} fill={theme.ink} font-size="11">
          {fitted(`${side.toUpperCase()}  ${row[side]}`, step - 6, 11)}
        </text>
      ))}
    </g>
  );
}

function rowOf(key: PoseKey | StanceKey, a: Stand, b: Stand, registry: Registry): NumberRow {
  const [before, after] = [a.values.get(key), b.values.get(key)];
  const number = (value: typeof before): string => {
    const quantity = value && registry.find(value.id);
    return quantity ? showValue(quantity, value.value) : 'not known';
  };
  return {
    name: sayingOf((after ?? before)!, registry).name,
    a: number(before),
    b: number(after),
  };
}

/** Whether anything was recorded or computed of the body itself that this view shows. */
export function isPostureSeen(stand: Stand, view: View): boolean {
  return showsPosture(
    view,
    seenValues(stand, view).map(([key]) => key),
  );
}

/** Down the line nothing is to be seen of the stance alone. */
function showsPosture(view: View, keys: readonly (PoseKey | StanceKey)[]): boolean {
  return view === 'face_on'
    ? keys.length > 0
    : keys.some((key) => (poseKeys as readonly string[]).includes(key));
}

/** Above the ground, m; the highest of joints and club. */
function highestOf({ pose }: Stand): number {
  return Math.max(...Object.values(pose.skeleton.joints).map(({ z }) => z));
}

/** What this view shows of the body and is not the same number in both; of one checkpoint, the stance at address. */
function differing(a: Stand, b: Stand, view: View): readonly (PoseKey | StanceKey)[] {
  const prefix = `checkpoints.${b.checkpoint}.`;
  const keys = new Set([...seenValues(a, view), ...seenValues(b, view)].map(([key]) => key));
  return [...keys].filter((key) => {
    const [before, after] = [a.values.get(key), b.values.get(key)];
    const isHere = (after ?? before)?.id.startsWith(prefix) === true;
    const isEntered = before?.kind === 'entered' || after?.kind === 'entered';
    return isHere && isEntered && before?.value !== after?.value;
  });
}

function titleOf(checkpoint: Checkpoint, view: View): string {
  return `${checkpointTitle(checkpoint)}, ${views[view].title}`;
}
