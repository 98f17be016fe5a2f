// Walks the entries, targets and windows of a document, whatever its kind; judges none of them.
import type { Measure, Span, Window } from '../measure/measure.ts';
import type { Entry, Goal, Reading, SwingwrightDocument } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';

export interface PlacedTarget {
  readonly quantity: Quantity;
  readonly target: Measure | Window;
  readonly span: Span;
}

/** Every entry of the document: the record's own, those of its shots, the student's and those of each club. */
export function entriesOf(document: SwingwrightDocument): readonly Entry[] {
  if (document.kind === 'swing') {
    return [...document.entries.values(), ...document.shots.flatMap((shot) => [...shot.values()])];
  }
  if (document.kind === 'student') {
    return [
      ...document.entries.values(),
      ...[...document.bag.values()].flatMap((club) => [...club.entries.values()]),
    ];
  }
  return [];
}

/** Every number or window that is aimed at: the goals' and the template's. A plan's are said of the entry it changes. */
export function targetsOf(document: SwingwrightDocument): readonly PlacedTarget[] {
  if (document.kind === 'template') {
    return [...document.windows.values()].map(({ quantity, window, span }) => ({
      quantity,
      target: window,
      span,
    }));
  }
  if (document.kind === 'swing' || document.kind === 'student') return document.goals.flatMap(goalTargets);
  return [];
}

function goalTargets(goal: Goal): readonly PlacedTarget[] {
  return [...goal.targets.values()];
}

/** What stands at this place: a reading of an entry, or a target, with its quantity. */
export function measuredAt(
  document: SwingwrightDocument,
  span: Span,
): { readonly quantity: Quantity; readonly measured: Measure | Window } | undefined {
  const holds = (outer: Span) => outer.start <= span.start && span.end <= outer.end;
  for (const entry of entriesOf(document)) {
    const reading: Reading | undefined = entry.readings.find((candidate) => holds(candidate.span));
    if (reading !== undefined) return { quantity: entry.quantity, measured: reading.measure };
  }
  const target = targetsOf(document).find((candidate) => holds(candidate.span));
  return target && { quantity: target.quantity, measured: target.target };
}
