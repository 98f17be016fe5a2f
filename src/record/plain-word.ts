// Says whether YAML reads words back as the same words without quotes; knows no place in a file but block and flow style.

/** In block style, or in flow style between brackets (YAML 1.2.2, 7.3.3 and 10.3.2). */
export function isPlainWord(words: string, style: 'block' | 'flow'): boolean {
  if (!/^(?:[^\s\-?:,[\]{}#&*!|>'"%@`]|[-?:](?=\S))(?:.*\S)?$/.test(words)) return false;
  if (/:(?:\s|$)|\s#/.test(words) || /^(?:---|\.\.\.)(?:\s|$)/.test(words)) return false;
  // What YAML 1.1 took for yes or no is put in quotes for the readers that still do.
  if (/^(?:true|false|null|~|yes|no|on|off|y|n)$/i.test(words) || isNumeral(words)) return false;
  return style === 'block' || !/[,[\]{}]/.test(words);
}

/** `12` in quotes is a word, and without them a number, as `0x1f`, `.5`, `1e3` and `.inf` are. */
export function isNumeral(words: string): boolean {
  return /^[-+]?(?:\d+|0o[0-7]+|0x[\da-f]+|(?:\.\d+|\d+(?:\.\d*)?)(?:e[-+]?\d+)?|\.inf|\.nan)$/i.test(words);
}
