// The two things that a page compares, each with its letter and where it comes from; knows not what differs.
import type { Picture } from './picture.tsx';

export interface ComparedSide {
  /** As the reader would name the file or revision. */
  readonly name: string;
  readonly student?: string | undefined;
  readonly date?: string | undefined;
  readonly club?: string | undefined;
}

/** "2026-08-03 six iron", or the name of the file where it says neither. */
export function sideTitle({ name, date, club }: ComparedSide): string {
  return [date, club].filter((word) => word !== undefined && word !== '').join(' ') || name;
}

export function Sides({
  first,
  second,
}: {
  readonly first: ComparedSide;
  readonly second: ComparedSide;
}): Picture {
  return (
    <div class="sides">
      {(
        [
          ['A', 'first', first],
          ['B', 'second', second],
        ] as const
      ).map(([letter, place, side]) => (
        <div key={letter} class="side">
          <p>
            <span class={`badge ${place}`}>{letter}</span>
            <strong>{sideTitle(side)}</strong>
            {side.student !== undefined && <span class="soft">{` · ${side.student}`}</span>}
          </p>
          <p class="soft">
            <code>{side.name}</code>
          </p>
        </div>
      ))}
    </div>
  );
}
