// Takes names and days out of words that a coach chose, for copies that tell of nobody; knows no kind of file.
import { isDate } from '../record/date.ts';

/** A name as it may be written, and what stands in its place. */
export interface Alias {
  readonly name: string;
  readonly alias: string;
}

const msADay = 86_400_000;

/** Another day, so many days later; the same words where they are no day of the calendar. Months and years move with their middle. */
export function shiftedDay(words: string, days: number): string {
  if (isDate(words)) return moved(words, days).slice(0, 10);
  if (/^\d{4}-\d{2}$/.test(words) && isDate(`${words}-15`)) return moved(`${words}-15`, days).slice(0, 7);
  if (/^\d{4}$/.test(words)) return moved(`${words}-07-01`, days).slice(0, 4);
  return words;
}

function moved(day: string, days: number): string {
  const at = Date.parse(`${day}T00:00:00Z`) + days * msADay;
  // Beyond the calendar's four digits nothing of ours can read it.
  return Math.abs(at) < Date.parse('9999-12-31T00:00:00Z') ? new Date(at).toISOString() : day;
}

/**
 * The names to look for: the whole name, each of its words of two letters or more, and all of them without accents.
 * The longest come first, so that no part of a name outlives it.
 */
export function aliasesOf(names: readonly Alias[]): readonly Alias[] {
  const found = new Map<string, Alias>();
  for (const { name, alias } of names)
    for (const part of [name, ...name.split(/[^\p{L}\p{M}]+/u)])
      for (const spelling of [part.normalize('NFC'), plain(part)]) {
        const key = spelling.toLowerCase();
        if ([...spelling].length >= 2 && /\p{L}/u.test(spelling) && !found.has(key))
          found.set(key, { name: spelling, alias });
      }
  return [...found.values()].sort((a, b) => b.name.length - a.name.length);
}

/** Days as people write them, whose day and month nobody can tell apart: they are taken out, not moved. */
const otherDays =
  /(?<!\d)(?:\d{1,2}([./])\d{1,2}\1\d{4}|\d{4}([./])\d{1,2}\2\d{1,2}|(?:19|20)\d{2}(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\d|3[01]))(?!\d)/g;

/** The words with every name in them replaced, in whatever case, a genitive's `s` and joined words apart, and with days moved. */
export function cleaned(words: string, aliases: readonly Alias[], days: number): string {
  const named = aliases.reduce(
    (text, { name, alias }) => text.replace(patternOf(name), alias),
    words.normalize('NFC'),
  );
  return named
    .replace(/\d{4}-\d{2}(?:-\d{2})?(?!\d)/g, (day) => shiftedDay(day, days))
    .replace(otherDays, 'day');
}

const patterns = new Map<string, RegExp>();

function patternOf(name: string): RegExp {
  const kept = patterns.get(name);
  if (kept !== undefined) return kept;
  const escaped = name.replace(/[\\^$.*+?()[\]{}|]/g, String.raw`\$&`).replace(/\s+/g, String.raw`\s+`);
  const pattern = new RegExp(String.raw`(?<![\p{L}\p{M}])${escaped}(?=s?(?![\p{L}\p{M}]))`, 'giu');
  patterns.set(name, pattern);
  return pattern;
}

function plain(words: string): string {
  return words
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .normalize('NFC');
}
