// Carries out one act of a reviewer: asks the server for its edits, applies them, and saves a review, never the record.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  actOnReviewRequest,
  type ActOnReviewParams,
  type ActOnReviewResult,
} from '../server/review-protocol.ts';
import { authorAt } from './review-author.ts';

export type Act = ActOnReviewParams['act'];
type Edited = Extract<ActOnReviewResult, { kind: 'edits' }>;

/** Times an act is asked for again, where its file had to be opened or changed meanwhile. */
const tries = 3;

export interface ReviewActs {
  /** Undefined where it was done or the person thought better of it; else a sentence that says why not. */
  readonly perform: (record: vscode.Uri, act: Act) => Promise<string | undefined>;
  /** Why it could not be done, without doing it. */
  readonly reasonAgainst: (record: vscode.Uri, act: Act) => Promise<string | undefined>;
}

export function reviewActs(client: BaseLanguageClient): ReviewActs {
  const ask = (
    uri: vscode.Uri,
    act: Act,
    author: string,
    time: string,
  ): Promise<ActOnReviewResult | null> => {
    const params: ActOnReviewParams = { uri: uri.toString(), act, author, time };
    return client.sendRequest<ActOnReviewResult | null>(actOnReviewRequest, params).catch(() => null);
  };
  const perform = async (record: vscode.Uri, act: Act): Promise<string | undefined> => {
    const author = act.kind === 'apply' ? '' : await authorAt(record);
    if (author === undefined) return undefined;
    const time = now();
    for (let left = tries; left > 0; left--) {
      await vscode.workspace.openTextDocument(record);
      const before = versions();
      const answer = await ask(record, act, author, time);
      if (answer === null) continue;
      if (answer.kind === 'refused') return sentence(answer.reason);
      if (answer.isNew) return begin(answer);
      const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(answer.uri));
      // The server is asked again once it holds the very text that the edits go into.
      if (before.get(document) === document.version) return change(document, answer, record);
    }
    return vscode.l10n.t('The record or its review changed meanwhile. Try again.');
  };
  let last: Promise<unknown> = Promise.resolve();
  return {
    // One after the other: each act is worked out for the text that the one before it left.
    perform: (record, act) => {
      const done = last.then(() => perform(record, act));
      last = done.catch(() => undefined);
      return done;
    },
    reasonAgainst: async (record, act) => {
      const answer = await ask(record, act, '', now());
      return answer?.kind === 'refused' ? sentence(answer.reason) : undefined;
    },
  };
}

async function begin({ uri, edits }: Edited): Promise<string | undefined> {
  const made = new vscode.WorkspaceEdit();
  const contents = new TextEncoder().encode(edits.map(({ newText }) => newText).join(''));
  made.createFile(vscode.Uri.parse(uri), { contents });
  return (await vscode.workspace.applyEdit(made))
    ? undefined
    : vscode.l10n.t('The review could not be made beside the record.');
}

async function change(
  document: vscode.TextDocument,
  { edits }: Edited,
  record: vscode.Uri,
): Promise<string | undefined> {
  // What somebody else is writing there is theirs to save.
  const isSaved = !document.isDirty && document.uri.toString() !== record.toString();
  const edited = new vscode.WorkspaceEdit();
  for (const { range, newText } of edits)
    edited.replace(
      document.uri,
      new vscode.Range(range.start.line, range.start.character, range.end.line, range.end.character),
      newText,
    );
  if (!(await vscode.workspace.applyEdit(edited))) return vscode.l10n.t('The editor did not take the edit.');
  if (isSaved && !(await document.save())) return vscode.l10n.t('The review could not be saved.');
  return undefined;
}

function versions(): ReadonlyMap<vscode.TextDocument, number> {
  return new Map(vscode.workspace.textDocuments.map((document) => [document, document.version]));
}

/** In whole seconds, as people read them. */
function now(): string {
  return new Date().toISOString().replace(/\.\d+Z$/, 'Z');
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
