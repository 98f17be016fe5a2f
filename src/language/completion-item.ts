// Makes what an editor shows in its list of proposals out of words: the exact range, the order, quotes where YAML needs them; knows no golf.
import { rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Span } from '../measure/measure.ts';
import type { Cursor } from '../record/cursor.ts';
import { isPlainWord } from '../record/plain-word.ts';
import type { CompletionItem } from './shapes.ts';

/** One proposal, before it is known where it stands in the order. */
export interface Proposal {
  readonly label: string;
  /** What is written in place of the word. */
  readonly text: string;
  readonly kind: keyof typeof kinds;
  /** Beside the label, short. */
  readonly detail?: string | undefined;
  /** Markdown. */
  readonly words?: string | undefined;
  /** What is typed to find it, where that is not the label. */
  readonly filter?: string;
  /** True where `text` has places to fill in, marked as editors mark them. */
  readonly isSnippet?: boolean;
  /** True where the next thing to write can be proposed at once. */
  readonly again?: boolean;
  /** True for the one that is most likely, wherever it stands in the order. */
  readonly isLikely?: boolean;
  /** What it takes the place of, where that is more than the word. */
  readonly span?: Span;
}

/** As the language server protocol numbers them. */
export const kinds = {
  key: 10,
  unit: 11,
  value: 12,
  word: 20,
  snippet: 15,
  file: 17,
  reference: 18,
  function: 3,
  quantity: 6,
  operator: 24,
} as const;

/** What the editor can do with a proposal. */
export interface Abilities {
  readonly snippets: boolean;
  /** Whether it knows VS Code's command that asks for proposals. */
  readonly asksAgain: boolean;
}

export function itemsFrom(
  proposals: readonly Proposal[],
  span: Span,
  table: LineTable,
  { snippets, asksAgain }: Abilities,
): CompletionItem[] {
  const seen = new Set<string>();
  const items: CompletionItem[] = [];
  for (const proposal of proposals) {
    const { label, text, kind, detail, words, filter, isSnippet, again, isLikely } = proposal;
    if (isSnippet === true && !snippets) continue;
    if (seen.has(`${label} ${text}`)) continue;
    seen.add(`${label} ${text}`);
    items.push({
      label,
      kind: kinds[kind],
      ...(detail === undefined ? {} : { detail }),
      ...(words === undefined || words === '' ? {} : { documentation: { kind: 'markdown', value: words } }),
      sortText: String(items.length).padStart(4, '0'),
      filterText: filter ?? label,
      insertTextFormat: isSnippet === true ? 2 : 1,
      insertTextMode: 1,
      textEdit: { range: rangeOf(table, proposal.span ?? span), newText: text },
      ...(isLikely === true ? { preselect: true } : {}),
      ...(again === true && asksAgain
        ? { command: { title: 'Propose what comes next', command: 'editor.action.triggerSuggest' } }
        : {}),
    });
  }
  return items;
}

/** The words as a YAML value, in quotes only where they must be. */
export function asValue(words: string, quote: '' | '"' | "'", style: 'block' | 'flow'): string {
  if (quote === '"') return JSON.stringify(words).slice(1, -1);
  if (quote === "'") return words.replace(/'/g, "''");
  return isPlainWord(words, style) ? words : JSON.stringify(words);
}

/** A proposal within a value that stands there already, which gets quotes where it needs them with the words in it. */
export function withinValue(
  proposal: Proposal,
  { value, word, start, end }: { value: string; word: Span; start: number; end: number },
  { quote, style }: Pick<Cursor, 'quote' | 'style'>,
): Proposal {
  if (quote !== '') return { ...proposal, text: asValue(proposal.text, quote, style) };
  const whole = value.slice(0, start) + proposal.text + value.slice(end);
  if (isPlainWord(whole.trimEnd(), style)) return proposal;
  const filter = value.slice(0, start) + (proposal.filter ?? proposal.label);
  return { ...proposal, text: asValue(whole, quote, style), filter, span: word };
}

/** A dollar, a brace or a backslash means something in a snippet. */
export function escapeSnippet(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}
