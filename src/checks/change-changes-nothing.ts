// The check that says which planned change ends where the quantity stands already, as far as anybody can tell.
import { quote } from '../measure/quote.ts';
import type { PlannedChange } from '../record/document.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { textAt } from './fixes.ts';
import type { Subject } from './subject.ts';

const record = (to: string): string => `swing: 1
misses: [heavy]
checkpoints: { address: { stance_width: 47 cm by tape } }
plan: [{ change: checkpoints.address.stance_width, to: ${to}, because: heavy }]`;

export const changeChangesNothing: Check = {
  code: 'change-changes-nothing',
  severity: 'information',
  title: 'A change that changes nothing',
  explanation: explain({
    found:
      'The plan takes a quantity to where this record has it already: within one standard uncertainty of it, or to a window in which it lies.',
    matters:
      'The student would work on what is there, and the next lesson could not tell whether anything was changed.',
    raises: record('47 cm'),
    accepts: record('41 cm'),
    source:
      'what was entered in this record, and what follows from that alone; one standard uncertainty by judgement.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    subject.document.kind === 'swing' ? subject.document.plan.flatMap((one) => findingOf(one, subject)) : [],
};

function findingOf({ change, quantity, to }: PlannedChange, subject: Subject): readonly RawFinding[] {
  const now = quantity && subject.derivation?.values.get(quantity.id);
  // What the model expects of anybody is not where this student stands.
  if (change === undefined || to === undefined || now === undefined || now.kind === 'expected') return [];
  const { target, span } = to;
  const reach = Math.max(now.u ?? 0, closeness);
  const [from, end] =
    target.kind === 'window' ? [target.from, target.to] : [target.value - reach, target.value + reach];
  if (!(now.value >= from && now.value <= end)) return [];
  const stands = subject.show(quantity!, now.value, now.u);
  const written = quote(textAt(subject, span));
  return [
    {
      span,
      message: `Found a change of ${quote(change.value)} to ${written}, where it stands already at ${stands}; expected a value that can be told from that.`,
    },
  ];
}

/** In SI: as equal as two numbers get that were written in different units. */
const closeness = 1e-9;
