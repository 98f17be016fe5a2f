// Follows the worked examples of DEVELOPERS.md in a copy of the project: writes the files, makes the changes, generates, runs the new tests.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const page = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');

interface Block {
  readonly language: string;
  readonly path: string;
  readonly text: string;
}

const blocks: readonly Block[] = [...page.matchAll(/^```(ts|diff) (\S+)\n([^]*?)^```$/gm)].map(
  ([, language, path, text]) => ({ language: language!, path: path!, text: text! }),
);

/** Each part between `@@` stands in the file without its `+` lines, and once only. */
function changed(before: string, diff: string): string {
  return diff.split(/^@@\n/m).reduce((text, part) => {
    const lines = part.split('\n').slice(0, -1);
    const old = lines.filter((line) => !line.startsWith('+')).map((line) => `${line.slice(1)}\n`);
    const fresh = lines.map((line) => `${line.slice(1)}\n`);
    const pieces = text.split(old.join(''));
    assert.equal(pieces.length, 2, `expected this once:\n${old.join('')}`);
    return pieces.join(fresh.join(''));
  }, before);
}

describe('the worked examples of DEVELOPERS.md', function () {
  this.timeout(180_000);
  let copy: string;
  const run = (...args: readonly string[]): string => {
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: copy, encoding: 'utf8' });
    assert.equal(status, 0, `${args.join(' ')}:\n${stdout}\n${stderr}`);
    return stdout;
  };

  before(() => {
    copy = mkdtempSync(join(tmpdir(), 'swingwright-example-'));
    for (const part of ['src', 'schemas', 'build', 'test', 'package.json', 'tsconfig.json', '.mocharc.json'])
      cpSync(join(root, part), join(copy, part), {
        recursive: true,
        filter: (path) => !path.includes('node_modules') && !path.includes(join(root, 'test', 'host')),
      });
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  });

  after(() => {
    rmSync(copy, { recursive: true, force: true });
  });

  it('add a check, a quantity and a relation whose own tests pass', () => {
    assert.ok(blocks.length >= 5);
    for (const { language, path, text } of blocks) {
      const file = join(copy, path);
      writeFileSync(file, language === 'ts' ? text : changed(readFileSync(file, 'utf8'), text));
    }
    run('node_modules/tsx/dist/cli.mjs', 'build/generate.ts');
    const tests = blocks.map(({ path }) => path).filter((path) => path.startsWith('test/'));
    const names = 'carry-without-club|the mean speed|table of quantities';
    const out = run(
      'node_modules/mocha/bin/mocha.js',
      ...tests,
      'test/checks/table.test.ts',
      '--grep',
      names,
    );
    assert.match(out, /^ {2}carry-without-club$/m);
    assert.match(out, /explains carry-without-club/);
    assert.match(out, /^ {2}the mean speed$/m);
    assert.match(out, /has exactly the quantities that files may use/);
  });
});
