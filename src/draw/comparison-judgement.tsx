// The parts of a comparison's page that hold no table of numbers: words, faults, findings, goals, and what became of the plan; compares nothing.
import {
  faultStates,
  faultWords,
  goalName,
  whatGoalsGoBy,
  heldTitle,
  judgedWords,
  standingWords,
} from '../analysis/comparison-words.ts';
import { inBrackets } from '../checks/proof-words.ts';
import type { Comparison, HeldBetween } from '../analysis/comparison.ts';
import { changeWords as madeWords, predictionWords, proofWords } from '../analysis/outcome-words.ts';
import { nameWithin } from '../checks/agreement.ts';
import { Head } from './number-table.tsx';
import { ScrolledTable } from './page.tsx';
import type { Picture } from './picture.tsx';

export function Judgement({ words, findings, faults, misses }: Comparison): Picture | null {
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

export function Goals({ goals }: Comparison): Picture | null {
  if (goals.length === 0) return null;
  return (
    <>
      <h2>Goals</h2>
      <p class="soft">{whatGoalsGoBy}</p>
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

export function Held(held: HeldBetween): Picture {
  const { changes, proofs, predictions } = held.outcome;
  return (
    <>
      <h2>What became of the plan</h2>
      <p class="soft">{heldTitle(held)}</p>
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
                {inBrackets(one.asks)}
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

export function Plans({ plan }: Comparison): Picture | null {
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
