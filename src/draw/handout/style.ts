// The style sheet of a handout as a page: a sheet of paper on the screen and in print, beside the rules of every page.

/** pt: cautions are read however much else there is, so that in print and PDF their letters never get smaller than this: judgement. */
export const leastOfCare = 8;

export const handoutStyle = `
main { max-width: 860px; padding: 34px 40px 40px; }
.top { display: flex; flex-wrap: wrap; align-items: flex-end; justify-content: space-between; gap: 4px 24px; border-bottom: 3px solid var(--sw-entered); padding-bottom: 10px; }
.top h1 { font-size: 2.3rem; line-height: 1.05; margin: 0; overflow-wrap: anywhere; }
.top p { margin: 0; text-align: right; overflow-wrap: anywhere; }
.wish { margin: 14px 0 0; max-width: none; font-size: 1.05rem; }
.wish b { color: var(--sw-goal); font-weight: 600; }
main h2 { font-size: 1.15rem; margin: 0 0 8px; padding: 0; border: 0; color: var(--sw-entered); letter-spacing: -0.005em; }
main section { margin-top: 24px; min-width: 0; }
.two { display: grid; grid-template-columns: minmax(0, 1.25fr) minmax(0, 1fr); gap: 0 32px; }
.two.even { grid-template-columns: minmax(0, 1fr) minmax(0, 1.15fr); }
.saw { list-style: none; padding: 0; margin: 0; }
.saw li { margin: 0 0 10px; overflow-wrap: anywhere; }
.saw b { display: block; }
.chains { list-style: none; padding: 0; margin: 10px 0 0; display: grid; gap: 8px; }
.chain { display: flex; flex-wrap: wrap; align-items: center; gap: 6px 8px; list-style: none; padding: 0; margin: 0; }
.chain li { border: 1.5px solid var(--sw-soft); border-radius: 9px; padding: 2px 10px; font-size: 0.94rem; line-height: 1.3; overflow-wrap: anywhere; }
.chain li.miss { border-color: var(--sw-alert); color: var(--sw-alert); font-weight: 600; }
.chain li.cause { border-color: var(--sw-entered); font-weight: 600; }
.flight { border: 0; padding: 0; overflow: visible; }
.cards { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 14rem), 1fr)); gap: 14px; list-style: none; padding: 0; margin: 0; }
.card { border: 1.5px solid var(--sw-faint); border-top: 5px solid var(--sw-goal); border-radius: 10px; padding: 12px 14px; min-width: 0; overflow-wrap: anywhere; }
.card h3 { margin: 0; font-size: 1.05rem; line-height: 1.25; }
.card h3 span { display: inline-block; min-width: 1.5em; border-radius: 1em; background: var(--sw-goal); color: var(--sw-paper); text-align: center; margin-right: 0.45em; line-height: 1.5; font-size: 0.92em; }
.card p { margin: 4px 0 0; }
.card .step { font-size: 1.02rem; font-weight: 600; color: var(--sw-goal); }
.card svg { display: block; width: 100%; height: auto; margin: 8px auto; max-width: 330px; }
.cards.one .card { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.1fr); gap: 0 24px; align-items: center; }
.card dl { margin: 6px 0 0; }
.card dt { font-size: 0.82rem; font-weight: 600; color: var(--sw-soft); margin-top: 6px; }
.card dd { margin: 0; }
.card .feel dd { font-style: italic; }
.measured { border: 0; padding: 0; margin-top: 12px; }
.measured svg { max-height: 230px; width: auto; }
.care { border: 1.5px solid var(--sw-expected); border-radius: 10px; padding: 10px 14px; }
.care h2 { color: var(--sw-expected); margin-bottom: 2px; }
.care p { margin: 3px 0; }
main ul.plain { padding-left: 1.1rem; margin: 0; overflow-wrap: anywhere; }
main ul.plain li { margin: 2px 0; }
.numbers { margin-top: 26px; }
.numbers h2 { margin-bottom: 4px; }
.numbers td, .numbers th { overflow-wrap: break-word; font-size: 0.92rem; padding: 0.24rem 0.9rem 0.24rem 0; min-width: 0; vertical-align: top; }
.numbers tbody th { min-width: 0; }
.numbers thead th { white-space: normal; }
main footer { margin-top: 22px; }
@media (max-width: 640px) { main { padding: 20px 16px; } .two, .two.even, .cards.one .card { display: block; } .top p { text-align: left; } }
@media print {
  @page { size: A4; margin: 12mm 14mm; }
  html, body { font-size: var(--page); line-height: 1.32; }
  main { padding: 0; }
  main section { margin-top: 11pt; }
  .two { grid-template-columns: minmax(0, 1.25fr) minmax(0, 1fr) !important; }
  .two, .cards.one .card { display: grid !important; }
  .cards { grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 9pt; }
  .cards.two-cards { grid-template-columns: repeat(2, minmax(0, 1fr)); }
  .cards.one { grid-template-columns: minmax(0, 1fr); }
  .card { padding: 7pt 9pt; break-inside: avoid; }
  .card svg { max-width: 176pt; margin: 2pt auto; }
  .top h1 { font-size: var(--headline); }
  .wish { margin-top: 7pt; }
  .flight svg { max-height: 170pt; }
  .measured svg { max-height: 115pt; }
  .care, .wish, .saw li { break-inside: avoid; }
  .care { font-size: max(${leastOfCare}pt, 1em); }
  .care h2 { font-size: max(${leastOfCare}pt, 1.15rem); }
  .saw li { margin-bottom: 5pt; }
  .second { break-before: page; }
  .numbers { margin-top: 9pt; break-inside: avoid; }
  .numbers:first-child { margin-top: 0; }
  .numbers td, .numbers th, .numbers p { font-size: var(--table); line-height: 1.32; padding: 0.19em 1em 0.19em 0; }
  .numbers p { margin: 0; }
  main footer { margin-top: 9pt; font-size: 8pt; }
}
`;
