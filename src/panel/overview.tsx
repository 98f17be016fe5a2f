// What a record says of itself at the top of its sheet: state, findings, goals and plan, each leading to its place; computes nothing.
import type { JSX } from 'preact';
import type { Placed, Sheet } from '../language/sheet.ts';
import type { TextRange } from '../language/shapes.ts';
import type { OverviewPart } from './sheet-messages.ts';

export function Overview({
  sheet: { title, state, findings, goals, plan },
  go,
  open,
  turn,
}: {
  readonly sheet: Sheet;
  readonly go: (range: TextRange) => void;
  readonly open: readonly OverviewPart[];
  readonly turn: (part: OverviewPart, isOpen: boolean) => void;
}): JSX.Element {
  const part = (name: OverviewPart): JSX.IntrinsicElements['details'] => ({
    open: open.includes(name),
    onToggle: ({ currentTarget }) => turn(name, currentTarget.open),
  });
  return (
    <header>
      <h1>{title}</h1>
      <p>{state.join(' · ')}</p>
      {findings.length > 0 && (
        <details {...part('findings')}>
          <summary>Findings ({findings.length})</summary>
          <ul class="rows">
            {findings.map((finding, i) => (
              <Row key={i} {...finding} lead={finding.severity} go={go} />
            ))}
          </ul>
        </details>
      )}
      {goals.length + plan.length > 0 && (
        <details {...part('plan')}>
          <summary>
            Goals ({goals.length}) and plan ({plan.length})
          </summary>
          <ul class="rows">
            {goals.map((goal, i) => (
              <Row key={i} {...goal} lead="goal" go={go} />
            ))}
            {plan.map((change, i) => (
              <Row key={i} {...change} lead="plan" go={go} />
            ))}
          </ul>
        </details>
      )}
    </header>
  );
}

function Row({
  words,
  range,
  lead,
  go,
}: Placed & { readonly lead: string; readonly go: (range: TextRange) => void }): JSX.Element {
  const said = (
    <>
      <span class="lead">{lead}</span> <span>{words}</span>
    </>
  );
  return (
    <li>
      {range === null ? (
        <p class="row">{said}</p>
      ) : (
        <button type="button" class="row" onClick={() => go(range)}>
          {said}
        </button>
      )}
    </li>
  );
}
