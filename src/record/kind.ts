// Tells the kind of a file by the suffix of its address; knows nothing of what stands in it.
import type { FileKind } from './document.ts';

const suffixes: readonly (readonly [string, FileKind])[] = [
  ['.swing.yaml', 'swing'],
  ['.student.yaml', 'student'],
  ['.template.yaml', 'template'],
  ['.faults.yaml', 'faults'],
  ['.review.yaml', 'review'],
];
const workspaceName = 'swingwright.yaml';

/** The kind of the file at this URI or path, or undefined where the file is none of ours. */
export function kindOf(uri: string): FileKind | undefined {
  const path = uri.replace(/[?#].*$/s, '');
  const name = path.slice(path.lastIndexOf('/') + 1);
  if (name === workspaceName) return 'workspace';
  return suffixes.find(([suffix]) => name.endsWith(suffix) && name.length > suffix.length)?.[1];
}
