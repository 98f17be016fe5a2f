// The rewrite that writes out how sure a number is: what method or quantity fill in now, ready to be typed over.
import type { Analysis } from '../analysis/result.ts';
import { writeUncertainty } from '../measure/digits.ts';
import type { Measure } from '../measure/measure.ts';
import { differenceFromSI, findUnit } from '../measure/units.ts';
import { uncertaintyInForce } from './in-force.ts';
import { insertAfter, writeValue, writtenMapping } from './long-form.ts';
import type { MeasuredPlace } from './measured-place.ts';
import {
  isSameRemark,
  isSameSource,
  saysTheSame,
  type IsMeant,
  type Rewrite,
  type RewriteEdit,
} from './rewrite.ts';
import { writtenMeasure } from './written.ts';

export function stateUncertainty(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { reading, quantity } = place;
  if (reading === undefined || reading.measure.stated !== undefined) return [];
  const { measure, form } = reading;
  const written = writtenMeasure(analysis.document.text, measure);
  if (written === undefined) return [];
  const unit = measure.unit ?? findUnit(quantity.unit)?.name ?? quantity.unit;
  // What is written is divided by the workspace's factor, so that what is in force is multiplied by it.
  const factor = analysis.subject.workspace?.document.coverage ?? 1;
  const number = writeUncertainty(
    differenceFromSI(factor * uncertaintyInForce(analysis, quantity, measure), unit),
  );
  const shown = [number, written.unit ?? unit].filter((word) => word !== '').join(' ');
  const edit = form === 'short' ? behindNumber(measure, shown) : giveOrTake(analysis, place, shown);
  if (edit === undefined || !saysTheSame(analysis, [edit], place, meant)) return [];
  return [{ title: `Write how sure it is: \`± ${shown}\``, edits: [{ ...edit, placeholder: number }] }];
}

function behindNumber({ spans }: Measure, shown: string): RewriteEdit {
  const end = Math.max(spans.number.end, spans.unit?.end ?? 0, spans.direction?.end ?? 0);
  return { span: { start: end, end }, text: ` ± ${shown}` };
}

function giveOrTake(
  { document: { text } }: Analysis,
  { span }: MeasuredPlace,
  shown: string,
): RewriteEdit | undefined {
  const mapping = writtenMapping(text, span);
  const present = mapping?.keys.get('give_or_take');
  if (present !== undefined) return writeValue(text, present, shown);
  const value = mapping?.keys.get('value');
  return mapping && value && insertAfter(text, mapping, value, `give_or_take: ${shown}`);
}

/** The number stays, and so does all but the uncertainty. */
const meant: IsMeant = (before, after) => {
  const [a, b] = [before.measured, after.measured];
  if (a.kind === 'window' || b.kind === 'window' || b.stated === undefined) return false;
  return a.value === b.value && isSameSource(a, b) && isSameRemark(before, after);
};
