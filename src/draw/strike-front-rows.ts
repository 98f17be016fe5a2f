// What is known of a strike seen from the front, and its rows against the scale of the drawing; knows no shape.
import type { Analysis } from '../analysis/result.ts';
import { standingsOf } from '../judgement/template.ts';
import { fromSI } from '../measure/units.ts';
import type { Value } from '../model/value.ts';
import type { IntervalRow } from './interval-rows.tsx';
import { expectedOf, rowOf, sayingOf, valueOf, windowRow, type Saying } from './known.ts';

export interface Known {
  readonly ahead: Value | undefined;
  readonly depth: Value | undefined;
  readonly radius: Value | undefined;
  readonly inclination: Value | undefined;
  readonly attack: Value | undefined;
  readonly divot: CutProps;
  readonly expectedDivot: CutProps;
}

export interface CutProps {
  readonly starts: Value | undefined;
  readonly length: Value | undefined;
  readonly depth: Value | undefined;
}

export function knownOf(analysis: Analysis): Known {
  const ids = ['starts', 'length', 'depth'] as const;
  const cut = (find: (analysis: Analysis, id: string) => Value | undefined): CutProps => {
    const [starts, length, depth] = ids.map((id) => find(analysis, `ground.divot.${id}`));
    return { starts, length, depth };
  };
  const [ahead, depth, radius, inclination, attack] = [
    'delivery.low_point.ahead',
    'delivery.low_point.depth',
    'delivery.arc.radius',
    'delivery.arc.inclination',
    'delivery.attack',
  ].map((id) => valueOf(analysis, id));
  const divot = cut(valueOf);
  // What was not entered is what is expected: it is drawn once.
  const isEntered = divot.starts?.kind === 'entered';
  const none: CutProps = { starts: undefined, length: undefined, depth: undefined };
  return {
    ahead,
    depth,
    radius,
    inclination,
    attack,
    divot,
    expectedDivot: isEntered ? cut(expectedOf) : none,
  };
}

/** Against the scale of the drawing above them, cm. */
export function rowsOf(analysis: Analysis, { ahead, divot, expectedDivot }: Known): readonly IntervalRow[] {
  const { registry, template, student } = analysis.subject;
  const taught = (id: string, title: string): readonly IntervalRow[] => {
    const { derivation } = analysis;
    if (template === undefined || derivation === undefined) return [];
    return standingsOf(template.document, derivation, student?.document.hand?.value).flatMap(
      ({ id: of, edges }) =>
        of === id && edges
          ? [windowRow('taught', `${title}, taught`, id, { min: edges.from, max: edges.to }, 'cm', registry)]
          : [],
    );
  };
  const others = ahead?.kind === 'entered' ? expectedOf(analysis, ahead.id) : undefined;
  return [
    ...(ahead ? [{ ...rowOf(ahead, 'cm', registry), name: titled(ahead, 'Low point') }] : []),
    ...(others ? [{ ...rowOf(others, 'cm', registry), name: 'Low point, by the other entries' }] : []),
    ...(ahead ? taught(ahead.id, 'Low point') : []),
    ...cutRow(divot, 'Divot starts', analysis),
    ...cutRow(expectedDivot, 'Divot starts, by the other entries', analysis),
    ...(divot.starts ? taught(divot.starts.id, 'Divot starts') : []),
  ];
}

function titled({ kind }: Value, title: string): string {
  return kind === 'entered' ? title : `${title}, computed`;
}

function cutRow({ starts, length }: CutProps, title: string, { subject }: Analysis): readonly IntervalRow[] {
  if (starts === undefined) return [];
  const row = rowOf(starts, 'cm', subject.registry);
  const to = length && fromSI(starts.value + length.value, 'cm');
  const named = title.includes(',') ? title : titled(starts, title);
  return [{ ...row, name: named, mark: 'value' in row.mark ? { ...row.mark, to } : row.mark }];
}

export function expectedSayings(
  { starts, length, depth }: CutProps,
  { subject }: Analysis,
): readonly Saying[] {
  return [starts, length, depth]
    .flatMap((value) => value ?? [])
    .map((value) => sayingOf(value, subject.registry))
    .map(({ name: title, number }) => ({ name: `${title}, by the other entries`, number }));
}
