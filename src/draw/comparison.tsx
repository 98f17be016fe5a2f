// A comparison as a page that stands alone: what differs, by how much, what was found, what became of the plan, pictures; compares nothing.
import {
  aspectWords,
  changeWords,
  faultStates,
  faultWords,
  figureWords,
  goalName,
  judgedWords,
  nameOf,
  shotsWords,
  sizesExplained,
  sizeInShort,
  sizeWords,
  standingWords,
  summaryOf,
} from '../analysis/comparison-words.ts';
import type { Comparison, HeldBetween, QuantityChange } from '../analysis/comparison.ts';
import type { RecordAnalysis } from '../analysis/compare.ts';
import { changeWords as madeWords, predictionWords, proofWords } from '../analysis/outcome-words.ts';
import { nameWithin } from '../checks/agreement.ts';
import type { Section } from '../registry/quantity.ts';
import { OverlaidAbove } from './overlaid-above.tsx';
import { OverlaidFlight } from './overlaid-flight.tsx';
import { OverlaidFront } from './overlaid-front.tsx';
import { pageOf, ScrolledTable } from './page.tsx';
import type { Picture } from './picture.tsx';
import { Sides, sideTitle, type ComparedSide } from './sides.tsx';
import { SizeMark } from './size-mark.tsx';
import { cssTheme as theme } from './theme.ts';

export interface ComparedRecord extends ComparedSide {
  readonly analysis: RecordAnalysis;
}

