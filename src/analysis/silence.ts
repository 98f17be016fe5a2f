// Decides which findings a comment `# accept[code]: reason` silences; knows nothing of what the findings say.
import type { Check } from '../checks/check.ts';
import type { Silence } from '../record/document.ts';

/** By the zero-based line that they cover, and there by code. */
export type SilencesByLine = ReadonlyMap<number, ReadonlyMap<string, readonly Silence[]>>;

export function silencesByLine(silences: readonly Silence[]): SilencesByLine {
  const lines = new Map<number, Map<string, Silence[]>>();
  for (const silence of silences) {
    const codes = lines.get(silence.line) ?? new Map<string, Silence[]>();
    lines.set(silence.line, codes);
    const alike = codes.get(silence.code.value);
    if (alike === undefined) codes.set(silence.code.value, [silence]);
    else alike.push(silence);
  }
  return lines;
}

/**
 * The silences that cover a finding of this check on this zero-based line, which is the one where the finding begins.
 * A check that is `lasting` has none: where the text cannot be read as meant, nobody can accept what it says.
 */
export function silencesOver(check: Check, line: number, silences: SilencesByLine): readonly Silence[] {
  if (check.lasting === true) return [];
  return silences.get(line)?.get(check.code) ?? [];
}
