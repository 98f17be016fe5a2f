// The page on which quantities are moved and everything that follows is seen beside the present; asks for answers and computes none.
import { useState } from 'preact/hooks';
import type { JSX } from 'preact';
import type { Move, WhatIfAnswer } from '../language/what-if.ts';
import { Svg } from './picture.tsx';
import { reasonsTicked } from './reasons-ticked.ts';
import type { Pick } from './sheet-messages.ts';
import { Sliders } from './sliders.tsx';
import { NowAndThen } from './now-and-then.tsx';

export interface WhatIfProps {
  readonly answer: WhatIfAnswer | null | undefined;
  readonly picks: readonly Pick[];
  readonly setPicks: (picks: readonly Pick[]) => void;
  readonly write: (moves: readonly Move[], because: readonly string[]) => void;
  readonly written: Written;
  readonly undo: () => void;
}

/** What came of writing. */
export interface Written {
  readonly words: string;
  readonly canUndo: boolean;
}

export function movesOf(picks: readonly Pick[]): readonly Move[] {
  return picks.flatMap(({ id, value }) => (value === null ? [] : [{ id, value }]));
}

export function WhatIf({ answer, picks, setPicks, write, written, undo }: WhatIfProps): JSX.Element {
  if (answer === undefined) return <p role="status">Asking the model…</p>;
  if (answer === null)
    return (
      <p role="status">The record says too little for the model to go by. Enter more of the delivery.</p>
    );
  const { levers, suggested, mostMoves, rows, pictures, reasons, cautions, without } = answer;
  const moves = movesOf(picks);
  return (
    <>
      <h2>What would change</h2>
      <Sliders
        levers={levers}
        suggested={suggested}
        mostMoves={mostMoves}
        picks={picks}
        setPicks={setPicks}
      />
      <Cautions cautions={cautions} />
      {without.length > 0 && (
        <p>Neither the model nor the fault book knows what this does: {without.join(', ')}.</p>
      )}
      <NowAndThen rows={rows} />
      <Write reasons={reasons} told={cautions} moves={moves} write={write} written={written} undo={undo} />
      <h2>Now and then</h2>
      {pictures.map(({ name, title, now, then }) => (
        <section key={name} aria-label={title}>
          <h3>{title}</h3>
          <div class="pair">
            <figure>
              <figcaption>Now, as all entries together say</figcaption>
              <Svg svg={now} title={`${title}, now`} />
            </figure>
            <figure>
              <figcaption>Then, as predicted from there</figcaption>
              {then === '' ? (
                <p>As now: nothing is moved yet.</p>
              ) : (
                <Svg svg={then} title={`${title}, then`} />
              )}
            </figure>
          </div>
        </section>
      ))}
    </>
  );
}

function Cautions({ cautions }: { readonly cautions: readonly string[] }): JSX.Element {
  return (
    <div role="status">
      {cautions.map((caution) => (
        <p key={caution} class="caution">
          <b>Caution.</b> {caution}
        </p>
      ))}
    </div>
  );
}

/** Why is the coach's to say. */
function Write({
  reasons,
  told,
  moves,
  write,
  written,
  undo,
}: {
  readonly reasons: WhatIfAnswer['reasons'];
  /** Cautions that stand on the page already. */
  readonly told: readonly string[];
  readonly moves: readonly Move[];
  readonly write: WhatIfProps['write'];
  readonly written: Written;
  readonly undo: () => void;
}): JSX.Element {
  const [said, setSaid] = useState<readonly string[]>();
  const chosen = reasonsTicked(reasons, said);
  const added = reasons
    .filter(({ name }) => chosen.includes(name))
    .flatMap(({ cautions }) => cautions)
    .filter((caution, i, all) => all.indexOf(caution) === i && !told.includes(caution));
  return (
    <section aria-labelledby="section-write">
      <h2 id="section-write">Write as plan</h2>
      {reasons.length > 0 && (
        <fieldset class="reasons">
          <legend>Because of</legend>
          {reasons.map((reason) => (
            <Because
              key={reason.name}
              reason={reason}
              isTicked={chosen.includes(reason.name)}
              turn={() =>
                setSaid(
                  chosen.includes(reason.name)
                    ? chosen.filter((one) => one !== reason.name)
                    : [...chosen, reason.name],
                )
              }
            />
          ))}
        </fieldset>
      )}
      <Cautions cautions={added} />
      <p>
        <button type="button" class="main" disabled={moves.length === 0} onClick={() => write(moves, chosen)}>
          Write as plan
        </button>{' '}
        <span role="status">{moves.length === 0 ? 'Move a quantity first.' : written.words}</span>{' '}
        {moves.length > 0 && written.canUndo && (
          <button type="button" onClick={undo}>
            Undo
          </button>
        )}
      </p>
    </section>
  );
}

/** What leads away from a goal may still be made for it; it is said before it is written. */
function Because({
  reason: { name, title, away },
  isTicked,
  turn,
}: {
  readonly reason: WhatIfAnswer['reasons'][number];
  readonly isTicked: boolean;
  readonly turn: () => void;
}): JSX.Element {
  const id = `away-${name}`;
  return (
    <>
      <label>
        <input
          type="checkbox"
          checked={isTicked}
          aria-describedby={away.length === 0 ? undefined : id}
          onChange={turn}
        />{' '}
        {title}
      </label>
      {away.length > 0 && (
        <div id={id}>
          {away.map((words) => (
            <p key={words} class="caution">
              <b>What is moved leads away from this goal.</b> {words}
            </p>
          ))}
        </div>
      )}
    </>
  );
}
