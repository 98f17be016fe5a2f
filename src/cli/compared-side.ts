// Reads one side of a comparison: a file, or a file as it stood at a git revision, with all that it refers to.
import { createCache } from '../analysis/cache.ts';
import type { Analysis, FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { loadFile, toPath, toUri } from '../disk/files.ts';
import { openRevision, revisioned } from '../disk/git.ts';
import { printable } from './formats/text.ts';

export interface Side {
  /** As the user would write it: "HEAD~1:samples/a.swing.yaml (3f2c9a1)". */
  readonly name: string;
  readonly analysis: Analysis;
}

interface Source {
  readonly name: string;
  readonly uri: string;
  readonly load: (uri: string) => Promise<FileState>;
}

/** Undefined where it cannot be read, with the reason on standard error unless it is to be read quietly. */
export async function readSide(
  given: string,
  signal: AbortSignal,
  how: 'aloud' | 'quietly' = 'aloud',
): Promise<Side | undefined> {
  const refuse = (path: string, reason: string): undefined =>
    how === 'aloud' ? refuseAloud(path, reason) : undefined;
  const source = await sourceOf(given);
  if (typeof source === 'string') return refuse(given, source);
  const own = await source.load(source.uri);
  if (own.kind !== 'text')
    return refuse(given, own.kind === 'missing' ? `there is no such file${whereOf(given)}` : own.reason);
  const files = new Map<string, FileState>([[source.uri, own]]);
  const analysis = await settle(source.uri, files, source.load, signal, createCache());
  return { name: source.name, analysis };
}

/** A file that is there is meant before a revision that may be called so. */
async function sourceOf(given: string): Promise<Source | string> {
  const asked = revisioned(given);
  const file = { name: toPath(toUri(given)), uri: toUri(given), load: loadFile };
  if (asked === undefined || (await loadFile(file.uri)).kind === 'text') return file;
  const revision = await openRevision(asked);
  if (typeof revision === 'string') return revision;
  const { uri, load, commit } = revision;
  return { uri, load, name: `${asked.revision}:${toPath(uri)} (${commit.slice(0, 7)})` };
}

function whereOf(given: string): string {
  return revisioned(given) === undefined ? '' : ' at that revision';
}

function refuseAloud(given: string, reason: string): undefined {
  process.stderr.write(`swingwright: cannot read \`${printable(given)}\`: ${printable(reason)}.\n`);
  return undefined;
}
