// Lays the parts of a check's explanation out as Markdown, the same way for all; knows no check.

/** One text, taken as `lesson.swing.yaml`, or several files by name, of which the first is the one that is checked. */
export type Example = string | Readonly<Record<string, string>>;

export interface ExplanationParts {
  /** What was found. */
  readonly found: string;
  /** Why it matters, and what to do. */
  readonly matters: string;
  readonly raises?: Example;
  readonly accepts?: Example;
  /** Where the rule comes from. */
  readonly source: string;
}

const exampleFileName = 'lesson.swing.yaml';

/** Markdown; each example is a fenced block whose info string names its file, under "Raises it:" or "Does not:". */
export function explain(parts: ExplanationParts): string {
  return [
    `${parts.found} ${parts.matters}`,
    ...exampleLines('Raises it:', parts.raises),
    ...exampleLines('Does not:', parts.accepts),
    `Source: ${parts.source}`,
  ].join('\n\n');
}

function exampleLines(heading: string, example: Example | undefined): readonly string[] {
  if (example === undefined) return [];
  const files = typeof example === 'string' ? { [exampleFileName]: example } : example;
  const blocks = Object.entries(files).map(([name, text]) => `\`\`\`yaml ${name}\n${text.trim()}\n\`\`\``);
  return [heading, ...blocks];
}
