// Reads a template from its tree: the kinds of club it is for and its windows; knows no record.
import type { TemplateFile, TemplateWindow } from './document.ts';
import { readTarget, type Reader } from './entry.ts';
import { valueAt, type Tree } from './tree.ts';
import { wordAt, wordsAt, wordsOf } from './word.ts';

export type TemplateParts = Omit<TemplateFile, 'text' | 'problems' | 'silences' | 'outline'>;

const sections = ['checkpoints', 'delivery', 'ground', 'strike', 'flight'];

export function readTemplate(tree: Tree, reader: Reader): TemplateParts {
  const windows = new Map<string, TemplateWindow>();
  for (const section of sections) readWindows(valueAt(tree, section), section, windows, reader);
  return { kind: 'template', title: wordsAt(tree, 'title'), clubs: wordsOf(valueAt(tree, 'clubs')), windows };
}

function readWindows(
  tree: Tree | undefined,
  prefix: string,
  windows: Map<string, TemplateWindow>,
  reader: Reader,
): void {
  if (tree?.kind !== 'map') return;
  for (const pair of tree.pairs.values()) {
    if (pair.key.includes('.')) continue;
    const id = `${prefix}.${pair.key}`;
    const quantity = reader.registry.find(id);
    if (quantity === undefined) {
      readWindows(pair.value, id, windows, reader);
      continue;
    }
    const window = readTarget(pair, 'window', quantity, reader);
    if (window?.kind !== 'window') continue;
    const strict = wordAt(pair.value, 'strict')?.value;
    windows.set(id, {
      quantity,
      window,
      strict: strict === 'gentle' || strict === 'firm' ? strict : undefined,
      source: wordsAt(pair.value, 'source'),
      keySpan: pair.keySpan,
      span: pair.value.span,
    });
  }
}
