// The page of the sheet: hears of the record, shows it, keeps its place, and says what was chosen; computes nothing of golf.
import { render } from 'preact';
import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import type { JSX } from 'preact';
import type { Placed, Sheet, SheetFinding } from '../language/sheet.ts';
import type { TextRange } from '../language/shapes.ts';
import { listen, post, remember, remembered } from './host.ts';
import { Drawing, type Linked } from './picture.tsx';
import { thingAt } from './place.ts';
import type { FromSheet, SheetState, ToSheet } from './sheet-messages.ts';

const kept = remembered<SheetState>({ uri: '', scroll: 0 });
let state = kept;

function keep(change: Partial<SheetState>): void {
  state = { ...state, ...change };
  remember(state);
}

function say(message: FromSheet): void {
  post(message);
}

function go(range: TextRange): void {
  say({ kind: 'go', range });
}

function Page(): JSX.Element {
  const [sheet, setSheet] = useState<Sheet | null>();
  const [cursor, setCursor] = useState<(ToSheet & { readonly kind: 'cursor' })['position']>();
  useEffect(() => {
    listen((message) => {
      const heard = message as ToSheet;
      if (heard.kind === 'show') {
        setSheet(heard.sheet);
        keep({ uri: heard.uri });
      } else if (heard.kind === 'cursor') setCursor(heard.position);
    });
    say({ kind: 'ready' });
    addEventListener('scroll', () => keep({ scroll: scrollY }), { passive: true });
  }, []);
  const isShown = Boolean(sheet);
  // Only once: later sheets leave the reader where they are.
  useLayoutEffect(() => {
    if (isShown) scrollTo(0, kept.scroll);
  }, [isShown]);
  if (sheet === undefined) return <p role="status">Reading the record…</p>;
  if (sheet === null) return <p role="status">There is no record to show here any more.</p>;
  const linked: Linked = {
    things: sheet.things,
    lit: cursor === undefined ? undefined : thingAt(sheet.things, cursor),
    choose: (id) => {
      const range = sheet.things[id]?.range;
      if (range) go(range);
      else say({ kind: 'why', id });
    },
  };
  return (
    <>
      <header>
        <h1>{sheet.title}</h1>
        <p>{sheet.state.join(' · ')}</p>
      </header>
      <Findings findings={sheet.findings} />
      <List name="goals" title="Goals" items={sheet.goals} />
      <List name="plan" title="Plan" items={sheet.plan} />
      {sheet.sections.map(({ name, title, pictures }) => (
        <section key={name} aria-labelledby={`section-${name}`}>
          <h2 id={`section-${name}`}>{title}</h2>
          {pictures.map((picture) => (
            <Drawing key={picture.name} picture={picture} {...linked} />
          ))}
        </section>
      ))}
    </>
  );
}

function Findings({ findings }: { readonly findings: readonly SheetFinding[] }): JSX.Element | null {
  if (findings.length === 0) return null;
  return (
    <section aria-labelledby="section-findings">
      <h2 id="section-findings">Findings</h2>
      <ul class="rows">
        {findings.map(({ severity, words, range }, i) => (
          <li key={i}>
            <button type="button" class={`row ${severity}`} onClick={() => range && go(range)}>
              <b>{severity}</b> {words}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function List({
  name,
  title,
  items,
}: {
  readonly name: string;
  readonly title: string;
  readonly items: readonly Placed[];
}): JSX.Element | null {
  if (items.length === 0) return null;
  return (
    <section aria-labelledby={`section-${name}`}>
      <h2 id={`section-${name}`}>{title}</h2>
      <ul class="rows">
        {items.map(({ words, range }, i) => (
          <li key={i}>
            {range === null ? (
              <p class="row">{words}</p>
            ) : (
              <button type="button" class="row" onClick={() => go(range)}>
                {words}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

render(<Page />, document.getElementById('panel')!);
