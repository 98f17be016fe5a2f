// The rewrite of a sign into a direction word and back: -3 deg is 3 deg left; no number changes.
import type { Analysis } from '../analysis/result.ts';
import type { DirectionWord, Measure, Notation, Window } from '../measure/measure.ts';
import type { MeasuredPlace } from './measured-place.ts';
import { isSameMeasured, saysTheSame, type Rewrite, type RewriteEdit } from './rewrite.ts';
import { joinNumber, writtenMeasure, writtenWindow, type WrittenNumber } from './written.ts';

export function turnDirection(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { measured, quantity } = place;
  // A word for where the wind comes from cannot be told from a sign.
  if (quantity.directions.length === 0 || quantity.directions.some(({ bearing }) => bearing !== undefined))
    return [];
  const turned =
    measured.kind === 'window'
      ? turnWindow(analysis.document.text, measured, quantity)
      : turnMeasure(analysis.document.text, measured, quantity);
  if (turned === undefined) return [];
  const { edits, title } = turned;
  return saysTheSame(analysis, edits, place, isSameMeasured) ? [{ title, edits }] : [];
}

interface Turned {
  readonly edits: readonly RewriteEdit[];
  readonly title: string;
}

function turnMeasure(text: string, measure: Measure, { directions }: Notation): Turned | undefined {
  const written = writtenMeasure(text, measure);
  if (written === undefined || measure.value === 0) return undefined;
  const { spans } = measure;
  const { number, unit } = written;
  if (spans.direction !== undefined) {
    const sign = measure.value < 0 ? '-' : '+';
    const before = text.slice(0, spans.direction.start).trimEnd().length;
    return {
      title: `Write with a sign: \`${joinNumber({ sign, number, unit, direction: undefined })}\``,
      edits: [
        { span: spans.number, text: `${sign}${number}` },
        { span: { start: before, end: spans.direction.end }, text: '' },
      ],
    };
  }
  const word = wordFor(Math.sign(measure.value), directions);
  if (word === undefined || written.sign === '') return undefined;
  const end = Math.max(spans.number.end, spans.unit?.end ?? 0);
  return {
    title: wordTitle(joinNumber({ sign: '', number, unit, direction: word })),
    edits: [
      { span: spans.number, text: number },
      { span: { start: end, end }, text: ` ${word}` },
    ],
  };
}

function turnWindow(text: string, window: Window, notation: Notation): Turned | undefined {
  const written = writtenWindow(text, window, notation);
  if (written === undefined) return undefined;
  const [first, second] = written.bounds;
  const hasWord = second.direction !== undefined;
  const turned = hasWord ? withSigns(first, second, notation) : withWords(first, second, window, notation);
  if (turned === undefined) return undefined;
  return {
    title: hasWord ? `Write with signs: \`${turned}\`` : wordTitle(turned),
    edits: [{ span: written.span, text: turned }],
  };
}

function withSigns(
  first: WrittenNumber,
  second: WrittenNumber,
  { directions }: Notation,
): string | undefined {
  const signOf = (word: string): number | undefined =>
    directions.find((known) => known.word.toLowerCase() === word.toLowerCase())?.sign;
  const last = signOf(second.direction!);
  const begin = signOf(first.direction ?? second.direction!);
  if (last === undefined || begin === undefined) return undefined;
  const signed = [
    { ...first, sign: signBefore(first, begin) },
    { ...second, sign: signBefore(second, last) },
  ].sort((a, b) => signedNumber(a) - signedNumber(b));
  const unit = second.unit;
  return `${signed[0]!.sign}${signed[0]!.number}..${joinNumber({ ...signed[1]!, unit, direction: undefined })}`;
}

function signBefore({ number }: WrittenNumber, sign: number): '' | '+' | '-' {
  if (Number(number) === 0) return '';
  return sign < 0 ? '-' : '+';
}

function signedNumber({ sign, number }: WrittenNumber): number {
  return sign === '-' ? -Number(number) : Number(number);
}

/** Where no number has a sign, the hint that no direction is written has the fix. */
function withWords(
  first: WrittenNumber,
  second: WrittenNumber,
  { from, to }: Window,
  { directions }: Notation,
): string | undefined {
  if (first.sign === '' && second.sign === '') return undefined;
  const [left, right] = [wordFor(-1, directions), wordFor(1, directions)];
  if (left === undefined || right === undefined || (from === 0 && to === 0)) return undefined;
  const { unit } = second;
  const low = { sign: '' as const, number: first.number, unit, direction: left };
  const high = { sign: '' as const, number: second.number, unit, direction: right };
  if (from < 0 && to > 0) return `${joinNumber(low)}..${joinNumber(high)}`;
  return to <= 0 ? `${high.number}..${joinNumber(low)}` : `${low.number}..${joinNumber(high)}`;
}

function wordFor(sign: number, directions: readonly DirectionWord[]): string | undefined {
  return directions.find((known) => known.sign === sign)?.word;
}

function wordTitle(shown: string): string {
  return `Write with a direction word: \`${shown}\``;
}
