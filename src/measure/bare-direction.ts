// Says which direction a number without a word is read in, and where the word would go; knows no quantity by name.
import type { DirectionWord, Measure, Notation, Span, Window } from './measure.ts';

/**
 * The direction that a number or a window is read in although no word and no sign says so; undefined where one does, where
 * zero needs none, and where there is none to presume. `text` is the one in which the spans stand.
 */
export function presumedDirection(
  measured: Measure | Window,
  { directions }: Notation,
  text: string,
): DirectionWord | undefined {
  if (measured.spans.direction !== undefined || directions.some(({ bearing }) => bearing !== undefined))
    return undefined;
  const isZero = measured.kind === 'measure' ? measured.value === 0 : measured.from === measured.to;
  if (isZero || !numberSpans(measured).every(({ start }) => /[\d.]/.test(text.charAt(start))))
    return undefined;
  return directions.find(({ sign }) => sign === 1);
}

/** The first word of each sign: "ahead", "behind". */
export function directionWords({ directions }: Notation): readonly string[] {
  return ([1, -1] as const).flatMap((sign) => directions.find((word) => word.sign === sign)?.word ?? []);
}

/** The offset at which the direction word goes: behind the unit, or behind the number where there is none. */
export function directionPlace(measured: Measure | Window, text: string): number {
  const end = Math.max(...numberSpans(measured).map((span) => span.end));
  const { unit } = measured.spans;
  // In the long form the unit may stand elsewhere.
  const isBehind = unit !== undefined && /^\s*(?:(?:±|\+-)\s*[\d.]+\s*)?$/.test(text.slice(end, unit.start));
  return isBehind && unit.start >= end ? unit.end : end;
}

function numberSpans({ spans }: Measure | Window): readonly Span[] {
  return 'number' in spans ? [spans.number] : [spans.from, spans.to];
}
