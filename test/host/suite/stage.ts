// Acts on the page that shows this VS Code, from inside its extension host; knows only the stage's address.
// A desktop VS Code has no stage: tests that need one are skipped there.

export type Theme = 'light' | 'dark' | 'high-contrast-dark' | 'high-contrast-light';

/** Whether there is a page to look at. */
export const hasStage = Boolean(process.env['SWINGWRIGHT_STAGE']);

/** Skips the tests of a suite where there is no page: `before(needsStage)`. */
export function needsStage(this: Mocha.Context): void {
  if (!hasStage) this.skip();
}

export const stage = {
  /** Writes the page as NAME.png, in the given theme, and gives the file's path. */
  screenshot: (name: string, theme?: Theme) => act<string>('screenshot', name, theme),
  /** Sets the theme and waits until it is on. */
  theme: (name: Theme) => act<null>('theme', name),
  /** Whether the system sets all colours, as it does for those who need strong contrasts. */
  forcedColours: (isOn: boolean) => act<null>('forcedColours', isOn),
  /** Presses a key such as `Control+Shift+M`. */
  press: (key: string) => act<null>('press', key),
  /** Types at the cursor. */
  type: (text: string) => act<null>('type', text),
  /** Clicks on the first thing that matches a CSS selector. */
  click: (selector: string) => act<null>('click', selector),
  /** Clicks on a text that is seen in an editor. */
  clickText: (text: string) => act<null>('clickText', text),
  /** Rests the mouse on the first thing that matches a CSS selector. */
  hover: (selector: string) => act<null>('hover', selector),
  /** Rests the mouse on a text that is seen in an editor; gives what the hover says. */
  hoverText: (text: string) => act<string>('hoverText', text),
  /** Waits until something that matches a CSS selector is seen. */
  waitFor: (selector: string) => act<null>('waitFor', selector),
  /** The texts of everything that matches a CSS selector now. */
  texts: (selector: string) => act<string[]>('texts', selector),
  /** Everything that a webview shows as text; the webview is the nth that is open, from 0. */
  webviewText: (index = 0) => act<string>('webviewText', index),
  /** Clicks on the first thing in a webview that matches a CSS selector. */
  webviewClick: (selector: string, index = 0) => act<null>('webviewClick', selector, index),
  /** Puts the keys' focus on the first thing in a webview that matches a CSS selector. */
  webviewFocus: (selector: string, index = 0) => act<null>('webviewFocus', selector, index),
  /** The value of an expression in a webview's own page. */
  webviewEvaluate: <T>(expression: string, index = 0) => act<T>('webviewEvaluate', expression, index),
  /** What axe finds wrong in a webview: each rule with the things that break it. */
  webviewFaults: (index = 0) => act<string[]>('webviewFaults', index),
  /** What axe finds wrong in a page that is given as HTML. */
  pageFaults: (html: string, scheme: 'light' | 'dark') => act<string[]>('pageFaults', html, scheme),
  /** What axe finds wrong in a copy of what a webview without scripts shows. */
  webviewCopyFaults: (index = 0) => act<string[]>('webviewCopyFaults', index),
  /** On how many sheets of A4 a page that is given as HTML is printed. */
  printedSheets: (html: string) => act<number>('printedSheets', html),
  /** The value of an expression in the page. */
  evaluate: <T>(expression: string) => act<T>('evaluate', expression),
  /** Runs the command with this title from the command palette. */
  palette: (title: string) => act<null>('palette', title),
  /** Puts the cursor at a line of the open file. */
  goToLine: (line: number) => act<null>('goToLine', line),
  /** The inlay hints that are seen, from the top. */
  hints: () => act<string[]>('hints'),
  /** Waits until at least this many inlay hints are seen. */
  waitForHints: (atLeast: number) => act<null>('waitForHints', atLeast),
  /** Opens the Problems panel and gives its rows. */
  problems: () => act<string[]>('problems'),
  /** Closes the notifications. */
  dismissNotifications: () => act<null>('dismissNotifications'),
  /** Waits until the page stands still. */
  settle: () => act<null>('settle'),
};

async function act<T>(name: string, ...values: unknown[]): Promise<T> {
  const address = process.env['SWINGWRIGHT_STAGE'];
  if (!address) throw new Error('This VS Code has no stage: it is a desktop.');
  const response = await fetch(`${address}/${name}`, { method: 'POST', body: JSON.stringify(values) });
  const value: unknown = await response.json();
  if (!response.ok) throw new Error(`${name}: ${String(value)}`);
  return value as T;
}
