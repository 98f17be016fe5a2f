// Reads a colleague's review from its tree: only which record it is about; the threads are read where they are shown.
import type { ReviewFile } from './document.ts';
import type { Tree } from './tree.ts';
import { wordAt } from './word.ts';

export type ReviewParts = Omit<ReviewFile, 'text' | 'problems' | 'silences' | 'outline'>;

export function readReview(tree: Tree): ReviewParts {
  return { kind: 'review', of: wordAt(tree, 'of') };
}
