// The part of a handout's page that stands in the place of planned changes: entries, their picture, and what a fuller record would show; words nothing.
import type { Picture } from '../picture.tsx';
import { cssTheme as theme } from '../theme.ts';
import { Lines } from './lines.tsx';
import type { Measured } from './measured.tsx';
import type { Speech } from './speech.ts';

export function Entries({
  speech: { say },
  measured: { lines, picture, fuller },
}: {
  readonly speech: Speech;
  readonly measured: Measured;
}): Picture {
  return (
    <>
      {picture !== undefined && <figure class="measured">{picture(theme)}</figure>}
      <div class="two even">
        <section>
          <h2>{say('measured')}</h2>
          <Lines lines={lines} otherwise={say('measuredNothing')} />
        </section>
        {fuller.length > 0 && (
          <section>
            <h2>{say('fuller')}</h2>
            <Lines lines={fuller} otherwise="" />
          </section>
        )}
      </div>
    </>
  );
}
