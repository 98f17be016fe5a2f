// Puts a user's text into a message: in backticks, on one line, cut when long; knows nothing else.

const longest = 40;

/** The text in backticks, with runs of white space as one space and no backtick of its own. */
export function quote(text: string): string {
  const line = collapseSpaces(text.length > 4 * longest ? text.slice(0, 4 * longest) : text).replaceAll(
    '`',
    "'",
  );
  return line.length > longest ? `\`${line.slice(0, longest - 1)}…\`` : `\`${line}\``;
}

/** The text with every run of white space as one space, and none at its ends. */
export function collapseSpaces(text: string): string {
  return text.trim().split(/\s+/).join(' ');
}

/** Controls but line breaks and tabs, and marks that turn the writing direction: what could steer an editor or a terminal. */
export const steering =
  // eslint-disable-next-line no-control-regex
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** What another person wrote, line breaks kept, with a sign in the place of each that could steer whoever shows it. */
export function harmless(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(steering, '\u{fffd}');
}

/** "`ahead` or `behind`", "`eye`, `video` or `tape`"; at most eight, then "…". */
export function quoteList(words: readonly string[]): string {
  if (words.length > 8) return `${words.slice(0, 8).map(quote).join(', ')}, …`;
  const quoted = words.map(quote);
  if (quoted.length < 2) return quoted.join('');
  return `${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`;
}

/** With a capital where it begins, as a sentence or a title does. */
export function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** With a small letter where a word begins it, as a title stands within a sentence; capitals further on are meant so. */
export function lowerFirst(words: string): string {
  return /^\p{Lu}\p{Ll}/u.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}
