// The threads of a record's reviews as VS Code's own comments beside the line, kept as the server tells them; changes no file.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { reviewRequest, type ReviewParams, type ReviewResult } from '../server/review-protocol.ts';
import type { ReviewChanges } from './review-changes.ts';
import { registerReviewCommands, type ShownThread } from './review-commands.ts';
import { commentsOf, contextOf, labelOf, type ReviewThread } from './review-words.ts';

interface Shown {
  readonly thread: vscode.CommentThread;
  /** What was told last, to know what is new. */
  told: string;
}
interface OpenRecord {
  /** By review and id. */
  readonly threads: Map<string, Shown>;
  lines: string;
  asked: vscode.CancellationTokenSource | undefined;
}

export function registerReviewComments(
  client: BaseLanguageClient,
  { onChanged }: ReviewChanges,
): vscode.Disposable {
  const controller = vscode.comments.createCommentController('swingwright.review', vscode.l10n.t('Review'));
  controller.options = { placeHolder: vscode.l10n.t('Remark or ask') };
  const records = new Map<string, OpenRecord>();
  const ofThreads = new WeakMap<vscode.CommentThread, ShownThread>();
  const ofComments = new WeakMap<vscode.Comment, ShownThread>();
  const offerRanges = (): void => {
    controller.commentingRangeProvider = {
      provideCommentingRanges: async (document, token) => {
        if (!mayHaveReview(document.uri)) return [];
        const review = await askFor(client, document.uri, token);
        return review?.lines.map((line) => new vscode.Range(line, 0, line, 0)) ?? [];
      },
    };
  };

  const show = (document: vscode.TextDocument, record: OpenRecord, review: ReviewResult): void => {
    const gone = new Set(record.threads.keys());
    const times = new Map<string, number>();
    for (const one of review.threads) {
      const name = `${one.file} ${one.id}`;
      // A mistaken review may have one id twice.
      const time = times.get(name) ?? 0;
      times.set(name, time + 1);
      const key = `${name} ${time}`;
      gone.delete(key);
      let shown = record.threads.get(key);
      if (shown === undefined) {
        const thread = controller.createCommentThread(document.uri, rangeOf(document, one), []);
        thread.collapsibleState = foldOf(one);
        record.threads.set(key, (shown = { thread, told: '' }));
      }
      tell(document, shown, one);
    }
    for (const key of gone) {
      record.threads.get(key)?.thread.dispose();
      record.threads.delete(key);
    }
  };
  /** Only what is new is set, so that nothing closes or loses what is being typed. */
  const tell = (document: vscode.TextDocument, shown: Shown, one: ReviewThread): void => {
    const { thread } = shown;
    const known: ShownThread = { record: document.uri, id: one.id, now: one.now };
    ofThreads.set(thread, known);
    const range = rangeOf(document, one);
    if (thread.range?.isEqual(range) !== true) thread.range = range;
    const told = JSON.stringify({ ...one, range: undefined, place: undefined });
    if (told === shown.told) return;
    const isFirst = shown.told === '';
    shown.told = told;
    const comments = commentsOf(one);
    for (const comment of comments) ofComments.set(comment, known);
    thread.comments = comments;
    thread.label = labelOf(one);
    const context = contextOf(one);
    if (!isFirst && context !== thread.contextValue) thread.collapsibleState = foldOf(one);
    thread.contextValue = context;
    thread.state =
      context === 'settled' ? vscode.CommentThreadState.Resolved : vscode.CommentThreadState.Unresolved;
  };

  const refresh = async (uri: vscode.Uri): Promise<void> => {
    const document = documentAt(uri);
    if (document === undefined || !mayHaveReview(uri)) return;
    const key = uri.toString();
    const record = records.get(key) ?? { threads: new Map<string, Shown>(), lines: '', asked: undefined };
    records.set(key, record);
    record.asked?.cancel();
    const { token } = (record.asked = new vscode.CancellationTokenSource());
    const review = await askFor(client, uri, token);
    // Of another text than that of now: word of its analysis is on its way.
    if (token.isCancellationRequested || review?.version !== document.version) return;
    show(document, record, review);
    const lines = review.lines.join();
    if (lines === record.lines) return;
    record.lines = lines;
    offerRanges();
  };
  const close = (uri: vscode.Uri): void => {
    const record = records.get(uri.toString());
    record?.asked?.cancel();
    for (const { thread } of record?.threads.values() ?? []) thread.dispose();
    records.delete(uri.toString());
  };

  offerRanges();
  return vscode.Disposable.from(
    controller,
    onChanged((uri) => void refresh(uri)),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => close(uri)),
    registerReviewCommands(client, {
      ofThread: (thread) => ofThreads.get(thread),
      ofComment: (comment) => ofComments.get(comment),
    }),
    { dispose: () => [...records.values()].forEach(({ asked }) => asked?.cancel()) },
  );
}

async function askFor(
  client: BaseLanguageClient,
  uri: vscode.Uri,
  token: vscode.CancellationToken,
): Promise<ReviewResult | undefined> {
  const params: ReviewParams = { uri: uri.toString() };
  const review = await client
    .sendRequest<ReviewResult | null>(reviewRequest, params, token)
    .catch(() => undefined);
  return review ?? undefined;
}

function documentAt(uri: vscode.Uri): vscode.TextDocument | undefined {
  return vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri.toString());
}

/** A review lies beside the record, so there must be a folder that takes files: that of a past revision does not. */
function mayHaveReview({ path, scheme }: vscode.Uri): boolean {
  return path.endsWith('.swing.yaml') && scheme !== 'untitled' && isWritable(scheme);
}

function isWritable(scheme: string): boolean {
  // Undefined of a file system that this host has not heard of yet.
  return vscode.workspace.fs.isWritableFileSystem(scheme) !== false;
}

/** On the first line of the entry; above all of them where the record has no place for it. */
function rangeOf(document: vscode.TextDocument, { range }: ReviewThread): vscode.Range {
  if (range === undefined) return new vscode.Range(0, 0, 0, 0);
  const { start, end } = range;
  const last = end.line === start.line ? end.character : document.lineAt(start.line).range.end.character;
  return new vscode.Range(start.line, start.character, start.line, last);
}

function foldOf(thread: ReviewThread): vscode.CommentThreadCollapsibleState {
  return contextOf(thread) === 'settled'
    ? vscode.CommentThreadCollapsibleState.Collapsed
    : vscode.CommentThreadCollapsibleState.Expanded;
}
