// Merges three texts as the merge driver does; for tests.
import assert from 'node:assert/strict';
import { merge, type Merged } from '../../src/record/merge.ts';

export function merged(base: string, ours: string, theirs: string): Merged {
  const result = merge({ base, ours, theirs, names: ['ours', 'theirs'], markLength: 7 });
  assert.ok(result, 'cannot be merged by key');
  return result;
}
