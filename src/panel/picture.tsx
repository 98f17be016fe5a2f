// One picture of a sheet: drawn, lit where the cursor is, clicked to get to the text, and its things as buttons for keys and readers.
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { JSX } from 'preact';
import type { SheetPicture, Thing } from '../language/sheet.ts';

export interface Linked {
  readonly things: Readonly<Record<string, Thing>>;
  /** The id at the cursor. */
  readonly lit: string | undefined;
  /** Who points stays in the sheet, so that its keys go on working; who comes by key goes to the text. */
  readonly choose: (id: string, by: 'pointer' | 'key') => void;
}

/** `below` says whether what is drawn is listed below it; around a figure the page does so itself. */
export function Drawing({
  picture: { name, title, svg, ids },
  below = 'things',
  ...linked
}: Linked & { readonly picture: SheetPicture; readonly below?: 'things' | 'nothing' }): JSX.Element {
  return (
    <figure data-name={name}>
      <figcaption>{title}</figcaption>
      <Drawn svg={svg} title={title} {...linked} />
      {below === 'things' && <Things ids={ids} where="said" {...linked} />}
    </figure>
  );
}

function Drawn({
  svg,
  title,
  lit,
  choose,
  things,
}: Linked & { readonly svg: string; readonly title: string }): JSX.Element {
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
      ref={place}
      onClick={({ target }) => {
        const id = target instanceof Element ? target.closest('[data-id]')?.getAttribute('data-id') : null;
        if (id && id in things) choose(id, 'pointer');
      }}
    >
      <Svg svg={svg} title={title} />
    </div>
  );
}

/**
 * The text comes from the project's own pictures, which escape whatever a record says. Where there is too little room for its
 * letters it is moved aside, by keys too.
 */
export function Svg({ svg, title }: { readonly svg: string; readonly title: string }): JSX.Element {
  const place = useRef<HTMLDivElement>(null);
  const [isCut, setCut] = useState(false);
  useLayoutEffect(() => {
    const look = (): void => {
      const { scrollWidth = 0, clientWidth = 0 } = place.current ?? {};
      setCut(scrollWidth > clientWidth);
    };
    look();
    addEventListener('resize', look);
    return () => removeEventListener('resize', look);
  }, [svg]);
  const reached = isCut ? { tabIndex: 0, role: 'group' as const, 'aria-label': title } : {};
  return <div class="drawn" ref={place} dangerouslySetInnerHTML={{ __html: svg }} {...reached} />;
}

/** A picture is one thing to a screen reader and to keys; what is in it is said and reached here. */
export function Things({
  ids,
  where = 'known',
  things,
  lit,
  choose,
}: Linked & {
  readonly ids: readonly string[];
  /** Whether the checkpoint has to be said. */
  readonly where?: 'said' | 'known';
}): JSX.Element | null {
  const known = ids.filter((id) => id in things);
  if (known.length === 0) return null;
  return (
    <ul class="things">
      {known.map((id) => {
        const { title, at, number, range } = things[id]!;
        return (
          <li key={id}>
            <button
              type="button"
              data-id={id}
              class={range === null ? 'computed' : 'entered'}
              aria-current={id === lit ? 'true' : undefined}
              title={range === null ? 'Computed: show why it is so' : 'Entered: go to it'}
              onClick={({ detail }) => choose(id, detail === 0 ? 'key' : 'pointer')}
            >
              {where === 'said' && at !== '' ? `${title} ${at}` : title} <span>{number}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
