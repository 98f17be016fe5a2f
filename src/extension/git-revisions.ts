// Asks VS Code's own git extension for the history of a file, for files as they stood, and for the user's name; says why where it cannot.
import * as vscode from 'vscode';
import type { FileState } from '../server/protocol.ts';

/** What is used of the interface that the git extension offers as version 1. */
interface GitExtension {
  readonly getAPI: (version: 1) => {
    readonly getRepository: (uri: vscode.Uri) => Repository | null;
    readonly openRepository?: (root: vscode.Uri) => Thenable<Repository | null>;
  };
}
interface Repository {
  readonly rootUri: vscode.Uri;
  readonly log: (options: {
    readonly path: string;
    readonly maxEntries: number;
  }) => Thenable<readonly Commit[]>;
  readonly show: (ref: string, path: string) => Thenable<string>;
  readonly getCommit: (ref: string) => Thenable<Commit>;
  /** Of this repository, and of this user. */
  readonly getConfig?: (key: string) => Thenable<string>;
  readonly getGlobalConfig?: (key: string) => Thenable<string>;
}
interface Commit {
  readonly hash: string;
  readonly message: string;
  readonly authorDate?: Date;
}

const mostCommits = 100;

/** The repository of a file; a sentence where there is none. */
async function repositoryOf(uri: vscode.Uri): Promise<Repository | string> {
  const extension = vscode.extensions.getExtension<GitExtension>('vscode.git');
  if (extension === undefined)
    return vscode.l10n.t(
      "Revisions come from VS Code's Git extension, which is not there: it is turned off, the workspace is untrusted or virtual, or Swingwright runs in the browser.",
    );
  try {
    const api = (await extension.activate()).getAPI(1);
    const repository = api.getRepository(uri) ?? (await api.openRepository?.(vscode.Uri.joinPath(uri, '..')));
    return repository ?? vscode.l10n.t('The file lies in no git repository that VS Code has open.');
  } catch (error) {
    return vscode.l10n.t("VS Code's Git extension cannot be used: {0}", wordsOf(error));
  }
}

/** A commit that changed a file. */
export interface PastRevision {
  readonly hash: string;
  readonly subject: string;
  /** As `YYYY-MM-DD`; empty where git does not say. */
  readonly day: string;
}

/** The commits that changed this file, the newest first; a sentence where there is nobody to ask. */
export async function revisionsOf(uri: vscode.Uri): Promise<readonly PastRevision[] | string> {
  const repository = await repositoryOf(uri);
  if (typeof repository === 'string') return repository;
  const commits = await Promise.resolve(repository.log({ path: uri.fsPath, maxEntries: mostCommits })).catch(
    () => [],
  );
  return commits.map(({ hash, message, authorDate }) => ({
    hash,
    subject: message.split('\n')[0] ?? '',
    day: authorDate?.toISOString().slice(0, 10) ?? '',
  }));
}

/** A revision of this file that the user picked or wrote; undefined where none was, with the reason shown. */
export async function pickRevision(uri: vscode.Uri): Promise<string | undefined> {
  const repository = await repositoryOf(uri);
  const commits = await revisionsOf(uri);
  if (typeof repository === 'string') {
    void vscode.window.showWarningMessage(repository);
    return undefined;
  }
  if (typeof commits === 'string') return undefined;
  const other = { label: vscode.l10n.t('Another revision…'), revision: undefined };
  const items = commits.map(({ hash, subject, day }) => ({
    label: subject,
    description: [hash.slice(0, 7), day].join('  ').trim(),
    revision: hash.slice(0, 12),
  }));
  const picked = await vscode.window.showQuickPick([...items, other], {
    placeHolder: vscode.l10n.t('Compare with the record as it stood at'),
    matchOnDescription: true,
  });
  if (picked === undefined || picked.revision !== undefined) return picked?.revision;
  return vscode.window.showInputBox({
    prompt: vscode.l10n.t('A commit, branch or tag, such as HEAD~1'),
    validateInput: async (text) =>
      (await commitOf(repository, text))
        ? undefined
        : vscode.l10n.t('git knows no revision `{0}` here', text),
  });
}

/** A file as it stood; what lies in no repository is missing, for no revision says what was there. */
export async function readAtRevision(uri: vscode.Uri, revision: string): Promise<FileState> {
  const repository = await repositoryOf(uri);
  if (typeof repository === 'string') return { kind: 'missing' };
  if (!(await commitOf(repository, revision)))
    return { kind: 'unreadable', reason: vscode.l10n.t('git knows no revision `{0}` here', revision) };
  try {
    return { kind: 'text', text: (await repository.show(revision, uri.fsPath)).replace(/^\ufeff/, '') };
  } catch {
    return { kind: 'missing' };
  }
}

/** Whom git knows here as the author; undefined where it knows nobody, or is not there. */
export async function userNameAt(uri: vscode.Uri): Promise<string | undefined> {
  const repository = await repositoryOf(uri);
  if (typeof repository === 'string') return undefined;
  for (const ask of [repository.getConfig, repository.getGlobalConfig]) {
    const name = await Promise.resolve(ask?.call(repository, 'user.name')).catch(() => undefined);
    if (name !== undefined && name.trim() !== '') return name.trim();
  }
  return undefined;
}

/** A name that begins with a dash would be read as an option, which no revision does. */
async function commitOf(repository: Repository, revision: string): Promise<boolean> {
  if (revision === '' || revision.startsWith('-')) return false;
  return Promise.resolve(repository.getCommit(revision)).then(
    () => true,
    () => false,
  );
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
