// The small mends of text that is no YAML: a tab, a quote, a bracket, a space that is missing; each is tried before it is offered.
import type { Problem, Span } from '../measure/measure.ts';
import { lineEnd } from '../record/lines.ts';
import { parseDocument } from '../record/parse.ts';
import { builtIn } from '../registry/registry.ts';
import type { Fix } from './check.ts';
import { replace } from './fixes.ts';
import type { Subject } from './subject.ts';

/** Trying costs a reading of the text; who has more of these mends the first ones first. */
const mostTried = 20;
const longestTried = 50_000;

/** The one mend after which the text is read without this problem, and without one that it had not before. */
export function mendSyntax({ span }: Problem, subject: Subject): readonly Fix[] {
  const { text, kind, problems } = subject.document;
  if (text.length > longestTried) return [];
  const syntax = problems.filter(({ code }) => code === 'yaml-syntax');
  if (syntax.findIndex((other) => other.span.start === span.start) >= mostTried) return [];
  const mend = mendOf(text, span);
  if (mend === undefined) return [];
  const mended = text.slice(0, mend.span.start) + mend.text + text.slice(mend.span.end);
  const left = parseDocument(kind, mended, kind === 'workspace' ? builtIn : subject.registry).problems.filter(
    ({ code }) => code === 'yaml-syntax',
  );
  return left.length < syntax.length ? [replace(subject, mend.span, mend.text, mend.title)] : [];
}

interface Mend {
  readonly span: Span;
  readonly text: string;
  readonly title: string;
}

function mendOf(text: string, { start, end }: Span): Mend | undefined {
  const found = text.slice(start, end);
  if (/^\t+$/.test(found))
    return { span: { start, end }, text: '  '.repeat(found.length), title: 'Write spaces for the tab' };
  const first = found.charAt(0);
  if (first === '#') return { span: { start, end: start }, text: ' ', title: 'Write a space before the `#`' };
  if (first === '"' || first === "'") return atEnd(text, start, first, `Write ${first} at the end`);
  if (first === '{' || first === '[') {
    const closer = first === '{' ? ' }' : ']';
    return atEnd(text, start, closer, `Write \`${closer.trim()}\` after the last entry`);
  }
  const colon = /^[A-Za-z_][\w-]*:(?=[^\s:])/.exec(found);
  if (colon === null) return undefined;
  const at = start + colon[0].length;
  return { span: { start: at, end: at }, text: ' ', title: 'Write a space after the colon' };
}

/** Behind what is said on the line, before its comment. */
function atEnd(text: string, start: number, put: string, title: string): Mend {
  const line = text.slice(start, lineEnd(text, start));
  const said = line.replace(/\s+#.*$/, '').trimEnd();
  const at = start + said.length;
  return { span: { start: at, end: at }, text: put, title };
}
