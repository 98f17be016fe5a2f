// What an editor asks of the reviews of a record: the threads with their places, and each act as edits of one file; writes no file.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import {
  remarkOn,
  reopenThread,
  replyTo,
  settleThread,
  signOff,
  takeSuggestion,
  tornFile,
  type Hand,
  type ReviewChange,
} from '../analysis/review-edits.ts';
import { reviewOf, type Review, type Reviewed } from '../analysis/review.ts';
import type { Position, TextRange } from '../analysis/result.ts';
import { anchorAt } from '../record/anchor.ts';
import { lastNameIn } from '../record/reference.ts';
import { offsetAt } from './places.ts';

export type ReviewAct =
  /** On the entry at a place of the record. */
  | { readonly kind: 'remark'; readonly at: Position; readonly text: string; readonly suggests?: string }
  | { readonly kind: 'reply'; readonly id: string; readonly text: string; readonly suggests?: string }
  /** `apply` writes what was suggested last into the record. */
  | { readonly kind: 'settle' | 'reopen' | 'apply'; readonly id: string }
  | { readonly kind: 'signOff' };

export type ReviewActed =
  | { readonly kind: 'refused'; readonly reason: string }
  | {
      readonly kind: 'edits';
      /** The one file that changes: a review, or the record. Where it `isNew` it has to be made, and the edit is of an empty text. */
      readonly uri: string;
      readonly isNew: boolean;
      readonly edits: readonly { readonly range: TextRange; readonly newText: string }[];
    };

export interface ReviewPage extends Review {
  /** Where a remark may begin: the first line of every entry. */
  readonly lines: readonly number[];
}

export function findReview(reviewed: Reviewed): ReviewPage {
  const { text } = reviewed.record.document;
  const table = lineTableOf(text);
  const lines = table.starts.flatMap((start, line) =>
    anchorAt(reviewed.record.document, start + indentOf(text, start)) === undefined ? [] : line,
  );
  return { ...reviewOf(reviewed), lines };
}

export function actOnReview(reviewed: Reviewed, act: ReviewAct, hand: Hand): ReviewActed {
  const reason = tornFile(reviewed, lastNameIn, { isSigning: act.kind === 'signOff' });
  if (reason !== undefined) return { kind: 'refused', reason };
  const change = changeFor(reviewed, act, hand);
  if (change.kind === 'refused') return change;
  const { uri, isNew, edits } = change;
  const files = [reviewed.record, ...reviewed.reviews];
  const table = lineTableOf(files.find((file) => file.uri === uri)?.document.text ?? '');
  return {
    kind: 'edits',
    uri,
    isNew,
    edits: edits.map(({ span, text }) => ({ range: rangeOf(table, span), newText: text })),
  };
}

function changeFor(reviewed: Reviewed, act: ReviewAct, hand: Hand): ReviewChange {
  switch (act.kind) {
    case 'remark': {
      const { document } = reviewed.record;
      const about = anchorAt(document, offsetAt(lineTableOf(document.text), act.at))?.about;
      if (about === undefined)
        return {
          kind: 'refused',
          reason: 'nothing of the record stands on this line; expected one with an entry',
        };
      return remarkOn(reviewed, { ...hand, about, text: act.text, suggests: act.suggests });
    }
    case 'reply':
      return replyTo(reviewed, act.id, { ...hand, text: act.text, suggests: act.suggests });
    case 'settle':
      return settleThread(reviewed, act.id, hand);
    case 'reopen':
      return reopenThread(reviewed, act.id, hand);
    case 'apply':
      return takeSuggestion(reviewed, act.id);
    case 'signOff':
      return signOff(reviewed, hand);
  }
}

function indentOf(text: string, start: number): number {
  return /^[ \t]*/.exec(text.slice(start, start + 200))![0].length;
}
