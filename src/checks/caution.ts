// The check that says which stated fault's changes and drills load a part of the body that the student's file notes as injured.
import type { StatedVerdict } from '../judgement/judgement.ts';
import { meets } from '../registry/body.ts';
import type { Caution, Injury } from '../record/document.ts';
import { cautionMessage, helpAgainst } from './caution-words.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

const book = `faults: 1
book:
  stands-up:
    title: Stands up through the strike
    drills: [Swings with the seat against a wall.]
    cautions: [lower back]`;
const record = `swing: 1
student: ansa.student.yaml
faults_from: house.faults.yaml
faults: [{ fault: stands-up }]`;

export const caution: Check = {
  code: 'caution',
  severity: 'information',
  title: 'Loads an injured part of the body',
  explanation: explain({
    found:
      "What the fault book does about a stated fault loads a part of the body that the student's file notes as injured.",
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
  find: (subject) => (subject.judgement?.stated ?? []).flatMap((one) => findingsOf(one, subject)),
};

function findingsOf(one: StatedVerdict, subject: Subject): readonly RawFinding[] {
  const { student } = subject;
  if (student === undefined) return [];
  const { injuries, hand } = student.document;
  return one.fault.cautions.flatMap((loaded) => {
    const met = injuries.filter(
      ({ place }) =>
        place !== undefined && loaded.place !== undefined && meets(loaded.place, place, hand?.value),
    );
    return met.length === 0 ? [] : [findingOf(one, loaded, met, subject)];
  });
}

function findingOf(
  one: StatedVerdict,
  loaded: Caution,
  injuries: readonly Injury[],
  { student }: Subject,
): RawFinding {
  return {
    span: one.stated.fault.span,
    message: cautionMessage(helpAgainst(one.fault), loaded, injuries, student!.document.name?.value),
    related: [
      ...injuries.map(({ part, note }) => ({
        uri: student!.uri,
        span: part.span,
        message: note === undefined ? `Noted: ${part.value}` : `Noted: ${part.value}, ${note}`,
      })),
      { uri: one.uri, span: loaded.part.span, message: 'The caution in the fault book' },
    ],
  };
}
