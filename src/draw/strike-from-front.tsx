// The strike seen from the front: arc, low point, ground and divots to scale, and where on the face the ball was met; draws what is known.
import type { Analysis } from '../analysis/result.ts';
import type { Value } from '../model/value.ts';
import { BallOnGround } from './ball-on-ground.tsx';
import { ClubFace } from './club-face.tsx';
import { lineThrough, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight } from './interval-rows.tsx';
import { sayingOf, valueOf, wordsOf } from './known.ts';
import { Label, Lines, linesHeight, notKnown } from './label.tsx';
import { fitted } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import { expectedSayings, knownOf, rowsOf } from './strike-front-rows.ts';
import { ArcLine, Cut, LowPoint, reach, type At } from './strike-front-shapes.tsx';
import type { Theme } from './theme.ts';

const name = 'strike-from-front';
/** Units of the picture for a metre; both ways, so that angles are true. */
const scale = 620;
const side = { x: 14, width: 190 };
const field = { x: side.x + side.width, width: 2 * reach * scale, height: 178 };
/** Where the ground below the ball is. */
const origin: Place = { x: field.x + field.width / 2, y: 112 };
const width = field.x + field.width + 16;

export function StrikeFromFront({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { registry, student, club } = analysis.subject;
  const hand = student?.document.hand?.value;
  const known = knownOf(analysis);
  const { ahead, depth, radius, inclination, attack, divot, expectedDivot } = known;
  const [across, struck] = ['strike.across', 'strike.height'].map((id) => valueOf(analysis, id));
  const target = hand === 'left' ? -1 : 1;
  const at: At = (x, up) => ({
    x: origin.x + target * x * scale,
    y: origin.y - up * scale,
  });
  const rows = rowsOf(analysis, known);
  const missing = [
    ...(ahead ? [] : ['low point']),
    ...(radius && inclination ? [] : ['arc']),
    ...(attack ? [] : ['attack angle']),
    ...(divot.starts ? [] : ['divot']),
    ...(across && struck ? [] : ['strike on the face']),
  ];
  const lines = notKnown(missing, width - 2 * side.x);
  const below = field.height + rowsHeight(rows);
  const sayings = [ahead, depth, attack, divot.starts, divot.length, divot.depth, across, struck]
    .flatMap((value) => value ?? [])
    .map((value) => sayingOf(value, registry));
  return (
    <Frame
      name={name}
      title="The strike from the front"
      words={wordsOf([...sayings, ...expectedSayings(expectedDivot, analysis)], missing)}
      width={width}
      height={below + 16 + linesHeight(lines)}
      theme={theme}
    >
      <clipPath id={`${name}-field`}>
        <rect x={field.x} y="0" width={field.width} height={field.height} />
      </clipPath>
      <ClubFace
        across={across}
        height={struck}
        clubKind={club?.kind?.value}
        hand={hand}
        middle={{ x: side.x + 86, y: 58 }}
        theme={theme}
      />
      <StrikeNumbers values={[across, struck]} analysis={analysis} theme={theme} />
      <g clip-path={`url(#${name}-field)`}>
        <path
          d={lineThrough([at(-reach, 0), at(reach, 0)])}
          stroke={theme.ink}
          stroke-width="1.2"
          data-part="ground"
        />
        {expectedDivot.starts && <Cut {...expectedDivot} at={at} theme={theme} />}
        {divot.starts && <Cut {...divot} at={at} theme={theme} />}
        {ahead && radius && inclination && (
          <ArcLine {...{ ahead, depth, radius, inclination, attack, at, theme }} />
        )}
        {ahead && (
          <LowPoint
            {...{ ahead, depth, at, theme }}
            text={Math.abs(ahead.value) < reach - 0.04 ? 'low point' : undefined}
          />
        )}
      </g>
      <ComputedCutName starts={expectedDivot.starts} text="divot, others" at={at} theme={theme} />
      {divot.starts?.kind !== 'entered' && (
        <ComputedCutName starts={divot.starts} text="divot, computed" at={at} theme={theme} />
      )}
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <ScaleBar x={target === 1 ? field.x : field.x + field.width - 0.1 * scale} theme={theme} />
      <Label
        at={{ x: target === 1 ? width - 16 : field.x, y: 20 }}
        text={target === 1 ? 'target →' : '← target'}
        anchor={target === 1 ? 'end' : 'start'}
        theme={theme}
      />
      <IntervalRows
        rows={rows}
        positive={target === 1 ? 'rightward' : 'leftward'}
        tick={(value) => `${value} cm`}
        ends={['behind', 'ahead']}
        x={side.x}
        y={field.height - 8}
        labelWidth={side.width}
        scaleWidth={field.width}
        domain={[-reach * 100, reach * 100]}
        picture={name}
        theme={theme}
      />
      <Lines lines={lines} x={side.x} y={below + 16} theme={theme} />
    </Frame>
  );
}

/** Below where it starts, on the side away from the target; none of what lies off the picture there. */
function ComputedCutName({
  starts,
  text,
  at,
  theme,
}: {
  readonly starts: Value | undefined;
  readonly text: string;
  readonly at: At;
  readonly theme: Theme;
}): Picture | null {
  if (starts === undefined || Math.abs(starts.value) > reach - 0.06) return null;
  const { x, y } = at(starts.value, 0);
  const isTargetRight = at(1, 0).x > x;
  return (
    <Label
      at={{ x: x + (isTargetRight ? -5 : 5), y: y + 22 }}
      text={text}
      anchor={isTargetRight ? 'end' : 'start'}
      tone="expected"
      theme={theme}
    />
  );
}

/** Below the face, as far as they are known. */
function StrikeNumbers({
  values,
  analysis,
  theme,
}: {
  readonly values: readonly (Value | undefined)[];
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const numbers = values.flatMap((value) =>
    value === undefined ? [] : [sayingOf(value, analysis.subject.registry).number],
  );
  return (
    <g>
      {numbers.map((number, i) => (
        <text key={i} x={side.x} y={139 + 15 * i} fill={theme.ink} font-size="11">
          {fitted(number, side.width - 8, 11)}
        </text>
      ))}
    </g>
  );
}

function ScaleBar({ x, theme }: { readonly x: number; readonly theme: Theme }): Picture {
  return (
    <g>
      <path
        d={lineThrough([
          { x, y: 28 },
          { x, y: 32 },
          { x: x + 0.1 * scale, y: 32 },
          { x: x + 0.1 * scale, y: 28 },
        ])}
        stroke={theme.soft}
        data-part="scale"
      />
      <Label at={{ x: x + 0.05 * scale, y: 26 }} text="10 cm" anchor="middle" theme={theme} />
    </g>
  );
}
