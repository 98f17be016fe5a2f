// The commands of a review: what is typed into a thread, picked from its menus, or asked for of the record in front.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { authorAt } from './review-author.ts';
import { reviewActs, type Act } from './review-acts.ts';

/** A thread of the record's review, as it is shown. */
export interface ShownThread {
  readonly record: vscode.Uri;
  readonly id: string;
  /** What stands in the record now. */
  readonly now: string | undefined;
}

export interface ShownThreads {
  /** Undefined of a thread that is only being begun. */
  readonly ofThread: (thread: vscode.CommentThread) => ShownThread | undefined;
  readonly ofComment: (comment: vscode.Comment) => ShownThread | undefined;
}

export function registerReviewCommands(client: BaseLanguageClient, shown: ShownThreads): vscode.Disposable {
  const acts = reviewActs(client);
  const act = async (record: vscode.Uri, one: Act): Promise<boolean> => {
    const reason = await acts.perform(record, one);
    if (reason === undefined) return true;
    // What was typed is gone from the thread by now.
    const typed = 'text' in one && one.text !== '' ? [vscode.l10n.t('Copy the Text')] : [];
    void vscode.window.showWarningMessage(reason, ...typed).then(async (picked) => {
      if (picked !== undefined && 'text' in one) await vscode.env.clipboard.writeText(one.text);
    });
    return false;
  };

  const say = async ({ thread, text }: vscode.CommentReply, suggests?: string): Promise<void> => {
    const offer = suggests === undefined ? {} : { suggests };
    const known = shown.ofThread(thread);
    if (known !== undefined)
      return void (await act(known.record, { kind: 'reply', id: known.id, text, ...offer }));
    const isDone = await act(thread.uri, { kind: 'remark', at: placeOf(thread), text, ...offer });
    if (isDone) thread.dispose();
  };
  const suggest = async (reply: vscode.CommentReply): Promise<void> => {
    const known = shown.ofThread(reply.thread);
    const { uri } = reply.thread;
    const to = (suggests: string): Act =>
      known === undefined
        ? { kind: 'remark', at: placeOf(reply.thread), text: reply.text, suggests }
        : { kind: 'reply', id: known.id, text: reply.text, suggests };
    const value = await vscode.window.showInputBox({
      title: vscode.l10n.t('Suggest a value'),
      prompt: vscode.l10n.t('What should stand in the record, such as `2 deg right by camera`'),
      value: known?.now ?? '',
      ignoreFocusOut: true,
      validateInput: (words) => (words.trim() === '' ? undefined : acts.reasonAgainst(uri, to(words.trim()))),
    });
    if (value !== undefined && value.trim() !== '') await say(reply, value.trim());
  };
  const onThread =
    (kind: 'settle' | 'reopen') =>
    async (thread: unknown): Promise<void> => {
      const known = isThread(thread) ? shown.ofThread(thread) : undefined;
      if (known !== undefined) await act(known.record, { kind, id: known.id });
    };
  const take = async (comment: unknown): Promise<void> => {
    const known = isObject(comment) ? shown.ofComment(comment as unknown as vscode.Comment) : undefined;
    if (known !== undefined) await act(known.record, { kind: 'apply', id: known.id });
  };
  const withReply =
    (then: (reply: vscode.CommentReply) => Promise<void>) =>
    async (reply: unknown): Promise<void> => {
      if (isReply(reply)) await then(reply);
    };
  return vscode.Disposable.from(
    vscode.commands.registerCommand('swingwright.review.remark', withReply(say)),
    vscode.commands.registerCommand('swingwright.review.reply', withReply(say)),
    vscode.commands.registerCommand('swingwright.review.suggest', withReply(suggest)),
    vscode.commands.registerCommand('swingwright.review.settle', onThread('settle')),
    vscode.commands.registerCommand('swingwright.review.reopen', onThread('reopen')),
    vscode.commands.registerCommand('swingwright.review.take', take),
    vscode.commands.registerCommand('swingwright.review.signOff', async (given: unknown) => {
      const record = await recordToSign(given);
      if (record !== undefined) await act(record, { kind: 'signOff' });
    }),
  );
}

/** Undefined where there is none, or whoever was asked did not mean it. */
async function recordToSign(given: unknown): Promise<vscode.Uri | undefined> {
  const uri = given instanceof vscode.Uri ? given : vscode.window.activeTextEditor?.document.uri;
  if (uri === undefined || !uri.path.endsWith('.swing.yaml')) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Open a record that ends in .swing.yaml first.'));
    return undefined;
  }
  const document = await vscode.workspace.openTextDocument(uri);
  const author = await authorAt(uri);
  if (author === undefined) return undefined;
  const picked = await vscode.window.showQuickPick(
    [
      {
        label: document.isDirty ? vscode.l10n.t('Save and Sign Off') : vscode.l10n.t('Sign Off'),
        detail: vscode.l10n.t(
          'It stands for the values as they are now. A later change of a value voids it.',
        ),
      },
    ],
    { title: vscode.l10n.t('Sign off this record as {0}?', author), ignoreFocusOut: true },
  );
  // A signature of what only the editor holds would be void for everybody else.
  return picked !== undefined && (!document.isDirty || (await document.save())) ? uri : undefined;
}

function placeOf({ range }: vscode.CommentThread): { readonly line: number; readonly character: number } {
  return { line: range?.start.line ?? 0, character: range?.start.character ?? 0 };
}

function isReply(reply: unknown): reply is vscode.CommentReply {
  return isObject(reply) && typeof reply['text'] === 'string' && isThread(reply['thread']);
}

function isThread(thread: unknown): thread is vscode.CommentThread {
  return isObject(thread) && thread['uri'] instanceof vscode.Uri;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
