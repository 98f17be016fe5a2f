// To which scale the balls of several lessons are drawn, and where in it a goal wants them; draws nothing.
import { scaleLinear } from 'd3-scale';
import type { Lesson } from '../analysis/lessons.ts';
import type { GoalSeries } from '../analysis/progress.ts';
import type { Interval } from '../model/windows.ts';
import { fixed } from './geometry.ts';
import type { Landing, Landings } from './landings.ts';

export const cell = { width: 150, height: 200, gap: 14 } as const;

export interface Zone {
  readonly carry: Interval | undefined;
  readonly finish: Interval | undefined;
}

export interface LessonLandings {
  readonly lesson: Lesson;
  readonly landings: Landings | undefined;
  /** m; where the side is not known. */
  readonly carry: number | undefined;
  readonly zone: Zone;
}

export function wantedAt(goals: readonly GoalSeries[], id: string, lesson: Lesson): Interval | undefined {
  const of = goals.find(({ quantity }) => quantity.id === id);
  return of?.points.find((point) => point.lesson === lesson)?.standing.wanted;
}

export interface Scales {
  readonly across: ((value: number) => number) & { ticks: (count: number) => number[] };
  readonly along: ((value: number) => number) & { ticks: (count: number) => number[] };
  /** Of the picture for a metre, the same both ways. */
  readonly unit: number;
}

/** All that came down, and of what is wanted the edge that is nearest to it. */
export function scalesFor(all: readonly LessonLandings[]): Scales {
  const edges = all.flatMap(({ landings }) => edgesOf(landings));
  const carries = all.flatMap(({ carry }) => carry ?? []);
  const across = edges.map(({ right }) => right);
  const ahead = [...edges.map((edge) => edge.ahead), ...carries];
  const rights = [...across, ...nearestEdges(all, 'finish', across), -5, 5];
  const aheads = [...ahead, ...nearestEdges(all, 'carry', ahead)];
  const [left, right] = [Math.min(...rights), Math.max(...rights)];
  const [near, far] = [Math.min(...aheads) - 1, Math.max(...aheads) + 1];
  const unit = Math.min(cell.width / (right - left), cell.height / (far - near));
  const [middle, centre] = [(left + right) / 2, (near + far) / 2];
  const [half, tall] = [cell.width / 2 / unit, cell.height / 2 / unit];
  return {
    across: scaleLinear([middle - half, middle + half], [0, cell.width]),
    along: scaleLinear([centre - tall, centre + tall], [cell.height, 0]),
    unit,
  };
}

function edgesOf(landings: Landings | undefined): readonly Landing[] {
  if (landings === undefined) return [];
  const { places, ellipse } = landings;
  return [
    ...places,
    { right: ellipse.right - ellipse.long, ahead: ellipse.ahead - ellipse.long },
    { right: ellipse.right + ellipse.long, ahead: ellipse.ahead + ellipse.long },
  ];
}

function nearestEdges(
  all: readonly LessonLandings[],
  of: keyof Zone,
  values: readonly number[],
): readonly number[] {
  const middle = (Math.min(...values) + Math.max(...values)) / 2;
  if (!Number.isFinite(middle)) return [];
  return all.flatMap(({ zone: { [of]: wanted } }) => {
    if (wanted === undefined) return [];
    return Math.abs(wanted.min - middle) < Math.abs(wanted.max - middle) ? wanted.min : wanted.max;
  });
}

/** The part of the view where a goal wants the ball; what the goal leaves open goes as far as the view. */
export function boxOf({ carry, finish }: Zone, across: Scales['across'], along: Scales['along']) {
  if (carry === undefined && finish === undefined) return undefined;
  const x = (value: number): number => Math.max(0, Math.min(cell.width, across(value)));
  const y = (value: number): number => Math.max(0, Math.min(cell.height, along(value)));
  const [left, right] = finish ? [x(finish.min), x(finish.max)] : [0, cell.width];
  const [top, bottom] = carry ? [y(carry.max), y(carry.min)] : [0, cell.height];
  if (!(right > left && bottom > top)) return undefined;
  return { x: fixed(left), y: fixed(top), width: fixed(right - left), height: fixed(bottom - top) };
}
