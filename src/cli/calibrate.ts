// The `calibrate` command: multipliers of drag and lift from a folder's own shots, printed and, if asked, kept.
import { readFile, writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import { calibrateFolder, type FolderCalibration } from '../analysis/calibration.ts';
import { createCache } from '../analysis/cache.ts';
import type { FileState } from '../analysis/result.ts';
import { kindOf } from '../record/kind.ts';
import { findFiles, loadFile, toPath, toUri } from '../disk/files.ts';
import { printable } from './formats/text.ts';

/** 0 where something was fitted (and written, if asked), 1 where the shots say too little, 2 where something could not be read or written. */
export async function calibrateCommand(
  folder: string,
  keep: 'print' | 'write',
  signal: AbortSignal,
): Promise<number> {
  const { uris, unusable } = await findFiles([folder]);
  for (const { path, reason } of unusable)
    process.stderr.write(`swingwright: cannot calibrate \`${printable(path)}\`: ${printable(reason)}.\n`);
  if (unusable.length > 0) return 2;
  const found = await calibrateFolder({
    folder: toUri(folder),
    records: uris.filter((uri) => kindOf(uri) === 'swing'),
    files: new Map<string, FileState>(),
    load: loadFile,
    signal,
    cache: createCache(),
  });
  process.stdout.write(found.lines.map((line) => `${printable(line)}\n`).join(''));
  if (found.outcome.kind === 'refused') return 1;
  return keep === 'write' ? await write(found) : 0;
}

async function write({ edit, workspace, isThere }: FolderCalibration): Promise<number> {
  if (edit === undefined) return 2;
  const path = toPath(workspace);
  const file = URI.parse(workspace).fsPath;
  try {
    const text = isThere ? await readFile(file, 'utf8') : '';
    // The edit counts from behind a byte order mark, which stays.
    const shift = text.startsWith('\ufeff') ? 1 : 0;
    const [start, end] = [edit.span.start + shift, edit.span.end + shift];
    await writeFile(file, text.slice(0, start) + edit.text + text.slice(end));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`swingwright: cannot write \`${printable(path)}\`: ${printable(reason)}.\n`);
    return 2;
  }
  process.stdout.write(`Written to ${printable(path)}.\n`);
  return 0;
}
