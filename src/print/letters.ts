// Which characters the letters of the printed page have, and what stands in the place of others; knows no page.

/** Of Roboto as it comes with pdfmake: Latin, Greek, Cyrillic, and the signs of prose. Held against the font by a test. */
const known =
  /[\u0020-\u007e\u00a0-\u017f\u0218-\u021b\u0384-\u038a\u038c\u038e-\u03a1\u03a3-\u03ce\u0400-\u0486\u0488-\u0513\u1ea0-\u1ef9\u2010\u2011\u2013-\u2015\u2018-\u201e\u2022\u2026\u2030\u2032\u2033\u2039\u203a\u20ac\u2122\u2212\u221e\u2260\u2264\u2265\ufffd]/;

/** What has another way to be written. */
const others: Readonly<Record<string, string>> = {
  '\u2192': '\u203a',
  '\u2190': '\u2039',
  '\u2248': '~',
  '\t': ' ',
  '\n': ' ',
};

/** With a replacement sign for each character that cannot be printed. */
export function printed(text: string): string {
  return [...text.normalize('NFC')]
    .map((letter) => (known.test(letter) ? letter : (others[letter] ?? '\ufffd')))
    .join('');
}

/** Whether all of it comes out as it was written. */
export function isPrintable(text: string): boolean {
  return [...text.normalize('NFC')].every((letter) => known.test(letter) || others[letter] !== undefined);
}
