// Reads a fault book from its tree: which faults it defines; evidence is an expression, which is not read here.
import { findNamed } from './change.ts';
import type { FaultFile } from './document.ts';
import type { Reader } from './entry.ts';
import { valueAt, type Tree } from './tree.ts';
import { wordAt, wordsAt } from './word.ts';

export type FaultParts = Omit<FaultFile, 'text' | 'problems' | 'silences' | 'outline'>;

export function readFaults(tree: Tree, reader: Reader): FaultParts {
  const faults = new Map<string, FaultFile['faults'] extends ReadonlyMap<string, infer T> ? T : never>();
  const book = valueAt(tree, 'book');
  if (book?.kind === 'map')
    for (const { key, keySpan, value } of book.pairs.values()) {
      const span = { start: keySpan.start, end: Math.max(keySpan.end, value.span.end) };
      faults.set(key, { id: { value: key, span: keySpan }, title: wordsAt(value, 'title'), span });
      for (const effect of itemsAt(value, 'tends_to')) findNamed(wordAt(effect, 'effect'), reader);
      for (const change of itemsAt(value, 'changes')) findNamed(wordAt(change, 'change'), reader);
    }
  return { kind: 'faults', faults, extends: wordAt(tree, 'extends') };
}

function itemsAt(tree: Tree, key: string): readonly Tree[] {
  const list = valueAt(tree, key);
  return list?.kind === 'list' ? list.items : [];
}
