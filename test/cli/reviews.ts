// Runs the `review` command on a short lesson and reads what it lists; for tests.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright } from './program.ts';

export const lesson = `swing: 1
club: hybrid
delivery:
  face: 1 deg right by radar   # held
  path: { value: 2 deg left, by: radar }
`;
export const name = 'a.swing.yaml';

interface Listed {
  readonly threads: readonly {
    readonly id: string;
    readonly about: string;
    readonly state: string;
    readonly line: number | null;
    readonly changed: boolean;
    readonly now: string | null;
    readonly file: string;
  }[];
  readonly signOffs: readonly { readonly by: string; readonly void: boolean }[];
}

export function run(folder: string, ...args: readonly string[]) {
  return swingwright(['review', ...args], folder);
}

export function done(folder: string, ...args: readonly string[]): string {
  const { code, out, err } = run(folder, ...args, '--author', 'Ida');
  assert.deepEqual([code, err], [0, '']);
  return out;
}

export function listed(folder: string, path = name): Listed {
  const { code, out, err } = run(folder, path, '--all', '--format', 'json');
  assert.deepEqual([code, err], [0, '']);
  return JSON.parse(out) as Listed;
}

export const read = (folder: string, file: string): string => readFileSync(join(folder, file), 'utf8');
