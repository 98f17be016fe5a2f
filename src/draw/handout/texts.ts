// The one table of a handout's words by language, and how words are put into them; knows no handout.
import type { Language } from '../../registry/language.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { germanTerms } from './terms-de.ts';

export type TextKey = keyof typeof en;
export type Texts = Readonly<Record<TextKey, string>>;

export const texts: Readonly<Record<Language, Texts>> = { en, de };

/** Words of the trade and of the format, by what the format calls them; what is not in it stays as it is. */
export interface Terms {
  /** By the id without its checkpoint: `delivery.path`, `checkpoints.hands`. */
  readonly titles: Readonly<Record<string, string>>;
  readonly checkpoints: Readonly<Record<string, string>>;
  readonly directions: Readonly<Record<string, string>>;
  readonly misses: Readonly<Record<string, string>>;
  readonly shapes: Readonly<Record<string, string>>;
  readonly contacts: Readonly<Record<string, string>>;
  readonly methods: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<string, string>>;
  readonly parts: Readonly<Record<string, string>>;
  readonly sides: Readonly<Record<string, string>>;
}

/** English has the words of the registry itself. */
export const terms: Readonly<Record<Language, Terms | undefined>> = { en: undefined, de: germanTerms };

/** "Lesson of {date}" with what stands for the names between braces; what is put in is not looked through again. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) =>
    Object.hasOwn(values, name) ? values[name]! : whole,
  );
}
