// Shows the page that explains a finding code, as a document that cannot be changed.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { codesRequest, explainRequest, type ExplainParams, type ListedCode } from '../server/protocol.ts';

export const explainCommand = 'swingwright.explainFinding';

const scheme = 'swingwright-doc';

export function registerExplanations(client: BaseLanguageClient): vscode.Disposable {
  const provider: vscode.TextDocumentContentProvider = {
    provideTextDocumentContent: async (uri) => {
      const code = codeIn(uri);
      const page = await client.sendRequest<string | null>(explainRequest, { code } satisfies ExplainParams);
      return page ?? vscode.l10n.t('There is no finding with the code `{0}`.', code);
    },
  };
  return vscode.Disposable.from(
    vscode.workspace.registerTextDocumentContentProvider(scheme, provider),
    vscode.commands.registerCommand(explainCommand, async (code: unknown) => {
      const chosen = typeof code === 'string' ? code : await chooseCode(client);
      if (chosen !== undefined) await showExplanation(chosen);
    }),
  );
}

async function showExplanation(code: string): Promise<void> {
  const uri = vscode.Uri.from({ scheme, path: `/${code}.md` });
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
