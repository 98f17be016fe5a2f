// Makes a folder with those above it on this machine's disk, step by step; knows nothing of what is to be written there.
import { mkdir, stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Also where it is there already. Rejects with a reason in words. Node's own way of making those above never ends where none can be made, as below `/proc`. */
export async function makeFolder(path: string): Promise<void> {
  const failure = await make(resolve(path));
  if (failure !== undefined) throw new Error(`cannot make the folder \`${path}\`: ${failure}`);
}

/** What stands in the way, in words. */
async function make(path: string): Promise<string | undefined> {
  const code = await codeOf(mkdir(path));
  if (code === undefined) return undefined;
  const info = await stat(path).catch(() => undefined);
  if (info !== undefined) return info.isDirectory() ? undefined : 'a file of its name is there';
  const above = dirname(path);
  if (code === 'ENOENT' && above !== path) {
    const failure = await make(above);
    return failure ?? reasonFor(await codeOf(mkdir(path)));
  }
  return reasonFor(code);
}

async function codeOf(making: Promise<unknown>): Promise<string | undefined> {
  return making.then(
    () => undefined,
    (error: unknown) => (error instanceof Error && 'code' in error ? String(error.code) : String(error)),
  );
}

function reasonFor(code: string | undefined): string | undefined {
  switch (code) {
    case undefined:
    case 'EEXIST':
      return undefined;
    case 'ENOTDIR':
      return 'a file stands where a folder above it would be';
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return 'this user may not write there';
    case 'ENOENT':
      return 'no folder can be made there';
    default:
      return code;
  }
}
