// Finds and reads the files that a command was asked to look at; knows nothing of what is in them.
import { readFile, stat } from 'node:fs/promises';
import { relative, resolve, sep } from 'node:path';
import { glob } from 'tinyglobby';
import { URI } from 'vscode-uri';
import type { FileState } from '../analysis/result.ts';
import { kindOf } from '../record/kind.ts';

const patterns = ['**/*.{swing,student,template,faults,review}.yaml', '**/swingwright.yaml'];

export interface Found {
  /** URIs, sorted by path, each once. */
  readonly uris: readonly string[];
  /** Paths that could not be used, with the reason in words. */
  readonly unusable: readonly { readonly path: string; readonly reason: string }[];
}

/** Every Swingwright file at or below the given paths; folders `node_modules` and `.git` are left out. */
export async function findFiles(paths: readonly string[]): Promise<Found> {
  const found = new Set<string>();
  const unusable: { path: string; reason: string }[] = [];
  for (const path of paths) {
    const at = resolve(path);
    const info = await stat(at).catch((error: unknown) => reasonFor(error));
    if (typeof info === 'string') {
      unusable.push({ path, reason: info });
    } else if (info.isDirectory()) {
      const below = await glob(patterns, {
        cwd: at,
        absolute: true,
        dot: false,
        ignore: ['**/node_modules/**', '**/.git/**'],
      });
      if (below.length === 0)
        unusable.push({ path, reason: 'it holds no Swingwright file (such as `lesson.swing.yaml`)' });
      for (const file of below) found.add(resolve(file));
    } else if (kindOf(toUri(at)) === undefined) {
      unusable.push({ path, reason: 'its name ends in none of the known suffixes (such as `.swing.yaml`)' });
    } else {
      found.add(at);
    }
  }
  return { uris: [...found].sort().map(toUri), unusable };
}

/** The text of a file as an editor shows it: UTF-8, byte-order mark left off. */
export async function loadFile(uri: string): Promise<FileState> {
  try {
    const bytes = await readFile(URI.parse(uri).fsPath);
    return { kind: 'text', text: new TextDecoder('utf-8').decode(bytes) };
  } catch (error) {
    const code = codeOf(error);
    return code === 'ENOENT' || code === 'ENOTDIR'
      ? { kind: 'missing' }
      : { kind: 'unreadable', reason: reasonFor(error) };
  }
}

export function toUri(path: string): string {
  return URI.file(resolve(path)).toString();
}

/** The path as the user would write it: relative to the working folder, with forward slashes. */
export function toPath(uri: string): string {
  const path = relative(process.cwd(), URI.parse(uri).fsPath) || '.';
  return path.split(sep).join('/');
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error ? String(error.code) : undefined;
}

function reasonFor(error: unknown): string {
  const words: Record<string, string> = {
    ENOENT: 'there is no such file or folder',
    ENOTDIR: 'there is no such file or folder',
    EACCES: 'it may not be read by this user',
    EPERM: 'it may not be read by this user',
    EISDIR: 'it is a folder',
    ELOOP: 'its links go round in a circle',
  };
  return words[codeOf(error) ?? ''] ?? (error instanceof Error ? error.message : String(error));
}
