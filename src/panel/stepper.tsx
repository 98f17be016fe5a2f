// The checkpoints of a swing one after another: arrow keys, the keys [ and ], or a click choose one, and what is known there is shown.
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { SheetCheckpoint } from '../language/sheet.ts';
import { Drawing, Things, type Linked } from './picture.tsx';

export interface StepperProps extends Linked {
  readonly checkpoints: readonly SheetCheckpoint[];
  readonly chosen: SheetCheckpoint;
  readonly chooseCheckpoint: (name: string) => void;
}

export function Stepper({ checkpoints, chosen, chooseCheckpoint, ...linked }: StepperProps): JSX.Element {
  // Until the figures of the chosen one come, those before stay, so that nothing jumps.
  const last = useRef(chosen.pictures);
  if (chosen.pictures.length > 0) last.current = chosen.pictures;
  return (
    <section aria-labelledby="section-checkpoints">
      <h2 id="section-checkpoints">Checkpoints</h2>
      <fieldset class="steps">
        <legend>
          Checkpoint <small>(also by the keys [ and ])</small>
        </legend>
        {checkpoints.map(({ name, title }) => (
          <label key={name}>
            <input
              type="radio"
              name="checkpoint"
              value={name}
              checked={name === chosen.name}
              onChange={() => chooseCheckpoint(name)}
            />
            <span>{title}</span>
          </label>
        ))}
      </fieldset>
      <div class="figures" aria-busy={chosen.pictures.length === 0 && last.current.length > 0}>
        {last.current.map((picture) => (
          <Drawing key={picture.name} picture={picture} below="nothing" {...linked} />
        ))}
      </div>
      <h3>At {chosen.title.toLowerCase()}</h3>
      <Things ids={chosen.ids} {...linked} />
    </section>
  );
}
