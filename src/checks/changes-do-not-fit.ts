// The check that says which changes of a plan cannot all be made, since one follows exactly from the others.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { differenceToSI } from '../measure/units.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { exact, type Context, type Rule } from '../model/rule.ts';
import { rules } from '../model/rules.ts';
import type { PlannedChange } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { textAt } from './fixes.ts';
import { handOf } from './handed.ts';
import type { Subject } from './subject.ts';

const record = (faceToPath: string): string => `swing: 1
misses: [hook]
plan:
  - { change: delivery.face, to: 1 deg right, because: hook }
  - { change: delivery.path, to: 3 deg right, because: hook }
  - { change: delivery.face_to_path, to: ${faceToPath}, because: hook }`;

export const changesDoNotFit: Check = {
  code: 'changes-do-not-fit',
  severity: 'warning',
  title: 'Changes that cannot all be made',
  explanation: explain({
    found:
      'The plan sets quantities of which one follows exactly from the others, such as face, path and face-to-path, to values that no swing has at once.',
    matters: 'Whoever makes two of these changes has not made the third. One of them can be left out.',
    raises: record('5 deg left'),
    accepts: record('2 deg left'),
    source: 'the definitions of the quantities; half of the last digit of each number as it is written.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    if (subject.document.kind !== 'swing') return [];
    const planned = new Map<string, Aim>();
    for (const { change, quantity, to } of subject.document.plan)
      if (change !== undefined && quantity !== undefined && to !== undefined)
        planned.set(quantity.id, { change, quantity, to });
    return planned.size < 3 ? [] : definitions.flatMap((rule) => findingOf(rule, planned, subject));
  },
};

interface Aim {
  readonly change: NonNullable<PlannedChange['change']>;
  readonly quantity: Quantity;
  readonly to: NonNullable<PlannedChange['to']>;
}

/** Each set of quantities once: what only reads one of them backward says nothing new. */
const definitions: readonly Rule[] = rules.filter(
  (rule) => rule.discrepancy === exact && rule.direction !== 'inverse' && rule.outputs.length === 1,
);

function findingOf(rule: Rule, planned: ReadonlyMap<string, Aim>, subject: Subject): readonly RawFinding[] {
  const aims = [...rule.outputs, ...rule.inputs].map((id) => planned.get(id));
  if (!aims.every((aim) => aim !== undefined)) return [];
  const player = { hand: handOf(subject), registry: subject.registry };
  const context: Context = { clubKind: subject.club?.kind?.value, windBearing: undefined };
  if (rule.appliesTo?.(context) === false) return [];
  const ends = aims.map((aim) =>
    endsOf(aim, subject).map((end) => mirroredNumber(aim.quantity.id, end, player)),
  );
  const off = cornersOf(ends).map(
    ([output, ...inputs]) => (rule.compute(inputs, context)?.[0] ?? NaN) - output!,
  );
  const isPossible = Math.min(...off) <= 0 && Math.max(...off) >= 0;
  // Where the definition has no answer nothing is said.
  if (isPossible || off.some(Number.isNaN)) return [];
  const inOrder = aims.toSorted((a, b) => a.change.span.start - b.change.span.start);
  const last = inOrder.at(-1)!;
  const others = inOrder.slice(0, -1);
  const told = (aim: Aim): string => `${quote(aim.change.value)} ${quote(textAt(subject, aim.to.span))}`;
  return [
    {
      span: last.to.span,
      message: `Found ${others.map(told).join(', ')} and ${told(last)} in one plan, which no swing has at once, since ${rule.formula}; expected values that fit, or one of the changes left out.`,
      related: others.map(({ to: { span } }) => ({
        uri: subject.uri,
        span,
        message: 'Another change of this plan',
      })),
    },
  ];
}

/** The least and the most that the change can mean, in SI: a number that is written stands for all that is rounded to it. */
function endsOf({ quantity, to: { target } }: Aim, subject: Subject): readonly [number, number] {
  const half = (written: Span): number => {
    const decimals = /\.(\d+)/.exec(textAt(subject, written))?.[1]?.length ?? 0;
    return differenceToSI(10 ** -decimals, target.unit ?? quantity.unit) / 2;
  };
  return target.kind === 'window'
    ? [target.from - half(target.spans.from), target.to + half(target.spans.to)]
    : [target.value - half(target.spans.number), target.value + half(target.spans.number)];
}

function cornersOf(ends: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return ends.reduce<readonly (readonly number[])[]>(
    (corners, own) => corners.flatMap((corner) => own.map((end) => [...corner, end])),
    [[]],
  );
}
