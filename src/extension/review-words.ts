// What a review thread says in the editor: its label, its comments, and what can be done with it; plain text, so that nothing in it becomes markup.
import * as vscode from 'vscode';
import type { ReviewResult } from '../server/review-protocol.ts';

export type ReviewThread = ReviewResult['threads'][number];
type ReviewComment = ReviewThread['comments'][number];

/** A value in a label is cut here: a line of the record may be long. */
const longest = 80;

export function labelOf({ about, state, range, then, now, isChanged, isTaken }: ReviewThread): string {
  const words = [stateWords(state)];
  if (about !== '' && range === undefined) words.push(vscode.l10n.t('not in the record any more'));
  else if (isTaken) words.push(vscode.l10n.t('the record says what was suggested'));
  else if (isChanged && then !== undefined && now !== undefined)
    words.push(vscode.l10n.t('was {0}, now {1}', cut(then), cut(now)));
  else if (isChanged) words.push(vscode.l10n.t('the record says something else now'));
  return `${about === '' ? vscode.l10n.t('The record') : cut(about)} · ${words.join(' · ')}`;
}

/** A body that is a string, not Markdown, is shown as it is. */
export function commentsOf({ comments, suggestion, isTaken }: ReviewThread): vscode.Comment[] {
  const latest = comments.findLastIndex(({ suggests }) => suggests !== undefined);
  return comments.map((comment, at) => {
    const time = Date.parse(comment.time);
    const isOffer = at === latest && suggestion !== undefined && !isTaken;
    return {
      body: bodyOf(comment),
      mode: vscode.CommentMode.Preview,
      author: { name: comment.author },
      ...(Number.isNaN(time) ? {} : { timestamp: new Date(time) }),
      contextValue: isOffer ? 'offer' : 'said',
    };
  });
}

/** What the menus in package.json ask for. */
export function contextOf({ state }: ReviewThread): 'settled' | 'unsettled' {
  return state === 'settled' ? 'settled' : 'unsettled';
}

function bodyOf({ text, suggests, state }: ReviewComment): string {
  const parts = text === '' ? [] : [text];
  if (suggests !== undefined) parts.push(vscode.l10n.t('Suggests: {0}', suggests));
  if (parts.length === 0) parts.push(actWords(state));
  return parts.join('\n\n');
}

function stateWords(state: ReviewThread['state']): string {
  switch (state) {
    case 'open':
      return vscode.l10n.t('open');
    case 'answered':
      return vscode.l10n.t('answered');
    case 'settled':
      return vscode.l10n.t('settled');
  }
}

function actWords(state: ReviewComment['state']): string {
  switch (state) {
    case 'open':
      return vscode.l10n.t('Opened it again.');
    case 'settled':
      return vscode.l10n.t('Settled it.');
    case 'answered':
      return vscode.l10n.t('Answered it.');
    case undefined:
      return vscode.l10n.t('Said nothing.');
  }
}

function cut(words: string): string {
  const letters = [...words];
  return letters.length <= longest ? words : `${letters.slice(0, longest).join('')}…`;
}
