// One picture of a sheet: drawn, lit where the cursor is, clicked to get to the text, and its things as buttons for keys and readers.
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { JSX } from 'preact';
import type { SheetPicture, Thing } from '../language/sheet.ts';

export interface Linked {
  readonly things: Readonly<Record<string, Thing>>;
  /** The id at the cursor. */
  readonly lit: string | undefined;
  readonly choose: (id: string) => void;
}

export function Drawing({
  picture: { name, title, svg, ids },
  ...linked
}: Linked & { readonly picture: SheetPicture }): JSX.Element {
  return (
    <figure data-name={name}>
      <figcaption>{title}</figcaption>
      <Drawn svg={svg} {...linked} />
      <Things ids={ids} {...linked} />
    </figure>
  );
}

/** The text comes from the project's own pictures, which escape whatever a record says. */
function Drawn({ svg, lit, choose, things }: Linked & { readonly svg: string }): JSX.Element {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    for (const part of place.current?.querySelectorAll('[data-id]') ?? []) {
      const id = part.getAttribute('data-id');
      part.classList.toggle('lit', id === lit);
      part.classList.toggle('linked', id !== null && id in things);
    }
  }, [svg, lit, things]);
  return (
    <div
      class="drawn"
      ref={place}
      dangerouslySetInnerHTML={{ __html: svg }}
      onClick={({ target }) => {
        const id = target instanceof Element ? target.closest('[data-id]')?.getAttribute('data-id') : null;
        if (id && id in things) choose(id);
      }}
    />
  );
}

/** A picture is one thing to a screen reader and to keys; what is in it is said and reached here. */
function Things({
  ids,
  things,
  lit,
  choose,
}: Linked & { readonly ids: readonly string[] }): JSX.Element | null {
  const known = ids.filter((id) => id in things);
  if (known.length === 0) return null;
  return (
    <ul class="things">
      {known.map((id) => {
        const { title, number, range } = things[id]!;
        return (
          <li key={id}>
            <button
              type="button"
              class={range === null ? 'computed' : 'entered'}
              aria-current={id === lit ? 'true' : undefined}
              title={range === null ? 'Computed: show why it is so' : 'Entered: go to it'}
              onClick={() => choose(id)}
            >
              {title} <span>{number}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
