// The check that says where the model surely goes the other way than what a stated fault is believed to do.
import type { Claim } from '../judgement/claims.ts';
import { sureFrom } from '../judgement/claims.ts';
import type { Check, RawFinding } from './check.ts';
import { beliefOf, effectOf, showDifference } from './claim-words.ts';
import { explain } from './explain.ts';
import { percent } from './verdict-words.ts';

const lesson = `swing: 1
student: mira.student.yaml
club: eight iron
faults_from: house.faults.yaml
checkpoints:
  impact: { shaft_lean: 9 deg forward ± 2 deg, lead_shoulder: 9 cm ahead ± 2 cm }
delivery: { club_speed: 33 m/s ± 1 m/s, attack: 4 deg down ± 1 deg }
faults: [{ fault: handle-ahead, at: impact }]`;

const student = `student: 1
hand: right
stature: 171 cm
bag:
  eight iron: { kind: iron, loft: 36 deg, length: 36.5 in }`;

const book = (direction: string): string => `faults: 1
book:
  handle-ahead:
    title: Handle far ahead
    at: impact
    evidence: checkpoints.impact.shaft_lean > 6 deg
    tends_to: [{ effect: delivery.delivered_loft, direction: ${direction} }]`;

export const beliefAgainstPhysics: Check = {
  code: 'belief-against-physics',
  severity: 'information',
  title: 'Physics goes the other way than a belief',
  explanation: explain({
    found: `The fault book says that a stated fault moves a quantity one way, and the model of this swing says the other way, with a probability of at least ${percent(sureFrom)}.`,
    matters:
      'The quantity of the evidence is changed in the model as the fault changes it, and all that is no consequence stays. Belief and physics are different things: the belief may hold for another reason than the one that the model knows, or have its direction wrong.',
    raises: {
      'lesson.swing.yaml': lesson,
      'mira.student.yaml': student,
      'house.faults.yaml': book('more'),
    },
    accepts: {
      'lesson.swing.yaml': lesson,
      'mira.student.yaml': student,
      'house.faults.yaml': book('less'),
    },
    source:
      'the model of this project, each of whose steps names its source; the threshold of nineteen to one is a judgement.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    (subject.judgement?.claims ?? [])
      .filter(({ physics }) => physics.answer === 'opposite')
      .map((claim) => findingOf(claim)),
};

function findingOf(claim: Claim): RawFinding {
  const { stated, quantity, physics, effect, uri, u } = claim;
  const belief = beliefOf(claim, u ?? null);
  const says = showDifference(quantity, physics.amount!, physics.u);
  const sure = percent(1 - physics.probability!);
  return {
    span: stated.stated.fault.span,
    message: `\`${stated.fault.id.value}\` is believed to change ${effectOf(claim)}: ${belief}; physics says ${says} (probability ${sure}).`,
    related: [
      { uri, span: effect.direction?.span ?? effect.effect.span, message: 'The belief in the fault book' },
    ],
  };
}
