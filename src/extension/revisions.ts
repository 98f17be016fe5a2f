// The view of a record's revisions: each commit with what it changed by value; two of them open side by side in a comparison.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { changeSummaryRequest, type ChangeSummaryParams, type PageSide } from '../server/page-protocol.ts';
import { showComparison } from './beside-pages.ts';
import type { Pages } from './pages.ts';
import { revisionsOf, type PastRevision } from './git-revisions.ts';
import { rowsOf, summaryOf, type Row } from './revision-rows.ts';

const view = 'swingwright.revisions';

/** Follows the record in front. Nothing is asked of git while the view is closed. */
export function registerRevisions(client: BaseLanguageClient, pages: Pages): vscode.Disposable {
  const changed = new vscode.EventEmitter<undefined>();
  let record: vscode.Uri | undefined;

  const rows = async (): Promise<readonly Row[]> => {
    if (record === undefined) return [];
    const none = vscode.l10n.t('No commit holds this record yet.');
    const { rows: found, message } = rowsOf(await revisionsOf(record), none);
    tree.message = message;
    return found;
  };

  const sideOf = (revision: PastRevision | undefined): PageSide => {
    const name = record!.path.slice(record!.path.lastIndexOf('/') + 1);
    return {
      uri: record!.toString(),
      ...(revision === undefined
        ? { name }
        : { revision: revision.hash, name: `${revision.hash.slice(0, 7)}:${name}` }),
    };
  };

  const changedSince = async (before: PastRevision, revision: PastRevision | undefined): Promise<string> => {
    if (record === undefined) return '';
    const params: ChangeSummaryParams = { first: sideOf(before), second: sideOf(revision) };
    const summary = await client.sendRequest<string | null>(changeSummaryRequest, params);
    return summary ?? vscode.l10n.t('one of the two versions cannot be read');
  };

  const provider: vscode.TreeDataProvider<Row> = {
    onDidChangeTreeData: changed.event,
    getChildren: (row) => (row === undefined ? rows().then((all) => [...all]) : []),
    // Only of rows that are seen is it asked what they changed.
    getTreeItem: async (row) => {
      const { revision, before } = row;
      const label = revision?.subject ?? vscode.l10n.t('As it stands now');
      const item = new vscode.TreeItem(label);
      const summary = await summaryOf(row, vscode.l10n.t('the oldest version here'), changedSince);
      item.description = [revision?.day ?? '', summary].filter((words) => words !== '').join('  ');
      item.tooltip = [label, revision?.hash.slice(0, 12) ?? '', summary]
        .filter((words) => words !== '')
        .join('\n');
      item.contextValue = before === undefined ? 'first' : 'revision';
      item.iconPath = new vscode.ThemeIcon(revision === undefined ? 'edit' : 'git-commit');
      item.id = `${record?.toString() ?? ''} ${revision?.hash ?? 'now'}`;
      return item;
    },
  };
  const tree = vscode.window.createTreeView(view, { treeDataProvider: provider, canSelectMany: true });

  const follow = (editor: vscode.TextEditor | undefined): void => {
    const uri = editor?.document.uri;
    // A panel in front leaves the view as it was.
    if (uri === undefined || uri.scheme === 'output') return;
    const next = uri.path.endsWith('.swing.yaml') ? uri : undefined;
    if (next?.toString() === record?.toString()) return;
    record = next;
    tree.description = next === undefined ? '' : next.path.slice(next.path.lastIndexOf('/') + 1);
    changed.fire(undefined);
  };
  follow(vscode.window.activeTextEditor);

  const compare = async (row: unknown, selected: unknown): Promise<void> => {
    const picked = (Array.isArray(selected) ? (selected as Row[]) : [row as Row]).filter(Boolean);
    const [one, other] = picked;
    if (record === undefined || one === undefined) return;
    // Rows stand with the newest first.
    const [older, newer] = other === undefined ? [one.before, one.revision] : [other.revision, one.revision];
    if (older !== undefined) await showComparison(pages, sideOf(older), sideOf(newer));
  };
  return vscode.Disposable.from(
    tree,
    changed,
    vscode.window.onDidChangeActiveTextEditor(follow),
    vscode.workspace.onDidSaveTextDocument(({ uri }) => {
      if (uri.toString() === record?.toString()) changed.fire(undefined);
    }),
    vscode.commands.registerCommand('swingwright.revisions.refresh', () => changed.fire(undefined)),
    vscode.commands.registerCommand('swingwright.revisions.compare', compare),
  );
}
