// Finds the lines of a text by offset; knows nothing of what the lines say.

/** The offset at which each line starts; lines end at a line feed. */
export function lineStartsOf(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/** The zero-based line that holds `offset`. */
export function lineOf(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The offset just past the last character of the line that starts at `start`, before its line break. */
export function lineEnd(text: string, start: number): number {
  const feed = text.indexOf('\n', start);
  if (feed === -1) return text.length;
  return feed > start && text[feed - 1] === '\r' ? feed - 1 : feed;
}

export function blank(text: string, start: number, end: number): string {
  return text.slice(0, start) + blankPart(text, start, end) + text.slice(end);
}

/** Spaces for everything but line breaks, which stay. */
export function blankPart(text: string, start: number, end: number): string {
  return text.slice(start, end).replace(/[^\r\n]/g, ' ');
}

export function lineStart(text: string, offset: number): number {
  // A negative start would count as zero.
  return offset < 1 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
}

export function indentAt(text: string, start: number): number {
  let at = start;
  while (text[at] === ' ' || text[at] === '\t') at++;
  return at - start;
}

/** The end of the lines from `start` on that stand at least `indent` in; blank lines belong to it. */
export function blockEnd(text: string, start: number, indent: number): number {
  let end = lineEnd(text, start);
  for (let feed = text.indexOf('\n', start); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const next = feed + 1;
    const isBlank = text.slice(next, lineEnd(text, next)).trim() === '';
    if (!isBlank && (indentAt(text, next) < indent || indent === 0)) break;
    end = lineEnd(text, next);
  }
  return end;
}

/** The start of the last line at or before `offset` that begins in the first column, brackets and comments aside. */
export function itemStart(text: string, offset: number): number {
  let start = lineStart(text, offset);
  while (start > 0 && !/[^\s#\]}]/.test(text.charAt(start))) start = lineStart(text, start - 1);
  return start;
}

export function itemEnd(text: string, offset: number): number {
  let feed = text.indexOf('\n', offset);
  while (feed !== -1 && !/[^\s#\]}]/.test(text.charAt(feed + 1))) feed = text.indexOf('\n', feed + 1);
  return feed === -1 ? text.length : feed;
}

/** How far in the file goes at a time; two where it does not go in yet. */
export function stepOf(text: string): number {
  for (let feed = text.indexOf('\n'); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const indent = indentAt(text, feed + 1);
    if (indent > 0 && /[^\s#-]/.test(text.charAt(feed + 1 + indent))) return indent;
  }
  return 2;
}
