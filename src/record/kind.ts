// Tells the kind of a file by the suffix of its address, or of one not saved yet by its first line; knows nothing else of what stands in it.
import type { FileKind } from './document.ts';

const suffixes: readonly (readonly [string, FileKind])[] = [
  ['.swing.yaml', 'swing'],
  ['.student.yaml', 'student'],
  ['.template.yaml', 'template'],
  ['.faults.yaml', 'faults'],
  ['.review.yaml', 'review'],
];
const workspaceName = 'swingwright.yaml';

/** The key that holds the format version, by kind of file. */
export const versionKeys: Readonly<Record<FileKind, string>> = {
  swing: 'swing',
  student: 'student',
  template: 'template',
  faults: 'faults',
  review: 'review',
  workspace: 'swingwright',
};

const kinds = Object.keys(versionKeys) as FileKind[];
const version = new RegExp(`^(${Object.values(versionKeys).join('|')})[ \\t]*:[ \\t]*["']?\\d`, 'm');

/** True of what an editor has open and has not written to any folder yet. */
export function isUnsaved(uri: string): boolean {
  return uri.startsWith('untitled:');
}

/** The kind that a text gives itself by its version; a record where it has none yet. */
export function kindOfText(text: string): FileKind {
  const key = version.exec(text)?.[1];
  return kinds.find((kind) => versionKeys[kind] === key) ?? 'swing';
}

/** The kind of the file at this URI or path, or undefined where the file is none of ours. */
export function kindOf(uri: string): FileKind | undefined {
  const path = uri.replace(/[?#].*$/s, '');
  const name = path.slice(path.lastIndexOf('/') + 1);
  if (name === workspaceName) return 'workspace';
  return suffixes.find(([suffix]) => name.endsWith(suffix) && name.length > suffix.length)?.[1];
}
