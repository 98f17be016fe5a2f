// Up to so many quantities, each chosen from a list and moved by a slider or its keys along its windows; asks nobody.
import type { JSX } from 'preact';
import type { Lever, LeverBand } from '../language/what-if.ts';
import { bandWords, numberWords, spokenWords } from './number-words.ts';
import type { Pick } from './sheet-messages.ts';

export interface SlidersProps {
  readonly levers: readonly Lever[];
  /** Their ids, what is most likely wanted first. */
  readonly suggested: readonly string[];
  readonly mostMoves: number;
  readonly picks: readonly Pick[];
  readonly setPicks: (picks: readonly Pick[]) => void;
}

export function Sliders({ levers, suggested, mostMoves, picks, setPicks }: SlidersProps): JSX.Element {
  const isFree = (id: string): boolean => picks.every((pick) => pick.id !== id);
  const next = suggested.find(isFree);
  return (
    <div class="sliders">
      {picks.map((pick, i) => {
        const lever = levers.find(({ id }) => id === pick.id);
        const put = (change: Partial<Pick>): void => setPicks(picks.with(i, { ...pick, ...change }));
        return (
          <div class="slider" role="group" key={i} aria-label={lever?.title ?? 'A quantity'}>
            <Choice
              levers={levers.filter(({ id }) => id === pick.id || isFree(id))}
              chosen={lever}
              choose={(id) => put({ id, value: null })}
              name={`quantity-${i}`}
            />
            {lever !== undefined && (
              <Slider
                lever={lever}
                value={pick.value}
                move={(value) => put({ value })}
                name={`slider-${i}`}
              />
            )}
            <span class="ends">
              <button type="button" disabled={pick.value === null} onClick={() => put({ value: null })}>
                Back to now
              </button>{' '}
              <button type="button" onClick={() => setPicks(picks.toSpliced(i, 1))}>
                Remove
              </button>
            </span>
          </div>
        );
      })}
      {picks.length < mostMoves && next !== undefined && (
        <button type="button" onClick={() => setPicks([...picks, { id: next, value: null }])}>
          {picks.length === 0 ? 'Choose a quantity' : 'Choose another quantity'}
        </button>
      )}
    </div>
  );
}

function Choice({
  levers,
  chosen,
  choose,
  name,
}: {
  readonly levers: readonly Lever[];
  readonly chosen: Lever | undefined;
  readonly choose: (id: string) => void;
  readonly name: string;
}): JSX.Element {
  const groups = [...new Set(levers.map(({ group }) => group))];
  return (
    <p>
      <label for={name}>Quantity</label>{' '}
      <select
        id={name}
        value={chosen?.id ?? ''}
        onChange={({ currentTarget }) => choose(currentTarget.value)}
      >
        {chosen === undefined && <option value="">not known any more</option>}
        {groups.map((group) => (
          <optgroup key={group} label={group}>
            {levers
              .filter((lever) => lever.group === group)
              .map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </p>
  );
}

function Slider({
  lever,
  value,
  move,
  name,
}: {
  readonly lever: Lever;
  readonly value: number | null;
  readonly move: (value: number) => void;
  readonly name: string;
}): JSX.Element {
  const { title, min, max, step, now, nowWords, bands, reachWords } = lever;
  const [at, words] = [value ?? now, numberWords(lever, value ?? now)];
  const spoken = spokenWords(lever, at);
  return (
    <div class="track">
      <label for={name}>{title}</label>
      <output for={name}>{value === null ? `now ${nowWords}` : `${words} (now ${nowWords})`}</output>
      <div class="rail">
        <div class="bands" aria-hidden="true">
          {bands.map((band) => (
            <span key={band.of} class={`band ${band.of}`} style={placeOf(band, lever)} />
          ))}
        </div>
        <input
          type="range"
          id={name}
          min={min}
          max={max}
          step={step}
          value={at}
          aria-valuetext={value === null ? `now, ${spoken}` : spoken}
          aria-describedby={`${name}-windows`}
          onInput={({ currentTarget }) => move(currentTarget.valueAsNumber)}
        />
      </div>
      <span class="scale" aria-hidden="true">
        <span>{numberWords(lever, min)}</span>
        <span>{numberWords(lever, max)}</span>
      </span>
      <p class="windows" id={`${name}-windows`}>
        {bands.map((band) => (
          <span key={band.of} class="window">
            <span class={`band ${band.of}`} aria-hidden="true" /> {bandWords(lever, band, at)}{' '}
          </span>
        ))}
        {reachWords}
      </p>
    </div>
  );
}

/** Where it lies along the track, and no farther than that goes. */
function placeOf(band: LeverBand, { min, max }: Lever): Readonly<Record<'left' | 'width', string>> {
  const share = (value: number): number =>
    (100 * (Math.min(max, Math.max(min, value)) - min)) / Math.max(1e-9, max - min);
  const from = share(band.min);
  return { left: `${from}%`, width: `${share(band.max) - from}%` };
}
