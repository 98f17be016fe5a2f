// A table of numbers that differ between two records, with the difference, its size against measuring twice, and what else changed; compares nothing.
import {
  aspectWords,
  changeWords,
  figureWords,
  nameOf,
  sizeInShort,
  sizeWords,
} from '../analysis/comparison-words.ts';
import type { Difference, QuantityChange } from '../analysis/comparison.ts';
import type { Section } from '../registry/quantity.ts';
import { ScrolledTable } from './page.tsx';
import type { Picture } from './picture.tsx';
import { SizeMark } from './size-mark.tsx';
import { cssTheme as theme } from './theme.ts';

/** The first row of a table; an empty title stands over a column that needs none. */
export function Head({ titles }: { readonly titles: readonly string[] }): Picture {
  return (
    <thead>
      <tr>
        {titles.map((title, i) =>
          title === '' ? (
            <td key={i} />
          ) : (
            <th key={i} scope="col">
              {title}
            </th>
          ),
        )}
      </tr>
    </thead>
  );
}

/** In the order in which a record tells of them. */
const sections: Readonly<Record<Section, string>> = {
  conditions: 'Conditions',
  student: 'Student',
  club: 'Club',
  checkpoints: 'Body',
  delivery: 'Delivery',
  ground: 'Ground',
  strike: 'Strike on the face',
  flight: 'Flight',
};

export function Numbers({
  name,
  changes,
}: {
  readonly name: string;
  readonly changes: readonly QuantityChange[];
}): Picture {
  return (
    <ScrolledTable name={name}>
      <Head titles={['Quantity', 'A', 'B', 'Difference', 'Against measuring twice']} />
      {(Object.keys(sections) as Section[]).map((section) => {
        const own = changes.filter(({ quantity }) => quantity.section === section);
        if (own.length === 0) return null;
        return (
          <tbody key={section}>
            <tr>
              <th scope="rowgroup" colSpan={5}>
                {sections[section]}
              </th>
            </tr>
            {own.map((change) => (
              <NumberRow key={change.quantity.id} change={change} />
            ))}
          </tbody>
        );
      })}
    </ScrolledTable>
  );
}

/** What else changed stands below the difference, so that the whole row is seen on a narrow page and on paper. */
function NumberRow({ change }: { readonly change: QuantityChange }): Picture {
  const { quantity, state, before, after, difference } = change;
  const also = aspectWords(change);
  return (
    <tr class={difference.size} data-id={quantity.id}>
      <th scope="row">{nameOf(change)}</th>
      <td class="number">{figureWords(quantity, before)}</td>
      <td class="number">{figureWords(quantity, after)}</td>
      <td>
        {(state === 'changed' || difference.value !== undefined) && (
          <span class="whole">{`${changeWords(quantity, difference)} `}</span>
        )}
        {state !== 'changed' && (
          <span class={`tag ${state}`}>{state === 'new' ? 'new entry' : 'entry gone'}</span>
        )}
        {also !== '' && <span class="below soft">{also}</span>}
      </td>
      <SizeCell difference={difference} />
    </tr>
  );
}

/** The mark, and below it the size in words. */
export function SizeCell({ difference }: { readonly difference: Difference }): Picture {
  return (
    <td class="size">
      <SizeMark difference={difference} theme={theme} />
      {difference.size !== 'not known' && (
        <span class="below" title={sizeWords[difference.size]}>
          {sizeInShort(difference)}
        </span>
      )}
    </td>
  );
}
