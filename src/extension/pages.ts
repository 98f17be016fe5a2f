// Panels that show a page of the server: opened, and filled again after the window was reloaded; knows no page.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { PageResult } from '../server/page-protocol.ts';

const viewType = 'swingwright.page';
const storedAs = 'swingwright.pages';

/** What the server is asked for to get a page; plain data, so that it can be kept. */
export interface PageQuestion {
  readonly request: string;
  readonly params: object;
}

/** How a page is shown; in the editor in front, unless another place is named. */
interface Showing {
  readonly titled: (title: string) => string;
  readonly waiting?: string;
  readonly at?: { readonly viewColumn: vscode.ViewColumn; readonly preserveFocus: boolean };
}

export interface Pages {
  readonly show: (question: PageQuestion, showing: Showing) => Promise<void>;
  readonly restoring: vscode.Disposable;
}

interface KeptPage extends PageQuestion {
  readonly title: string;
}

/** A page has no script and loads nothing, so that it needs no rights at all. */
const options = { enableScripts: false, enableFindWidget: true, localResourceRoots: [] };

/**
 * A page without a script cannot keep what it shows, so the window's own store does. A restored panel says no more than its title:
 * of several of one title each gets one of the questions that were asked under it. A tab that was closed before anybody looked at
 * it was never restored: of one title no more questions are kept than there are tabs of it.
 */
export function createPages(client: BaseLanguageClient, store: vscode.Memento): Pages {
  const shown = new Map<vscode.WebviewPanel, KeptPage>();
  let left = [...store.get<readonly KeptPage[]>(storedAs, [])];

  const keep = (): void => void store.update(storedAs, [...left, ...shown.values()]);
  const forget = (): void => {
    const tabs = new Map<string, number>();
    for (const title of titlesOfTabs()) tabs.set(title, (tabs.get(title) ?? 0) + 1);
    left = left.filter(({ title }) => {
      const more = tabs.get(title) ?? 0;
      tabs.set(title, more - 1);
      return more > 0;
    });
    keep();
  };
  const attach = (panel: vscode.WebviewPanel, page: KeptPage): void => {
    shown.set(panel, page);
    keep();
    panel.onDidDispose(() => {
      shown.delete(panel);
      keep();
    });
  };
  const ask = async ({ request, params }: PageQuestion): Promise<PageResult> =>
    await client.sendRequest<PageResult>(request, params);

  const restore = async (panel: vscode.WebviewPanel): Promise<void> => {
    const at = left.findIndex(({ title }) => title === panel.title);
    const [page] = at < 0 ? [] : left.splice(at, 1);
    const result = page && (await ask(page).catch((): undefined => undefined));
    // Nothing is known of what it showed, or it is no longer there.
    if (page === undefined || result?.kind !== 'page') {
      keep();
      panel.dispose();
      return;
    }
    panel.webview.options = options;
    panel.webview.html = result.html;
    attach(panel, page);
  };
  return {
    show: async (question, { titled, waiting, at = vscode.ViewColumn.Active }) => {
      const location = {
        location: vscode.ProgressLocation.Window,
        title: waiting ?? vscode.l10n.t('Laying lessons side by side…'),
      };
      const result = await vscode.window.withProgress(location, () => ask(question));
      if (result.kind === 'refused') {
        void vscode.window.showWarningMessage(result.words);
        return;
      }
      const title = titled(result.title);
      const panel = vscode.window.createWebviewPanel(viewType, title, at, options);
      panel.webview.html = result.html;
      attach(panel, { ...question, title });
    },
    restoring: vscode.Disposable.from(
      vscode.window.registerWebviewPanelSerializer(viewType, { deserializeWebviewPanel: restore }),
      vscode.window.tabGroups.onDidChangeTabs(({ closed }) => {
        if (closed.some(isPage)) forget();
      }),
    ),
  };
}

/** VS Code puts a word of its own before the type of a panel. */
function isPage({ input }: vscode.Tab): boolean {
  return input instanceof vscode.TabInputWebview && input.viewType.endsWith(viewType);
}

function titlesOfTabs(): readonly string[] {
  return vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs.filter(isPage).map(({ label }) => label));
}
