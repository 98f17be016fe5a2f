// What colleagues remark on a record, thread by thread with its place in the record today, and who signed it off; reads no file.
import type { Followed } from '../checks/subject.ts';
import { harmless } from '../measure/quote.ts';
import type { ReviewFile, SwingRecord } from '../record/document.ts';
import { repliesInOrder, type RemarkState } from '../record/remark.ts';
import { remarkStandings, signatureStandings } from '../record/remark-standing.ts';
import type { Registry } from '../registry/registry.ts';
import { lineTableOf, rangeOf } from './positions.ts';
import type { TextRange } from './result.ts';

/** All words of other people are harmless here: nothing in them steers an editor, a page or a terminal. Markup is left to whoever shows it. */
export interface ThreadComment {
  readonly author: string;
  /** As written. */
  readonly time: string;
  /** Empty where somebody only settled the thread or opened it again. */
  readonly text: string;
  readonly suggests: string | undefined;
  /** What the comment says of the thread; undefined where nothing. */
  readonly state: RemarkState | undefined;
}

export interface Thread {
  readonly id: string;
  /** The URI of the review that holds it, and its place there. */
  readonly file: string;
  readonly place: TextRange;
  readonly state: RemarkState;
  /** Empty of a remark on the record as a whole. */
  readonly about: string;
  /** Where it stands in the record now; undefined of the record as a whole, and where the record has nothing of that name. */
  readonly range: TextRange | undefined;
  /** What stood there when it was made, and what stands there now, with units. */
  readonly then: string | undefined;
  readonly now: string | undefined;
  readonly isChanged: boolean;
  /** The latest value that somebody suggests, and whether it stands in the record now. */
  readonly suggestion: string | undefined;
  readonly isTaken: boolean;
  /** The remark itself first, then its replies by time. */
  readonly comments: readonly ThreadComment[];
}

export interface SignOff {
  readonly by: string;
  readonly time: string;
  readonly file: string;
  readonly place: TextRange;
  /** True where the record says something else than when it was signed. */
  readonly isVoid: boolean;
}

/** A record with all reviews of it. */
export interface Reviewed {
  readonly record: Followed<SwingRecord>;
  readonly registry: Registry;
  readonly reviews: readonly Followed<ReviewFile>[];
  /** The URIs of all reviews in the folder, those of other records too. */
  readonly taken: readonly string[];
}

export interface Review {
  /** In the order of the record; what has no place there comes first. */
  readonly threads: readonly Thread[];
  readonly signOffs: readonly SignOff[];
}

export function reviewOf({ record, registry, reviews }: Reviewed): Review {
  const table = lineTableOf(record.document.text);
  const threads = reviews.flatMap(({ uri, document }) => {
    const own = lineTableOf(document.text);
    return remarkStandings(document, record.document, registry).map(
      ({ remark, anchor, suggestion, ...standing }): Thread => ({
        id: remark.id?.value ?? '',
        file: uri,
        place: rangeOf(own, remark.id?.span ?? remark.span),
        state: standing.state,
        about: remark.about?.value ?? '',
        range: anchor && rangeOf(table, anchor.span),
        then: standing.then,
        now: standing.now,
        isChanged: standing.isChanged,
        suggestion,
        isTaken: standing.isTaken,
        comments: [
          commentOf({ ...remark, state: remark.stated?.value }),
          ...repliesInOrder(remark).map(commentOf),
        ],
      }),
    );
  });
  const lineOf = ({ range }: Thread): number => range?.start.line ?? -1;
  return {
    threads: threads.sort((a, b) => lineOf(a) - lineOf(b)),
    signOffs: reviews.flatMap(({ uri, document }) => {
      const own = lineTableOf(document.text);
      return signatureStandings(document, record.document).map(({ signature, isVoid }) => ({
        by: nameOf(signature.by?.value),
        time: oneLine(signature.time),
        file: uri,
        place: rangeOf(own, (signature.hash ?? signature.by)?.span ?? signature.span),
        isVoid,
      }));
    }),
  };
}

function commentOf({
  author,
  time,
  text,
  suggests,
  state,
}: {
  readonly author: string | undefined;
  readonly time: string | undefined;
  readonly text: string | undefined;
  readonly suggests: string | undefined;
  readonly state: RemarkState | undefined;
}): ThreadComment {
  return {
    author: nameOf(author),
    time: oneLine(time),
    text: harmless(text ?? ''),
    suggests: suggests === undefined ? undefined : oneLine(suggests),
    state,
  };
}

function nameOf(name: string | undefined): string {
  return oneLine(name) || 'somebody';
}

function oneLine(text: string | undefined): string {
  return harmless(text ?? '')
    .replace(/\s+/g, ' ')
    .trim();
}
