// The sample files by URI, as an editor that has their folder open would give them; for tests that go through all of them.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { FileState } from '../src/analysis/result.ts';

const root = join(import.meta.dirname, '..', 'samples');
export const practice = 'file:///practice/';

function below(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? below(path) : [path];
  });
}

/** Texts by URI. */
export const samples: ReadonlyMap<string, string> = new Map(
  below(root).map((path) => [
    practice + relative(root, path).replaceAll('\\', '/'),
    readFileSync(path, 'utf8'),
  ]),
);

/** The samples that are YAML, by their path. */
export const yamlSamples: readonly (readonly [string, string])[] = [...samples].flatMap(([uri, text]) =>
  uri.endsWith('.yaml') ? [[uri.slice(practice.length), text] as const] : [],
);

/** The samples with some texts in the place of what stands there. */
export function snapshotWith(texts: Readonly<Record<string, string>>): { file: (uri: string) => FileState } {
  return {
    file: (uri) => {
      const text = texts[uri] ?? samples.get(uri);
      return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
    },
  };
}
