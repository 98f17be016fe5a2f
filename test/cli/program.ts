// Runs the command line as a process of its own, in a folder of its own, for tests.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { buildSync } from 'esbuild';

const root = resolve(import.meta.dirname, '../..');
let bundled: string | undefined;

/** One file of today's sources: a process starts from it in a tenth of the time that it takes to compile them. */
export function program(): string {
  if (bundled !== undefined) return bundled;
  bundled = join(root, '.cache/test-cli.mjs');
  buildSync({
    entryPoints: [join(root, 'src/cli/main.ts')],
    outfile: bundled,
    bundle: true,
    platform: 'node',
    format: 'esm',
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url); const __dirname = import.meta.dirname;",
    },
  });
  return bundled;
}

export interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs `swingwright` with these arguments in `cwd`. */
export function swingwright(args: readonly string[], cwd: string): Outcome {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program(), ...args], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined },
  });
  return { code: status, out: stdout, err: stderr };
}

/** A folder with these files, gone again after `use`. */
export function withFolder<T>(
  files: Readonly<Record<string, string | Uint8Array>>,
  use: (folder: string) => T,
): T {
  const folder = mkdtempSync(join(tmpdir(), 'swingwright-'));
  try {
    for (const [name, content] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), content);
    }
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const student = `student: 1
name: Ansa
hand: right
bag:
  eight iron: { kind: iron, loft: 36 deg }
`;

export const cleanRecord = `swing: 1
student: ansa.student.yaml
date: 2026-03-07
club: eight iron
delivery:
  path: 2 deg right by radar
  face: 1 deg left by radar
`;

/** The width of a stance given as an angle: an error at known characters. */
export const wrongRecord = cleanRecord.replace(
  'delivery:',
  'checkpoints:\n  address:\n    stance_width: 40 deg\ndelivery:',
);
