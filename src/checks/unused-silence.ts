// The check that says which silencing comments silence nothing; it comes last, since it looks at what the others found.
import type { Silence } from '../record/document.ts';
import type { Check, Fix, RawFinding, Run } from './check.ts';
import { explain } from './explain.ts';
import { replace } from './fixes.ts';
import type { Subject } from './subject.ts';

const code = 'unused-silence';

export const unusedSilence: Check = {
  code,
  severity: 'warning',
  title: 'Silence that silences nothing',
  explanation: explain({
    found: 'A comment accepts a finding that is not there, or one that cannot be accepted.',
    matters:
      'It would hide a new finding of the same code on that line; what says that a text cannot be read as meant always stands.',
    raises: `delivery:
  attack: 4 deg down # accept[outside-practice]: a steep chop`,
    accepts: `delivery:
  attack: 20 deg down # accept[outside-practice]: a steep chop`,
    source: 'judgement.',
  }),
  kinds: 'all',
  find: (subject, run) => [
    ...subject.document.silences.flatMap((silence, at, all) => {
      if (!isUnused(silence, run)) return [];
      // Those of one comment stand one after the other.
      const isOneOfSeveral = [all[at - 1], all[at + 1]].some(
        (other) => other?.span.start === silence.span.start,
      );
      return [findingOf(silence, isOneOfSeveral ? 'one of several' : 'alone', subject, run)];
    }),
    ...uselessSeverities(subject, run),
  ],
};

/** A code that is not known is said by another check; a comment that accepts this very code is never looked at. */
function isUnused(silence: Silence, { silenced, codes }: Run): boolean {
  return !silenced.has(silence) && silence.code.value !== code && codes.includes(silence.code.value);
}

function findingOf(
  silence: Silence,
  place: 'one of several' | 'alone',
  subject: Subject,
  { lasting }: Run,
): RawFinding {
  const accepted = silence.code.value;
  const message = lasting.has(accepted)
    ? `\`${accepted}\` cannot be accepted, for the text cannot be read as meant.`
    : `Found nothing to accept as \`${accepted}\` on this line; expected no comment, or a finding that it silences.`;
  return place === 'one of several'
    ? { span: silence.code.span, message, fixes: [removalFromList(silence, subject)] }
    : { span: silence.span, message, fixes: [removal(silence, subject)] };
}

/** Between two codes; a longer one is left as it stands. */
const longestGap = 80;

/** Takes one code, and the comma on one side of it, out of a comment that accepts several. */
function removalFromList({ code: { span, value } }: Silence, subject: Subject): Fix {
  const { text } = subject.document;
  const after = /^\s*,[ \t]*/.exec(text.slice(span.end, span.end + longestGap))?.[0].length;
  const before =
    /,[ \t]*$/.exec(text.slice(Math.max(0, span.start - longestGap), span.start))?.[0].length ?? 0;
  const place =
    after === undefined ? { ...span, start: span.start - before } : { ...span, end: span.end + after };
  return replace(subject, place, '', `Remove \`${value}\``);
}

/** Takes the spaces before the comment along, and the whole line where it stands alone. */
function removal({ span }: Silence, subject: Subject): Fix {
  const { text } = subject.document;
  let { start, end } = span;
  while (start > 0 && (text[start - 1] === ' ' || text[start - 1] === '\t')) start -= 1;
  const isAlone = start === 0 || text[start - 1] === '\n';
  if (isAlone && text.startsWith('\r\n', end)) end += 2;
  else if (isAlone && text[end] === '\n') end += 1;
  return replace(subject, { start, end }, '', 'Remove the comment');
}

function uselessSeverities({ document }: Subject, { lasting }: Run): readonly RawFinding[] {
  if (document.kind !== 'workspace') return [];
  return [...document.severities]
    .filter(([named, { severity }]) => severity === 'off' && lasting.has(named))
    .map(([named, { keySpan }]) => ({
      span: keySpan,
      message: `\`${named}\` cannot be turned off, for the text cannot be read as meant.`,
    }));
}
