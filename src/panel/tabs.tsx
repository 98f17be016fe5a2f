// Two or more pages of one panel behind tabs, with the keys that tabs have everywhere; knows no page.
import type { ComponentChildren, JSX } from 'preact';

export interface TabsProps<T extends string> {
  readonly label: string;
  readonly tabs: readonly { readonly name: T; readonly title: string }[];
  readonly chosen: T;
  readonly choose: (name: T) => void;
  readonly children: ComponentChildren;
}

export function Tabs<T extends string>({ label, tabs, chosen, choose, children }: TabsProps<T>): JSX.Element {
  const move = (event: KeyboardEvent): void => {
    const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (by === undefined) return;
    const at = tabs.findIndex(({ name }) => name === chosen);
    const next = tabs[(at + by + tabs.length) % tabs.length]!;
    choose(next.name);
    document.getElementById(`tab-${next.name}`)?.focus();
    event.preventDefault();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label={label} onKeyDown={move}>
        {tabs.map(({ name, title }) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`tab-${name}`}
            aria-selected={name === chosen}
            aria-controls="tab-page"
            tabIndex={name === chosen ? 0 : -1}
            onClick={() => choose(name)}
          >
            {title}
          </button>
        ))}
      </div>
      <div role="tabpanel" id="tab-page" aria-labelledby={`tab-${chosen}`}>
        {children}
      </div>
    </>
  );
}
