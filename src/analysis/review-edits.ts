// What a colleague or the coach does with a review, as minimal edits of its files: remark, reply, settle, reopen, take a suggestion, sign off; writes no file.
import type { TextEdit } from '../checks/check.ts';
import type { Followed } from '../checks/subject.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import { anchorsOf } from '../record/anchor.ts';
import type { ReviewFile } from '../record/document.ts';
import { brokenIn } from '../record/broken.ts';
import { fingerprintOf } from '../record/fingerprint.ts';
import { lastNameIn, relativePath } from '../record/reference.ts';
import { stateOf, type Remark, type RemarkState } from '../record/remark.ts';
import { addRemark, addReply, addSignature, emptyReview, type ReviewEdit } from '../record/review-text.ts';
import { freeName } from './file-name.ts';
import { reviewUriOf } from './review-beside.ts';
import { recordNamed } from './record-named.ts';
import type { Reviewed } from './review.ts';
import { suggested } from './suggestion.ts';

/** Who does it and when, in UTC: `2026-06-02T10:00:00Z`. The core has no clock. */
export interface Hand {
  readonly author: string;
  readonly time: string;
}

export type ReviewChange =
  | { readonly kind: 'refused'; readonly reason: string }
  | {
      readonly kind: 'changed';
      /** The one file that changes, and whether it has to be made first; its edits are then of an empty text. */
      readonly uri: string;
      readonly isNew: boolean;
      readonly edits: readonly TextEdit[];
    };

export interface NewRemarkWish extends Hand {
  readonly about: string;
  readonly text: string;
  readonly suggests?: string | undefined;
}

/** A remark on an entry of the record, with the value that should stand there instead if one is suggested. */
export function remarkOn(reviewed: Reviewed, wish: NewRemarkWish): ReviewChange {
  const { record } = reviewed;
  const anchors = anchorsOf(record.document);
  const anchor = anchors.get(wish.about);
  if (anchor === undefined) {
    const nearest = findNearest(wish.about, [...anchors.keys()]);
    return refused(
      `the record has no entry ${quote(wish.about)}; expected one that it has${nearest === undefined ? '' : `, perhaps ${quote(nearest)}`}`,
    );
  }
  const reason = reasonAgainst(wish.text, wish.suggests, wish.about, reviewed);
  if (reason !== undefined) return refused(reason);
  const { about, author, time, text, suggests } = wish;
  return inFile(reviewed, targetOf(reviewed), (review) =>
    addRemark(review, { about, value: anchor.value, author, time, text, suggests }),
  );
}

export interface ReplyWish extends Hand {
  readonly text: string;
  readonly suggests?: string | undefined;
}

/** Somebody else's reply answers a remark; its author's opens it again. */
export function replyTo(reviewed: Reviewed, id: string, wish: ReplyWish): ReviewChange {
  return onThread(reviewed, id, (remark, review) => {
    const reason = reasonAgainst(wish.text, wish.suggests, remark.about?.value ?? '', reviewed);
    if (reason !== undefined) return refused(reason);
    const { author, time, text, suggests } = wish;
    const state = author.trim() === remark.author?.trim() ? 'open' : 'answered';
    return inFile(reviewed, review, (before) =>
      addReply(before, remark, { author, time, state, text, suggests }),
    );
  });
}

export function settleThread(reviewed: Reviewed, id: string, hand: Hand): ReviewChange {
  return bring(reviewed, id, hand, 'settled');
}

export function reopenThread(reviewed: Reviewed, id: string, hand: Hand): ReviewChange {
  return bring(reviewed, id, hand, 'open');
}

function bring(reviewed: Reviewed, id: string, { author, time }: Hand, state: RemarkState): ReviewChange {
  return onThread(reviewed, id, (remark, review) => {
    if (stateOf(remark) === state)
      return refused(
        `the remark ${quote(remark.id?.value ?? id)} is ${state} already; expected one that is not`,
      );
    return inFile(reviewed, review, (before) =>
      addReply(before, remark, { author, time, state, text: undefined, suggests: undefined }),
    );
  });
}

/** Writes the value that was suggested last into the record; the review stays as it is. */
export function takeSuggestion(reviewed: Reviewed, id: string): ReviewChange {
  return onThread(reviewed, id, (remark) => {
    const { suggests = remark.suggests } = remark.replies.findLast((one) => one.suggests !== undefined) ?? {};
    if (suggests === undefined)
      return refused(`the remark ${quote(remark.id?.value ?? id)} suggests no value; expected one that does`);
    const { record, registry } = reviewed;
    const edit = suggested(record.document, remark.about?.value ?? '', suggests, registry);
    if (edit.kind === 'refused') return edit;
    const { span, text } = edit.edit;
    if (record.document.text.slice(span.start, span.end) === text)
      return refused(`the record says ${quote(suggests)} there already; expected a value that differs`);
    return { kind: 'changed', uri: record.uri, isNew: false, edits: [{ uri: record.uri, ...edit.edit }] };
  });
}

