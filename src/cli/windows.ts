// The windows of face and path that the flight allows and that goals ask for, for the command `derive`; computes none.
import type { Analysis } from '../analysis/result.ts';
import { goalsOf } from '../analysis/plan.ts';
import { flightWindowsOf, goalWindowsOf, whyNoGoalWindows } from '../analysis/windows.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Interval } from '../model/windows.ts';
import { unseenWith } from '../judgement/face-need.ts';
import { withClub } from '../checks/forecast-words.ts';
import { togetherWords } from '../checks/window-words.ts';
import type { Goal } from '../record/document.ts';
import { tidy } from './shots.ts';

export function windowRows(analysis: Analysis): string[] {
  const { registry } = analysis.subject;
  const flight = [...flightWindowsOf(analysis)].flatMap(([id, { min, max, value, u }]) => {
    const quantity = registry.find(id);
    if (quantity === undefined) return [];
    return `  the flight allows ${id} ${showWindow(quantity, min, max)} (95 %), most likely ${showValue(quantity, value, u)}`;
  });
  const goals = goalsIn(analysis).flatMap((goal) => {
    const isPoint = [...goal.targets.values()].some(
      ({ quantity, target }) => target.kind === 'measure' && quantity.id !== 'flight.carry',
    );
    const name = `  the goal (${keysOf(goal).join(', ')}${isPoint ? '; single numbers to the point' : ''})`;
    const windows = [...goalWindowsOf(analysis, goal)].flatMap(([id, window]) => {
      const quantity = registry.find(id);
      return quantity === undefined ? [] : [{ ...window, quantity }];
    });
    const asked = windows.map(({ quantity, min, max }) => `${quantity.id} ${showWindow(quantity, min, max)}`);
    const why = whyNoGoalWindows(analysis, goal);
    if (asked.length === 0)
      return why === undefined ? [] : [`${name} asks for no face and path that can be told: ${why}`];
    const { situation } = analysis.account!;
    const unseen = windows.flatMap(({ quantity, min, max }) => {
      const seen = unseenWith(quantity, { min, max }, situation);
      return seen === undefined
        ? []
        : [
            `    beyond what is seen${withClub(situation.clubKind)}: ${quantity.id} ${showWindow(quantity, seen.min, seen.max)}`,
          ];
    });
    const together = togetherWords(windows, ({ id }) => id);
    return [
      `${name} asks for ${asked.join(', ')}`,
      ...(together === undefined ? [] : [`    ${together}`]),
      ...unseen,
    ];
  });
  return [...flight, ...goals];
}

/** In the units shown. */
export function windowsJson(analysis: Analysis) {
  const { registry } = analysis.subject;
  const windowJson = (id: string, { min, max }: Interval): object => {
    const { unit } = registry.find(id)!;
    return { min: tidy(fromSI(min, unit)), max: tidy(fromSI(max, unit)), unit };
  };
  const flight = [...flightWindowsOf(analysis)].map(([id, window]) => {
    const { unit } = registry.find(id)!;
    const [value, u] = [tidy(fromSI(window.value, unit)), tidy(differenceFromSI(window.u, unit))];
    return [id, { ...windowJson(id, window), value, u }] as const;
  });
  const goals = goalsIn(analysis).map((goal) => ({
    goal: keysOf(goal),
    windows: Object.fromEntries(
      [...goalWindowsOf(analysis, goal)].map(([id, window]) => [
        id,
        { ...windowJson(id, window), middle: tidy(fromSI(window.middle, registry.find(id)!.unit)) },
      ]),
    ),
  }));
  return { flight: Object.fromEntries(flight), goals };
}

function goalsIn({ subject }: Analysis): readonly Goal[] {
  return goalsOf(subject).map(({ goal }) => goal);
}

function keysOf({ shape, contact, targets }: Goal): readonly string[] {
  return [
    ...(shape === undefined ? [] : ['shape']),
    ...(contact === undefined ? [] : ['contact']),
    ...targets.keys(),
  ];
}
