// What client and server say to each other of reviews; plain names and shapes, nothing of either side.
import type { ReviewAct, ReviewActed, ReviewPage } from '../language/review.ts';

/** Client to server: all that is remarked on an open record, and who signed it off; null of what is no record. */
export const reviewRequest = 'swingwright/review';
export interface ReviewParams {
  /** The record's URI. */
  readonly uri: string;
}
export interface ReviewResult extends ReviewPage {
  /** The document's version that the ranges in the record are for. */
  readonly version: number;
}

/** Client to server: the edits by which somebody remarks, replies, settles, reopens, takes a suggestion or signs off. */
export const actOnReviewRequest = 'swingwright/actOnReview';
export interface ActOnReviewParams extends ReviewParams {
  readonly act: ReviewAct;
  readonly author: string;
  /** In UTC, as in 2026-06-02T10:00:00Z: the client has the clock. */
  readonly time: string;
}
export type ActOnReviewResult = ReviewActed & {
  /** The record's version; edits of the record are for it. */
  readonly version: number;
};
