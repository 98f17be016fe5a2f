// The rewrite that marks one reading doubtful, so that it counts for less; every word of it stays.
import type { Analysis } from '../analysis/result.ts';
import { insertAfter, writeValue, writtenMapping } from './long-form.ts';
import type { MeasuredPlace } from './measured-place.ts';
import {
  isSameMeasured,
  keepsWords,
  saysTheSame,
  type IsMeant,
  type Rewrite,
  type RewriteEdit,
} from './rewrite.ts';
import { longText } from './turn-form.ts';
import { writtenMeasure } from './written.ts';

export function markDoubtful(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { reading } = place;
  if (reading === undefined || reading.doubtful) return [];
  const edit = reading.form === 'short' ? asLongForm(analysis, place) : withMark(analysis, place);
  if (edit === undefined) return [];
  if (reading.form === 'short' && !keepsWords(analysis.document.text, edit)) return [];
  if (!saysTheSame(analysis, [edit], place, isMarked)) return [];
  return [{ title: 'Mark it doubtful', edits: [edit] }];
}

function asLongForm(
  { document: { text } }: Analysis,
  { span, reading }: MeasuredPlace,
): RewriteEdit | undefined {
  const written = writtenMeasure(text, reading!.measure);
  if (written === undefined) return undefined;
  const end = span.start + text.slice(span.start, span.end).trimEnd().length;
  return { span: { start: span.start, end }, text: longText(written, 'doubtful: true') };
}

function withMark({ document: { text } }: Analysis, { span }: MeasuredPlace): RewriteEdit | undefined {
  const mapping = writtenMapping(text, span);
  const present = mapping?.keys.get('doubtful');
  if (present !== undefined) return writeValue(text, present, 'true');
  const last = mapping && [...mapping.keys.values()].at(-1);
  return mapping && last && insertAfter(text, mapping, last, 'doubtful: true');
}

const isMarked: IsMeant = (before, after) =>
  after.reading?.doubtful === true &&
  isSameMeasured({ ...before, reading: before.reading && { ...before.reading, doubtful: true } }, after);