/** The whole page as HTML text. */
export function comparisonPage(
  first: ComparedRecord,
  second: ComparedRecord,
  comparison: Comparison,
): string {
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
            <div class="pictures">
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
            <summary>{`${small.length} computed ${small.length === 1 ? 'number' : 'numbers'} that moved no more than measuring twice explains, or in one record only`}</summary>
            <Numbers name="Other computed numbers" changes={small} />
          </details>
        )}
        {shots.length > 0 && (
          <>
            <h2>Shots</h2>
            <ScrolledTable name="Shots">
              <Head titles={['Mean of the shots', 'A', 'B', 'Difference', '', 'In uncertainties']} />
              <tbody>
                {shots.map(({ quantity, before, after, difference }) => (
                  <tr key={quantity.id} class={difference.size}>
                    <th scope="row">{nameWithin(quantity)}</th>
                    <td>{shotsWords(quantity, before)}</td>
                    <td>{shotsWords(quantity, after)}</td>
                    <td class="number">{changeWords(quantity, difference)}</td>
                    <td>
                      <SizeMark difference={difference} theme={theme} />
                    </td>
                    <td class="number size">{sizeInShort(difference)}</td>
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
        <footer>
          <p>{sizesExplained}</p>
          <p>
            Numbers that both records compute from the same facts, such as the loft of the club, may differ
            more surely than is said here.
          </p>
        </footer>
      </>
    ),
  });
}

function Head({ titles }: { readonly titles: readonly string[] }): Picture {
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

function Numbers({
  name,
  changes,
}: {
  readonly name: string;
  readonly changes: readonly QuantityChange[];
}): Picture {
  const hasMore = changes.some((change) => change.state !== 'changed' || aspectWords(change) !== '');
  return (
    <ScrolledTable name={name}>
      <Head
        titles={[
          'Quantity',
          'A',
          'B',
          'Difference',
          'Against measuring twice',
          '',
          ...(hasMore ? ['Also'] : []),
        ]}
      />
      {(Object.keys(sections) as Section[]).map((section) => {
        const own = changes.filter(({ quantity }) => quantity.section === section);
        if (own.length === 0) return null;
        return (
          <tbody key={section}>
            <tr>
              <th scope="rowgroup" colSpan={hasMore ? 7 : 6}>
                {sections[section]}
              </th>
            </tr>
            {own.map((change) => (
              <NumberRow key={change.quantity.id} change={change} hasMore={hasMore} />
            ))}
          </tbody>
        );
      })}
    </ScrolledTable>
  );
}

function NumberRow({
  change,
  hasMore,
}: {
  readonly change: QuantityChange;
  readonly hasMore: boolean;
}): Picture {
  const { quantity, state, before, after, difference } = change;
  const also = aspectWords(change);
  return (
    <tr class={difference.size} data-id={quantity.id}>
      <th scope="row">{nameOf(change)}</th>
      <td class="number">{figureWords(quantity, before)}</td>
      <td class="number">{figureWords(quantity, after)}</td>
      <td class="number">{changeWords(quantity, difference)}</td>
      <td>
        <SizeMark difference={difference} theme={theme} />
      </td>
      <td class="size number">
        {difference.size === 'not known' ? (
          ''
        ) : (
          <span title={sizeWords[difference.size]}>{sizeInShort(difference)}</span>
        )}
      </td>
      {hasMore && (
        <td>
          {state !== 'changed' && (
            <span class={`tag ${state}`}>{state === 'new' ? 'new entry' : 'entry gone'}</span>
          )}
          {also !== '' && <span class="soft">{also}</span>}
        </td>
      )}
    </tr>
  );
}

function Judgement({ words, findings, faults, misses }: Comparison): Picture | null {
  if (words.length + findings.length + faults.length + misses.length === 0) return null;
  return (
    <>
      <h2>Said and found</h2>
      {words.length > 0 && (
        <ul>
          {words.map(({ of, before, after }) => (
            <li key={of}>
              {of}: <code>{before ?? '–'}</code> → <code>{after ?? '–'}</code>
            </li>
          ))}
        </ul>
      )}
      {faults.length + misses.length > 0 && (
        <ScrolledTable name="Faults and misses">
          <Head
            titles={['Fault or miss', 'Stated', 'What the numbers of A say', 'What the numbers of B say']}
          />
          <tbody>
            {faults.map((fault) => (
              <tr key={`${fault.fault} ${fault.at ?? ''}`}>
                <th scope="row">{faultWords(fault)}</th>
                <td>
                  <span class={`tag ${fault.state}`}>{faultStates[fault.state]}</span>
                </td>
                <td>{judgedWords(fault.before)}</td>
                <td>{judgedWords(fault.after)}</td>
              </tr>
            ))}
            {misses.map(({ miss, state }) => (
              <tr key={miss}>
                <th scope="row">{miss}</th>
                <td>
                  <span class={`tag ${state}`}>{faultStates[state]}</span>
                </td>
                <td>–</td>
                <td>–</td>
              </tr>
            ))}
          </tbody>
        </ScrolledTable>
      )}
      {findings.length > 0 && (
        <ScrolledTable name="Findings">
          <Head titles={['Finding', '', 'What it says', 'Line']} />
          <tbody>
            {findings.map(({ state, finding }, i) => (
              <tr key={i}>
                <th scope="row">
                  <code>{finding.code}</code>
                </th>
                <td>
                  <span class={`tag ${state}`}>{`${state}, ${finding.severity}`}</span>
                </td>
                <td>{finding.message}</td>
                <td class="number">{`${state === 'gone' ? 'A' : 'B'} ${finding.range.start.line + 1}`}</td>
              </tr>
            ))}
          </tbody>
        </ScrolledTable>
      )}
    </>
  );
}

function Goals({ goals }: Comparison): Picture | null {
  if (goals.length === 0) return null;
  return (
    <>
      <h2>Goals</h2>
      <ScrolledTable name="Goals">
        <Head
          titles={['Goal', '', 'A, with the chance of being inside', 'B, with the chance of being inside']}
        />
        <tbody>
          {goals.map((goal, i) => (
            <tr key={i} data-id={goal.quantity.id}>
              <th scope="row">{goalName(goal)}</th>
              <td>{goal.state !== 'same' && <span class={`tag ${goal.state}`}>{goal.state}</span>}</td>
              <td>{standingWords(goal.before)}</td>
              <td>{standingWords(goal.after)}</td>
            </tr>
          ))}
        </tbody>
      </ScrolledTable>
    </>
  );
}

function Held({ plan, outcome: { changes, proofs, predictions } }: HeldBetween): Picture {
  const [from, to] = plan === 'first' ? ['A', 'B'] : ['B', 'A'];
  return (
    <>
      <h2>What became of the plan</h2>
      <p class="soft">{`The plan of ${from}, held against what ${to} measured.`}</p>
      <ScrolledTable name="What became of the plan">
        <Head titles={['Of the plan', 'Quantity', 'What came']} />
        <tbody>
          {changes.map((one, i) => (
            <tr key={`c${i}`}>
              <th scope="row">Change</th>
              <td>{nameWithin(one.quantity)}</td>
              <td>{madeWords(one)}</td>
            </tr>
          ))}
          {proofs.map((one, i) => (
            <tr key={`p${i}`}>
              <th scope="row">Proof</th>
              <td>
                <code>{one.proof.value}</code>
              </td>
              <td>{proofWords(one)}</td>
            </tr>
          ))}
          {predictions.map((one, i) => (
            <tr key={`q${i}`}>
              <th scope="row">{one.origin === 'not said' ? 'Prediction' : `Prediction by ${one.origin}`}</th>
              <td>{nameWithin(one.entry.quantity)}</td>
              <td>{predictionWords(one)}</td>
            </tr>
          ))}
        </tbody>
      </ScrolledTable>
    </>
  );
}

function Plans({ plan }: Comparison): Picture | null {
  if (plan.length === 0) return null;
  return (
    <>
      <h2>Plans</h2>
      <ScrolledTable name="Plans">
        <Head titles={['Change', '', 'A', 'B']} />
        <tbody>
          {plan.map(({ change, state, before, after }) => (
            <tr key={change}>
              <th scope="row">
                <code>{change}</code>
              </th>
              <td>
                <span class={`tag ${state}`}>{state}</span>
              </td>
              <td>{before ?? '–'}</td>
              <td>{after ?? '–'}</td>
            </tr>
          ))}
        </tbody>
      </ScrolledTable>
    </>
  );
}
