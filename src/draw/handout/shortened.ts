// How much of a coach's words a page has room for; knows no handout.
import type { Speech } from './speech.ts';

/** Letters of a text, and how many of a kind, so that a page stays one page whatever a file says. */
export const most = {
  name: 48,
  title: 60,
  word: 40,
  explanation: 210,
  feel: 170,
  drill: 150,
  note: 90,
  notes: 400,
  proof: 110,
  faults: 3,
  misses: 5,
  doubts: 3,
  chains: 4,
  wishes: 4,
  next: 5,
  parts: 5,
  measured: 10,
} as const;

/** In one line, cut after a whole word where it is too long, and a long word within it. */
export function shortened(text: string, letters: number): string {
  const line = text.replace(/\s+/gu, ' ').trim();
  const all = [...line];
  if (all.length <= letters) return line;
  const kept = all.slice(0, letters - 1).join('');
  const atWord = kept.replace(/\s+\S*$/u, '');
  return `${(atWord.length > kept.length / 2 ? atWord : kept).replace(/[\s,;:.]+$/u, '')}…`;
}

/** "a, b and 3 more". */
export function someOf(names: readonly string[], count: number, say: Speech['say'], between = ', '): string {
  const shown = names.slice(0, count).join(between);
  const rest = names.length - count;
  return rest > 0 ? say('andMore', { names: shown, count: String(rest) }) : shown;
}
