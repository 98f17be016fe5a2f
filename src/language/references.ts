// The references of a document and what was read where they lead; resolves and reads nothing itself.
import type { Analysis } from '../analysis/result.ts';
import type { FileKind, Located, SwingwrightDocument } from '../record/document.ts';
import { referencesOf, resolveReference } from '../record/reference.ts';

export interface FollowedReference {
  /** As written, and where. */
  readonly text: Located<string>;
  /** The URI that it leads to. */
  readonly target: string;
  /** "student's file", "fault book": what stands there. */
  readonly opens: string;
  /** What was read there; undefined where nothing was, or where the analysis does not read such files. */
  readonly document: SwingwrightDocument | undefined;
}

const names: Readonly<Record<FileKind | 'any', string>> = {
  swing: 'record',
  student: "student's file",
  template: 'template',
  faults: 'fault book',
  review: 'review',
  workspace: 'workspace file',
  any: 'file of shots',
};

export function findReferences({ uri, document, subject }: Analysis): FollowedReference[] {
  const followed = [subject.student, subject.template, ...subject.faultBooks];
  return referencesOf(document).flatMap(({ path, expects }) => {
    const target = resolveReference(uri, path.value);
    if (target === undefined) return [];
    const found = followed.find((other) => other?.uri === target);
    return [{ text: path, target, opens: names[expects], document: found?.document }];
  });
}
