// Walks the entries, targets and windows of a document, whatever its kind; judges none of them.
import type { Measure, Span, Window } from '../measure/measure.ts';
import type {
  BagClub,
  Entry,
  FaultChange,
  Goal,
  PlannedChange,
  StudentFile,
  SwingwrightDocument,
} from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Subject } from './subject.ts';

export interface PlacedTarget {
  readonly quantity: Quantity;
  readonly target: Measure | Window;
  readonly span: Span;
  /** The name of the club that a goal is for. */
  readonly club: string | undefined;
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

/** The kind of club that this entry was measured with, or is a measure of; undefined where none is known. */
export function clubKindOf({ document, club }: Subject, entry: Entry): string | undefined {
  if (document.kind === 'swing') return club?.kind?.value;
  return document.kind === 'student' ? ownersOf(document).get(entry)?.kind?.value : undefined;
}

const owners = new WeakMap<StudentFile, ReadonlyMap<Entry, BagClub>>();

function ownersOf(document: StudentFile): ReadonlyMap<Entry, BagClub> {
  const kept = owners.get(document);
  if (kept !== undefined) return kept;
  const found = new Map(
    [...document.bag.values()].flatMap((club) =>
      [...club.entries.values()].map((entry) => [entry, club] as const),
    ),
  );
  owners.set(document, found);
  return found;
}

/** Every number or window that is aimed at: those of goals, plans and templates, and what changes of a fault book end at. */
export function targetsOf(document: SwingwrightDocument): readonly PlacedTarget[] {
  if (document.kind === 'template') {
    return [...document.windows.values()].map(({ quantity, window, span }) => ({
      quantity,
      target: window,
      span,
      club: undefined,
    }));
  }
  if (document.kind === 'faults')
    return [...document.faults.values()].flatMap(({ changes }) => changes.flatMap(aimedAt));
  if (document.kind === 'student') return document.goals.flatMap(goalTargets);
  return document.kind === 'swing'
    ? [...document.goals.flatMap(goalTargets), ...document.plan.flatMap(aimedAt)]
    : [];
}

function goalTargets(goal: Goal): readonly PlacedTarget[] {
  return [...goal.targets.values()].map((one) => ({ ...one, club: goal.club?.value }));
}

function aimedAt({
  quantity,
  to,
}: Pick<PlannedChange | FaultChange, 'quantity' | 'to'>): readonly PlacedTarget[] {
  return quantity === undefined || to === undefined ? [] : [{ quantity, ...to, club: undefined }];
}

/** The kind of club with which this is aimed at; undefined where none is known. */
export function clubKindAimedWith(
  { document, club, student }: Subject,
  { club: named }: PlacedTarget,
): string | undefined {
  if (named === undefined) return document.kind === 'swing' ? club?.kind?.value : undefined;
  const bag = document.kind === 'student' ? document.bag : student?.document.bag;
  return bag?.get(named)?.kind?.value;
}

/** What stands at this place: a reading of an entry, or a target, with its quantity. */
export function measuredAt(document: SwingwrightDocument, span: Span): PlacedMeasure | undefined {
  const placed = placedMeasures.get(document) ?? placeMeasures(document);
  placedMeasures.set(document, placed);
  let low = 0;
  let high = placed.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (placed[middle]!.span.start <= span.start) low = middle + 1;
    else high = middle;
  }
  const last = placed[low - 1];
  return last !== undefined && span.end <= last.span.end ? last : undefined;
}

/** The entry in whose value this place lies, even where no number could be read there. */
export function entryAround(document: SwingwrightDocument, span: Span): Entry | undefined {
  return entriesOf(document).find(
    ({ valueSpan }) => valueSpan.start <= span.start && span.end <= valueSpan.end,
  );
}

export interface PlacedMeasure {
  readonly quantity: Quantity;
  readonly measured: Measure | Window;
  readonly span: Span;
}

/** In the order of the text, in which none overlaps another; many findings of one document ask. */
const placedMeasures = new WeakMap<SwingwrightDocument, readonly PlacedMeasure[]>();

function placeMeasures(document: SwingwrightDocument): readonly PlacedMeasure[] {
  const readings = entriesOf(document).flatMap(({ quantity, readings }) =>
    readings.map(({ measure, span }) => ({ quantity, measured: measure, span })),
  );
  const targets = targetsOf(document).map(({ quantity, target, span }) => ({
    quantity,
    measured: target,
    span,
  }));
  return [...readings, ...targets].sort((a, b) => a.span.start - b.span.start);
}
