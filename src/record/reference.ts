// Follows the paths that one file writes down to another by their text alone; whether anything is there is not known here.
import { URI, Utils } from 'vscode-uri';
import type { FileKind, Located, SwingwrightDocument } from './document.ts';

export interface Reference {
  readonly path: Located<string>;
  /** The kind of file that must stand there; 'any' for a file that is none of ours, such as a list of shots. */
  readonly expects: FileKind | 'any';
}

/** The URI that `path` names when it is written in the file at `baseUri`; undefined where it is not a relative path. */
export function resolveReference(baseUri: string, path: string): string | undefined {
  if (!isRelative(path)) return undefined;
  try {
    return Utils.joinPath(Utils.dirname(URI.parse(baseUri)), path).toString();
  } catch {
    return undefined;
  }
}

/** The path to write in the file at `from` for the file at `to`; undefined where none leads there. */
export function relativePath(from: string, to: string): string | undefined {
  const [own, other] = [URI.parse(from), URI.parse(to)];
  if (own.scheme !== other.scheme || own.authority !== other.authority) return undefined;
  const [folders, target] = [own.path.split('/').slice(0, -1), other.path.split('/')];
  let shared = 0;
  while (shared < folders.length && shared < target.length - 1 && folders[shared] === target[shared])
    shared += 1;
  const path = [...folders.slice(shared).map(() => '..'), ...target.slice(shared)].join('/');
  // What stands before a colon would be read as a scheme.
  return [path, `./${path}`].find(isRelative);
}

/** Every path that the document writes down, in the order of its keys. */
export function referencesOf(document: SwingwrightDocument): readonly Reference[] {
  switch (document.kind) {
    case 'swing':
      return present([
        [document.student, 'student'],
        [document.template, 'template'],
        [document.faultsFrom, 'faults'],
        [document.shotsFile, 'any'],
      ]);
    case 'faults':
      return present([[document.extends, 'faults']]);
    case 'review':
      return present([[document.of, 'swing']]);
    case 'student':
    case 'template':
    case 'workspace':
      return [];
  }
}

function present(
  paths: readonly (readonly [Located<string> | undefined, FileKind | 'any'])[],
): readonly Reference[] {
  return paths.flatMap(([path, expects]) => (path === undefined ? [] : [{ path, expects }]));
}

/** A drive letter, a scheme, a leading slash or a backslash would leave the file system that holds the record. */
function isRelative(path: string): boolean {
  return path.trim() !== '' && !/^[/\\]|^[A-Za-z][A-Za-z0-9+.-]*:|\\/.test(path) && !path.includes('\0');
}

/** The name of the file itself, as people read it. An editor's URI need not be well made. */
export function lastNameIn(uri: string): string {
  const last = uri.slice(uri.lastIndexOf('/') + 1);
  try {
    return decodeURIComponent(last);
  } catch {
    return last;
  }
}
