// How many keys it takes to write a lesson with a list of proposals at hand; knows no editor and starts nothing.
//
// The policy is the same for all. At each place the writer knows what both lists will show: he types up to three letters, looks at
// the list (Ctrl+Space, one key, where no letter and no space was typed just before), goes down with the arrow keys (one key a line,
// from the item that is chosen at first) and takes the item with one key, whenever that saves keys over typing; of all such ways he
// takes the one that saves most. Lists hold the items whose filter text begins with what is typed, in the order given. Enter indents as
// the line above, further in behind a colon; each level back costs one key. In a form (a snippet with places) a value costs its letters
// and one Tab, and a choice its first letter, if it is not the first, and one key.
import { analyse } from '../../src/analysis/analyse.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import { findCompletions } from '../../src/language/index.ts';
import { parseDocument } from '../../src/record/parse.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { practice, samples, snapshotWith } from '../../test/samples.ts';
import { lesson } from './lesson.ts';

/** Its head and the address: as much as a test has the time for. */
export const shortLesson = lesson.slice(0, lesson.indexOf('  top:\n'));

export interface Offer {
  readonly filter: string;
  readonly start: number;
  readonly newText: string;
  readonly isSnippet: boolean;
  readonly isChosen: boolean;
  readonly again: boolean;
}
export type Ask = (text: string) => Promise<readonly Offer[]>;

export const lessonUri = `${practice}tove/2026-05-30-seven-iron.swing.yaml`;

export function ours(earlier: SwingRecord | undefined, snippets: boolean): Ask {
  return (text) => {
    const position = positionAt(lineTableOf(text), text.length);
    const request = {
      position,
      files: [...samples.keys()],
      earlier,
      usual: earlier?.entries ?? new Map(),
      today: '2026-05-30',
      snippets,
      asksAgain: true,
    };
    const items = findCompletions(analyse(lessonUri, snapshotWith({ [lessonUri]: text })), request);
    return Promise.resolve(
      items.map((item) => ({
        filter: item.filterText,
        start: text.lastIndexOf('\n') + 1 + item.textEdit.range.start.character,
        newText: item.textEdit.newText,
        isSnippet: item.insertTextFormat === 2,
        isChosen: item.preselect === true,
        again: item.command !== undefined,
      })),
    );
  };
}

/** The student's record before it. */
export const earlier = parseDocument(
  'swing',
  samples.get(`${practice}tove/2026-04-18-seven-iron.swing.yaml`)!,
) as SwingRecord;

interface Way {
  readonly keys: number;
  readonly end: number;
  readonly again: boolean;
}

/** How many keys it takes from `start` on to have the item written as the target has it; undefined where it says anything else. */
function follow(
  target: string,
  { newText, isSnippet, start }: Offer,
): { keys: number; end: number } | undefined {
  if (!isSnippet)
    return target.startsWith(newText, start) ? { keys: 0, end: start + newText.length } : undefined;
  const parts = [
    ...newText.matchAll(
      /\$\{\d+\|((?:[^|\\]|\\.)*)\|\}|\$\{\d+:((?:[^}\\]|\\.)*)\}|\$(\d+)|((?:[^$\\]|\\.)+)/gs,
    ),
  ];
  let [at, keys] = [start, 0];
  for (const [index, [, choice, gap, number, words]] of parts.entries()) {
    if (words !== undefined) {
      const literal = words.replace(/\\(.)/g, '$1');
      if (!target.startsWith(literal, at)) return undefined;
      at += literal.length;
    } else if (choice !== undefined) {
      const words = choice.split(/(?<!\\),/).map((word) => word.replace(/\\(.)/g, '$1'));
      const taken = words.findIndex((word) => target.startsWith(word, at));
      if (taken === -1) return undefined;
      keys += taken === 0 ? 1 : 2;
      at += words[taken]!.length;
    } else {
      const next = parts[index + 1]?.[4]?.replace(/\\(.)/g, '$1');
      // The last place of all: what comes there is typed or proposed as everywhere.
      if (next === undefined)
        return { keys: keys + (number === '0' || index === parts.length - 1 ? 0 : 1), end: at };
      const stop = target.indexOf(next, at);
      if (stop === -1 || /\n/.test(target.slice(at, stop))) return undefined;
      const typed = target.slice(at, stop);
      keys += (typed === gap ? 0 : typed.length) + 1;
      at = stop;
    }
  }
  return { keys, end: at };
}

export async function countKeys(target: string, ask: Ask): Promise<number> {
  let [at, keys] = [0, 0];
  let isOpen = false;
  while (at < target.length) {
    let best: Way | undefined;
    for (let letters = 0; letters <= 3 && at + letters <= target.length; letters++) {
      const typed = target.slice(at, at + letters);
      if (typed.includes('\n')) break;
      const text = target.slice(0, at + letters);
      const shown = (await ask(text)).filter(({ filter, start }) =>
        filter.toLowerCase().startsWith(text.slice(start).trimStart().toLowerCase()),
      );
      const chosen = Math.max(
        0,
        shown.findIndex(({ isChosen }) => isChosen),
      );
      for (const [index, item] of shown.entries()) {
        const way = follow(target, item);
        if (way === undefined || way.end <= at + letters) continue;
        const opening = letters > 0 || isOpen ? 0 : 1;
        const cost = letters + opening + Math.abs(index - chosen) + 1 + way.keys;
        if (best === undefined || way.end - at - cost > best.end - at - best.keys)
          best = { keys: cost, end: way.end, again: item.again };
      }
    }
    if (best !== undefined && best.end - at > best.keys) {
      keys += best.keys;
      at = best.end;
      isOpen = best.again;
    } else {
      const step = target[at] === '\n' ? newline(target, at) : { keys: 1, length: 1 };
      isOpen = target[at] === ' ';
      keys += step.keys;
      at += step.length;
    }
  }
  return keys;
}

/** Enter, with the indentation that the editor gives, and the levels that are taken back. */
function newline(target: string, at: number): { readonly keys: number; readonly length: number } {
  const line = target.slice(target.lastIndexOf('\n', at - 1) + 1, at);
  const given = /^ */.exec(line)![0].length + (/:\s*$/.test(line) ? 2 : 0);
  const wanted = /^ */.exec(target.slice(at + 1))![0].length;
  return { keys: 1 + Math.abs(given - wanted) / 2, length: 1 + wanted };
}
