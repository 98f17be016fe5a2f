// The pages that explain finding codes, as Markdown, and the list of them; the words themselves stand with the checks.
import { checks, findCheck } from '../checks/table.ts';
import { showWindow } from '../measure/show.ts';
import { checkFrom, ownCode } from '../checks/own-checks.ts';
import type { Subject } from '../checks/subject.ts';
import { upperFirst } from '../measure/quote.ts';
import { meaningOfMiss } from '../registry/meaning-of-miss.ts';
import { builtIn, findMiss, type Registry } from '../registry/registry.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import { code as coded, escapeMarkdown } from './markdown.ts';
import { nameOf } from './words.ts';

/** What a workspace adds to what everybody knows. */
type Known = Pick<Subject, 'registry' | 'own' | 'workspace'>;
const nothingOwn: Known = {
  registry: builtIn,
  own: { checks: [], relations: [], derived: new Map() },
  workspace: undefined,
};

/** Undefined where there is no such code. */
function explain(code: string, { own }: Known): string | undefined {
  const ours = own.checks.find(({ name }) => ownCode(name.value) === code);
  const check = ours === undefined ? findCheck(code) : checkFrom(ours);
  if (check === undefined) return undefined;
  return `# ${check.title}\n\n\`${check.code}\` · ${check.severity}\n\n${check.explanation.trim()}\n`;
}

/** Every code with its title, in the order in which checks are listed. */
export function listCodes(): { readonly code: string; readonly title: string }[] {
  return checks.map(({ code, title }) => ({ code, title }));
}

/** The page on a finding code, on a quantity by its full id, or on a word for a miss; undefined where it is none of these. */
export function explainWord(word: string, known: Known = nothingOwn): string | undefined {
  const { registry } = known;
  const quantity = registry.find(word);
  return (
    explain(word, known) ??
    (quantity === undefined ? aboutMiss(word, registry) : aboutQuantity(quantity, known))
  );
}

function aboutQuantity(quantity: Quantity, { workspace }: Known): string {
  const { id, title, checkpoint, meaning, from, to, unit, directions, practice, bounds } = quantity;
  const place = checkpoint === undefined ? '' : ` at ${checkpoint.replaceAll('_', ' ')}`;
  const words = [...new Set(directions.map(({ word }) => coded(word)))];
  const window = ({ min, max, source }: Range): string =>
    `${showWindow(quantity, min, max)} (${escapeMarkdown(source)})`;
  const derived = workspace?.document.own.derived.find((one) => one.quantity.id === id);
  return (
    [
      `# ${escapeMarkdown(title)}${place}`,
      coded(id),
      ...(meaning === '' ? [] : [escapeMarkdown(meaning)]),
      [
        ...(derived === undefined ? [] : [`- Computed in this workspace as ${coded(derived.is.value)}.`]),
        ...(from === '' || to === '' ? [] : [`- From ${escapeMarkdown(from)} to ${escapeMarkdown(to)}.`]),
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
  return `# ${upperFirst(word)}\n\nA miss: ${meaningOfMiss(miss, undefined)}\n\n## Where it shows\n\n${signs.join('\n')}\n\n${hand}\n`;
}
