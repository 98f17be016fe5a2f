// Where the ball goes, from above with the target at the top: now, with the changes, and what is wanted; to scale, with words in the handout's language.
import type { Handout } from '../../analysis/handout.ts';
import { goalsOf } from '../../analysis/plan.ts';
import type { Analysis } from '../../analysis/result.ts';
import type { Quantity } from '../../registry/quantity.ts';
import type { Interval } from '../../model/windows.ts';
import { fixed, type Place } from '../geometry.ts';
import { valueOf } from '../known.ts';
import { Frame, type Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import { Leaders, type Leader } from './leaders.tsx';
import type { Speech } from './speech.ts';
import { boxOf, Zone, type Room, type WantedZone } from './wanted-zone.tsx';
import { isOutside } from '../../registry/registry.ts';

const width = 352;
const height = 330;
const name = 'handout-flight';
const ball: Place = { x: 104, y: height - 26 };
const top = 52;
/** Room to each side of the target line. */
const room = 92;
const column = 206;

interface Landing {
  readonly carry: number;
  readonly right: number;
  readonly start: number | undefined;
}

interface Drawn {
  readonly now: Landing | undefined;
  readonly then: Landing | undefined;
  readonly goal: WantedZone | undefined;
}

/** Null where neither a flight nor a goal for it is known. */
export function flightPicture(handout: Handout, speech: Speech, theme: Theme): Picture | null {
  const drawn = drawnOf(handout);
  if (drawn.now === undefined && drawn.then === undefined) return null;
  return <FlightPicture {...{ handout, drawn, speech, theme }} />;
}

function drawnOf({ analysis, then, goals }: Handout): Drawn {
  // What one goal asks of the carry and another of the finish is no place that anybody wants: the first goal that asks for any is drawn.
  const zones = goalsOf(analysis.subject).map(({ goal: { targets } }) => {
    const wanted = (key: string): Interval | undefined => {
      const target = targets.get(key);
      return target && goals.find(({ now }) => now.wanted.span === target.span)?.now.wanted;
    };
    return { carry: wanted('carry'), finish: wanted('finish') };
  });
  return {
    now: landingOf(analysis),
    then: then && landingOf(then),
    goal: zones.find(({ carry, finish }) => carry !== undefined || finish !== undefined),
  };
}

function landingOf(analysis: Analysis): Landing | undefined {
  const [carry, finish, start] = ['carry', 'finish', 'start'].map((key) =>
    possible(analysis, `flight.${key}`),
  );
  if (carry === undefined || !(carry > 0)) return undefined;
  const right = finish === undefined || Math.abs(finish) > carry ? undefined : finish;
  return right === undefined ? undefined : { carry, right, start };
}

function possible(analysis: Analysis, id: string): number | undefined {
  const [value, bounds] = [valueOf(analysis, id)?.value, analysis.subject.registry.find(id)?.bounds];
  return value !== undefined && bounds !== undefined && !isOutside(value, bounds) ? value : undefined;
}

function FlightPicture({
  handout: { analysis },
  drawn: { now, then, goal },
  speech,
  theme,
}: {
  readonly handout: Handout;
  readonly drawn: Drawn;
  readonly speech: Speech;
  readonly theme: Theme;
}): Picture {
  const { say } = speech;
  const { registry } = analysis.subject;
  const [carry, finish] = [registry.find('flight.carry')!, registry.find('flight.finish')!];
  const landings = [now, then].filter((one) => one !== undefined);
  const far = Math.max(...landings.map((one) => one.carry), goal?.carry?.max ?? 0);
  const wide = Math.max(1, ...landings.map(({ right }) => Math.abs(right)), ...sidesOf(goal?.finish, far));
  const scale = Math.min((ball.y - top) / far, room / wide);
  const at = (ahead: number, right: number): Place => ({
    x: ball.x + right * scale,
    y: ball.y - ahead * scale,
  });
  const placed = (landing: Landing): Place =>
    at(Math.sqrt(landing.carry ** 2 - landing.right ** 2), landing.right);
  const where = (landing: Landing): readonly string[] => whereWords(landing, carry, finish, speech);
  const wanted = goal && wantedWords(goal, carry, finish, speech);
  const lines = [
    ...(now ? [say('flightNow', { where: where(now).join(', ') })] : []),
    ...(then ? [say('flightThen', { where: where(then).join(', ') })] : []),
    ...(wanted === undefined ? [] : [say('flightGoal', { where: wanted.join(', ') })]),
  ];
  const ground: Room = { far, wide, at, left: 4, right: column - 12, top: 26 };
  const zone = goal && boxOf(goal, ground);
  const leaders: readonly Leader[] = [
    ...(zone && wanted !== undefined
      ? [
          {
            head: say('wanted'),
            lines: wanted,
            colour: theme.goal,
            from: { x: zone.right - 2, y: (zone.top + zone.bottom) / 2 },
          },
        ]
      : []),
    ...(then
      ? [{ head: say('withChanges'), lines: where(then), colour: theme.expected, from: placed(then) }]
      : []),
    ...(now ? [{ head: say('now'), lines: where(now), colour: theme.ink, from: placed(now) }] : []),
  ];
  return (
    <Frame
      name={name}
      title={say('flight')}
      words={say('flightWords', { lines: lines.join(' ') })}
      width={width}
      height={height}
      theme={theme}
    >
      <path
        d={`M ${ball.x} ${ball.y} L ${ball.x} 26`}
        stroke={theme.soft}
        stroke-width="1"
        stroke-dasharray="10 4 2 4"
      />
      <path
        d={`M ${ball.x} 30 L ${ball.x} 8 L ${ball.x + 16} 13.5 L ${ball.x} 19`}
        stroke={theme.ink}
        stroke-width="1.6"
        fill={theme.ink}
      />
      <text x={ball.x + 22} y="18" fill={theme.soft} font-size="12">
        {say('target')}
      </text>
      {goal && <Zone goal={goal} room={ground} picture={name} theme={theme} />}
      {then && (
        <Way landing={then} end={placed(then)} scale={scale} colour={theme.expected} dashed theme={theme} />
      )}
      {now && (
        <Way landing={now} end={placed(now)} scale={scale} colour={theme.ink} dashed={false} theme={theme} />
      )}
      <circle cx={ball.x} cy={ball.y} r="5" fill={theme.paper} stroke={theme.ink} stroke-width="1.6" />
      <Leaders
        leaders={leaders}
        column={{ x: column, width: width - column, between: [top - 6, height - 40] }}
        theme={theme}
      />
    </Frame>
  );
}

function sidesOf(finish: Interval | undefined, far: number): readonly number[] {
  return finish === undefined ? [] : [finish.min, finish.max].map((side) => Math.min(Math.abs(side), far));
}

/** "16 m right" above "117 m": on the side first, for that is what hurts. */
function whereWords(
  { carry, right }: Landing,
  carryOf: Quantity,
  finishOf: Quantity,
  { round }: Speech,
): readonly string[] {
  return [round(finishOf, rounded(right)), round(carryOf, rounded(carry))];
}

/** To the metre: nobody aims finer. */
function rounded(value: number): number {
  return Math.round(value);
}

function wantedWords(
  { carry, finish }: NonNullable<Drawn['goal']>,
  carryOf: Quantity,
  finishOf: Quantity,
  { window }: Speech,
): readonly string[] {
  return [
    ...(finish === undefined ? [] : [window(finishOf, finish.min, finish.max)]),
    ...(carry === undefined ? [] : [window(carryOf, carry.min, carry.max)]),
  ];
}

/** A bend from the direction in which the ball starts to where it comes down. */
function Way({
  landing: { start, carry },
  end,
  scale,
  colour,
  dashed,
  theme,
}: {
  readonly landing: Landing;
  readonly end: Place;
  readonly scale: number;
  readonly colour: string;
  readonly dashed: boolean;
  readonly theme: Theme;
}): Picture {
  const reach = 0.55 * carry * scale;
  const control =
    start === undefined
      ? { x: (ball.x + end.x) / 2, y: (ball.y + end.y) / 2 }
      : { x: ball.x + reach * Math.sin(start), y: ball.y - reach * Math.cos(start) };
  return (
    <g>
      <path
        d={`M ${ball.x} ${ball.y} Q ${fixed(control.x)} ${fixed(control.y)} ${fixed(end.x)} ${fixed(end.y)}`}
        stroke={colour}
        stroke-width="2.6"
        {...(dashed ? { 'stroke-dasharray': '6 5' } : {})}
      />
      <circle
        cx={fixed(end.x)}
        cy={fixed(end.y)}
        r="5.5"
        fill={dashed ? theme.paper : colour}
        stroke={colour}
        stroke-width="2"
      />
    </g>
  );
}
