// Copies that `share` makes of files given as texts; for tests.
import assert from 'node:assert/strict';
import { createCache } from '../../src/analysis/cache.ts';
import type { Practice } from '../../src/analysis/lessons.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { share, type SharedFile, type ShareWish } from '../../src/analysis/share.ts';
import { shareSources } from '../../src/analysis/share-sources.ts';
import { practice as top } from '../samples.ts';

export const never = { throwIfAborted: () => undefined };

export function practiceOf(texts: ReadonlyMap<string, string>): Practice {
  return {
    files: new Map<string, FileState>(),
    load: (uri) => {
      const text = texts.get(uri);
      return Promise.resolve(text === undefined ? { kind: 'missing' } : { kind: 'text', text });
    },
    list: () => Promise.resolve([...texts.keys()]),
    signal: never,
    cache: createCache(),
  };
}

export async function shareAll(
  texts: ReadonlyMap<string, string>,
  { keep = new Set(), days = -100 }: Partial<Pick<ShareWish, 'keep' | 'days'>> = {},
) {
  const records = [...texts.keys()].filter((uri) => uri.endsWith('.swing.yaml')).sort();
  return share({ ...(await shareSources(records, practiceOf(texts))), days, keep });
}

export async function copiesOf(...args: Parameters<typeof shareAll>): Promise<readonly SharedFile[]> {
  const result = await shareAll(...args);
  assert.equal(result.kind, 'shared', JSON.stringify(result));
  return result.kind === 'shared' ? result.files : [];
}

export function written(files: readonly SharedFile[]): string {
  return files.map(({ path, text }) => `${path}\n${text}`).join('\n');
}

export const files = (entries: Record<string, string>): ReadonlyMap<string, string> =>
  new Map(Object.entries(entries).map(([path, text]) => [top + path, text]));
