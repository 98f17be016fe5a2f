// The check that holds the record's own flight against the shots that it names.
import type { ShotStatistic } from '../model/shots.ts';
import { studentQuantile } from '../model/quantiles.ts';
import type { Span } from '../measure/measure.ts';
import type { Entry } from '../record/document.ts';
import { apart, threshold } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';
import { takeTypicalShot } from './typical-shot.ts';
import { lowerFirst } from '../measure/quote.ts';

export const flightAgainstShots: Check = {
  code: 'flight-against-shots',
  severity: 'warning',
  title: 'Flight does not fit the shots',
  explanation: explain({
    found: `An entry of the flight lies more than ${threshold} combined standard deviations from the shots of the record.`,
    matters:
      'The entry should be a shot like the others, or their mean; most often it is a slip of the pen or of another club.',
    raises: `swing: 1
flight: { carry: 120 m by radar }
shots:
  - { carry: 168 m }
  - { carry: 171 m }
  - { carry: 165 m }
  - { carry: 169 m }
  - { carry: 166 m }`,
    accepts: `swing: 1
flight: { carry: 167 m by radar }
shots:
  - { carry: 168 m }
  - { carry: 171 m }
  - { carry: 165 m }
  - { carry: 169 m }
  - { carry: 166 m }`,
    source:
      'one more shot lies within t · s √(1 + 1/n) of the mean (a prediction interval; Student 1908), t for the probability of 3 standard deviations; combined by JCGM 100:2008, eq. 10; the threshold is a judgement.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const { document, shots } = subject;
    if (document.kind !== 'swing' || shots?.summary === undefined) return [];
    const { statistics } = shots.summary;
    return [...document.entries.values()].flatMap((entry) => {
      const statistic = entry.id.startsWith('flight.') ? statistics.get(entry.id) : undefined;
      return statistic === undefined ? [] : misfit(subject, entry, statistic);
    });
  },
};

/** Below three shots a spread is hardly one. */
const fewest = 3;

/** Probability that a normal variable is less than the threshold above its mean. */
const likely = 0.99865;

function misfit(subject: Subject, entry: Entry, statistic: ShotStatistic): readonly RawFinding[] {
  const { count, mean, sd } = statistic;
  const entered = subject.derivation?.values.get(entry.id);
  if (entered?.kind !== 'entered' || entered.u === null || sd === undefined || count < fewest) return [];
  // A spread from few shots is itself little known: Student's t says by how much more.
  const widened = (studentQuantile(likely, count - 1) / threshold) * sd * Math.sqrt(1 + 1 / count);
  if (!(apart(entered.value, entered.u, mean, widened) > threshold)) return [];
  const { quantity } = entry;
  const found = `${quantity.title} ${subject.show(quantity, entered.value)} does not fit the shots`;
  const fix = takeTypicalShot(subject);
  const at = shotsSpan(subject);
  return [
    {
      span: entry.valueSpan,
      message: `${found}: ${count} of them average ${subject.show(quantity, mean, sd)} (standard deviation).`,
      related:
        at === undefined
          ? []
          : [
              {
                uri: subject.uri,
                span: at,
                message: `${count} shots: ${lowerFirst(quantity.title)} ${subject.show(quantity, mean, sd)}`,
              },
            ],
      fixes: fix === undefined ? [] : [{ ...fix, preferred: false }],
    },
  ];
}

/** The reference to the file of shots, or the key of the list. */
function shotsSpan({ document }: Subject): Span | undefined {
  if (document.kind !== 'swing') return undefined;
  return document.shotsFile?.span ?? document.outline.find(({ name }) => name === 'shots')?.nameSpan;
}
