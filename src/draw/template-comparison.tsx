// A record held against a template as a page that stands alone: each window with the number of the record in it; compares nothing.
import { figureWords, outsideWords, templateSummary, windowWords } from '../analysis/comparison-words.ts';
import type { Analysis } from '../analysis/result.ts';
import type { TemplateComparison, WindowRow } from '../analysis/comparison.ts';
import { nameWithin } from '../checks/agreement.ts';
import { strictnessOf } from '../judgement/template.ts';
import { FiguresInWindows } from './compared-figures.tsx';
import type { ComparedRecord } from './comparison.tsx';
import { fixed } from './geometry.ts';
import { pageOf, ScrolledTable } from './page.tsx';
import { areaStyle, HatchDefinition, type Picture } from './picture.tsx';
import { Sides, sideTitle } from './sides.tsx';
import { cssTheme as theme } from './theme.ts';

interface NamedAnalysis {
  readonly name: string;
  readonly analysis: Analysis;
}

/** The whole page as HTML text. */
export function templatePage(
  record: ComparedRecord,
  template: NamedAnalysis,
  comparison: TemplateComparison,
): string {
  const title = comparison.title ?? template.name;
  return pageOf({
    title: `${sideTitle(record)} against ${title}`,
    children: (
      <>
        <h1>Against the template</h1>
        <Sides first={record} second={{ name: template.name, club: title }} />
        {templateSummary(comparison).map((sentence, i) => (
          <p key={i} class="lead">
            {sentence}
          </p>
        ))}
        {comparison.rows.length > 0 && (
          <ScrolledTable name="Windows">
            <thead>
              <tr>
                <th scope="col">Quantity</th>
                <th scope="col">Window</th>
                <th scope="col">In this record</th>
                <td />
                <th scope="col">Stands</th>
              </tr>
            </thead>
            <tbody>
              {comparison.rows.map((row) => (
                <tr key={row.window.quantity.id} data-id={row.window.quantity.id}>
                  <th scope="row">{nameWithin(row.window.quantity)}</th>
                  <td class="number">{`${windowWords(row)}, ${strictnessOf(row.window)}`}</td>
                  <td class="number">{figureWords(row.window.quantity, row.figure)}</td>
                  <td>
                    <WindowMark {...row} />
                  </td>
                  <td class={row.state === 'outside' ? 'alert' : ''}>{outsideWords(row)}</td>
                </tr>
              ))}
            </tbody>
          </ScrolledTable>
        )}
        <FiguresInWindows record={record.analysis} template={template.analysis} theme={theme} />
        <footer>
          <p>
            u is one standard uncertainty of the number in the record. From 1 u on a firm window is left, from
            2 u a gentle one; nearer, a number is just outside.
          </p>
        </footer>
      </>
    ),
  });
}

const [width, height] = [168, 22];

/** The window in the middle third, the number with one standard uncertainty to each side; what lies far off stands at the end. */
function WindowMark({ window: { quantity }, edges, figure, state }: WindowRow): Picture | null {
  if (edges === undefined || !(edges.to > edges.from)) return null;
  const third = width / 3;
  const at = (value: number): number =>
    Math.max(6, Math.min(width - 6, third + ((value - edges.from) / (edges.to - edges.from)) * third));
  const name = `window-${quantity.id.replaceAll('.', '-')}`;
  const y = height / 2;
  const colour = state === 'outside' ? theme.alert : theme.entered;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} fill="none" aria-hidden="true">
      <defs>
        <HatchDefinition picture={name} of="taught" theme={theme} />
      </defs>
      <path d={`M 2 ${y} H ${width - 2}`} stroke={theme.faint} />
      <rect
        x={fixed(third)}
        y="4"
        width={fixed(third)}
        height={height - 8}
        {...areaStyle('taught', name, theme)}
      />
      {figure !== undefined && (
        <g>
          <path
            d={`M ${fixed(at(figure.value - (figure.u ?? 0)))} ${y} H ${fixed(at(figure.value + (figure.u ?? 0)))}`}
            stroke={colour}
            stroke-width="2"
            stroke-dasharray={figure.kind === 'entered' ? undefined : '4 3'}
          />
          <circle
            cx={fixed(at(figure.value))}
            cy={y}
            r="4"
            fill={figure.kind === 'entered' ? colour : theme.paper}
            stroke={colour}
            stroke-width="1.6"
          />
        </g>
      )}
    </svg>
  );
}
