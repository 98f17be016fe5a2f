// The only way from a panel's page to the editor: messages both ways, and what the page remembers while it is not shown; knows no panel.

interface VsCode {
  readonly postMessage: (message: unknown) => void;
  readonly getState: () => unknown;
  readonly setState: (state: unknown) => void;
}
declare function acquireVsCodeApi(): VsCode;

const vscode = acquireVsCodeApi();

/** A page says `{ kind: 'ready' }` first, and then hears what it is to show. */
export function post(message: { readonly kind: string }): void {
  vscode.postMessage(message);
}

export function listen(hear: (message: unknown) => void): void {
  window.addEventListener('message', ({ data }: MessageEvent<unknown>) => hear(data));
}

/** What was kept, as far as it has the shape of what is kept now; an earlier version may have kept less. */
export function remembered<T extends object>(otherwise: T): T {
  const state = vscode.getState();
  return typeof state === 'object' && state !== null ? { ...otherwise, ...state } : otherwise;
}

export function remember(state: object): void {
  vscode.setState(state);
}
