// Puts a suggested value in the place of the one that stands in a record, and reads the result back before it is given out; knows no review.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { anchorsOf, isOneValue, isUnchanged } from '../record/anchor.ts';
import type { SwingRecord } from '../record/document.ts';
import { parseDocument } from '../record/parse.ts';
import type { Registry } from '../registry/registry.ts';

export type Suggested =
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'edit'; readonly edit: { readonly span: Span; readonly text: string } };

/** The edit of the value alone: what stands around it stays, a comment behind it too. */
export function suggested(record: SwingRecord, about: string, value: string, registry: Registry): Suggested {
  const refuse = (reason: string): Suggested => ({ kind: 'refused', reason });
  const { text } = record;
  const anchor = anchorsOf(record).get(about);
  if (anchor === undefined)
    return refuse(`the record has no entry ${quote(about)}; expected one that it has`);
  if (!isOneValue(value)) return refuse(`found ${quote(value)}; expected one value on one line`);
  const { start, end } = anchor.valueSpan;
  const written = text.slice(start, end);
  if (/[\r\n]/.test(written.trimEnd()) && !/^[[{"']/.test(written))
    return refuse(`what stands at ${quote(about)} takes several lines; expected it to be changed by hand`);
  const isTight = start > 0 && !/\s/.test(text.charAt(start - 1));
  const kept = written.length - written.trimEnd().length;
  const edit = {
    span: { start, end: end - kept },
    text: `${isTight && written === '' ? ' ' : ''}${value.trim()}`,
  };
  const after = parseDocument(
    'swing',
    text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end),
    registry,
  );
  if (after.kind !== 'swing')
    return refuse(`${quote(value)} leaves a record that cannot be read; expected one value`);
  const grown = edit.text.length - (edit.span.end - edit.span.start);
  const inside = { start, end: edit.span.end + grown };
  const problem = after.problems.find(
    ({ code, span }) => !/^bare-/.test(code) && span.start < inside.end && span.end > inside.start,
  );
  if (problem !== undefined && !wasThere(record, problem.code, anchor.valueSpan))
    return refuse(
      `${quote(value)} cannot stand at ${quote(about)}: found ${problem.found}, expected ${problem.expected}`,
    );
  if (!isUnchanged(after, about, value, registry) || !areOthersAlike(record, after, about))
    return refuse(
      `${quote(value)} would change more than what stands at ${quote(about)}; expected a value of that alone`,
    );
  return { kind: 'edit', edit };
}

function wasThere({ problems }: SwingRecord, code: string, { start, end }: Span): boolean {
  return problems.some((one) => one.code === code && one.span.start <= end && one.span.end >= start);
}

/** All that is neither above nor below it says what it said. */
function areOthersAlike(before: SwingRecord, after: SwingRecord, about: string): boolean {
  const isApart = (id: string): boolean =>
    id !== about && !id.startsWith(`${about}.`) && !about.startsWith(`${id}.`);
  const said = (record: SwingRecord): string =>
    JSON.stringify(
      [...anchorsOf(record).values()]
        .filter((one) => isApart(one.about))
        .map((one) => [one.about, one.value]),
    );
  return said(before) === said(after);
}
