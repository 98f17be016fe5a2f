// Brings a text from an older format version to the present one by edits of the keys that changed; everything else stays as it is.
import type { Span } from '../measure/measure.ts';
import type { FileKind } from './document.ts';
import { readTree } from './read-tree.ts';
import { versionKeys } from './kind.ts';
import type { MapTree, Tree } from './tree.ts';

export interface MigrationEdit {
  readonly span: Span;
  readonly text: string;
}

/** What changes from one version to the next; the version's own number is changed for it. */
export interface Migration {
  readonly kind: FileKind;
  readonly from: number;
  readonly edits: (tree: MapTree, text: string) => readonly MigrationEdit[];
}

/** Each step goes up by one version. */
export interface Format {
  readonly version: number;
  readonly migrations: readonly Migration[];
}

/** Version 1 is the first there is, so that nothing leads to it yet. */
export const format: Format = { version: 1, migrations: [] };

export type Migrated =
  | { readonly kind: 'present' }
  | { readonly kind: 'moved'; readonly from: number; readonly text: string }
  /** A version that no steps lead on from, or a text that YAML cannot read whole. */
  | { readonly kind: 'refused'; readonly reason: string };

export function migrate(kind: FileKind, original: string, known: Format = format): Migrated {
  const first = read(kind, original);
  if ('reason' in first) return { kind: 'refused', reason: first.reason };
  const { version: from } = first;
  if (from === known.version) return { kind: 'present' };
  if (from > known.version)
    return {
      kind: 'refused',
      reason: `found version ${from} of the format, and this Swingwright knows none after ${known.version}`,
    };
  let text = original;
  for (let version = from; version < known.version; version++) {
    const step = known.migrations.find((one) => one.kind === kind && one.from === version);
    if (step === undefined)
      return {
        kind: 'refused',
        reason: `found version ${version} of the format, from which nothing leads on`,
      };
    const now = read(kind, text);
    if ('reason' in now) return { kind: 'refused', reason: now.reason };
    const number = { span: now.versionSpan, text: String(version + 1) };
    text = applied(text, [number, ...step.edits(now.tree, text)]);
  }
  return { kind: 'moved', from, text };
}

/** The edits of a step that gives the key at `path` another name. */
export function renameKey(tree: Tree, path: readonly string[], to: string): readonly MigrationEdit[] {
  const [key, ...rest] = path;
  const pair = tree.kind === 'map' && key !== undefined ? tree.pairs.get(key) : undefined;
  if (pair === undefined) return [];
  return rest.length > 0 ? renameKey(pair.value, rest, to) : [{ span: pair.keySpan, text: to }];
}

interface ReadVersion {
  readonly tree: MapTree;
  readonly version: number;
  readonly versionSpan: Span;
}

function read(kind: FileKind, text: string): ReadVersion | { readonly reason: string } {
  const { tree, isDamaged } = readTree(text, []);
  if (isDamaged) return { reason: 'the text is not YAML; mend that first' };
  const version = tree?.kind === 'map' ? tree.pairs.get(versionKeys[kind])?.value : undefined;
  if (tree?.kind !== 'map' || version?.kind !== 'scalar' || !Number.isSafeInteger(version.plain))
    return { reason: `found no version; expected a whole number at \`${versionKeys[kind]}\`` };
  return { tree, version: version.plain as number, versionSpan: version.span };
}

function applied(text: string, edits: readonly MigrationEdit[]): string {
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
}
