// The check that says which fault of the book the numbers show though the record does not state it.
import { remarkableFrom, type FaultVerdict } from '../judgement/verdict.ts';
import type { Span } from '../measure/measure.ts';
import { relatedEntries } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { stateFault } from './state-fault.ts';
import type { Subject } from './subject.ts';
import { numbersOf, percent, placeWords } from './verdict-words.ts';

const book = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: impact
    evidence: checkpoints.impact.lead_pressure < 65 %`;

export const faultNotStated: Check = {
  code: 'fault-not-stated',
  severity: 'hint',
  title: 'The numbers show a fault that is not stated',
  explanation: explain({
    found: `The evidence of a fault of the book holds with a probability of at least ${percent(remarkableFrom)}, and the record does not state the fault.`,
    matters: 'It may be worth a look, or not worth a word to this student: that is for the coach to say.',
    raises: {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints:
  impact:
    lead_pressure: 50 % by pressure mat`,
      'house.faults.yaml': book,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints:
  impact:
    lead_pressure: 50 % by pressure mat
faults:
  - { fault: late-weight, at: impact }`,
      'house.faults.yaml': book,
    },
    source: 'propagation of uncertainty, JCGM 100:2008 and JCGM 101:2008; the threshold is a judgement.',
  }),
  kinds: ['swing'],
  find: (subject) => (subject.judgement?.unstated ?? []).map((one) => findingOf(one, subject)),
};

function findingOf(one: FaultVerdict, subject: Subject): RawFinding {
  const shown = one.lines
    .filter(({ probability }) => probability !== undefined)
    .sort((a, b) => b.probability! - a.probability!);
  const ids = shown.flatMap(({ values }) => values.map(({ quantity }) => quantity.id));
  const title = one.fault.title === undefined ? '' : ` (${one.fault.title})`;
  const fix = stateFault(subject, one.fault.id.value, one.at);
  return {
    span: placeOf(ids, subject),
    message: `The numbers show \`${one.fault.id.value}\`${title}${placeWords(one.at)} with a probability of ${percent(one.probability!)}, and it is not stated: ${shown.map(numbersOf).join('; ')}.`,
    related: relatedEntries(subject, [...new Set(ids)]),
    fixes: fix === undefined ? [] : [fix],
  };
}

/** The entry that shows it best; the key of the faults where only computed numbers do. */
function placeOf(ids: readonly string[], { document }: Subject): Span {
  const entry = ids.flatMap((id) => (document.kind === 'swing' ? (document.entries.get(id) ?? []) : []))[0];
  const key = document.outline.find(({ name }) => name === 'faults' || name === 'faults_from');
  return entry?.valueSpan ?? key?.nameSpan ?? { start: 0, end: 0 };
}
