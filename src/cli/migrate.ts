// The `migrate` command: brings files from an older format version to the present one; writes only where asked.
import { readFile, writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import { findFiles, toPath } from '../disk/files.ts';
import { kindOf } from '../record/kind.ts';
import { format, migrate } from '../record/migrate.ts';
import { printable } from './formats/text.ts';

/** 0 where every file is, or could be, of the present version; 1 where one cannot; 2 where one could not be read or written. */
export async function migrateCommand(paths: readonly string[], keep: 'write' | 'print'): Promise<number> {
  const { uris, unusable } = await findFiles(paths);
  for (const { path, reason } of unusable) complain(`cannot read \`${path}\`: ${reason}`);
  let code = unusable.length > 0 ? 2 : 0;
  for (const uri of uris) {
    try {
      code = Math.max(code, await migrateFile(uri, keep));
    } catch (error) {
      complain(
        `cannot migrate \`${toPath(uri)}\`: ${error instanceof Error ? error.message : String(error)}`,
      );
      code = 2;
    }
  }
  return code;
}

async function migrateFile(uri: string, keep: 'write' | 'print'): Promise<number> {
  const { fsPath } = URI.parse(uri);
  // Bytes that are no UTF-8 could not be written back as they were.
  const whole = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(fsPath));
  const mark = whole.startsWith('\ufeff') ? '\ufeff' : '';
  const result = migrate(kindOf(uri)!, whole.slice(mark.length));
  const say = (words: string): void =>
    void process.stdout.write(`${printable(`${toPath(uri)}: ${words}`)}\n`);
  switch (result.kind) {
    case 'present':
      say(`is of version ${format.version}, the present one`);
      return 0;
    case 'refused':
      say(result.reason);
      return 1;
    case 'moved':
      if (keep === 'write') await writeFile(fsPath, mark + result.text);
      say(
        `from version ${result.from} to ${format.version}${keep === 'write' ? '' : '; nothing was written'}`,
      );
      return 0;
  }
}

function complain(words: string): void {
  process.stderr.write(`swingwright: ${printable(words)}.\n`);
}
