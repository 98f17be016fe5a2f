// The check that says which planned change goes the other way than the fault book asks for against the fault that it is for.
import { quote } from '../measure/quote.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { changeWords } from '../registry/registry.ts';
import type { FaultChange, PlannedChange } from '../record/document.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

const book = `faults: 1
book:
  trail-side:
    title: Weight stays on the trail side
    changes: [{ change: checkpoints.address.stance_width, by: 5 cm narrower }]`;
const record = (to: string): string => `swing: 1
faults_from: house.faults.yaml
checkpoints: { address: { stance_width: 46 cm } }
faults: [{ fault: trail-side }]
plan: [{ change: checkpoints.address.stance_width, to: ${to}, because: trail-side }]`;

export const changeAgainstBook: Check = {
  code: 'change-against-book',
  severity: 'warning',
  title: 'A change the other way than the fault book asks for',
  explanation: explain({
    found:
      'The plan changes a quantity because of a fault, and moves it the other way than the fault book says helps against that fault.',
    matters:
      'One of the two is meant otherwise. What the book believes of the fault speaks only of a change its own way, so that nothing of it is foreseen.',
    raises: { 'lesson.swing.yaml': record('52 cm'), 'house.faults.yaml': book },
    accepts: { 'lesson.swing.yaml': record('41 cm'), 'house.faults.yaml': book },
    source: 'the changes of the fault book, which is written as for a right-handed player.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    if (subject.document.kind !== 'swing') return [];
    return subject.document.plan.flatMap((planned) => findingsOf(planned, subject));
  },
};

function findingsOf(planned: PlannedChange, subject: Subject): readonly RawFinding[] {
  const { quantity, to, because } = planned;
  const now = quantity && subject.derivation?.values.get(quantity.id)?.value;
  if (quantity === undefined || to === undefined || now === undefined) return [];
  const way = wayOf(now, to.target);
  return because.flatMap(({ value: reason }): RawFinding[] => {
    const book = subject.faultBooks.find(({ document }) => document.faults.has(reason));
    const changes = book?.document.faults.get(reason)?.changes ?? [];
    const own = changes.filter((change) => change.quantity?.id === quantity.id);
    const ways = own.map((change) => askedWay(change, now, subject));
    // A book that asks for either way is content with both.
    if (way === 0 || !ways.includes(way === 1 ? -1 : 1) || ways.includes(way)) return [];
    const change = own[ways.findIndex((one) => one !== undefined && one !== 0)]!;
    const isTurned = quantity.lateral && subject.student?.document.hand?.value === 'left';
    const turned = isTurned ? ', mirrored for a left-handed player' : '';
    const asked = change.byWords ?? change.toWords ?? '';
    const { word } = changeWords(quantity).find(({ sign }) => sign === way)!;
    return [
      {
        span: to.span,
        message: `${quantity.title} goes ${word} from ${subject.show(quantity, now)}; against ${quote(reason)} the fault book asks for ${quote(asked)}${turned}.`,
        related: [{ uri: book!.uri, span: change.change.span, message: 'What the fault book asks for' }],
      },
    ];
  });
}

/** 0 where a target of the plan asks for no more than is there. */
function wayOf(now: number, target: NonNullable<PlannedChange['to']>['target']): -1 | 0 | 1 {
  const [from, to] = target.kind === 'window' ? [target.from, target.to] : [target.value, target.value];
  return now < from ? 1 : now > to ? -1 : 0;
}

/** Undefined where it is not known, which of left and right it is not while the hand is not. */
function askedWay(change: FaultChange, now: number, subject: Subject): -1 | 0 | 1 | undefined {
  const { quantity, by, to } = change;
  const hand = subject.student?.document.hand?.value;
  if (quantity === undefined || (quantity.lateral && hand === undefined)) return undefined;
  const player = { hand, registry: subject.registry };
  if (by !== undefined) return signOf(mirroredNumber(quantity.id, by.difference, player));
  if (to === undefined) return undefined;
  const { target } = to;
  const ends = target.kind === 'window' ? [target.from, target.to] : [target.value, target.value];
  const [from = 0, until = 0] = ends
    .map((end) => mirroredNumber(quantity.id, end, player))
    .sort((a, b) => a - b);
  return signOf(Math.max(0, from - now) + Math.min(0, until - now));
}

function signOf(value: number): -1 | 0 | 1 {
  return value > 0 ? 1 : value < 0 ? -1 : 0;
}
