// Where a goal wants the ball on a handout's flight picture: framed where the goal says how far and to which side, fading out where it leaves that open.
import type { Interval } from '../../model/windows.ts';
import { fixed, lineThrough, type Place } from '../geometry.ts';
import { areaStyle, type Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';

export interface WantedZone {
  readonly carry: Interval | undefined;
  readonly finish: Interval | undefined;
}

/** What there is room for, m: how far the ball goes, and how far to each side. */
export interface Room {
  readonly far: number;
  readonly wide: number;
  /** Units of the picture within which all of it stays. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly at: (ahead: number, right: number) => Place;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Of the flight, from which on an open end fades in; of the whole. */
const open = { from: 0.5, full: 0.78 } as const;
const steps = 14;

/** The part that is full, in units of the picture. */
export function boxOf({ carry, finish }: WantedZone, { far, wide, at, left, right, top }: Room): Box {
  const [from, to] = [
    at(carry?.max ?? far, finish?.min ?? -wide),
    at(carry?.min ?? open.full * far, finish?.max ?? wide),
  ];
  return {
    left: Math.max(left, from.x),
    right: Math.max(Math.max(left, from.x) + 4, Math.min(right, to.x)),
    top: Math.max(top, from.y),
    bottom: Math.max(to.y, from.y + 4),
  };
}

export function Zone({
  goal,
  room,
  picture,
  theme,
}: {
  readonly goal: WantedZone;
  readonly room: Room;
  readonly picture: string;
  readonly theme: Theme;
}): Picture {
  const box = boxOf(goal, room);
  const { carry, finish } = goal;
  if (carry !== undefined && finish !== undefined) {
    const shape = {
      x: fixed(box.left),
      y: fixed(box.top - 4),
      width: fixed(box.right - box.left),
      height: fixed(box.bottom - box.top + 8),
    };
    return <rect {...shape} rx="4" {...areaStyle('goal', picture, theme)} data-part="goal" />;
  }
  const slices = carry === undefined ? alongFlight(box, room) : across(box, room);
  return (
    <g data-part="goal" data-open={carry === undefined ? 'carry' : 'finish'}>
      {slices.map(({ left, right, top, bottom, strength }, i) => (
        <g key={i} opacity={fixed(strength)}>
          <rect
            x={fixed(left)}
            y={fixed(top)}
            width={fixed(right - left)}
            height={fixed(bottom - top)}
            {...areaStyle('goal', picture, theme)}
            stroke="none"
          />
          {(carry === undefined
            ? [left, right].map((x) => [
                { x, y: top },
                { x, y: bottom },
              ])
            : [top, bottom].map((y) => [
                { x: left, y },
                { x: right, y },
              ])
          ).map((edge, n) => (
            <path key={n} d={lineThrough(edge)} stroke={theme.goal} stroke-width="1" />
          ))}
        </g>
      ))}
    </g>
  );
}

type Slice = Box & { readonly strength: number };

function alongFlight({ left, right, top, bottom }: Box, { far, at, ...room }: Room): readonly Slice[] {
  const start = at(open.from * far, 0).y;
  return [
    ...faded(room.top, top, 'in').map(([a, b, strength]) => ({ left, right, top: a, bottom: b, strength })),
    { left, right, top, bottom, strength: 1 },
    ...faded(bottom, start, 'out').map(([a, b, strength]) => ({ left, right, top: a, bottom: b, strength })),
  ];
}

function across({ left, right, top, bottom }: Box, room: Room): readonly Slice[] {
  const upright = { top: top - 4, bottom: bottom + 4 };
  return [
    ...faded(room.left, left, 'in').map(([a, b, strength]) => ({ ...upright, left: a, right: b, strength })),
    { ...upright, left, right, strength: 1 },
    ...faded(right, room.right, 'out').map(([a, b, strength]) => ({
      ...upright,
      left: a,
      right: b,
      strength,
    })),
  ];
}

/** From nothing to full, or the other way. */
function faded(
  from: number,
  to: number,
  way: 'in' | 'out',
): readonly (readonly [from: number, to: number, strength: number])[] {
  if (!(to - from > 1)) return [];
  const step = (to - from) / steps;
  return Array.from({ length: steps }, (_, i) => {
    const part = (i + 0.5) / steps;
    return [from + i * step, from + (i + 1) * step, way === 'in' ? part : 1 - part] as const;
  });
}
