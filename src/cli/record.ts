// Reads one record, with all that it refers to, for a command that looks at a single one.
import { createCache } from '../analysis/cache.ts';
import type { Analysis, FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { loadFile, toUri } from '../disk/files.ts';
import { printable } from './formats/text.ts';

/** Undefined, with the reason on standard error, where there is no such file or it is no record. */
export async function analyseRecord(path: string, signal: AbortSignal): Promise<Analysis | undefined> {
  const uri = toUri(path);
  const own = await loadFile(uri);
  if (own.kind !== 'text') {
    const reason = own.kind === 'missing' ? 'there is no such file' : own.reason;
    process.stderr.write(`swingwright: cannot read \`${printable(path)}\`: ${printable(reason)}.\n`);
    return undefined;
  }
  const files = new Map<string, FileState>([[uri, own]]);
  const analysis = await settle(uri, files, loadFile, signal, createCache());
  if (analysis.derivation !== undefined) return analysis;
  process.stderr.write(
    `swingwright: \`${printable(path)}\` is not a swing record; expected a file that ends in \`.swing.yaml\`.\n`,
  );
  return undefined;
}
