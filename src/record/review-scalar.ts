// Writes any text as a YAML value that reads back as the very same text, with nothing in it that could steer an editor or a terminal; knows no file.

/** Where the value stands: below a key of a block, which begins at this column, or between braces. */
export type ScalarPlace = { readonly style: 'block'; readonly indent: number } | { readonly style: 'flow' };

/** Plain where that is safe, several lines as they are where a block can hold them, else in double quotes with escapes. */
export function scalarText(text: string, place: ScalarPlace): string {
  if (isPlain(text) && (place.style === 'block' || !/[[\]{},]/.test(text))) return text;
  if (place.style === 'block' && isBlock(text)) {
    const margin = ' '.repeat(place.indent + 2);
    return `|-\n${text
      .split('\n')
      .map((line) => (line === '' ? '' : margin + line))
      .join('\n')}`;
  }
  return quoted(text);
}

/** Controls, marks that turn the writing direction, and signs that nobody sees. */
const unseen =
  // eslint-disable-next-line no-control-regex
  /[\u0000-\u0008\u000b-\u001f\u007f-\u00a0\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202f\u205f-\u206f\u3000\ufeff\ufff9-\uffff\u{e0000}-\u{e0fff}]/u;

function quoted(text: string): string {
  return JSON.stringify(text).replace(/[^ -~]/gu, (sign) => {
    const hex = sign.codePointAt(0)!.toString(16);
    if (!unseen.test(sign)) return sign;
    return hex.length <= 4 ? `\\u${hex.padStart(4, '0')}` : `\\U${hex.padStart(8, '0')}`;
  });
}

function isPlain(text: string): boolean {
  return (
    /^[\p{L}\p{N}~(±][^\t\n]*$/u.test(text) &&
    !/: |:$| #|\s$|^~$/.test(text) &&
    !unseen.test(text) &&
    !/\p{Cs}/u.test(text) &&
    !isOtherThanWords(text)
  );
}

/** What YAML's core schema would take for a number, for yes and no, or for nothing. */
function isOtherThanWords(text: string): boolean {
  return (
    /^(?:null|true|false)$/i.test(text) || !Number.isNaN(Number(text)) || /^[\d.][\d._eExXoO+-]*$/.test(text)
  );
}

function isBlock(text: string): boolean {
  return (
    text.includes('\n') &&
    /^[^\s]/.test(text) &&
    /\S$/.test(text) &&
    !unseen.test(text) &&
    !text.includes('\t') &&
    !/\p{Cs}/u.test(text)
  );
}
