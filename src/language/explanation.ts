// The pages that explain finding codes, as Markdown, and the list of them; the words themselves stand with the checks.
import { checks, findCheck } from '../checks/table.ts';

/** Undefined where there is no such code. */
export function explain(code: string): string | undefined {
  const check = findCheck(code);
  if (check === undefined) return undefined;
  return `# ${check.title}\n\n\`${check.code}\` · ${check.severity}\n\n${check.explanation.trim()}\n`;
}

/** Every code with its title, in the order in which checks are listed. */
export function listCodes(): { readonly code: string; readonly title: string }[] {
  return checks.map(({ code, title }) => ({ code, title }));
}
