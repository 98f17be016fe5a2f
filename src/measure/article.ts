// Puts "a" or "an" before a noun; knows no golf.

/** "a hybrid", "an iron", "an eight iron". */
export function withArticle(noun: string): string {
  return `${/^(?:[aeio8]|1[18]\b)/i.test(noun) ? 'an' : 'a'} ${noun}`;
}
