// The windows of face and path in words: hints behind the entries and goals, and lines for hovers; computes nothing.
import { positionAt, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { flightWindowsOf, goalWindowsOf } from '../analysis/windows.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { windowIds, type Interval, type WindowId } from '../model/windows.ts';
import type { Goal } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { lineText } from './places.ts';
import type { InlayHint } from './shapes.ts';
import { nameOf } from './words.ts';

const faceToPath = 'delivery.face_to_path';
const anchors = ['delivery.face', 'delivery.path', 'flight.curve'];

/** One behind the face, and one behind each goal. */
export function windowHints(analysis: Analysis, table: LineTable): InlayHint[] {
  const { document } = analysis;
  if (document.kind !== 'swing') return [];
  const anchor = anchors
    .map((id) => document.entries.get(id))
    .find((entry) => entry !== undefined && entry.readings.length > 0);
  const allowed = anchor && flightWindowsOf(analysis).get(faceToPath);
  return [
    ...(anchor === undefined || allowed === undefined
      ? []
      : [
          hintAt(
            anchor.valueSpan.end,
            table,
            `flight says ${between(faceToPath, allowed, analysis.subject.registry)}`,
            flightLines(analysis),
          ),
        ]),
    ...document.goals.flatMap((goal) => goalHint(goal, analysis, table)),
  ];
}

/** What the flight allows, one line each, the coach's own entries of face and path left out; 95 %. */
export function flightLines(analysis: Analysis): readonly string[] {
  return linesOf(
    flightWindowsOf(analysis),
    analysis.subject.registry,
    'The flight alone allows, in 95 of 100 cases:',
  );
}

/** "The flight alone allows 1.9–3.4 deg right." for an entry of face or path. */
export function flightLineFor(analysis: Analysis, id: string): readonly string[] {
  const allowed = windowIds.some((each) => each === id) && flightWindowsOf(analysis).get(id as WindowId);
  return allowed
    ? [`The flight alone allows ${between(id, allowed, analysis.subject.registry)} (95 %).`]
    : [];
}

export function goalLines(analysis: Analysis, goal: Goal): readonly string[] {
  return linesOf(
    goalWindowsOf(analysis, goal),
    analysis.subject.registry,
    'At this speed and loft the goal asks for:',
  );
}

function linesOf(
  windows: ReadonlyMap<WindowId, Interval>,
  registry: Registry,
  title: string,
): readonly string[] {
  if (windows.size === 0) return [];
  return [
    title,
    ...[...windows].map(([id, interval]) => `- ${nameOf(id, registry)} ${between(id, interval, registry)}`),
  ];
}

function goalHint(goal: Goal, analysis: Analysis, table: LineTable): InlayHint[] {
  const windows = goalWindowsOf(analysis, goal);
  const wanted = windows.get(faceToPath);
  if (wanted === undefined) return [];
  const now = analysis.derivation?.values.get(faceToPath);
  const { registry } = analysis.subject;
  const quantity = registry.find(faceToPath);
  const present = now && quantity ? `; now ${showValue(quantity, now.value, now.u).split(' ± ')[0]!}` : '';
  const label = `asks for face-to-path ${between(faceToPath, wanted, registry)}${present}`;
  return [hintAt(goal.span.start, table, label, goalLines(analysis, goal))];
}

function hintAt(offset: number, table: LineTable, label: string, lines: readonly string[]): InlayHint {
  const { line } = positionAt(table, offset);
  const position = { line, character: lineText(table, line).trimEnd().length };
  return {
    position,
    label,
    tooltip: { kind: 'markdown', value: lines.join('\n') },
    paddingLeft: true,
  };
}

/** "1.9–3.4 deg right", "1.0 deg left to 3.4 deg right". */
function between(id: string, { min, max }: Interval, registry: Registry): string {
  const quantity = registry.find(id);
  if (quantity === undefined) return '';
  const [from = '', to] = showWindow(quantity, min, max).split('..');
  if (to === undefined) return from;
  return /^[\d.]+$/.test(from) ? `${from}–${to}` : `${from} to ${to}`;
}
