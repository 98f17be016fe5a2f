// The server as another editor meets it: Neovim with the set-up of the README, and the set-ups themselves.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';
import { buildSync } from 'esbuild';
import { program } from '../cli/program.ts';
import { findNeovim } from './find-neovim.ts';

const root = resolve(import.meta.dirname, '../..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

function blockOf(language: string): string {
  const found = new RegExp(`\`\`\`${language}\n([^]*?)\n\`\`\``).exec(readme)?.[1];
  assert.ok(found, `README.md has no block of ${language}`);
  return found;
}

interface Probe {
  readonly error?: string;
  readonly attached: boolean;
  readonly diagnostics: readonly string[];
  readonly hover: string;
  readonly symbols: number;
  readonly completion: readonly string[];
  readonly actions: readonly string[];
  readonly mended: readonly string[];
  readonly left: readonly string[];
}

const record = [
  'swing: 1',
  'student: mira.student.yaml',
  'date: 2026-05-14',
  'club: hybrid',
  'delivery:',
  '  attack: 3 dge down by radar # steep',
  '  path: 2 deg right by radr',
];
const student = 'student: 1\nhand: right\nbag: { hybrid: { kind: hybrid, loft: 22 deg } }\n';

describe('the set-ups for other editors', () => {
  it('name every kind of file that VS Code knows as ours', () => {
    const { contributes } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      contributes: { languages: { extensions: string[]; filenames: string[] }[] };
    };
    const [ours] = contributes.languages;
    const names = [...ours!.extensions.map((suffix) => `*${suffix}`), ...ours!.filenames].sort();
    const quoted = (text: string): readonly string[] =>
      [...text.matchAll(/['"]([^'"\n]*\.yaml)['"]/g)].map(([, name]) => name!).sort();
    assert.deepEqual(quoted(blockOf('lua')), names);
    assert.deepEqual(quoted(blockOf('toml')), names);
  });

  it('start the server by the command that there is', () => {
    assert.match(blockOf('lua'), /cmd = \{ 'swingwright', 'serve' \}/);
    assert.match(blockOf('toml'), /command = "swingwright"\nargs = \["serve"\]/);
  });
});

describe('Neovim with the set-up of the README', function () {
  this.timeout(300_000);
  let folder: string;
  let found: Probe;

  before(function () {
    const neovim = findNeovim();
    if (neovim === undefined) {
      console.log('    Neovim is not here and can be installed only on Debian as root: this is skipped.');
      this.skip();
    }
    folder = mkdtempSync(join(tmpdir(), 'swingwright-neovim-'));
    const [bin, lesson] = [join(folder, 'bin'), join(folder, 'lesson')];
    for (const part of [bin, lesson]) mkdirSync(part);
    copyFileSync(program(), join(bin, 'cli.mjs'));
    buildSync({
      entryPoints: [join(root, 'src/server/node.ts')],
      outfile: join(bin, 'server.cjs'),
      bundle: true,
      platform: 'node',
      format: 'cjs',
    });
    const command = `#!/bin/sh\nexec "${process.execPath}" "${join(bin, 'cli.mjs')}" "$@"\n`;
    writeFileSync(join(bin, 'swingwright'), command, { mode: 0o755 });
    writeFileSync(join(folder, 'init.lua'), blockOf('lua'));
    writeFileSync(join(lesson, 'a.swing.yaml'), `${record.join('\n')}\n`);
    writeFileSync(join(lesson, 'mira.student.yaml'), student);
    const out = join(folder, 'out.json');
    const args = ['--headless', '-n', '-i', 'NONE', '-u', join(folder, 'init.lua'), 'a.swing.yaml'];
    const { stderr } = spawnSync(
      neovim,
      [...args, '-c', `luafile ${join(import.meta.dirname, 'probe.lua')}`],
      {
        cwd: lesson,
        encoding: 'utf8',
        timeout: 120_000,
        env: {
          ...process.env,
          PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
          PROBE_OUT: out,
          XDG_CACHE_HOME: folder,
          XDG_STATE_HOME: folder,
          XDG_DATA_HOME: folder,
        },
      },
    );
    try {
      found = JSON.parse(readFileSync(out, 'utf8')) as Probe;
    } catch {
      assert.fail(`Neovim wrote nothing: ${stderr}`);
    }
    assert.equal(found.error, undefined);
  });

  after(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('shows findings, those about other files too', () => {
    assert.ok(found.attached);
    const codes = found.diagnostics.map((line) => line.slice(0, line.indexOf(':')));
    assert.ok(codes.includes('unknown-unit') && codes.includes('unknown-method'), codes.join(', '));
    // The student's file was read from the disk, for Neovim hands none over.
    assert.ok(!codes.includes('missing-reference'));
  });

  it('answers a hover and the outline', () => {
    assert.match(found.hover, /Attack angle/);
    assert.ok(found.symbols >= 4);
  });

  it('offers the mend, makes it without touching another line, and takes the finding away', () => {
    assert.ok(found.actions.includes('Write `deg`'), found.actions.join('; '));
    assert.deepEqual(
      found.mended,
      record.map((line) => line.replace('dge', 'deg')),
    );
    assert.ok(!found.left.some((line) => line.startsWith('unknown-unit')));
  });

  it('completes a method that is half typed', () => {
    assert.ok(found.completion.includes('radar'), found.completion.join(', '));
  });
});
