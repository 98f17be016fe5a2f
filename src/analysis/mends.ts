// Chooses the mends that can be made at once: the one preferred fix of each finding, within the file itself, none touching another.
import type { Fix } from '../checks/check.ts';
import type { Analysis, Finding } from './result.ts';

export interface Mend {
  readonly finding: Finding;
  readonly fix: Fix;
}

/** In the order of the findings; `isWanted` says which codes. What has several obvious mends has none. */
export function mendsOf(analysis: Analysis, isWanted: (code: string) => boolean): readonly Mend[] {
  const waiting = waitingCodes(analysis);
  return chosenOf(analysis, (code) => isWanted(code) && !waiting.has(code));
}

/** Those that are not made as long as the workspace file cannot be read whole: what looks misspelt may be declared there. */
export function waitingMends(analysis: Analysis, isWanted: (code: string) => boolean): readonly Mend[] {
  const waiting = waitingCodes(analysis);
  return chosenOf(analysis, (code) => isWanted(code) && waiting.has(code));
}

/** What is found of a name that the workspace could have declared. */
const ofNames: ReadonlySet<string> = new Set(['unknown-quantity', 'unknown-key', 'unknown-method']);
/** The workspace file's own keys are what is mended first. */
const ofNamesInWorkspace: ReadonlySet<string> = new Set(['unknown-quantity']);
/** These only remark on what is declared well enough. */
const remarks: ReadonlySet<string> = new Set(['bare-number', 'bare-direction', 'no-value-yet']);
const none: ReadonlySet<string> = new Set();

function waitingCodes({ document, subject: { workspace } }: Analysis): ReadonlySet<string> {
  const isWhole = workspace?.document.problems.every(({ code }) => remarks.has(code)) ?? true;
  if (isWhole) return none;
  return document.kind === 'workspace' ? ofNamesInWorkspace : ofNames;
}

function chosenOf({ uri, findings }: Analysis, isWanted: (code: string) => boolean): readonly Mend[] {
  const chosen: Mend[] = [];
  for (const finding of findings) {
    const [fix, ...others] = finding.fixes.filter(({ preferred }) => preferred);
    if (fix === undefined || others.length > 0 || !isWanted(finding.code)) continue;
    if (fix.edits.some((edit) => edit.uri !== uri)) continue;
    if (chosen.every((mend) => !meet(mend.fix, fix))) chosen.push({ finding, fix });
  }
  return chosen;
}

/** Edits that touch are made one after the other, for the second may be another one by then. */
function meet(a: Fix, b: Fix): boolean {
  return a.edits.some(({ span }) =>
    b.edits.some((other) => span.start <= other.span.end && other.span.start <= span.end),
  );
}
