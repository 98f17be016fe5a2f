// Writes everything generated from schemas/quantities.yaml; with --check writes nothing and fails where a file differs.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { generate } from './registry/outputs.ts';

const root = new URL('../', import.meta.url);
const read = (path: string): string | undefined => {
  const file = fileURLToPath(new URL(path, root));
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined;
};

const files = await generate(read('schemas/quantities.yaml') ?? '');
const differing = [...files].filter(([path, text]) => read(path) !== text);

if (process.argv.includes('--check')) {
  for (const [path] of differing) console.error(`${path} differs from what schemas/quantities.yaml gives.`);
  process.exitCode = differing.length === 0 ? 0 : 1;
} else {
  for (const [path, text] of differing) writeFileSync(fileURLToPath(new URL(path, root)), text);
  console.log(`${differing.length} of ${files.size} files written.`);
}
