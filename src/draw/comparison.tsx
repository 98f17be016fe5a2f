// A comparison as a page that stands alone: what differs, by how much, what was found, what became of the plan, pictures; compares nothing.
import { counted } from '../measure/counted.ts';
import { loadsWords } from '../analysis/cautions.ts';
import { changeWords, shotsWords, sizesExplained, summaryOf } from '../analysis/comparison-words.ts';
import type { Comparison } from '../analysis/comparison.ts';
import { withoutHealth, type RecordAnalysis } from '../analysis/compare.ts';
import { nameWithin } from '../checks/agreement.ts';
import { OverlaidAbove } from './overlaid-above.tsx';
import { FiguresOverlaid } from './compared-figures.tsx';
import { OverlaidFlight } from './overlaid-flight.tsx';
import { OverlaidFront } from './overlaid-front.tsx';
import { Goals, Held, Judgement, Plans } from './comparison-judgement.tsx';
import { Head, Numbers, SizeCell } from './number-table.tsx';
import { pageOf, ScrolledTable } from './page.tsx';
import { Sides, sideTitle, type ComparedSide } from './sides.tsx';
import { cssTheme as theme } from './theme.ts';

export interface ComparedRecord extends ComparedSide {
  readonly analysis: RecordAnalysis;
}

/** With what its head says of itself. */
export function comparedRecord(name: string, analysis: RecordAnalysis): ComparedRecord {
  const { document, subject } = analysis;
  return {
    name,
    analysis,
    student: subject.student?.document.name?.value,
    date: document.date?.value,
    club: document.club?.value,
  };
}

/** The whole page as HTML text. */
export function comparisonPage(first: ComparedRecord, second: ComparedRecord, whole: Comparison): string {
  // The page is kept, sent and printed: it says what is loaded, and nothing of who has which injury.
  const comparison = withoutHealth(whole);
  const loads = loadsWords([first.analysis, second.analysis]);
  const { entries, computed, predicted, held, shots, isSame } = comparison;
  const [large, small] = [
    computed.filter(({ difference }) => difference.size === 'larger'),
    computed.filter(({ difference }) => difference.size !== 'larger'),
  ];
  const both = { first: first.analysis, second: second.analysis, theme };
  return pageOf({
    title: `${sideTitle(first)} against ${sideTitle(second)}`,
    children: (
      <>
        <h1>What changed</h1>
        <Sides first={first} second={second} />
        {summaryOf(comparison).map((sentence, i) => (
          <p key={i} class="lead">
            {sentence}
          </p>
        ))}
        {!isSame && (
          <>
            <h2>Laid over one another</h2>
            <p class="soft">
              A is thin, B is bold. Solid lines were written down, dashed ones computed. An ellipse holds 95 %
              of the shots; a dotted one says how sure the place of a single flight is.
            </p>
            <div class="pictures stacked">
              <figure>
                <figcaption>The strike from above</figcaption>
                <OverlaidAbove {...both} />
              </figure>
              <figure>
                <figcaption>The strike from the front</figcaption>
                <OverlaidFront {...both} />
              </figure>
              <figure>
                <figcaption>Where the ball comes down</figcaption>
                <OverlaidFlight {...both} />
              </figure>
            </div>
            <FiguresOverlaid {...both} />
          </>
        )}
        {entries.length > 0 && (
          <>
            <h2>Entries</h2>
            <Numbers name="Entries that differ" changes={entries} />
          </>
        )}
        {large.length > 0 && (
          <>
            <h2>Computed numbers that moved</h2>
            <Numbers name="Computed numbers that differ" changes={large} />
          </>
        )}
        {small.length > 0 && (
          <details>
            <summary>{`${counted(small.length, 'computed number')} that moved no more than measuring twice explains, or in one record only`}</summary>
            <Numbers name="Other computed numbers" changes={small} />
          </details>
        )}
        {shots.length > 0 && (
          <>
            <h2>Shots</h2>
            <ScrolledTable name="Shots">
              <Head titles={['Mean of the shots', 'A', 'B', 'Difference', 'Against measuring twice']} />
              <tbody>
                {shots.map(({ quantity, before, after, difference }) => (
                  <tr key={quantity.id} class={difference.size}>
                    <th scope="row">{nameWithin(quantity)}</th>
                    <td>{shotsWords(quantity, before)}</td>
                    <td>{shotsWords(quantity, after)}</td>
                    <td class="number">{changeWords(quantity, difference)}</td>
                    <SizeCell difference={difference} />
                  </tr>
                ))}
              </tbody>
            </ScrolledTable>
          </>
        )}
        <Judgement {...comparison} />
        <Goals {...comparison} />
        {held && <Held {...held} />}
        <Plans {...comparison} />
        {predicted.length > 0 && (
          <>
            <h2>Predictions that differ</h2>
            <Numbers name="Predictions that differ" changes={predicted} />
          </>
        )}
        {loads !== undefined && <p>{loads}</p>}
        <footer>
          <p>{sizesExplained}</p>
          <p>
            Numbers that both records compute from the same facts, such as the loft of the club, may differ
            more surely than is said here.
          </p>
          <p>Findings about health are never shown or counted on this page.</p>
        </footer>
      </>
    ),
  });
}
