// Answers the reviews of an open record, and each act of a reviewer as edits; knows of texts only what is open and what was read.
import type { CancellationToken } from 'vscode-languageserver';
import { findReviews } from '../analysis/review-files.ts';
import type { Reviewed } from '../analysis/review.ts';
import type { Analysis } from '../analysis/result.ts';
import { actOnReview, findReview } from '../language/index.ts';
import type { OutcomeOptions } from './outcome.ts';
import {
  actOnReviewRequest,
  reviewRequest,
  type ActOnReviewParams,
  type ActOnReviewResult,
  type ReviewParams,
  type ReviewResult,
} from './review-protocol.ts';

type ReviewOptions = Pick<OutcomeOptions, 'connection' | 'answer' | 'files' | 'signalOf'>;

export function serveReview({ connection, answer, files, signalOf }: ReviewOptions): void {
  const reviewedOf = async (
    { uri, document, subject }: Analysis,
    token: CancellationToken,
  ): Promise<Reviewed | undefined> =>
    document.kind === 'swing'
      ? findReviews({ uri, document }, subject.registry, {
          load: files.load,
          list: files.list,
          signal: signalOf(token),
        })
      : undefined;

  connection.onRequest(reviewRequest, ({ uri }: ReviewParams, token: CancellationToken) =>
    answer(uri, token, async ({ analysis, version }): Promise<ReviewResult | null> => {
      const reviewed = await reviewedOf(analysis, token);
      return reviewed === undefined ? null : { version, ...findReview(reviewed) };
    }),
  );
  connection.onRequest(
    actOnReviewRequest,
    ({ uri, act, author, time }: ActOnReviewParams, token: CancellationToken) =>
      answer(uri, token, async ({ analysis, version }): Promise<ActOnReviewResult | null> => {
        const reviewed = await reviewedOf(analysis, token);
        return reviewed === undefined ? null : { version, ...actOnReview(reviewed, act, { author, time }) };
      }),
  );
}
