// Holds every import in src/ against the table of floors in DEVELOPERS.md, and the core against what it must not reach.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { builtinModules } from 'node:module';
import ts from 'typescript';

const root = resolve(import.meta.dirname, '..');
const outermost = new Set(['disk', 'print', 'server', 'extension', 'cli']);

function allowedByFloor(): Map<string, Set<string>> {
  const table = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8').matchAll(
    /^\| `src\/(\w+)\/`\s*\| [^|]+ \| ([^|]+) \|$/gm,
  );
  return new Map(
    [...table].map(([, floor = '', allowed = '']) => [
      floor,
      new Set(allowed.split(',').map((name) => name.trim())),
    ]),
  );
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(tsx?|js|mjs)$/.test(entry.name))
    .filter(({ parentPath }) => !parentPath.split(sep).includes('node_modules'))
    .map((entry) => join(entry.parentPath, entry.name));
}

/** What a file imports: a floor's name, a package's name, or "node" for any built-in module in either spelling. */
function importsOf(file: string): string[] {
  const floor = relative(join(root, 'src'), file).split(sep)[0];
  return ts
    .preProcessFile(readFileSync(file, 'utf8'), true, true)
    .importedFiles.map(({ fileName }) => fileName)
    .map((name) => {
      if (name.startsWith('.')) return floorOrFile(resolve(dirname(file), name));
      if (name.startsWith('node:') || builtinModules.includes(name)) return 'node';
      return name.startsWith('@') ? name.split('/').slice(0, 2).join('/') : name.split('/')[0]!;
    })
    .filter((name) => name !== floor);
}

/** A floor's name, or the path from the root of the tree for what lies outside of src. */
function floorOrFile(path: string): string {
  const within = relative(join(root, 'src'), path);
  return within.startsWith('..') ? relative(root, path) : within.split(sep)[0]!;
}

describe('floors', () => {
  const allowed = allowedByFloor();
  const files = sourceFiles(join(root, 'src'));

  it('has a row in DEVELOPERS.md for each folder of src, and a folder for each row', () => {
    const folders = readdirSync(join(root, 'src'));
    assert.deepEqual([...allowed.keys()].sort(), folders.sort());
  });

  it('imports only what the floor may import', () => {
    const wrong = files.flatMap((file) => {
      const floor = relative(join(root, 'src'), file).split(sep)[0]!;
      return importsOf(file)
        .filter((name) => !allowed.get(floor)?.has(name) && !(outermost.has(floor) && name === 'node'))
        .map((name) => `${relative(root, file)} imports ${name}`);
    });
    assert.deepEqual(wrong, []);
  });

  it('keeps file system, network, clock, editor and protocol out of the core', () => {
    const reach =
      /\b(Date\.now|new Date\(\)|fetch\(|performance\.now|setTimeout|setInterval|process\.\w|Math\.random)/;
    const wrong = files
      .filter((file) => !outermost.has(relative(join(root, 'src'), file).split(sep)[0]!))
      .filter(
        (file) =>
          reach.test(readFileSync(file, 'utf8')) ||
          importsOf(file).some((n) => ['node', 'vscode'].includes(n) || n.startsWith('vscode-language')),
      )
      .map((file) => relative(root, file));
    assert.deepEqual(wrong, []);
  });

  it('opens every source file with one comment that says what it holds', () => {
    const wrong = files
      .filter((file) => !/^(#!.*\n)?(\/\/|\/\*)/.test(readFileSync(file, 'utf8')))
      .map((file) => relative(root, file));
    assert.deepEqual(wrong, []);
  });

  it('keeps files of the source, the tests and the build under 300 lines, generated ones aside', () => {
    const others = ['test', 'build'].flatMap((folder) => sourceFiles(join(root, folder)));
    assert.ok(others.length > 100);
    const wrong = [...files, ...others]
      .filter((file) => !/generated\b/.test(file))
      .filter((file) => readFileSync(file, 'utf8').split('\n').length > 300)
      .map((file) => relative(root, file));
    assert.deepEqual(wrong, []);
  });
});
