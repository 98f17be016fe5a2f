// The page of every panel: a strict policy, colours by theme, one script and one style of its own, and messages both ways; knows no panel.
import * as vscode from 'vscode';
import { variablesOf, type ThemeName } from '../draw/theme.ts';

/** The class that VS Code gives the body of a webview in each kind of theme. */
const themeClasses: Readonly<Record<ThemeName, string>> = {
  light: 'vscode-light',
  dark: 'vscode-dark',
  'contrast-dark': 'vscode-high-contrast',
  'contrast-light': 'vscode-high-contrast-light',
};

/** Two classes of contrast are worn at once, so that the lighter one has to come last. */
const colours = (Object.keys(themeClasses) as ThemeName[])
  .map((theme) => `body.${themeClasses[theme]} { ${variablesOf(theme)} }`)
  .concat('body { --sw-paper: var(--vscode-editor-background); }')
  .join('\n');

/** What a panel is made with; `localResourceRoots` is all of this machine that it may load from. */
export function panelOptions(extension: vscode.Uri): vscode.WebviewPanelOptions & vscode.WebviewOptions {
  return {
    enableScripts: true,
    enableFindWidget: true,
    localResourceRoots: [vscode.Uri.joinPath(extension, 'dist', 'panel')],
  };
}

/**
 * Fills a panel, new or restored, with its page, and hands on what the page says; everything sent is plain data. The page starts
 * anew when the panel is shown again, moved to another window or restored: its first message is always `{ kind: 'ready' }`.
 */
export function fillPanel(
  panel: vscode.WebviewPanel,
  extension: vscode.Uri,
  /** The name of the script and the style in `dist/panel/`. */
  bundle: string,
  receive: (message: { readonly kind: string }) => void,
): void {
  const { webview } = panel;
  webview.options = panelOptions(extension);
  webview.onDidReceiveMessage((message: unknown) => {
    if (isMessage(message)) receive(message);
  });
  webview.html = pageOf(webview, extension, bundle, panel.title);
}

/** Nothing is loaded but from the extension's own folder, nothing runs but the one script, and nothing is sent anywhere. */
function pageOf(webview: vscode.Webview, extension: vscode.Uri, bundle: string, title: string): string {
  const nonce = nonceOf();
  const file = (name: string): string =>
    webview.asWebviewUri(vscode.Uri.joinPath(extension, 'dist', 'panel', name)).toString();
  const policy = [
    `default-src 'none'`,
    `script-src 'nonce-${nonce}'`,
    `style-src ${webview.cspSource} 'nonce-${nonce}'`,
    `base-uri 'none'`,
    `form-action 'none'`,
  ].join('; ');
  return `<!doctype html>
<html lang="${escaped(vscode.env.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
<title>${escaped(title)}</title>
<style nonce="${nonce}">${colours}</style>
<link rel="stylesheet" href="${escaped(file(`${bundle}.css`))}">
</head>
<body>
<main id="panel"></main>
<script nonce="${nonce}" src="${escaped(file(`${bundle}.js`))}"></script>
</body>
</html>`;
}

function nonceOf(): string {
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

function escaped(text: string): string {
  return text.replace(
    /[&<>"]/g,
    (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? '',
  );
}

function isMessage(message: unknown): message is { readonly kind: string } {
  return (
    typeof message === 'object' &&
    message !== null &&
    typeof (message as { kind?: unknown }).kind === 'string'
  );
}
