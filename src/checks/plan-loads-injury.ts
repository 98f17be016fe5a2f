// The check that says which planned change, or the drills of the fault that it is for, loads a part of the body that is noted as injured.
import { upperFirst } from '../measure/quote.ts';
import { meets } from '../registry/body.ts';
import { nameWithin } from './agreement.ts';
import { cautionMessage, helpAgainst } from './caution-words.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

const book = `faults: 1
book:
  stands-up:
    title: Stands up through the strike
    changes: [{ change: checkpoints.impact.forward_bend, by: 6 deg more }]
    cautions: [lower back]`;
const record = `swing: 1
student: ansa.student.yaml
faults_from: house.faults.yaml
faults: [{ fault: stands-up }]
plan:
  - { change: checkpoints.impact.forward_bend, to: 40 deg, because: [stands-up], proof: checkpoints.impact.forward_bend > 36 deg }`;

export const planLoadsInjury: Check = {
  code: 'plan-loads-injury',
  severity: 'information',
  title: 'A planned change loads an injured part',
  explanation: explain({
    found:
      "A change of the plan is one that the fault book gives a caution for, and the student's file notes that part as injured.",
    matters:
      'Stop if it hurts. This is no medical advice: a physician or physiotherapist says what this student may do. Where nothing is said here, nothing is cleared.',
    raises: {
      'lesson.swing.yaml': record,
      'house.faults.yaml': book,
      'ansa.student.yaml': 'student: 1\ninjuries: [{ part: back, note: stiff in the morning }]',
    },
    accepts: {
      'lesson.swing.yaml': record,
      'house.faults.yaml': book,
      'ansa.student.yaml': 'student: 1\ninjuries: [{ part: left thumb }]',
    },
    source:
      "the cautions of the fault book and the injuries in the student's file; parts meet as in schemas/QUANTITIES.md.",
  }),
  kinds: ['swing'],
  find: (subject) =>
    subject.document.kind !== 'swing'
      ? []
      : subject.document.plan.flatMap(({ change, because, span }): RawFinding[] =>
          cautionsOf({ id: change?.value ?? '', because: because.map(({ value }) => value) }, subject).map(
            (finding) => ({ ...finding, span: change?.span ?? span }),
          ),
        ),
};

interface Reasoned {
  readonly id: string;
  readonly because: readonly string[];
}

/**
 * One a loaded part: of each fault that the change is for, or that names the changed quantity among what helps. Without an id it is
 * asked of the reasons alone.
 */
export function cautionsOf(
  { id, because }: Reasoned,
  { student, judgement, registry }: Pick<Subject, 'student' | 'judgement' | 'registry'>,
): readonly Omit<RawFinding, 'span'>[] {
  if (student === undefined || judgement === undefined) return [];
  const { injuries, hand } = student.document;
  const told = new Set<string>();
  const changed = registry.find(id);
  const change = changed && `the change of ${nameWithin(changed)}`;
  return [...judgement.faults.values()].flatMap(({ uri, fault }) => {
    const isNamed = fault.changes.some(({ quantity }) => quantity?.id === id);
    if (!isNamed && !because.includes(fault.id.value)) return [];
    const help = helpAgainst(fault);
    const what =
      change === undefined ? help : isNamed ? upperFirst(change) : `${help}, which ${change} is for,`;
    return fault.cautions.flatMap((loaded) => {
      const met = injuries.filter(
        ({ place }) =>
          place !== undefined && loaded.place !== undefined && meets(loaded.place, place, hand?.value),
      );
      if (met.length === 0 || told.has(loaded.part.value)) return [];
      told.add(loaded.part.value);
      return [
        {
          message: cautionMessage(what, loaded, met, student.document.name?.value),
          related: [
            ...met.map(({ part, note }) => ({
              uri: student.uri,
              span: part.span,
              message: note === undefined ? `Noted: ${part.value}` : `Noted: ${part.value}, ${note}`,
            })),
            { uri, span: loaded.part.span, message: 'The caution in the fault book' },
          ],
        },
      ];
    });
  });
}
