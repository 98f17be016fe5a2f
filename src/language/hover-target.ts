// The hover on what is aimed at: goals, windows of a template and planned changes, beside the value of today.
import { readerOf } from '../checks/reach.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Measure, Span, Window } from '../measure/measure.ts';
import { secondUnit, showValue, showWindow } from '../measure/show.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Goal } from '../record/document.ts';
import { goalsOf, windowsOf } from './entries.ts';
import { describe, practice, titleOf } from './hover-entry.ts';
import { goalStandingLines } from './hover-goal.ts';
import type { Remark } from './hover.ts';
import { holds } from './places.ts';
import { goalLines } from './windows.ts';

interface Aim {
  readonly quantity: Quantity;
  readonly target: Measure | Window | undefined;
  readonly spans: readonly Span[];
  /** "Goal", "Window", "Planned". */
  readonly word: string;
  readonly goal?: Goal;
}

export function hoverOnTarget(analysis: Analysis, offset: number): Remark | undefined {
  const clubKind = clubKindAimedAt(analysis);
  for (const { quantity, target, spans, word, goal } of aimsOf(analysis)) {
    const span = spans.find((candidate) => holds(candidate, offset));
    if (span === undefined) continue;
    const lines = [
      headline(quantity, target, word),
      ...describe(quantity),
      ...today(quantity, analysis),
      ...(goal === undefined ? [] : goalStandingLines(analysis, goal, quantity.id)),
      ...(goal === undefined ? [] : goalLines(analysis, goal)),
      practice(quantity, readerOf(analysis.subject, clubKind)),
    ];
    return { span, lines };
  }
  return undefined;
}

/** That of the record's club, or of a template for one kind only. */
function clubKindAimedAt({ document, subject }: Analysis): string | undefined {
  if (document.kind !== 'template') return subject.club?.kind?.value;
  return document.clubs.length === 1 ? document.clubs[0]?.value : undefined;
}

function aimsOf({ document, subject }: Analysis): Aim[] {
  const goals = goalsOf(document).flatMap((goal) =>
    [...goal.targets.values()].map(({ quantity, target, keySpan, span }) => ({
      quantity,
      target,
      spans: [keySpan, span],
      word: 'Goal',
      goal,
    })),
  );
  const windows = windowsOf(document).map(({ quantity, window, keySpan, span }) => ({
    quantity,
    target: window,
    spans: [keySpan, span],
    word: 'Window',
  }));
  const plans =
    document.kind !== 'swing'
      ? []
      : document.plan.flatMap(({ change, to }): Aim[] => {
          const quantity = change === undefined ? undefined : subject.registry.find(change.value);
          if (change === undefined || quantity === undefined) return [];
          return [
            {
              quantity,
              target: to?.target,
              spans: [change.span, ...(to === undefined ? [] : [to.span])],
              word: 'Planned',
            },
          ];
        });
  return [...goals, ...windows, ...plans];
}

function headline(quantity: Quantity, target: Measure | Window | undefined, word: string): string {
  const title = titleOf(quantity);
  if (target === undefined) return title;
  const show = (unit?: string): string =>
    target.kind === 'window'
      ? showWindow(quantity, target.from, target.to, unit)
      : showValue(quantity, target.value, null, unit);
  const other = secondUnit(quantity);
  return `${title}. ${word}: ${show()}${other === undefined ? '' : ` = ${show(other)}`}`;
}

function today(quantity: Quantity, { derivation }: Analysis): string[] {
  const value = derivation?.values.get(quantity.id);
  if (value === undefined) return [];
  return [
    `In this record: ${showValue(quantity, value.value, value.u)}${value.kind === 'entered' ? '' : `, ${value.kind === 'derived' ? 'computed' : 'expected'}`}.`,
  ];
}
