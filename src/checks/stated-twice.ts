// The check that says which fault, miss or reason a record states more than once at the same place.
import { quote } from '../measure/quote.ts';
import type { Located } from '../record/document.ts';
import type { Span } from '../measure/measure.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';

export const statedTwice: Check = {
  code: 'stated-twice',
  severity: 'warning',
  title: 'Stated twice',
  explanation: explain({
    found:
      'The same fault at the same checkpoint, the same miss, or the same reason of one change is stated more than once.',
    matters:
      'One of them is most likely meant to be another, or a left-over; it would be told twice to the student.',
    raises: 'swing: 1\nfaults:\n  - { fault: low-hands, at: impact }\n  - { fault: low-hands, at: impact }',
    accepts: 'swing: 1\nfaults:\n  - { fault: low-hands, at: address }\n  - { fault: low-hands, at: impact }',
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document, uri }) => {
    if (document.kind !== 'swing') return [];
    const faults = document.faults.map(({ fault, at }): Stated => ({
      span: fault.span,
      key: JSON.stringify([fault.value, at?.value]),
      words: `the fault ${quote(fault.value)}${at === undefined ? '' : ` at ${quote(at.value)}`}`,
    }));
    const misses = document.misses.map(({ miss }) => statedAs('the miss', miss));
    const reasons = document.plan.map(({ because }) => because.map((one) => statedAs('the reason', one)));
    return [faults, misses, ...reasons].flatMap((list) => repeated(list, uri));
  },
};

interface Stated {
  readonly span: Span;
  readonly key: string;
  readonly words: string;
}

function statedAs(what: string, { value, span }: Located<string>): Stated {
  return { span, key: value, words: `${what} ${quote(value)}` };
}

function repeated(list: readonly Stated[], uri: string): readonly RawFinding[] {
  const firsts = new Map<string, Stated>();
  return list.flatMap((one) => {
    const first = firsts.get(one.key);
    if (first === undefined) {
      firsts.set(one.key, one);
      return [];
    }
    const related = [{ uri, span: first.span, message: 'Where it is stated first' }];
    return [{ span: one.span, message: `Found ${one.words} again; expected it once.`, related }];
  });
}
