// Lesson by lesson, which proofs of the plan before were met and how many entries are in conflict, on the days of the time lines above; judges nothing.
import { counted } from '../measure/counted.ts';
import type { ClubProgress, HeldPoint } from '../analysis/progress.ts';
import { dayOf } from '../analysis/outcome-words.ts';
import type { ProofState } from '../judgement/outcome.ts';
import { axisEdge, axisWidth, DayTicks, placeOfDay } from './day-axis.tsx';
import { fixed } from './geometry.ts';
import { widthOf } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** More marks than these above one day are told as a number. */
const mostMarks = 5;
const step = 15;
const row = { top: 14, gap: 12, counts: 20 } as const;

export function ProofRows({
  club: { held, conflicts },
  span,
  name,
  theme,
}: {
  readonly club: Pick<ClubProgress, 'held' | 'conflicts'>;
  readonly span: readonly [string, string];
  readonly name: string;
  readonly theme: Theme;
}): Picture {
  const x = placeOfDay(span);
  const judged = held.filter(({ decided, outcome }) => decided === undefined && outcome.proofs.length > 0);
  const days = daysOf(judged, conflicts);
  const highest = Math.max(1, ...days.map(({ states }) => Math.min(mostMarks, states.length)));
  const proofs = { top: row.top, bottom: row.top + highest * step };
  const counts = proofs.bottom + row.gap;
  const axis = counts + row.counts;
  const words = conflicts.map(({ lesson, count }) => {
    const own = judged.find((one) => one.lesson === lesson);
    return `${dayOf(lesson)}: ${[...(own === undefined ? [] : [proofsSaid(own)]), conflictsSaid(count)].join(', ')}.`;
  });
  return (
    <Frame
      name={name}
      title="Proofs and conflicts, lesson by lesson"
      words={words.join(' ')}
      width={axisWidth}
      height={axis + 50}
      theme={theme}
    >
      <RowName text="Proofs" y={(proofs.top + proofs.bottom) / 2 + 4} theme={theme} />
      <RowName text="Conflicts" y={counts + 14} theme={theme} />
      {[proofs.bottom + row.gap / 2, axis].map((y) => (
        <path
          key={y}
          d={`M ${axisEdge.left} ${y} H ${axisWidth - axisEdge.right}`}
          stroke={theme.faint}
          stroke-width="0.8"
        />
      ))}
      {days
        .filter(({ states }) => states.length > 0)
        .map(({ day, states }) => (
          <g key={day} data-day={day} data-part="proofs">
            {states.slice(0, mostMarks).map((state, i) => (
              <Mark key={i} state={state} x={x(day)} y={proofs.bottom - (i + 0.5) * step} theme={theme} />
            ))}
            {states.length > mostMarks && (
              <text x={fixed(x(day) + 9)} y={proofs.top + 8} fill={theme.soft} font-size="10">
                {`+${states.length - mostMarks}`}
              </text>
            )}
          </g>
        ))}
      {days.map(({ day, counts: found }) => (
        <text
          key={day}
          x={fixed(x(day))}
          y={counts + 14}
          text-anchor="middle"
          fill={found.some((count) => count > 0) ? theme.alert : theme.soft}
          font-weight={found.some((count) => count > 0) ? 600 : 400}
          font-size="12"
          data-day={day}
          data-part="conflicts"
        >
          {found.join(', ')}
        </text>
      ))}
      <DayTicks days={days.map(({ day }) => day)} x={x} y={axis} theme={theme} />
      <MarkKey y={axis + 38} theme={theme} />
    </Frame>
  );
}

/** Lessons of one day stand at one place: their proofs above one another, their conflicts side by side. */
function daysOf(
  judged: readonly HeldPoint[],
  conflicts: ClubProgress['conflicts'],
): readonly {
  readonly day: string;
  readonly states: readonly ProofState[];
  readonly counts: readonly number[];
}[] {
  const all = [...new Set(conflicts.map(({ lesson }) => lesson.date!))];
  return all.map((day) => ({
    day,
    states: judged
      .filter(({ lesson }) => lesson.date === day)
      .flatMap(({ outcome }) => outcome.proofs.map(({ state }) => state)),
    counts: conflicts.filter(({ lesson }) => lesson.date === day).map(({ count }) => count),
  }));
}

function RowName({
  text,
  y,
  theme,
}: {
  readonly text: string;
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  return (
    <text x={axisEdge.left - 12} y={fixed(y)} text-anchor="end" fill={theme.ink} font-size="11">
      {text}
    </text>
  );
}

/** Told apart by shape: a full round, a cross, a ring, a dotted ring. */
function Mark({
  state,
  x,
  y,
  theme,
}: {
  readonly state: ProofState;
  readonly x: number;
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  const [at, middle] = [fixed(x), fixed(y)];
  if (state === 'not met')
    return (
      <path
        d={`M ${fixed(x - 4.5)} ${fixed(y - 4.5)} l 9 9 m 0 -9 l -9 9`}
        stroke={theme.alert}
        stroke-width="2.2"
        data-state={state}
      />
    );
  const isOpen = state === 'not measured' || state === 'unreadable';
  return (
    <circle
      cx={at}
      cy={middle}
      r="5"
      fill={state === 'met' ? theme.entered : theme.paper}
      stroke={state === 'met' ? theme.entered : theme.soft}
      stroke-width="1.6"
      stroke-dasharray={isOpen ? '2 2' : undefined}
      data-state={state}
    />
  );
}

const keyed = ['met', 'not met', 'cannot tell', 'not measured'] as const satisfies readonly ProofState[];

function MarkKey({ y, theme }: { readonly y: number; readonly theme: Theme }): Picture {
  let x: number = axisEdge.left;
  return (
    <g data-part="key">
      {keyed.map((state) => {
        const at = x;
        x += 14 + widthOf(state, 11) + 18;
        return (
          <g key={state}>
            <Mark {...{ state, theme }} x={at + 5} y={y - 4} />
            <text x={fixed(at + 16)} y={y} fill={theme.soft} font-size="11">
              {state}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** "proofs of 2026-08-03: 1 met, 1 not met". */
function proofsSaid({ plan, outcome }: HeldPoint): string {
  const states = [...new Set(outcome.proofs.map(({ state }) => state))];
  const said = states.map(
    (state) => `${outcome.proofs.filter((one) => one.state === state).length} ${state}`,
  );
  return `proofs of the plan of ${dayOf(plan)} ${said.join(' and ')}`;
}

function conflictsSaid(count: number): string {
  return count === 0 ? 'no entry in conflict' : `${counted(count, 'entry', 'entries')} in conflict`;
}
