// The check that says where a fault is stated at a checkpoint at which its book does not see it.
import { quoteList } from '../measure/quote.ts';
import type { StatedVerdict } from '../judgement/judgement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { replace } from './fixes.ts';
import type { Subject } from './subject.ts';

const book = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: [lead_arm_parallel_down, impact]
    evidence: checkpoints.impact.lead_pressure < 65 %`;

export const faultCannotBeSeenHere: Check = {
  code: 'fault-cannot-be-seen-here',
  severity: 'warning',
  title: 'Fault stated where it cannot be seen',
  explanation: explain({
    found: 'A fault is stated at a checkpoint that its fault book does not list for it.',
    matters:
      'The book has no evidence for that moment, so that the fault cannot be held against the numbers.',
    raises: {
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: late-weight, at: top }]',
      'house.faults.yaml': book,
    },
    accepts: {
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: late-weight, at: impact }]',
      'house.faults.yaml': book,
    },
    source: 'the fault book.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    (subject.judgement?.stated ?? []).flatMap((one) => (one.isSeenHere ? [] : findingOf(one, subject))),
};

function findingOf({ stated, fault, uri }: StatedVerdict, subject: Subject): readonly RawFinding[] {
  if (stated.at === undefined) return [];
  const places = fault.at.map(({ value }) => value);
  const [only] = places;
  return [
    {
      span: stated.at.span,
      message: `Found \`${fault.id.value}\` at \`${stated.at.value}\`; its fault book sees it at ${quoteList(places)}.`,
      related: fault.at.map(({ span }) => ({ uri, span, message: 'Where the fault book sees it' })),
      fixes:
        only !== undefined && places.length === 1
          ? [replace(subject, stated.at.span, only, `Write \`${only}\``)]
          : [],
    },
  ];
}
