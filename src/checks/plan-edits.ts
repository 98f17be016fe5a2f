// The edits that write a proposed plan into its record, the same from an editor and from the command line; proposes nothing.
import type { ProposedChange } from '../judgement/proposal.ts';
import type { SwingRecord } from '../record/document.ts';
import type { TextEdit } from './check.ts';
import { blockEdits, readBack } from './block-edits.ts';
import { predictedText } from './forecast-words.ts';
import { predictedEdits, type Kept } from './predicted-edits.ts';
import { planText } from './proposal-words.ts';
import { stateFault } from './state-fault.ts';
import type { Subject } from './subject.ts';

/**
 * The plan in the place of an earlier one, what it is predicted to lead to, and the faults that it is against where the record
 * does not state them, since a reason must be stated. None where the text has no place for them.
 */
export function planEdits(
  subject: Subject,
  document: SwingRecord,
  changes: readonly ProposedChange[],
  kept: Kept,
): readonly TextEdit[] {
  const { uri } = subject;
  const plan = ['plan', planText(changes)] as const;
  const isKept = document.outline.some(({ name }) => name === 'predicted');
  const blocks = isKept
    ? // Lines that go below `predicted` at the end of the file come before a plan that goes there too.
      [...predictedEdits(subject, document, kept), ...blockEdits(uri, document, [plan])]
    : blockEdits(uri, document, [plan, ['predicted', predictedTextOf(kept)]]);
  if (blocks.length === 0) return [];
  return readBack(document, subject.registry, joined([...statedEdits(subject, changes), ...blocks]));
}

function predictedTextOf({ prediction, further, coverage }: Kept): string {
  return predictedText(prediction, further, coverage);
}

function statedEdits(subject: Subject, changes: readonly ProposedChange[]): readonly TextEdit[] {
  const unstated = new Map(
    changes.flatMap(({ unstated: one }) => (one === undefined ? [] : [[one.fault.id.value, one] as const])),
  );
  const edits = [...unstated].flatMap(([id, { at }]) => stateFault(subject, id, at)?.edits ?? []);
  // A second fault goes below the key that the first one brings.
  return edits.map((edit, i) =>
    i === 0 ? edit : { ...edit, text: edit.text.replace(/^\s*faults:\r?\n/, '') },
  );
}

/** What is put in at one place is one edit, in the order given. */
function joined(edits: readonly TextEdit[]): readonly TextEdit[] {
  const found: TextEdit[] = [];
  for (const edit of edits) {
    const { start, end } = edit.span;
    const same = found.findIndex(({ span }) => span.start === start && span.end === start && start === end);
    if (same < 0) found.push(edit);
    else found[same] = { ...edit, text: found[same]!.text + edit.text };
  }
  return found;
}