/**
 * Why nothing is told or done before a file is mended: a review that is not read to its end hides remarks, and what a torn record
 * says nobody has seen who signs it off. `nameOf` says a file's name as its reader knows it.
 */
export function tornFile(
  { record, reviews }: Reviewed,
  nameOf: (uri: string) => string,
  { isSigning }: { readonly isSigning: boolean },
): string | undefined {
  for (const { uri, document } of isSigning ? [record, ...reviews] : reviews) {
    const found = brokenIn(document);
    if (found !== undefined)
      return `\`${nameOf(uri)}\` cannot be read to its end (${found}); expected it to be mended first`;
  }
  return undefined;
}

/** Signs the record off as it stands. Whoever asks for it has asked for torn files before. */
export function signOff(reviewed: Reviewed, { author, time }: Hand): ReviewChange {
  const hash = fingerprintOf(reviewed.record.document.text);
  return inFile(reviewed, targetOf(reviewed), (before) => addSignature(before, { by: author, time, hash }));
}

function reasonAgainst(
  text: string,
  suggests: string | undefined,
  about: string,
  { record, registry }: Reviewed,
): string | undefined {
  if (text.trim() === '' && suggests === undefined)
    return 'found no text; expected what the remark is to say';
  if (suggests === undefined || !anchorsOf(record.document).has(about)) return undefined;
  const edit = suggested(record.document, about, suggests, registry);
  return edit.kind === 'refused' ? edit.reason : undefined;
}

function onThread(
  reviewed: Reviewed,
  id: string,
  act: (remark: Remark, review: Followed<ReviewFile>) => ReviewChange,
): ReviewChange {
  const all = reviewed.reviews.flatMap((review) =>
    review.document.remarks.map((remark) => ({ remark, review, own: remark.id?.value ?? '' })),
  );
  const exact = all.filter(({ own }) => own === id);
  const found = exact.length > 0 ? exact : all.filter(({ own }) => id !== '' && own.startsWith(id));
  const [first, second] = found;
  if (first === undefined)
    return refused(
      `no review of this record has a remark ${quote(id)}; expected the id of one that is there`,
    );
  if (second !== undefined)
    return refused(`${found.length} remarks begin with ${quote(id)}; expected more of its id`);
  return act(first.remark, first.review);
}

/** The review of the record's own name, else the first one; undefined where there is none yet. */
function targetOf({ record, reviews }: Reviewed): Followed<ReviewFile> | undefined {
  const own = reviewUriOf(record.uri);
  return reviews.find(({ uri }) => uri === own) ?? reviews[0];
}

function inFile(
  { record, taken }: Reviewed,
  review: Followed<ReviewFile> | undefined,
  put: (text: string) => readonly ReviewEdit[] | undefined,
): ReviewChange {
  const uri = review?.uri ?? freeUri(record.uri, taken);
  const of = uri === undefined ? undefined : relativePath(uri, record.uri);
  if (uri === undefined || of === undefined)
    return refused('no review can lie beside this file; expected a record in a folder');
  // A file in which nothing stands yet is begun as a new one is.
  const blank = review?.document.text.trim() === '' ? review.document.text.length : undefined;
  if (review === undefined || blank !== undefined) {
    const text = emptyReview(of);
    const [edit] = put(text) ?? [];
    if (edit === undefined) return refused('the remark cannot be written as YAML; expected plain words');
    const whole = text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end);
    const span = { start: 0, end: blank ?? 0 };
    return { kind: 'changed', uri, isNew: review === undefined, edits: [{ uri, span, text: whole }] };
  }
  const edits = put(review.document.text);
  if (edits === undefined)
    return refused(
      `nothing can be put into the review ${quote(lastNameIn(uri))} as it is written; mend what is found in it first`,
    );
  return {
    kind: 'changed',
    uri,
    isNew: false,
    edits: [...recordNamed(review, record.uri), ...edits].map((edit) => ({ uri, ...edit })),
  };
}

/** The review of another record may have the name. */
function freeUri(record: string, taken: readonly string[]): string | undefined {
  const own = reviewUriOf(record);
  if (own === undefined) return undefined;
  const base = own.slice(0, -reviewSuffix.length);
  return freeName(base, reviewSuffix, taken);
}

const reviewSuffix = '.review.yaml';

function refused(reason: string): ReviewChange {
  return { kind: 'refused', reason };
}
