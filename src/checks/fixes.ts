// The edits that several checks offer: the nearest known word, text put in or taken out; each changes only its own span.
import type { Problem, Span } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import type { Subject } from './subject.ts';

/** Puts the nearest known word in the place of the one found; nothing where none is near. */
export function writeNearest(problem: Pick<Problem, 'span' | 'nearest'>, subject: Subject): readonly Fix[] {
  if (problem.nearest === undefined) return [];
  return [replace(subject, problem.span, problem.nearest, `Write \`${problem.nearest}\``)];
}

export function replace(subject: Subject, span: Span, text: string, title: string): Fix {
  return { title, edits: [{ uri: subject.uri, span, text }], preferred: true };
}

export function notPreferred(fix: Fix): Fix {
  return { ...fix, preferred: false };
}

export function insert(subject: Subject, at: number, text: string, title: string): Fix {
  return replace(subject, { start: at, end: at }, text, title);
}

export function textAt(subject: Subject, span: Span): string {
  return subject.document.text.slice(span.start, span.end);
}
