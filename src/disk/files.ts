// Finds and reads files on this machine's disk, for the command line and for a server that nobody hands files to; knows nothing of what is in them.
import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { URI } from 'vscode-uri';
import type { FileState } from '../analysis/result.ts';
import { kindOf } from '../record/kind.ts';

export interface Found {
  /** URIs, sorted by path, each once. */
  readonly uris: readonly string[];
  /** Paths that could not be used, with the reason in words. */
  readonly unusable: readonly { readonly path: string; readonly reason: string }[];
}

/** Every Swingwright file at or below the given paths; `node_modules` and what begins with a dot are left out. */
export async function findFiles(paths: readonly string[]): Promise<Found> {
  const found = new Set<string>();
  const unusable: { path: string; reason: string }[] = [];
  for (const path of paths) {
    const at = resolve(path);
    const info = await stat(at).catch((error: unknown) => reasonFor(error));
    if (typeof info === 'string') {
      unusable.push({ path, reason: info });
    } else if (info.isDirectory()) {
      const below = await filesBelow(at, isOurs);
      if (below.files.length === 0 && below.unusable.length === 0)
        unusable.push({ path, reason: 'it holds no Swingwright file (such as `lesson.swing.yaml`)' });
      for (const file of below.files) found.add(file);
      unusable.push(...below.unusable);
    } else if (kindOf(toUri(at)) === undefined) {
      unusable.push({ path, reason: 'its name ends in none of the known suffixes (such as `.swing.yaml`)' });
    } else if (!info.isFile()) {
      unusable.push({ path, reason: notRegular });
    } else {
      found.add(at);
    }
  }
  return { uris: [...found].sort().map(toUri), unusable };
}

/** Swingwright's files and those that may hold shots, at or below the folder at this URI, sorted; none where it cannot be read. */
export async function listFolder(folder: string): Promise<readonly string[]> {
  const { scheme, fsPath } = URI.parse(folder);
  if (scheme !== 'file') return [];
  const { files } = await filesBelow(fsPath, (path) => isOurs(path) || isTable(path));
  return files.sort().map(toUri);
}

/** Swingwright's files in the folder at this URI itself, sorted; none where it cannot be read. */
export async function listBeside(folder: string): Promise<readonly string[]> {
  const { scheme, fsPath } = URI.parse(folder);
  if (scheme !== 'file') return [];
  const names = await readdir(fsPath).catch(() => []);
  return names
    .map((name) => join(fsPath, name))
    .filter(isOurs)
    .sort()
    .map(toUri);
}

function isOurs(path: string): boolean {
  return kindOf(toUri(path)) !== undefined;
}

function isTable(path: string): boolean {
  return /\.[ct]sv$/i.test(path);
}

const notRegular = 'it is not a regular file';

interface Below {
  readonly files: string[];
  readonly unusable: { path: string; reason: string }[];
  /** Real paths of folders and files, so that none counts twice where links go round. */
  readonly seen: Set<string>;
  /** Links to folders, followed once every folder that stands there itself has been looked through. */
  readonly links: string[];
  readonly isWanted: (path: string) => boolean;
}

/** What a folder holds. A link that leads nowhere is unusable whatever it is called, for it may stand for a folder. */
async function filesBelow(top: string, isWanted: Below['isWanted']): Promise<Below> {
  const below: Below = { files: [], unusable: [], seen: new Set(), links: [top], isWanted };
  for (let folder = below.links.shift(); folder !== undefined; folder = below.links.shift())
    await lookThrough(folder, below);
  return below;
}

async function lookThrough(folder: string, below: Below): Promise<void> {
  const { files, unusable, seen, links, isWanted } = below;
  const isNew = async (path: string): Promise<boolean> => {
    const real = await realpath(path);
    return !seen.has(real) && Boolean(seen.add(real));
  };
  try {
    if (!(await isNew(folder))) return;
    const entries = await readdir(folder, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (entry.name.startsWith('.') || entry.name === 'node_modules') continue;
      const path = join(folder, entry.name);
      const wanted = isWanted(path);
      if (entry.isDirectory()) await lookThrough(path, below);
      else if (entry.isSymbolicLink()) {
        const target = await stat(path).catch((error: unknown) => brokenLink(error));
        if (typeof target === 'string') unusable.push({ path: toPath(toUri(path)), reason: target });
        else if (target.isDirectory()) links.push(path);
        else if (wanted) files.push(path);
      } else if (wanted && !entry.isFile()) unusable.push({ path: toPath(toUri(path)), reason: notRegular });
      else if (wanted && (await isNew(path))) files.push(path);
    }
  } catch (error) {
    unusable.push({ path: toPath(toUri(folder)), reason: reasonFor(error) });
  }
}

function brokenLink(error: unknown): string {
  return codeOf(error) === 'ENOENT' ? 'its link leads nowhere' : reasonFor(error);
}

/** The text of a file as an editor shows it: UTF-8, byte-order mark left off. */
export async function loadFile(uri: string): Promise<FileState> {
  try {
    const { fsPath } = URI.parse(uri);
    // Reading from a pipe would wait for ever.
    const info = await stat(fsPath);
    if (!info.isFile() && !info.isDirectory()) return { kind: 'unreadable', reason: notRegular };
    const bytes = await readFile(fsPath);
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
