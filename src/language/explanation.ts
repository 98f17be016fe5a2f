// The page that explains a finding code, as Markdown; the words themselves stand with the check.
import { findCheck } from '../checks/table.ts';

/** Undefined where there is no such code. */
export function explain(code: string): string | undefined {
  const check = findCheck(code);
  if (check === undefined) return undefined;
  return `# ${check.title}\n\n\`${check.code}\` · ${check.severity}\n\n${check.explanation.trim()}\n`;
}
