// Numbers, names and days as a handout says them in its language; knows no handout.
import { showValue, showWindow } from '../../measure/show.ts';
import type { Notation } from '../../measure/measure.ts';
import type { Language } from '../../registry/language.ts';
import type { BodyPlace } from '../../registry/body.ts';
import type { Quantity } from '../../registry/quantity.ts';
import { byItsSide, proofAsks, sideOf, signsIn } from '../../judgement/proof.ts';
import type { Registry } from '../../registry/registry.ts';
import { plain } from './plain.ts';
import { filled, terms, texts, type Terms, type TextKey } from './texts.ts';

/** Everything that is said goes through here. */
export interface Speech {
  readonly language: Language;
  readonly say: (key: TextKey, values?: Readonly<Record<string, string>>) => string;
  /** Begins a line: "Stance width". */
  readonly title: (quantity: Quantity) => string;
  /** With the checkpoint: "Lead pressure, at impact". */
  readonly placed: (quantity: Quantity) => string;
  readonly checkpoint: (id: string) => string;
  /** As exact as `u`, or as the quantity is usually told. */
  readonly value: (quantity: Quantity, value: number, u?: number | null) => string;
  /** Without the zeros that say nothing: "42 cm". */
  readonly round: (quantity: Quantity, value: number) => string;
  readonly window: (quantity: Quantity, from: number, to: number) => string;
  readonly word: (of: 'misses' | 'shapes' | 'contacts' | 'methods' | 'directions', word: string) => string;
  readonly part: (words: string, place: BodyPlace | undefined) => string;
  readonly day: (date: string) => string;
  /** Of no quantity: "2.5". */
  readonly number: (value: number) => string;
  readonly percent: (chance: number) => string;
  /** What a proof asks for, in a line. */
  readonly proof: (text: string, registry: Registry) => string;
}

/** @param whom a student is told in plain words what a coach has terms for */
export function speechIn(language: Language, whom: 'student' | 'file' = 'file'): Speech {
  const own = terms[language];
  const simple = whom === 'student' ? plain[language] : undefined;
  const said = texts[language];
  const say: Speech['say'] = (key, values = {}) => filled(said[key], values);
  const title = (quantity: Quantity): string => titleIn(quantity, [simple?.titles, own?.titles]);
  const checkpoint = (id: string): string =>
    looked(simple?.checkpoints, id) ?? looked(own?.checkpoints, id) ?? id.replaceAll('_', ' ');
  const placed = (quantity: Quantity): string =>
    quantity.checkpoint === undefined
      ? title(quantity)
      : say('at', { name: title(quantity), checkpoint: checkpoint(quantity.checkpoint) });
  const localized = (text: string, quantity: Notation): string =>
    localizedIn(text, quantity, language, own, say);
  const value: Speech['value'] = (quantity, number, u) => localized(showValue(quantity, number, u), quantity);
  const round: Speech['round'] = (quantity, number) =>
    localized(withoutZeros(showValue(quantity, number)), quantity);
  const direction = (word: string): string => looked(own?.directions, word) ?? word;
  return {
    language,
    say,
    title,
    placed,
    checkpoint,
    value,
    round,
    window: (quantity, from, to) =>
      from === to ? round(quantity, from) : localized(withoutZeros(showWindow(quantity, from, to)), quantity),
    word: (of, word) => looked(own?.[of], word) ?? word,
    part: (words, place) => partIn(words, place, own),
    day: (date) =>
      new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
        dateStyle: 'long',
        timeZone: 'UTC',
      }).format(Date.parse(`${date}T00:00:00Z`)),
    number: (one) => new Intl.NumberFormat(language).format(one),
    percent: (chance) => {
      const percent = Math.round(100 * chance);
      return percent <= 0 ? say('under1') : percent >= 100 ? say('over99') : `${percent} %`;
    },
    proof: (text, registry) => proofIn(text, registry, { say, placed, round, localized, direction }),
  };
}

