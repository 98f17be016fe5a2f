// A table of what is now and what would be then, in groups; says in words what is the same, computes nothing.
import type { JSX } from 'preact';
import type { WhatIfRow } from '../language/what-if-rows.ts';

export function NowAndThen({ rows }: { readonly rows: readonly WhatIfRow[] }): JSX.Element {
  const groups = [...new Set(rows.map(({ group }) => group))];
  return (
    <table class="then">
      <caption>What is now, as all entries together say, and what would be then</caption>
      <thead>
        <tr>
          <th scope="col">Quantity</th>
          <th scope="col">Now</th>
          <th scope="col">Then</th>
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group}>
          <tr>
            <th scope="rowgroup" colSpan={3}>
              {group}
            </th>
          </tr>
          {rows
            .filter((row) => row.group === group)
            .map(({ title, now, entered, then, spread, moved }, i) => (
              <tr key={i} class={then === now ? 'same' : 'moved'}>
                <th scope="row">{title}</th>
                <td>
                  {now}
                  {entered !== '' && <small>entered {entered}</small>}
                </td>
                <td>
                  {then === now && moved === '' ? (
                    'as now'
                  ) : (
                    <>
                      <b>{then}</b>
                      {moved !== '' && <small>moves {moved}</small>}
                      {spread !== '' && <small>95 %: {spread}</small>}
                    </>
                  )}
                </td>
              </tr>
            ))}
        </tbody>
      ))}
    </table>
  );
}
