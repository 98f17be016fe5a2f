// Who signed a record off, asked of the server and put into words; whatever a name holds is cut to a line's length.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { reviewRequest, type ReviewParams, type ReviewResult } from '../server/review-protocol.ts';

export type SignOff = ReviewResult['signOffs'][number];

const longest = 40;

/** Of each person their last signature; none where the record cannot be asked for. */
export async function signOffsOf(
  client: BaseLanguageClient,
  uri: vscode.Uri,
  token: vscode.CancellationToken,
): Promise<readonly SignOff[]> {
  const params: ReviewParams = { uri: uri.toString() };
  const review = await client
    .sendRequest<ReviewResult | null>(reviewRequest, params, token)
    .catch(() => null);
  return review?.signOffs ?? [];
}

export function signedWords(signOffs: readonly SignOff[]): string {
  const standing = signOffs.filter(({ isVoid }) => !isVoid);
  if (standing.length === 0) return vscode.l10n.t('sign-off void');
  return vscode.l10n.t('signed off by {0}', standing.map(nameOf).join(', '));
}

export function signOffItem(signOff: SignOff): { readonly words: string } {
  const { time, isVoid } = signOff;
  const signed = time === '' ? nameOf(signOff) : vscode.l10n.t('{0} on {1}', nameOf(signOff), dayOf(time));
  return { words: isVoid ? vscode.l10n.t('{0}: void, for values have changed since', signed) : signed };
}

function dayOf(time: string): string {
  return time.split('T')[0]!.slice(0, longest);
}

function nameOf({ by }: SignOff): string {
  const letters = [...by];
  return letters.length <= longest ? by : `${letters.slice(0, longest).join('')}…`;
}
