// Makes text safe to stand in Markdown; knows nothing of what is shown.

/** User text as literal Markdown, on one line: nothing in it can start a link, an image, a command or a tag. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/[\\`*_{}[\]()#+\-.!|<>~&]/g, (sign) =>
      sign === '<' ? '&lt;' : sign === '&' ? '&amp;' : `\\${sign}`,
    );
}

/** User text in backticks, fenced by more backticks than it holds. */
export function code(text: string): string {
  const flat = text.replace(/\s+/g, ' ');
  const longest = Math.max(0, ...[...flat.matchAll(/`+/g)].map(([run]) => run.length));
  if (longest === 0) return `\`${flat}\``;
  const fence = '`'.repeat(longest + 1);
  return `${fence} ${flat} ${fence}`;
}
