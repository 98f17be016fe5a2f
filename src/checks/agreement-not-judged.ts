// The check that says where the entries of a record could not be held against each other at all.
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { isOutside } from '../registry/registry.ts';
import type { Subject } from './subject.ts';
import { nameWithin } from './agreement.ts';

export const agreementNotJudged: Check = {
  code: 'agreement-not-judged',
  severity: 'hint',
  title: 'Entries could not be held against each other',
  explanation: explain({
    found:
      'The model gives no number for a swing like this one, so that nothing was found to fit or not to fit.',
    matters: 'An entry that is far from anything possible is the usual reason; mend that first.',
    accepts: `delivery:
  attack: 4 deg down`,
    source: 'judgement: no verdict is better than one that rests on nothing.',
  }),
  kinds: ['swing'],
  find: (subject) => (subject.agreement?.status === 'unsolved' ? [finding(subject)] : []),
};

function finding(subject: Subject): RawFinding {
  const { document } = subject;
  const entries = document.kind === 'swing' ? [...document.entries.values()] : [];
  const impossible = entries.find(({ quantity, readings }) =>
    readings.some(({ measure }) => isOutside(measure.value, quantity.bounds)),
  );
  const why =
    impossible === undefined
      ? 'the model gives no number for these entries together'
      : `${nameWithin(impossible.quantity)} is outside what is possible`;
  const end = document.text.search(/[\r\n]|$/);
  return { span: { start: 0, end }, message: `The entries could not be held against each other: ${why}.` };
}
