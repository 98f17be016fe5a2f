// An audit of a record as a page that stands alone: what stands out, and every entry in one table; judges nothing.
import { auditCells, auditColumns, auditRemarks, type AuditCells } from '../analysis/audit-words.ts';
import type { Audit, AuditRow } from '../analysis/audit.ts';
import type { Analysis } from '../analysis/result.ts';
import { fixed } from './geometry.ts';
import { Head } from './number-table.tsx';
import { pageOf, ScrolledTable } from './page.tsx';
import type { Picture } from './picture.tsx';
import { cssTheme as theme } from './theme.ts';

/** A second opinion stands below the value. */
const titles = Object.entries(auditColumns).flatMap(([key, title]) => (key === 'second' ? [] : title));

export function auditPage(name: string, analysis: Analysis, audit: Audit): string {
  const weights = audit.rows.map(({ weight }) => weight);
  const most = Math.max(0, ...weights);
  return pageOf({
    title: `Audit of ${name}`,
    style,
    children: (
      <>
        <h1>Are these numbers sound?</h1>
        <p class="soft">{name}</p>
        {auditRemarks(audit, analysis).map((sentence, i) => (
          <p key={i} class={i === 0 ? 'lead' : ''}>
            {sentence}
          </p>
        ))}
        <h2>Entry by entry</h2>
        <ScrolledTable name="Every entry of the record">
          <Head titles={titles} />
          <tbody>
            {audit.rows.map((row, i) => (
              <Row key={i} row={row} cells={auditCells(row, analysis)} most={most} />
            ))}
          </tbody>
        </ScrolledTable>
        <h2>How to read it</h2>
        <ul class="soft">
          <li>
            Uncertainty from: stated beside the entry, else that of its method, else that of the quantity,
            where nobody said how it was measured.
          </li>
          <li>Checked: how much of an error in this entry would show against the others.</li>
          <li>
            Residual: how far the entry is from what the others say, in standard uncertainties of the
            difference.
          </li>
          <li>
            Share of the conclusions: its part in the variance of each conclusion, on average; what is left
            comes from assumptions and from how exact the steps are.
          </li>
          <li>If twice as unsure: the verdict if every entry of the record were twice as unsure.</li>
        </ul>
      </>
    ),
  });
}

function Row({
  row: { quantity, judged, weight, isGuess },
  cells,
  most,
}: {
  readonly row: AuditRow;
  readonly cells: AuditCells;
  readonly most: number;
}): Picture {
  const { entry, value, method, origin, checked, residual, verdict, twice, second, share } = cells;
  const isOff = judged?.verdict === 'conflict';
  return (
    <tr data-id={quantity.id}>
      <th scope="row">{entry}</th>
      <td class="number">
        {value}
        {second !== '' && <span class="below soft">second opinion: {second}</span>}
      </td>
      <td>
        {method}
        {isGuess && <span class="below soft">a guess</span>}
      </td>
      <td>{origin}</td>
      <td class="number">{checked}</td>
      <td class="number">{residual}</td>
      <td class={isOff ? 'number alert' : 'number'}>{isOff ? <strong>{verdict}</strong> : verdict}</td>
      <td class="number">{twice}</td>
      <td class="number share">
        <Bar share={most > 0 ? weight / most : 0} words={share} />
      </td>
    </tr>
  );
}

const width = 60;

/** The table stands whole in half of a wide window, so a second opinion stands below the value and has no column of its own. */
const style = `
table { font-size: 0.9rem; line-height: 1.35; }
th, td { padding-right: 0.7rem; }
td.share { padding-right: 0; min-width: ${width}px; }
`;

function Bar({ share, words }: { readonly share: number; readonly words: string }): Picture {
  return (
    <>
      {words}
      {share > 0 && (
        <svg viewBox={`0 0 ${width} 6`} width={width} height="6" aria-hidden="true">
          <rect x="0" y="0" width={fixed(Math.max(1, width * share))} height="6" fill={theme.expected} />
        </svg>
      )}
    </>
  );
}
