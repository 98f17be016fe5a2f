// The hover on the code in a comment that accepts a finding: what the code means.
import type { Analysis } from '../analysis/result.ts';
import { findCheck } from '../checks/table.ts';
import { code } from './markdown.ts';
import { holds } from './places.ts';
import type { Remark } from './hover.ts';

export function hoverOnCode({ document }: Analysis, offset: number): Remark | undefined {
  const silence = document.silences.find(({ code: { span } }) => holds(span, offset));
  if (silence === undefined) return undefined;
  const check = findCheck(silence.code.value);
  if (check === undefined)
    return { span: silence.code.span, lines: [`There is no finding ${code(silence.code.value)}.`] };
  const [first = ''] = check.explanation.trim().split(/\n\s*\n/);
  return {
    span: silence.code.span,
    lines: [
      `**${check.title}** (${check.severity})`,
      first.replace(/\s*\n\s*/g, ' '),
      `Accepted on line ${silence.line + 1}: it is not shown there.`,
    ],
  };
}
