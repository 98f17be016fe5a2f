// The rewrite into another unit: number, uncertainty and unit word change, the digits are those that the uncertainty supports.
import type { Analysis } from '../analysis/result.ts';
import { writeSupported, writeUncertainty } from '../measure/digits.ts';
import type { Measure, Window } from '../measure/measure.ts';
import { tradeUnits } from '../measure/trade-units.ts';
import { differenceFromSI, findUnit, fromSI, toSI } from '../measure/units.ts';
import { uncertaintyInForce } from './in-force.ts';
import type { MeasuredPlace } from './measured-place.ts';
import {
  isSameRemark,
  isSameSource,
  saysTheSame,
  type IsMeant,
  type Rewrite,
  type RewriteEdit,
} from './rewrite.ts';
import { joinNumber, writtenMeasure, writtenWindow, type WrittenNumber } from './written.ts';

/** One rewrite for each other unit that the trade uses. */
export function convertUnit(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { measured, quantity } = place;
  const present = measured.unit ?? findUnit(quantity.unit)?.name;
  return tradeUnits(quantity)
    .filter((unit) => unit !== present)
    .flatMap((unit) => {
      const converted =
        measured.kind === 'window'
          ? convertWindow(analysis, place, measured, unit)
          : convertMeasure(analysis, place, measured, unit);
      if (converted === undefined) return [];
      const { edits, shown, u } = converted;
      return saysTheSame(analysis, edits, place, meant(unit, u))
        ? [{ title: `Convert to ${unit}: \`${shown}\``, edits }]
        : [];
    });
}

interface Converted {
  readonly edits: readonly RewriteEdit[];
  readonly shown: string;
  /** In SI: the uncertainty that set the digits. */
  readonly u: number;
}

function convertMeasure(
  analysis: Analysis,
  place: MeasuredPlace,
  measure: Measure,
  unit: string,
): Converted | undefined {
  const { text } = analysis.document;
  const written = writtenMeasure(text, measure);
  if (written === undefined) return undefined;
  const { spans } = measure;
  const u = uncertaintyInForce(analysis, place.quantity, measure);
  const number = convertNumber(written, measure, unit, u);
  const hasUnit = spans.unit !== undefined;
  const edits: RewriteEdit[] = [
    { span: spans.number, text: hasUnit ? number : `${number} ${unit}` },
    ...(spans.unit ? [{ span: spans.unit, text: unit }] : []),
  ];
  if (spans.stated !== undefined && measure.stated !== undefined) {
    const own = /[^\d.eE+-]/.test(written.stated ?? '') ? ` ${unit}` : '';
    edits.push({
      span: spans.stated,
      text: `${writeUncertainty(differenceFromSI(measure.stated, unit))}${own}`,
    });
  }
  return { edits, shown: [number, unit, written.direction].filter(Boolean).join(' '), u };
}

function convertNumber(
  { sign, direction }: WrittenNumber,
  { value }: Measure,
  unit: string,
  u: number,
): string {
  const size = fromSI(value, unit);
  const turned = direction === undefined ? size : Math.abs(size);
  const number = writeSupported(turned, differenceFromSI(u, unit));
  return sign === '+' && turned > 0 ? `+${number}` : number;
}

/** A window's ends are aimed at, not measured: a tenth of its width is fine enough. */
const finest = 0.1;

function convertWindow(
  analysis: Analysis,
  { quantity }: MeasuredPlace,
  window: Window,
  unit: string,
): Converted | undefined {
  const written = writtenWindow(analysis.document.text, window, quantity);
  if (written === undefined) return undefined;
  const width = window.to - window.from;
  const u = width > 0 ? finest * width : quantity.uncertainty.otherwise;
  const from = findUnit(window.unit ?? quantity.unit)?.name ?? quantity.unit;
  const [first, second] = written.bounds.map((bound): string => {
    const size = fromSI(siOf(bound, from), unit);
    const number = writeSupported(Math.abs(size), differenceFromSI(u, unit));
    const isOwn = bound.unit !== undefined || bound === written.bounds[1];
    const sign = bound.sign === '-' && Number(number) === 0 ? '' : bound.sign;
    return joinNumber({ ...bound, sign, number, unit: isOwn ? unit : undefined });
  });
  const shown = `${first!}..${second!}`;
  return { edits: [{ span: written.span, text: shown }], shown, u };
}

/** What stands before the direction word, in SI. */
function siOf({ sign, number }: WrittenNumber, unit: string): number {
  return toSI(Number(sign === '-' ? `-${number}` : number), unit);
}

/** One digit of 3 or more stands for up to a third of itself, so that rounding moves a number by a sixth of its uncertainty at most. */
const mostMoved = 0.17;

function meant(unit: string, u: number): IsMeant {
  const isNear = (a: number, b: number, scale: number): boolean => Math.abs(a - b) <= mostMoved * scale;
  return (before, after) => {
    const [a, b] = [before.measured, after.measured];
    if (!isSameRemark(before, after) || b.unit !== unit) return false;
    if (a.kind === 'window') return b.kind === 'window' && isNear(a.from, b.from, u) && isNear(a.to, b.to, u);
    if (b.kind === 'window' || !isSameSource(a, b) || Math.sign(a.value) !== Math.sign(b.value)) return false;
    const isStatedAlike =
      a.stated === undefined
        ? b.stated === undefined
        : b.stated !== undefined && isNear(a.stated, b.stated, a.stated);
    return isStatedAlike && isNear(a.value, b.value, u);
  };
}
