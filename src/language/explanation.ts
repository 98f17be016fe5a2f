// The pages that explain finding codes, as Markdown, and the list of them; the words themselves stand with the checks.
import { checks, findCheck } from '../checks/table.ts';
import { showWindow } from '../measure/show.ts';
import { builtIn, findMiss, type Registry } from '../registry/registry.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import { code as coded } from './markdown.ts';
import { nameOf } from './words.ts';

/** Undefined where there is no such code. */
function explain(code: string): string | undefined {
  const check = findCheck(code);
  if (check === undefined) return undefined;
  return `# ${check.title}\n\n\`${check.code}\` · ${check.severity}\n\n${check.explanation.trim()}\n`;
}

/** Every code with its title, in the order in which checks are listed. */
export function listCodes(): { readonly code: string; readonly title: string }[] {
  return checks.map(({ code, title }) => ({ code, title }));
}

/** The page on a finding code, on a quantity by its full id, or on a word for a miss; undefined where it is none of these. */
export function explainWord(word: string, registry: Registry = builtIn): string | undefined {
  const quantity = registry.find(word);
  return explain(word) ?? (quantity === undefined ? aboutMiss(word, registry) : aboutQuantity(quantity));
}

function aboutQuantity(quantity: Quantity): string {
  const { id, title, checkpoint, meaning, from, to, unit, directions, practice, bounds } = quantity;
  const place = checkpoint === undefined ? '' : ` at ${checkpoint.replaceAll('_', ' ')}`;
  const words = [...new Set(directions.map(({ word }) => coded(word)))];
  const window = ({ min, max, source }: Range): string => `${showWindow(quantity, min, max)} (${source})`;
  return (
    [
      `# ${title}${place}`,
      coded(id),
      meaning,
      [
        `- From ${from} to ${to}.`,
        `- In ${unit === '' ? 'plain numbers' : coded(unit)}${words.length === 0 ? '' : `, with ${words.join(', ')}`}.`,
        ...(practice === undefined ? [] : [`- Usual: ${window(practice)}.`]),
        `- Possible: ${window(bounds)}.`,
      ].join('\n'),
    ].join('\n\n') + '\n'
  );
}

function aboutMiss(word: string, registry: Registry): string | undefined {
  const miss = findMiss(word);
  if (miss === undefined) return undefined;
  const signs = miss.signs.map(
    ({ id, sign }) => `- ${nameOf(id, registry)}, ${sign > 0 ? 'more' : 'less'} (${coded(id)})`,
  );
  const hand = miss.absolute ? 'Of the target line, whatever the hand.' : 'As for a right-handed player.';
  return `# ${word.charAt(0).toUpperCase()}${word.slice(1)}\n\nA miss: ${miss.meaning}\n\n## Where it shows\n\n${signs.join('\n')}\n\n${hand}\n`;
}
