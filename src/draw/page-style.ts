// The style sheet of pages that stand alone: colours by the reader's theme, or by that of VS Code around it, and black on white in print.
import { variablesOf } from './theme.ts';

/** VS Code marks the body of a page that it shows; a browser says what its reader prefers. Two classes of contrast are worn at once. */
const colours = `
:root { color-scheme: light dark; ${variablesOf('light')} }
@media (prefers-color-scheme: dark) { :root { ${variablesOf('dark')} } }
@media (prefers-contrast: more) { :root { ${variablesOf('contrast-light')} } }
@media (prefers-contrast: more) and (prefers-color-scheme: dark) { :root { ${variablesOf('contrast-dark')} } }
body.vscode-light { ${variablesOf('light')} }
body.vscode-dark { ${variablesOf('dark')} }
body.vscode-high-contrast { ${variablesOf('contrast-dark')} }
body.vscode-high-contrast-light { ${variablesOf('contrast-light')} }
body[class*='vscode-'] { --sw-paper: var(--vscode-editor-background); }
@media print { :root, body[class] { ${variablesOf('light')} color-scheme: light; } }
`;

const layout = `
* { box-sizing: border-box; }
html { font: 15px/1.5 var(--sw-font, system-ui, 'Segoe UI', Roboto, sans-serif); }
body { margin: 0; padding: 0; background: var(--sw-paper); color: var(--sw-ink); font-size: 15px; }
main { max-width: 1260px; margin: 0 auto; padding: 28px 32px 48px; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 0.4rem; letter-spacing: -0.01em; }
h2 { font-size: 1.15rem; margin: 2.2rem 0 0.6rem; padding-bottom: 0.25rem; border-bottom: 1px solid var(--sw-faint); }
h3 { font-size: 1rem; margin: 1.2rem 0 0.4rem; }
p { margin: 0.4rem 0; max-width: 46rem; }
.soft { color: var(--sw-soft); }
.lead { font-size: 1.05rem; }
ul { margin: 0.4rem 0; padding-left: 1.2rem; }
code { font-family: ui-monospace, 'JetBrains Mono', Consolas, monospace; font-size: 0.88em; overflow-wrap: anywhere; }
body code { color: inherit; background: none; padding: 0; }
.sides { display: grid; grid-template-columns: repeat(auto-fit, minmax(17rem, 1fr)); gap: 12px; margin: 1rem 0; }
.side { border: 1px solid var(--sw-faint); border-radius: 8px; padding: 12px 16px; overflow-wrap: anywhere; }
.side p { margin: 0; }
.badge { display: inline-block; min-width: 1.5em; padding: 0 0.35em; margin-right: 0.4em; border-radius: 1em; border: 1.5px solid currentColor; font-weight: 600; text-align: center; font-size: 0.85em; line-height: 1.45; }
.badge.first { color: var(--sw-soft); }
.badge.second { color: var(--sw-entered); }
.scrolled { overflow-x: auto; }
.scrolled:focus-visible, summary:focus-visible, a:focus-visible { outline: 2px solid var(--sw-entered); outline-offset: 2px; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--sw-soft); padding: 0 0 0.4rem; }
th, td { text-align: left; vertical-align: middle; padding: 0.32rem 0.8rem 0.32rem 0; border-bottom: 1px solid var(--sw-faint); }
thead th { color: var(--sw-soft); font-weight: 500; font-size: 0.87rem; vertical-align: bottom; }
tbody th { font-weight: 500; min-width: 8.5rem; }
tbody th[scope='rowgroup'] { color: var(--sw-soft); font-size: 0.8rem; letter-spacing: 0.05em; text-transform: uppercase; padding-top: 1rem; }
td.number, .whole { white-space: nowrap; }
td svg { display: block; }
tr.larger td.size .below { font-weight: 600; }
.below { display: block; font-size: 0.87em; white-space: normal; }
.tag { white-space: nowrap; font-size: 0.87rem; }
.tag.new::before { content: '+ '; font-weight: 700; }
.tag.gone::before { content: '\\2212  '; font-weight: 700; }
.tag.changed::before { content: '\\2192  '; }
.pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 30rem), 1fr)); gap: 16px; align-items: start; }
.pictures.stacked { display: block; columns: 30rem 2; column-gap: 16px; }
.pictures.stacked figure { break-inside: avoid; margin-bottom: 16px; }
figure { margin: 0; border: 1px solid var(--sw-faint); border-radius: 8px; padding: 12px 14px; max-width: 100%; overflow-x: auto; }
figcaption { font-weight: 600; margin-bottom: 0.3rem; }
h2::first-letter, figcaption::first-letter { text-transform: uppercase; }
figure svg { max-width: 100%; height: auto; display: block; }
details { margin: 0.8rem 0; }
summary { cursor: pointer; color: var(--sw-soft); }
.alert { color: var(--sw-alert); }
footer { margin-top: 2.5rem; color: var(--sw-soft); font-size: 0.87rem; }
@media (max-width: 1240px) { td.number, .whole { white-space: normal; } }
@media (max-width: 640px) {
  main { padding: 18px 14px 32px; }
  table { font-size: 0.87rem; }
  tbody th { min-width: 0; }
  th, td { padding-right: 0.5rem; }
}
@media print {
  @page { margin: 14mm; }
  html, body { font-size: 10.5pt; background: none; }
  main { max-width: none; padding: 0; }
  h2, h3 { break-after: avoid; }
  tr, figure, .side { break-inside: avoid; }
  tr:has(th[scope='rowgroup']), thead tr { break-after: avoid; }
  .scrolled { overflow: visible; }
  td.number, .whole { white-space: normal; }
  tbody th { min-width: 0; }
  details:not([open]) { display: none; }
}
`;

export const pageStyle = `${colours}${layout}`;
