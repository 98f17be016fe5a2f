// The check that says which code in a comment or in the workspace's severities is no code of a check.
import { findNearest } from '../measure/nearest.ts';
import type { Located } from '../record/document.ts';
import { mostFindings, type Check, type RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { sentenceOf } from './from-problems.ts';
import { ownCode } from './own-checks.ts';
import type { Subject } from './subject.ts';

export const unknownCode: Check = {
  code: 'unknown-code',
  severity: 'warning',
  title: 'Unknown code',
  explanation: explain({
    found: 'A comment or the severities of the workspace name a code that no check has.',
    matters: 'Nothing is silenced or changed by it.',
    raises: `delivery:
  attack: 20 deg down # accept[outside-practise]: a steep chop`,
    accepts: `delivery:
  attack: 20 deg down # accept[outside-practice]: a steep chop`,
    source: 'the table of checks.',
  }),
  kinds: 'all',
  find: (subject, { codes }) =>
    namedCodes(subject)
      .filter((named) => !codes.includes(named.value))
      .slice(0, mostFindings + 1)
      .map((named) => findingOf(named, codes, subject)),
};

function namedCodes({ document }: Subject): readonly Located<string>[] {
  const inComments = document.silences.map(({ code }) => code);
  if (document.kind !== 'workspace') return inComments;
  const inSeverities = [...document.severities].map(([value, { keySpan }]) => ({ value, span: keySpan }));
  return [...inSeverities, ...inComments];
}

/** Those of the workspace's own checks, even where one cannot be read. */
function declaredCodes({ document, workspace }: Subject): readonly string[] {
  const { outline } = document.kind === 'workspace' ? document : (workspace?.document ?? { outline: [] });
  const own = outline.find(({ name }) => name === 'checks')?.children ?? [];
  return own.map(({ name }) => ownCode(name));
}

function findingOf(named: Located<string>, codes: readonly string[], subject: Subject): RawFinding {
  const isBroken = declaredCodes(subject).includes(named.value);
  const nearest = isBroken ? undefined : findNearest(named.value, codes);
  const problem = { span: named.span, ...(nearest === undefined ? {} : { nearest }) };
  const expected = isBroken ? 'its declaration in `swingwright.yaml` to be whole' : 'the code of a check';
  const message = sentenceOf({ ...problem, found: `\`${named.value}\``, expected });
  return { span: named.span, message, fixes: writeNearest(problem, subject) };
}
