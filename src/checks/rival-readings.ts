// The check that says which readings of one thing lie farther apart than their uncertainties allow.
import { doubtfulFactor } from '../model/combine.ts';
import type { Entry, Reading } from '../record/document.ts';
import { standardUncertainty } from '../registry/registry.ts';
import { apart, threshold } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { conflictFindings } from './conflict-check.ts';
import { entriesOf } from './entries.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

export const rivalReadings: Check = {
  code: 'rival-readings',
  severity: 'warning',
  title: 'Readings that disagree',
  explanation: explain({
    found: `Two readings of one thing lie more than ${threshold} combined standard uncertainties apart.`,
    matters:
      'They are combined all the same, with a wider uncertainty; mark the one you trust less `doubtful`, or measure again.',
    raises: `delivery:
  face: [1 deg right by radar, 14 deg right by radar]`,
    accepts: `delivery:
  face: [1 deg right by radar, 3 deg right by eye]`,
    source: 'JCGM 100:2008, eq. 10, for the difference of two readings; the threshold is a judgement.',
  }),
  kinds: ['swing', 'student'],
  find: (subject) => [
    ...conflictFindings(subject, 'rival-readings'),
    ...entriesOf(subject.document)
      .filter((entry) => entry.readings.length > 1 && !isJudged(entry, subject))
      .flatMap((entry) => worstPair(entry, subject)),
  ],
};

/** Of a student's file and of single shots no agreement is sought: there readings are only held against each other. */
function isJudged(entry: Entry, { document, agreement }: Subject): boolean {
  return (
    document.kind === 'swing' && document.entries.get(entry.id) === entry && agreement?.status === 'solved'
  );
}

interface Weighed {
  readonly reading: Reading;
  readonly u: number;
}

/** One finding for the pair that lies farthest apart, on the later of the two. */
function worstPair(entry: Entry, subject: Subject): readonly RawFinding[] {
  const weighed = entry.readings.map((reading) => ({ reading, u: uncertaintyOf(reading, entry, subject) }));
  let worst: { readonly first: Weighed; readonly second: Weighed; readonly distance: number } | undefined;
  for (const [index, second] of weighed.entries()) {
    for (const first of weighed.slice(0, index)) {
      const distance = apart(first.reading.measure.value, first.u, second.reading.measure.value, second.u);
      if (distance > (worst?.distance ?? threshold)) worst = { first, second, distance };
    }
  }
  if (worst === undefined) return [];
  const { first, second, distance } = worst;
  const shown = ({ reading, u }: Weighed) => subject.show(entry.quantity, reading.measure.value, u);
  const found = `${entry.quantity.title} ${shown(first)} and ${shown(second)} lie ${distance.toFixed(1)} times the combined uncertainty apart`;
  return [
    {
      span: second.reading.span,
      message: `${found}; expected at most ${threshold} times.`,
      related: [
        { uri: subject.uri, span: first.reading.span, message: `${entry.quantity.title} ${shown(first)}` },
      ],
    },
  ];
}

function uncertaintyOf(reading: Reading, entry: Entry, subject: Subject): number {
  const workspace = subject.workspace?.document;
  const { u } = standardUncertainty(
    entry.quantity,
    reading.measure,
    workspace?.coverage ?? 1,
    subject.registry,
  );
  return reading.doubtful ? u * doubtfulFactor : u;
}
