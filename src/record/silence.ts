// Reads comments `# accept[code]: reason`; knows neither the codes nor what is found.
import type { Silence } from './document.ts';
import { lineEnd, lineOf } from './lines.ts';

const accepting = /^#\s*accept\[([^\]\n]*)\](?:\s*:(.*))?/;

/** The silences among the comments, which stand by offset; a comment of its own covers the next line that says something. */
export function silencesOf(
  text: string,
  comments: ReadonlyMap<number, string>,
  lineStarts: readonly number[],
): readonly Silence[] {
  const silences: Silence[] = [];
  let below: Covered | undefined;
  // From the last to the first, so that what a comment covers is known to the comments above it.
  for (const [offset, comment] of [...comments].sort(([a], [b]) => b - a)) {
    const match = accepting.exec(comment);
    if (match === null) continue;
    const line = lineOf(lineStarts, offset);
    const isOwnLine = isAlone(text, lineStarts[line]!, offset);
    if (isOwnLine) below = { above: line, line: nextLine(text, lineStarts, line, below) };
    const covered = isOwnLine ? below!.line : line;
    const span = { start: offset, end: offset + comment.trimEnd().length };
    const reason = (match[2] ?? '').trim();
    let at = offset + comment.indexOf('[') + 1;
    for (const code of match[1]!.split(',')) {
      const start = at + code.length - code.trimStart().length;
      const value = code.trim();
      silences.push({
        code: { value, span: { start, end: start + value.length } },
        reason,
        span,
        line: covered,
      });
      at += code.length + 1;
    }
  }
  return silences.sort((a, b) => a.span.start - b.span.start);
}

function isAlone(text: string, start: number, offset: number): boolean {
  return text.slice(start, offset).replace('\ufeff', '').trim() === '';
}

/** The line that comments from `above` on cover. */
interface Covered {
  readonly above: number;
  readonly line: number;
}

/** The next line that is neither blank nor only a comment; the last one where there is none. */
function nextLine(
  text: string,
  lineStarts: readonly number[],
  line: number,
  below: Covered | undefined,
): number {
  for (let next = line + 1; next < lineStarts.length; next++) {
    if (next === below?.above) return below.line;
    const start = lineStarts[next]!;
    const said = text.slice(start, lineEnd(text, start)).trimStart();
    if (said !== '' && !said.startsWith('#')) return next;
  }
  return lineStarts.length - 1;
}
