// Says why a file is not read to its end, so that nothing is concluded from what was left of it; knows no kind of file.
import type { SwingwrightDocument } from './document.ts';

/** What was found, as in "unresolved merge conflict marks"; undefined of a file that was read to its end. */
export function brokenIn({ problems }: Pick<SwingwrightDocument, 'problems'>): string | undefined {
  return problems.find(({ code }) => isBreaking(code))?.found;
}

/** Whether what stands behind such a finding may have gone unread. */
export function isBreaking(code: string): boolean {
  return breaking.has(code);
}

/** Where YAML was repaired, nobody can be sure what a stretch of text was meant to be. */
const breaking: ReadonlySet<string> = new Set([
  'yaml-syntax',
  'too-deep',
  'too-many-aliases',
  'file-too-large',
  'unreadable-characters',
  'unsupported-version',
]);
