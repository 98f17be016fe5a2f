// What a command leaves out since it could not be read, in words; knows no record.
import type { NotUnderstood } from '../analysis/not-understood.ts';

/** With its head, an entry a line. */
export function unreadBlock(unread: readonly NotUnderstood[]): string[] {
  return ['Not understood, and left out', ...unread.map((one) => `  ${unreadWords(one)}`)];
}

/** "line 7, column 12: Found the key `by`; …". */
export function unreadWords({ at, reason }: NotUnderstood): string {
  return `line ${at.line + 1}, column ${at.character + 1}: ${reason}`;
}
