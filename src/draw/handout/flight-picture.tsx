// Where the ball goes, from above with the target at the top: now, with the changes, and what is wanted; to scale, with words in the handout's language.
import type { Handout } from '../../analysis/handout.ts';
import type { Analysis } from '../../analysis/result.ts';
import type { Quantity } from '../../registry/quantity.ts';
import type { Interval } from '../../model/windows.ts';
import { fixed, type Place } from '../geometry.ts';
import { valueOf } from '../known.ts';
import { fitted, keptApart } from '../lettering.ts';
import { areaStyle, Frame, type Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import type { Speech } from './speech.ts';

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
  readonly goal: { readonly carry: Interval | undefined; readonly finish: Interval | undefined } | undefined;
}

/** Null where neither a flight nor a goal for it is known. */
export function flightPicture(handout: Handout, speech: Speech, theme: Theme): Picture | null {
  const drawn = drawnOf(handout);
  if (drawn.now === undefined && drawn.then === undefined) return null;
  return <FlightPicture {...{ handout, drawn, speech, theme }} />;
}

function drawnOf({ analysis, then, goals }: Handout): Drawn {
  const wanted = (key: string): Interval | undefined =>
    goals.find(({ now }) => now.wanted.quantity.id === `flight.${key}`)?.now.wanted;
  const [carry, finish] = [wanted('carry'), wanted('finish')];
  return {
    now: landingOf(analysis),
    then: then && landingOf(then),
    goal: carry === undefined && finish === undefined ? undefined : { carry, finish },
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
  return value !== undefined && bounds !== undefined && value >= bounds.min && value <= bounds.max
    ? value
    : undefined;
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
  const where = (landing: Landing): string => whereWords(landing, carry, finish, speech);
  const wanted = goal && wantedWords(goal, carry, finish, speech);
  const lines = [
    ...(now ? [say('flightNow', { where: where(now) })] : []),
    ...(then ? [say('flightThen', { where: where(then) })] : []),
    ...(wanted === undefined ? [] : [say('flightGoal', { where: wanted })]),
  ];
  const zone = goal && zoneOf(goal, far, at);
  const labels = [
    ...(zone && wanted !== undefined
      ? [
          {
            head: say('wanted'),
            text: wanted,
            colour: theme.goal,
            from: { x: zone.x + zone.width, y: zone.y + 10 },
          },
        ]
      : []),
    ...(then
      ? [{ head: say('withChanges'), text: where(then), colour: theme.expected, from: placed(then) }]
      : []),
    ...(now ? [{ head: say('now'), text: where(now), colour: theme.ink, from: placed(now) }] : []),
  ];
  const heights = keptApart(
    labels.map(({ from }) => from.y),
    46,
    [top - 6, height - 40],
  );
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
      {zone && <rect {...zone} rx="4" {...areaStyle('goal', name, theme)} data-part="goal" />}
      {then && (
        <Way landing={then} end={placed(then)} scale={scale} colour={theme.expected} dashed theme={theme} />
      )}
      {now && (
        <Way landing={now} end={placed(now)} scale={scale} colour={theme.ink} dashed={false} theme={theme} />
      )}
      <circle cx={ball.x} cy={ball.y} r="5" fill={theme.paper} stroke={theme.ink} stroke-width="1.6" />
      {labels.map(({ head, text, colour, from }, i) => (
        <g key={head}>
          <path
            d={`M ${fixed(Math.min(from.x + 7, column - 8))} ${fixed(from.y)} L ${column - 5} ${fixed(heights[i]!)}`}
            stroke={theme.faint}
            stroke-width="1.2"
          />
          <text x={column} y={fixed(heights[i]!)} fill={colour} font-size="12.5" font-weight="600">
            {fitted(head, width - column, 12.5)}
          </text>
          {text.split('\n').map((line, n) => (
            <text key={n} x={column} y={fixed(heights[i]! + 14 * (n + 1))} fill={theme.ink} font-size="12">
              {fitted(line, width - column, 12)}
            </text>
          ))}
        </g>
      ))}
    </Frame>
  );
}

function sidesOf(finish: Interval | undefined, far: number): readonly number[] {
  return finish === undefined ? [] : [finish.min, finish.max].map((side) => Math.min(Math.abs(side), far));
}

/** "16 m right" over "117 m": on the side first, for that is what hurts. */
function whereWords(
  { carry, right }: Landing,
  carryOf: Quantity,
  finishOf: Quantity,
  { round }: Speech,
): string {
  return `${round(finishOf, rounded(right))}\n${round(carryOf, rounded(carry))}`;
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
): string {
  return [
    ...(finish === undefined ? [] : [window(finishOf, finish.min, finish.max)]),
    ...(carry === undefined ? [] : [window(carryOf, carry.min, carry.max)]),
  ].join('\n');
}

/** What the goal leaves open goes as far as the picture. */
function zoneOf(
  { carry, finish }: NonNullable<Drawn['goal']>,
  far: number,
  at: (ahead: number, right: number) => Place,
) {
  const [from, to] = [
    at(carry?.max ?? far, finish?.min ?? -far),
    at(carry?.min ?? 0.86 * far, finish?.max ?? far),
  ];
  const [left, right] = [Math.max(4, from.x), Math.min(column - 12, to.x)];
  return {
    x: fixed(left),
    y: fixed(from.y - 4),
    width: fixed(Math.max(4, right - left)),
    height: fixed(Math.max(8, to.y - from.y + 8)),
  };
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
