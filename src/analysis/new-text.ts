// What the builders of new files share: a text with the place for the cursor, and words as YAML takes them; knows no kind of file.

export interface NewFile {
  readonly uri: string;
  readonly text: string;
  /** The offset of the first place where something is to be typed. */
  readonly cursor: number;
}

/** Stands for the cursor while a text is put together: no key and no word of a user's holds it. */
export const cursorMark = '\u{e000}';

/** The text without its mark; where there is none, the cursor goes to the end. */
export function newFile(uri: string, marked: string): NewFile {
  const at = marked.indexOf(cursorMark);
  const text = marked.replaceAll(cursorMark, '');
  return { uri, text, cursor: at < 0 ? text.length : at };
}

/** Words as a plain scalar where YAML reads them back as the same words, else in double quotes. */
export function yamlWords(words: string): string {
  const clean = words.replaceAll(cursorMark, '').replace(/\s+/g, ' ').trim();
  const isPlain =
    /^[\p{L}][\p{L}\p{M}\p{N} .'’_/-]*$/u.test(clean) &&
    !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(clean);
  return isPlain ? clean : JSON.stringify(clean);
}
