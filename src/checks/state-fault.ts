// The edit that adds a fault to those that a record states; touches no byte of what stands there.
import type { SwingRecord } from '../record/document.ts';
import { documentEnd } from '../record/document-end.ts';
import { indentAt, lineEnd, lineStart } from '../record/lines.ts';
import { parseDocument } from '../record/parse.ts';
import type { Fix } from './check.ts';
import { insert } from './fixes.ts';
import type { Subject } from './subject.ts';

/** Undefined where there is no place at which the text would read back as meant. */
export function stateFault(subject: Subject, fault: string, at: string | undefined): Fix | undefined {
  const { document, registry } = subject;
  if (document.kind !== 'swing') return undefined;
  const item = at === undefined ? `{ fault: ${fault} }` : `{ fault: ${fault}, at: ${at} }`;
  const place = placeFor(document, item);
  if (place === undefined) return undefined;
  const { text } = document;
  const changed = text.slice(0, place.offset) + place.text + text.slice(place.offset);
  const edited = parseDocument('swing', changed, registry);
  const isMeant =
    edited.kind === 'swing' &&
    edited.problems.length <= document.problems.length &&
    edited.silences.length === document.silences.length &&
    edited.faults.length === document.faults.length + 1 &&
    edited.faults.some((one) => one.fault.value === fault && one.at?.value === at);
  return isMeant
    ? { ...insert(subject, place.offset, place.text, `State \`${fault}\``), preferred: false }
    : undefined;
}

interface Place {
  readonly offset: number;
  readonly text: string;
}

/** Behind the last one of a list, below an empty key, or with a key of its own before the goals or at the end. */
function placeFor({ text, outline }: SwingRecord, item: string): Place | undefined {
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const key = outline.find(({ name }) => name === 'faults');
  if (key === undefined) {
    const next = outline.find(({ name }) => ['misses', 'goals', 'plan', 'notes'].includes(name));
    const block = `faults:${feed}  - ${item}${feed}`;
    if (next !== undefined) return { offset: lineStart(text, next.nameSpan.start), text: block };
    const end = documentEnd(text);
    const isEnded = end === 0 || text[end - 1] === '\n';
    return { offset: end, text: isEnded ? block : feed + block };
  }
  const end = text.slice(0, key.span.end).trimEnd().length;
  if (/^\s*:\s*\[/.test(text.slice(key.nameSpan.end)) && text[end - 1] === ']') {
    const last = key.children.at(-1);
    if (last === undefined) return { offset: end - 1, text: item };
    return { offset: last.span.end, text: `, ${item}` };
  }
  const last = key.children.at(-1);
  const from = lineStart(text, last?.span.start ?? key.nameSpan.start);
  const dash = last === undefined ? 2 : indentAt(text, from);
  const until = text.slice(0, last?.span.end ?? key.nameSpan.end).trimEnd().length;
  return { offset: lineEnd(text, until), text: `${feed}${' '.repeat(dash)}- ${item}` };
}
