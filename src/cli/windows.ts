// The windows of face and path that the flight allows and that goals ask for, for the command `derive`; computes none.
import type { Analysis } from '../analysis/result.ts';
import { flightWindowsOf, goalWindowsOf } from '../analysis/windows.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Interval } from '../model/windows.ts';
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
    const asked = [...goalWindowsOf(analysis, goal)].flatMap(([id, { min, max }]) => {
      const quantity = registry.find(id);
      return quantity === undefined ? [] : [`${id} ${showWindow(quantity, min, max)}`];
    });
    return asked.length === 0 ? [] : [`  the goal (${keysOf(goal).join(', ')}) asks for ${asked.join(', ')}`];
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
      [...goalWindowsOf(analysis, goal)].map(([id, window]) => [id, windowJson(id, window)]),
    ),
  }));
  return { flight: Object.fromEntries(flight), goals };
}

function goalsIn({ document }: Analysis): readonly Goal[] {
  return document.kind === 'swing' ? document.goals : [];
}

function keysOf({ shape, contact, targets }: Goal): readonly string[] {
  return [
    ...(shape === undefined ? [] : ['shape']),
    ...(contact === undefined ? [] : ['contact']),
    ...targets.keys(),
  ];
}
