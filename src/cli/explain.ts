// The `explain` command: what a finding code means, or the list of all codes.
import { checks } from '../checks/table.ts';
import { findNearest } from '../measure/nearest.ts';
import { printable } from './formats/text.ts';

/** Prints the explanation of `code`, or one line a code where none is given; 2 where there is no such code. */
export function explain(code: string | undefined): number {
  if (code === undefined) {
    const wide = Math.max(...checks.map((check) => check.code.length));
    process.stdout.write(checks.map((check) => `${check.code.padEnd(wide)}  ${check.title}\n`).join(''));
    return 0;
  }
  const check = checks.find((candidate) => candidate.code === code);
  if (check === undefined) {
    const nearest = findNearest(
      code,
      checks.map((candidate) => candidate.code),
    );
    const advice =
      nearest === undefined ? '`swingwright explain` lists them.' : `did you mean \`${nearest}\`?`;
    process.stderr.write(`swingwright: there is no finding code \`${printable(code)}\`; ${advice}\n`);
    return 2;
  }
  process.stdout.write(`${check.code} (${check.severity}): ${check.title}\n\n${check.explanation.trim()}\n`);
  return 0;
}
