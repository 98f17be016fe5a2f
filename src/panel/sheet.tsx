// The page of the sheet: hears of the record, shows it, keeps its place, and says what was chosen; computes nothing of golf.
import { render } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { JSX } from 'preact';
import type { Sheet } from '../language/sheet.ts';
import type { Position } from '../language/shapes.ts';
import type { Move, WhatIfAnswer } from '../language/what-if.ts';
import { listen, post, remember, remembered } from './host.ts';
import { latestOnly } from './latest.ts';
import { Overview } from './overview.tsx';
import { Drawing, type Linked } from './picture.tsx';
import { thingAt } from './place.ts';
import type { FromSheet, SheetState, ToSheet } from './sheet-messages.ts';
import { Stepper } from './stepper.tsx';
import { stepped } from './stepped.ts';
import { Tabs } from './tabs.tsx';
import { movesOf, WhatIf, type Written } from './what-if.tsx';

const start = remembered<SheetState>({
  uri: '',
  scroll: 0,
  tab: 'swing',
  checkpoint: null,
  picks: [],
  open: [],
});
const tabs = [
  { name: 'swing', title: 'The swing' },
  { name: 'what-if', title: 'What if' },
] as const;

function say(message: FromSheet): void {
  post(message);
}

const questions = latestOnly<readonly Move[]>((moves) => say({ kind: 'whatIf', moves }));

const nothingWritten: Written = { words: '', canUndo: false };

function Page(): JSX.Element {
  const [sheet, setSheet] = useState<Sheet | null>();
  const [cursor, setCursor] = useState<Position>();
  const [answer, setAnswer] = useState<WhatIfAnswer | null>();
  const [written, setWritten] = useState(nothingWritten);
  const [state, setState] = useState(start);
  // What listens is made once, and looks at what is shown when it hears something.
  const shown = useRef<Sheet | null>(null);
  shown.current = sheet ?? null;
  const kept = useRef(state);
  const last = useRef(written);
  last.current = written;
  const isBack = useRef(false);
  const change = (part: Partial<SheetState>): void => setState((before) => ({ ...before, ...part }));
  const step = (by: 1 | -1): void =>
    setState((before) => ({
      ...before,
      checkpoint: stepped(shown.current?.checkpoints ?? [], before.checkpoint, by),
    }));

  const hear = (message: ToSheet): void => {
    switch (message.kind) {
      case 'show':
        change({ uri: message.uri });
        return setSheet(message.sheet);
      case 'cursor':
        return setCursor(message.position);
      case 'step':
        return step(message.by);
      case 'whatIf':
        questions.answered();
        if (message.answer !== undefined) setAnswer(message.answer);
        return;
      case 'written':
        return setWritten(message);
    }
  };
  useEffect(() => {
    listen((message) => hear(message as ToSheet));
    say({ kind: 'ready', checkpoint: start.checkpoint });
    addEventListener('scroll', () => remember({ ...kept.current, scroll: scrollY }), { passive: true });
    addEventListener('keydown', ({ key, target, ctrlKey, metaKey, shiftKey }) => {
      // VS Code undoes nothing in a text while a page has the focus.
      if ((ctrlKey || metaKey) && !shiftKey && key === 'z' && last.current.canUndo) say({ kind: 'undo' });
      if (target instanceof HTMLSelectElement) return;
      if (key === ']') step(1);
      if (key === '[') step(-1);
    });
  }, []);
  useEffect(() => {
    kept.current = state;
    // Before anything is shown there is no place to keep.
    if (shown.current !== null) remember({ ...state, scroll: scrollY });
  }, [state]);

  // Figures come of one checkpoint at a time.
  useEffect(() => {
    const isDrawn = shown.current?.checkpoints.find(({ name }) => name === state.checkpoint)?.pictures.length;
    if (shown.current !== null && isDrawn === 0) say({ kind: 'checkpoint', checkpoint: state.checkpoint });
  }, [state.checkpoint]);

  const lit = sheet && cursor ? thingAt(sheet.things, cursor) : undefined;
  // The checkpoint of the entry that the cursor stands on comes into view.
  useEffect(() => {
    const at = sheet?.checkpoints.find(({ ids }) => lit !== undefined && ids.includes(lit));
    if (at !== undefined) change({ checkpoint: at.name });
  }, [lit]);
  // What was moved is asked for again when the record changes.
  useEffect(() => {
    if (state.tab === 'what-if' && sheet) questions.ask(movesOf(state.picks));
  }, [state.tab, state.picks, sheet]);
  const first = answer?.suggested[0];
  useEffect(() => {
    if (first !== undefined && start.picks.length === 0 && state.picks.length === 0)
      change({ picks: [{ id: first, value: null }] });
  }, [first]);
  const isShown = Boolean(sheet) && (state.tab === 'swing' || answer !== undefined);
  // Only once, and on the tab that it was of: later sheets and other tabs leave the reader where they are.
  useLayoutEffect(() => {
    if (!isShown || isBack.current) return;
    isBack.current = true;
    if (state.tab === start.tab) scrollTo(0, start.scroll);
  }, [isShown]);

  if (sheet === undefined) return <p role="status">Reading the record…</p>;
  if (sheet === null) return <p role="status">There is no record to show here any more.</p>;
  const linked: Linked = {
    things: sheet.things,
    lit,
    choose: (id, by) => {
      const range = sheet.things[id]?.range;
      say(range ? { kind: 'go', range, focus: by === 'key' } : { kind: 'why', id });
    },
  };
  return (
    <>
      <Overview
        sheet={sheet}
        go={(range) => say({ kind: 'go', range, focus: true })}
        open={state.open}
        turn={(part, isOpen) =>
          setState((before) => {
            const others = before.open.filter((one) => one !== part);
            return { ...before, open: isOpen ? [...others, part] : others };
          })
        }
      />
      <Tabs label="Sheet" tabs={tabs} chosen={state.tab} choose={(tab) => change({ tab })}>
        {state.tab === 'swing' ? (
          <Swing
            sheet={sheet}
            linked={linked}
            checkpoint={state.checkpoint}
            chooseCheckpoint={(checkpoint) => change({ checkpoint })}
          />
        ) : (
          <WhatIf
            answer={answer}
            picks={state.picks}
            setPicks={(picks) => {
              setWritten(nothingWritten);
              change({ picks });
            }}
            write={(moves, because) => say({ kind: 'write', moves, because })}
            written={written}
            undo={() => say({ kind: 'undo' })}
          />
        )}
      </Tabs>
    </>
  );
}

function Swing({
  sheet: { checkpoints, sections },
  linked,
  checkpoint,
  chooseCheckpoint,
}: {
  readonly sheet: Sheet;
  readonly linked: Linked;
  readonly checkpoint: string | null;
  readonly chooseCheckpoint: (name: string) => void;
}): JSX.Element {
  const chosen = checkpoints.find(({ name }) => name === checkpoint) ?? checkpoints[0];
  return (
    <>
      {chosen !== undefined && (
        <Stepper checkpoints={checkpoints} chosen={chosen} chooseCheckpoint={chooseCheckpoint} {...linked} />
      )}
      {sections.map(({ name, title, pictures }) => (
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

render(<Page />, document.getElementById('panel')!);