function looked(table: Readonly<Record<string, string>> | undefined, word: string): string | undefined {
  return table !== undefined && Object.hasOwn(table, word) ? table[word] : undefined;
}

/** The first that has one; a quantity of a workspace's own has the title that the workspace gives it. */
function titleIn(
  { id, checkpoint, title }: Quantity,
  tables: readonly (Readonly<Record<string, string>> | undefined)[],
): string {
  const bare = checkpoint === undefined ? id : id.replace(`.${checkpoint}.`, '.');
  return tables.map((table) => looked(table, bare)).find((one) => one !== undefined) ?? title;
}

function partIn(words: string, place: BodyPlace | undefined, own: Terms | undefined): string {
  const name = place && looked(own?.parts, place.part.name);
  if (place === undefined || name === undefined) return words;
  const side = place.side && looked(own?.sides, place.side);
  return side === undefined ? name : `${name} (${side})`;
}

/** What `showValue` and `showWindow` write, with the signs, words and comma of a language. */
function localizedIn(
  text: string,
  { directions }: Notation,
  language: Language,
  own: Terms | undefined,
  say: Speech['say'],
): string {
  const [first, second] = text.split('..');
  const whole = second === undefined ? text : say('hyphen', { a: first!, b: second });
  const words = directions
    .map(({ word }) => word)
    .toSorted((a, b) => b.length - a.length)
    .reduce(
      (said, word) => {
        const other = looked(own?.directions, word);
        return other === undefined
          ? said
          : said.replace(new RegExp(`(?<=[\\d%a-z°] )${escaped(word)}(?= |$)`, 'g'), other);
      },
      whole.replaceAll(/(?<=\d) deg\b/g, '°'),
    );
  const units = Object.entries(own?.units ?? {}).reduce(
    (said, [unit, other]) => said.replaceAll(new RegExp(`(?<=\\d )${escaped(unit)}\\b`, 'g'), other),
    words,
  );
  const signed = units.replace(/(^|\s)-(?=\d)/g, '$1\u2212');
  return language === 'de' ? signed.replace(/(?<=\d)\.(?=\d)/g, ',') : signed;
}

function escaped(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

function withoutZeros(text: string): string {
  return text.replace(/(?<=\d)\.0+(?=\D|$)/g, '').replace(/(?<=\d)(\.\d*?[1-9])0+(?=\D|$)/g, '$1');
}

const comparing = { '>': 'over', '>=': 'atLeast', '<': 'under', '<=': 'atMost' } as const;

/** One quantity against one number in words; anything else with the names of its quantities in the place of their ids. */
function proofIn(
  text: string,
  registry: Registry,
  {
    say,
    placed,
    round,
    localized,
    direction,
  }: Pick<Speech, 'say' | 'placed' | 'round'> & {
    readonly direction: (word: string) => string;
    readonly localized: (text: string, quantity: Notation) => string;
  },
): string {
  const asks = proofAsks(text, registry);
  const { quantities, limit } = asks;
  if (quantities.length === 0) return text;
  if (limit !== undefined) {
    const { quantity, value } = limit;
    const side = sideOf(limit);
    if (side !== undefined) return `${placed(quantity)}: ${direction(side)}`;
    return say(comparing[byItsSide(limit)], { name: placed(quantity), value: round(quantity, value) });
  }
  const named = quantities
    .toSorted((a, b) => b.id.length - a.id.length)
    .reduce(
      (said, one) =>
        said.replaceAll(new RegExp(`(?<![\\w.])${escaped(one.id)}(?![\\w.])`, 'g'), `“${placed(one)}”`),
      text,
    );
  const said = localized(named.replace(/\s+/g, ' ').replaceAll(' - ', ' \u2212 ').trim(), {
    ...quantities[0]!,
    directions: [],
  });
  const signs = signsIn(asks).map(([plus, minus]) => `+ ${direction(plus)}, \u2212 ${direction(minus)}`);
  return signs.length === 0 ? said : `${said} (${signs.join('; ')})`;
}
