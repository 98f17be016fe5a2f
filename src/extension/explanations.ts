// Shows the pages that explain a finding code or a quantity of a record, as documents that cannot be changed.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  codesRequest,
  explainRequest,
  whyRequest,
  type ExplainParams,
  type ListedCode,
  type WhyParams,
} from '../server/protocol.ts';

export const explainCommand = 'swingwright.explainFinding';
/** Takes the record's URI and the quantity's id. */
export const whyCommand = 'swingwright.explainQuantity';

const scheme = 'swingwright-doc';
/** Where a page is, with `{name}` for its word. */
export const pageAddress = `${scheme}:/{name}.md`;

export function registerExplanations(client: BaseLanguageClient): vscode.Disposable {
  const changed = new vscode.EventEmitter<vscode.Uri>();
  const provider: vscode.TextDocumentContentProvider = {
    onDidChange: changed.event,
    provideTextDocumentContent: async (uri) => {
      const code = codeIn(uri);
      if (uri.query !== '') return whyPage(client, { uri: uri.query, id: code });
      const page = await client.sendRequest<string | null>(explainRequest, { code } satisfies ExplainParams);
      return page ?? vscode.l10n.t('There is no finding with the code `{0}`.', code);
    },
  };
  return vscode.Disposable.from(
    changed,
    vscode.workspace.registerTextDocumentContentProvider(scheme, provider),
    // A page on a quantity goes with the record that it is about.
    vscode.languages.onDidChangeDiagnostics(({ uris }) => {
      const records = new Set(uris.map((uri) => uri.toString()));
      for (const { uri } of vscode.workspace.textDocuments)
        if (uri.scheme === scheme && records.has(uri.query)) changed.fire(uri);
    }),
    vscode.commands.registerCommand(whyCommand, async (record: unknown, id: unknown) => {
      if (typeof record !== 'string' || typeof id !== 'string') return;
      const page = pageOf(vscode.Uri.parse(record).toString(), id);
      changed.fire(page);
      await show(page);
    }),
    vscode.commands.registerCommand(explainCommand, async (code: unknown) => {
      const chosen = typeof code === 'string' ? code : await chooseCode(client);
      if (chosen !== undefined) await showExplanation(chosen);
    }),
  );
}

async function whyPage(client: BaseLanguageClient, params: WhyParams): Promise<string> {
  const page = await client.sendRequest<string | null>(whyRequest, params);
  return (
    page ?? vscode.l10n.t('Nothing is known of `{0}` in this record, or it is no longer open.', params.id)
  );
}

function pageOf(record: string, id: string): vscode.Uri {
  return vscode.Uri.from({ scheme, path: `/${id}.md`, query: record });
}

async function showExplanation(code: string): Promise<void> {
  await show(vscode.Uri.from({ scheme, path: `/${code}.md` }));
}

async function show(uri: vscode.Uri): Promise<void> {
  try {
    await vscode.commands.executeCommand('markdown.showPreview', uri);
  } catch {
    // The preview belongs to an extension that can be turned off; the page reads well without it.
    await vscode.window.showTextDocument(uri, { preview: true });
  }
}

function codeIn(uri: vscode.Uri): string {
  return uri.path.replace(/^\//, '').replace(/\.md$/, '');
}

/** All codes, those of the file in front first. */
async function chooseCode(client: BaseLanguageClient): Promise<string | undefined> {
  const codes = await client.sendRequest<readonly ListedCode[]>(codesRequest);
  const document = vscode.window.activeTextEditor?.document;
  const here = new Set(
    document === undefined
      ? []
      : vscode.languages.getDiagnostics(document.uri).map(({ code }) => codeOf(code)),
  );
  const item = ({ code, title }: ListedCode): vscode.QuickPickItem => ({ label: code, description: title });
  const found = codes.filter(({ code }) => here.has(code)).map(item);
  const others = codes.filter(({ code }) => !here.has(code)).map(item);
  const separator = (label: string): vscode.QuickPickItem => ({
    label,
    kind: vscode.QuickPickItemKind.Separator,
  });
  const items =
    found.length === 0
      ? others
      : [
          separator(vscode.l10n.t('in this file')),
          ...found,
          separator(vscode.l10n.t('all others')),
          ...others,
        ];
  const picked = await vscode.window.showQuickPick(items, {
    placeHolder: vscode.l10n.t('Choose a finding to have it explained'),
    matchOnDescription: true,
  });
  return picked?.label;
}

function codeOf(code: vscode.Diagnostic['code']): string {
  return String(typeof code === 'object' ? code.value : code);
}
