// Makes names of files out of any words, in any script; knows no file system.

/** Longer names get cut: some file systems end at 255 bytes, and a letter may take four. */
const longest = 48;

/** Names that Windows keeps for devices, whatever suffix follows. */
const reserved = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** Latin letters that do not come apart into a plain letter and a mark. */
const plainLetters: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ł: 'l',
  þ: 'th',
  ı: 'i',
};

/**
 * "Zoë O'Hara" gives `zoe-o-hara`; letters of other scripts stay as they are. `fallback` where the words hold neither letter nor
 * number.
 */
export function fileNameOf(words: string, fallback: string): string {
  const plain = words
    .toLowerCase()
    .normalize('NFKD')
    // Marks of other scripts are vowels and more, and stay.
    .replace(/(\p{Script=Latin})\p{Mn}+/gu, '$1')
    .replace(/[ßæœøđðłþı]/g, (letter) => plainLetters[letter]!)
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-');
  const short = [...plain]
    .slice(0, longest)
    .join('')
    .replace(/^-+|-+$/g, '');
  if (!/[\p{L}\p{N}]/u.test(short)) return fallback;
  return reserved.test(short) ? `${short}-${fallback}` : short;
}

/** `base` with its suffix, or with `-2`, `-3`, … before the suffix where that is taken; `A` and `a` are one name to many disks. */
export function freeName(base: string, suffix: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map((name) => name.normalize('NFC').toLowerCase()));
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? `${base}${suffix}` : `${base}-${n}${suffix}`;
    if (!used.has(name.normalize('NFC').toLowerCase())) return name;
  }
}
