// The message of a workspace's own check: the ids between braces, and the text with their values filled in; knows no record.
import type { Located } from '../record/document.ts';

const braces = /\{([^{}]*)\}/g;

/** The ids between braces, each with its place; with that of the whole text where escapes part it from what it says. */
export function namesIn({ value, span }: Located<string>): readonly Located<string>[] {
  const isPlain = span.end - span.start === value.length;
  return [...value.matchAll(braces)].map(({ index, 1: name = '' }) => {
    const start = span.start + index + 1;
    return { value: name, span: isPlain ? { start, end: start + name.length } : span };
  });
}

/** Each id gives way to what `shown` says of it. */
export function filledIn(message: string, shown: (id: string) => string): string {
  return message.replace(braces, (_, id: string) => shown(id));
}
