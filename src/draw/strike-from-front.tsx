// The strike seen from the front: arc, low point, ground and divot to scale, and where on the face the ball was met; draws what is known.
import type { Analysis } from '../analysis/result.ts';
import type { Value } from '../model/value.ts';
import { ruleBall } from '../physics/ball.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight } from './interval-rows.tsx';
import { kindOf, rowOf, sayingOf, valueOf, wordsOf } from './known.ts';
import { Frame, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'strike-from-front';
/** Units of the picture for a metre; both ways, so that angles are true. */
const scale = 900;
const field = { width: 552, height: 210 };
/** Where the ground below the ball is. */
const origin: Place = { x: 250, y: 120 };
/** As far to each side as there is room, m. */
const reach = 0.26;

export function StrikeFromFront({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { registry, student } = analysis.subject;
  const [ahead, depth, radius, inclination, attack, starts, length, divotDepth] = [
    'delivery.low_point.ahead',
    'delivery.low_point.depth',
    'delivery.arc.radius',
    'delivery.arc.inclination',
    'delivery.attack',
    'ground.divot.starts',
    'ground.divot.length',
    'ground.divot.depth',
  ].map((id) => valueOf(analysis, id));
  const target = student?.document.hand?.value === 'left' ? -1 : 1;
  const at = (x: number, up: number): Place => ({
    x: origin.x + target * x * scale,
    y: origin.y - up * scale,
  });
  const rows = [ahead, starts].flatMap((value) =>
    value === undefined ? [] : [rowOf(value, 'cm', registry)],
  );
  const missing = [
    ...(ahead ? [] : ['low point']),
    ...(radius && inclination ? [] : ['arc']),
    ...(attack ? [] : ['attack angle']),
  ];
  const height = field.height + rowsHeight(rows) + 10;
  return (
    <Frame
      name={name}
      title="The strike from the front"
      words={wordsOf(
        [ahead, depth, attack, starts, length, divotDepth]
          .flatMap((value) => value ?? [])
          .map((value) => sayingOf(value, registry)),
        missing,
      )}
      width={field.width}
      height={height}
      theme={theme}
    >
      <Ground at={at} theme={theme} />
      {ahead && radius && inclination && (
        <ArcLine {...{ ahead, depth, radius, inclination, attack, at, theme }} />
      )}
      {starts && <Divot {...{ starts, length, depth: divotDepth, at, theme }} />}
      {ahead && <LowPoint {...{ ahead, depth, at, theme }} />}
      <circle
        cx={origin.x}
        cy={fixed(origin.y - ruleBall.radius * scale)}
        r={fixed(ruleBall.radius * scale)}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.5"
      />
      <ScaleBar theme={theme} />
      <text
        x={target === 1 ? field.width - 8 : 8}
        y="20"
        text-anchor={target === 1 ? 'end' : 'start'}
        fill={theme.soft}
        font-size="11"
      >
        {target === 1 ? 'target →' : '← target'}
      </text>
      <IntervalRows
        rows={rows}
        positive={target === 1 ? 'rightward' : 'leftward'}
        tick={(value) => `${value} cm`}
        ends={['behind', 'ahead']}
        x={20}
        y={field.height}
        labelWidth={170}
        scaleWidth={340}
        picture={name}
        theme={theme}
      />
      {missing.length > 0 && (
        <text x="20" y={20} fill={theme.soft} font-size="11">
          {`Not known: ${missing.join(', ')}`}
        </text>
      )}
    </Frame>
  );
}

type At = (x: number, up: number) => Place;

function Ground({ at, theme }: { readonly at: At; readonly theme: Theme }): Picture {
  return (
    <path
      d={lineThrough([at(-reach - 0.02, 0), at(reach + 0.05, 0)])}
      stroke={theme.ink}
      stroke-width="1.2"
    />
  );
}

/**
 * The head's path as a circle in its plane, seen from the front: ahead = a + R sin θ, above its lowest point
 * R (1 − cos θ) sin i.
 */
function ArcLine({
  ahead,
  depth,
  radius,
  inclination,
  attack,
  at,
  theme,
}: {
  readonly ahead: Value;
  readonly depth: Value | undefined;
  readonly radius: Value;
  readonly inclination: Value;
  readonly attack: Value | undefined;
  readonly at: At;
  readonly theme: Theme;
}): Picture {
  const lowest = -(depth?.value ?? 0);
  const places: Place[] = [];
  for (let step = 0; step <= 48; step++) {
    const x = -reach + (step / 48) * 2 * reach;
    const sine = (x - ahead.value) / radius.value;
    if (Math.abs(sine) >= 1) continue;
    places.push(
      at(x, lowest + radius.value * (1 - Math.sqrt(1 - sine * sine)) * Math.sin(inclination.value)),
    );
  }
  return (
    <path
      d={lineThrough(places)}
      {...lineStyle('expected', theme)}
      data-id={(attack ?? ahead).id}
      data-part="arc"
    />
  );
}

function LowPoint({
  ahead,
  depth,
  at,
  theme,
}: {
  readonly ahead: Value;
  readonly depth: Value | undefined;
  readonly at: At;
  readonly theme: Theme;
}): Picture {
  const colour = kindOf(ahead) === 'entered' ? theme.entered : theme.expected;
  const style = lineStyle(kindOf(ahead), theme);
  const up = -(depth?.value ?? 0);
  const [low, left, right] = [
    at(ahead.value, up),
    at(ahead.value - (ahead.u ?? 0), up - 0.016),
    at(ahead.value + (ahead.u ?? 0), up - 0.016),
  ];
  return (
    <g data-id={ahead.id}>
      <path d={lineThrough([low, at(ahead.value, up - 0.016)])} {...style} />
      <path d={lineThrough([left, right])} {...style} />
      <circle cx={fixed(low.x)} cy={fixed(low.y)} r="4" fill={colour} data-part="low-point" />
      <text
        x={fixed(low.x)}
        y={fixed(at(0, up - 0.034).y)}
        text-anchor="middle"
        fill={theme.ink}
        font-size="11"
      >
        low point
      </text>
    </g>
  );
}

/** As written down: a bowl below the ground from where it starts, as long and as deep. */
function Divot({
  starts,
  length,
  depth,
  at,
  theme,
}: {
  readonly starts: Value;
  readonly length: Value | undefined;
  readonly depth: Value | undefined;
  readonly at: At;
  readonly theme: Theme;
}): Picture {
  const [from, to] = [at(starts.value, 0), at(starts.value + (length?.value ?? 0.1), 0)];
  const bottom = at(0, -2 * (depth?.value ?? 0.006)).y;
  return (
    <g data-id={starts.id}>
      <path
        d={`${lineThrough([from])} Q ${fixed((from.x + to.x) / 2)} ${fixed(bottom)} ${fixed(to.x)} ${fixed(to.y)} Z`}
        fill={theme.faint}
        {...lineStyle(kindOf(starts), theme)}
        stroke-width="1.4"
      />
      <text x={fixed(to.x)} y={fixed(to.y - 8)} text-anchor="middle" fill={theme.soft} font-size="10">
        divot
      </text>
    </g>
  );
}

function ScaleBar({ theme }: { readonly theme: Theme }): Picture {
  const y = field.height - 16;
  return (
    <g>
      <path
        d={`M 20 ${y - 4} L 20 ${y} L ${20 + 0.1 * scale} ${y} L ${20 + 0.1 * scale} ${y - 4}`}
        stroke={theme.soft}
        data-part="scale"
      />
      <text x={20 + 0.05 * scale} y={y - 5} text-anchor="middle" fill={theme.soft} font-size="10">
        10 cm
      </text>
    </g>
  );
}
