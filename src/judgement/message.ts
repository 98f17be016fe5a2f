// The message of a workspace's own check: the ids between braces, and the text with their values filled in; knows no record.
import type { Located } from '../record/document.ts';

const braces = /\{([^{}]*)\}/g;

/** The ids between braces, each with its place; with that of the whole text where escapes part it from what it says. */
export function namesIn({ value, span }: Located<string>): readonly Located<string>[] {
  return [...value.matchAll(braces)].map(({ index, 1: name = '' }) =>
    partOf({ value, span }, index + 1, name),
  );
}

/** What begins with a brace that nothing closes. */
export function leftOpenIn(message: Located<string>): readonly Located<string>[] {
  return [...message.value.matchAll(/\{[^{}]*(?=\{|$)/g)].map(({ index, 0: part }) =>
    partOf(message, index, part.trimEnd()),
  );
}

function partOf({ value, span }: Located<string>, at: number, part: string): Located<string> {
  const isPlain = span.end - span.start === value.length;
  const start = span.start + at;
  return { value: part, span: isPlain ? { start, end: start + part.length } : span };
}

/** Each id gives way to what `shown` says of it. */
export function filledIn(message: string, shown: (id: string) => string): string {
  return message.replace(braces, (_, id: string) => shown(id));
}
