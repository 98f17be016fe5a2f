// Decides which findings a comment `# accept[code]: reason` silences; knows nothing of what the findings say.
import type { Check } from '../checks/check.ts';
import type { Silence } from '../record/document.ts';

/**
 * The silences that cover a finding of this check on this zero-based line, which is the one where the finding begins.
 * A check that is `lasting` has none: where the text cannot be read as meant, nobody can accept what it says.
 */
export function silencesOver(check: Check, line: number, silences: readonly Silence[]): readonly Silence[] {
  if (check.lasting === true) return [];
  return silences.filter((silence) => silence.line === line && silence.code.value === check.code);
}
