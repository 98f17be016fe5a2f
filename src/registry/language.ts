// The languages that texts for students are written in, by their tags (BCP 47); holds no text itself.

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

export function isLanguage(word: string): word is Language {
  return (languages as readonly string[]).includes(word);
}
