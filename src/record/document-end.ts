// Where the one document of a text ends, before the marker that YAML ends it with; knows nothing of what the document says.
import { lineEnd } from './lines.ts';

/**
 * The offset at which a last line can be added: before the first line `...`, or before a second document (YAML 1.2.2, 9.1.2 and
 * 9.1.4: such a line ends the document wherever it stands); the end of the text where there is neither.
 */
export function documentEnd(text: string): number {
  let hasBegun = false;
  for (let start = 0; start < text.length; start = nextLine(text, start)) {
    const line = text.slice(start, lineEnd(text, start));
    if (/^\.\.\.(?=\s|$)/.test(line)) return start;
    const isMarker = /^---(?=\s|$)/.test(line);
    if (isMarker && hasBegun) return start;
    hasBegun ||= isMarker || !/^\s*(#|%|$)/.test(line);
  }
  return text.length;
}

function nextLine(text: string, start: number): number {
  const feed = text.indexOf('\n', start);
  return feed === -1 ? text.length : feed + 1;
}
