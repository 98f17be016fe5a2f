// The check that says which remarks of a review have the same id.
import { quote } from '../measure/quote.ts';
import type { Located } from '../record/document.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { replace } from './fixes.ts';

export const remarkStatedTwice: Check = {
  code: 'remark-stated-twice',
  severity: 'warning',
  title: 'Two remarks of one id',
  explanation: explain({
    found: 'Two remarks of a review have the same id.',
    matters: 'Nobody can tell which one is replied to, and a merge would take the two for one.',
    raises: {
      'lesson.review.yaml': 'review: 1\nthreads:\n  - { id: r1, text: Open. }\n  - { id: r1, text: Closed. }',
    },
    accepts: {
      'lesson.review.yaml': 'review: 1\nthreads:\n  - { id: r1, text: Open. }\n  - { id: r2, text: Closed. }',
    },
    source: 'the file format of this project.',
  }),
  kinds: ['review'],
  find: (subject) => {
    if (subject.document.kind !== 'review') return [];
    const ids = subject.document.remarks.flatMap(({ id }) => id ?? []);
    const taken = new Set(ids.map(({ value }) => value));
    const firsts = new Map<string, Located<string>>();
    return ids.flatMap((id) => {
      const first = firsts.get(id.value);
      if (first === undefined) {
        firsts.set(id.value, id);
        return [];
      }
      let n = 2;
      while (taken.has(`${id.value}-${n}`)) n += 1;
      const free = `${id.value}-${n}`;
      taken.add(free);
      return [
        {
          span: id.span,
          message: `Found the id ${quote(id.value)} again; expected one that no other remark has.`,
          related: [{ uri: subject.uri, span: first.span, message: 'Where it stands first' }],
          fixes: /^[\w-]+$/.test(id.value) ? [replace(subject, id.span, free, `Write ${quote(free)}`)] : [],
        },
      ];
    });
  },
};
