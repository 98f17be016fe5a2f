// The `values` command: what one file says, one value a line, for git to compare; it reads that one file alone.
import { kindOf } from '../record/kind.ts';
import { loadFile, toUri } from '../disk/files.ts';
import { valueLines } from '../record/value-lines.ts';
import { printable } from './formats/text.ts';

/** 0 where the lines are printed, 2 where the file cannot be read. */
export async function valuesCommand(path: string): Promise<number> {
  const uri = toUri(path);
  const state = await loadFile(uri);
  if (state.kind !== 'text') {
    process.stderr.write(
      `swingwright: cannot read \`${printable(path)}\`: ${state.kind === 'missing' ? 'it is not there' : printable(state.reason)}.\n`,
    );
    return 2;
  }
  // git gives a copy a name of its own, which ends as the file's does.
  const kind = kindOf(uri) ?? 'workspace';
  process.stdout.write(
    valueLines(kind, state.text)
      .map((line) => `${printable(line)}\n`)
      .join(''),
  );
  return 0;
}
