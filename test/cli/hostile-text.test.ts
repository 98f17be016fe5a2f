// Whatever a file, its name or an argument says, no command steers a terminal, a page or a spreadsheet by it, or falls over it.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { files, hostile, hostileName } from './hostile.ts';
import { swingwright, withFolder } from './program.ts';

type Kind = 'text' | 'json' | 'csv' | 'html';

// eslint-disable-next-line no-control-regex
const steering = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/;
const odd = `${hostileName}.swing.yaml`;

/** What is run, the exit code that its help promises for it, and what it writes. */
const runs: readonly (readonly [args: readonly string[], code: number, kind: Kind])[] = [
  ...(['text', 'lines'] as const).map((format) => [['check', '--format', format], 1, 'text'] as const),
  ...(['json', 'sarif', 'badge'] as const).map(
    (format) => [['check', '--format', format], 1, 'json'] as const,
  ),
  [['check', '--format', 'junit'], 1, 'html'],
  [['check', hostile], 2, 'text'],
  [['derive', 'a.swing.yaml'], 1, 'text'],
  [['derive', odd, '--format', 'json'], 1, 'json'],
  [['calibrate'], 1, 'text'],
  [['plan', 'a.swing.yaml'], 0, 'text'],
  [['plan', odd, '--format', 'json'], 0, 'json'],
  [['plan', 'a.swing.yaml', '--propose'], 1, 'text'],
  [['faults', 'a.swing.yaml'], 1, 'text'],
  [['faults', 'a.swing.yaml', '--format', 'json'], 1, 'json'],
  [['claims', 'a.swing.yaml'], 0, 'text'],
  [['lessons'], 0, 'text'],
  [['lessons', '--format', 'json'], 0, 'json'],
  [['outcome', 'b.swing.yaml'], 0, 'text'],
  [['predictions'], 0, 'text'],
  [['compare', 'a.swing.yaml', odd], 0, 'text'],
  [['compare', 'a.swing.yaml', 'b.swing.yaml', '--format', 'json'], 0, 'json'],
  [['compare', 'a.swing.yaml', odd, '--format', 'html'], 0, 'html'],
  [['progress', 's.student.yaml'], 0, 'text'],
  [['progress', 's.student.yaml', '--format', 'html'], 0, 'html'],
  [['progress', 's.student.yaml', '--club', hostile], 2, 'text'],
  [['audit', odd], 0, 'text'],
  [['audit', 'a.swing.yaml', '--format', 'json'], 0, 'json'],
  [['audit', odd, '--format', 'csv'], 0, 'csv'],
  [['audit', odd, '--format', 'html'], 0, 'html'],
  [['methods'], 0, 'text'],
  [['review', 'a.swing.yaml', '--all'], 0, 'text'],
  [['review', 'a.swing.yaml', '--all', '--format', 'json'], 0, 'json'],
  [['review', odd, '--about', hostile, '--text', hostile, '--author', hostile], 1, 'text'],
  [['review', odd, '--about', 'delivery.path', '--text', hostile, '--author', hostile], 0, 'text'],
  [['draw', odd, '--out', 'pictures', '--picture', hostile], 2, 'text'],
  [['draw', odd, '--out', `out${hostileName}`], 0, 'text'],
  [['fix', '.', '--dry-run'], 0, 'text'],
  [['migrate', '.'], 0, 'text'],
  [['schema', '--out', `schemas${hostileName}`], 0, 'text'],
  [['explain', hostile], 2, 'text'],
  [['explain', odd, 'delivery.path'], 0, 'text'],
  [['references', 'delivery.path'], 0, 'text'],
  [['references', hostile, '--format', 'json'], 0, 'json'],
  [['rename', hostile, 'x', '--fault'], 1, 'text'],
  [['next', odd], 0, 'text'],
  [['new', 'student', hostile], 0, 'text'],
  [['handout', odd], 0, 'html'],
  [['share', 'a.swing.yaml', odd, '--out', `copies${hostileName}`], 0, 'text'],
  [['values', odd], 0, 'text'],
  [['merge', 'a.swing.yaml', odd, 'b.swing.yaml', '--ours', hostile], 1, 'text'],
  [['git-setup'], 0, 'text'],
  [[hostile], 2, 'text'],
];

const holds: Readonly<Record<Kind, (out: string) => void>> = {
  text: () => undefined,
  json: (out) => void JSON.parse(out),
  csv: (out) => {
    const cells: string[] = [];
    Papa.parse(out, { delimiter: ',', skipEmptyLines: true, step: ({ data }) => cells.push(...data) });
    assert.ok(cells.length > 10);
    for (const cell of cells) assert.ok(!/^[=@+\t-]/.test(cell) || Number.isFinite(Number(cell)), cell);
  },
  html: (out) => assert.doesNotMatch(out, /<script|<b>x/),
};

describe('on hostile text', function () {
  this.timeout(1_200_000);

  it('every command keeps to its exit codes and steers nothing', () =>
    withFolder(files, (folder) => {
      spawnSync('git', ['init', '-q'], { cwd: folder });
      const wrong: string[] = [];
      for (const [args, expected, kind] of runs) {
        const { code, out, err } = swingwright(args, folder);
        const name = `${args.map((arg) => JSON.stringify(arg)).join(' ')} gave ${code}`;
        const fail = (what: string): number => wrong.push(`${name}: ${what}`);
        if (code !== expected) fail(`expected ${expected}; ${JSON.stringify(err.slice(0, 300))}`);
        const sign = steering.exec(out + err);
        if (sign !== null)
          fail(`${JSON.stringify((out + err).slice(Math.max(0, sign.index - 60), sign.index + 20))} steers`);
        if (/\n\s+at \S+ ?\(|node:internal|TypeError|RangeError/.test(err)) fail(err);
        try {
          holds[kind](out);
        } catch (error) {
          fail(error instanceof Error ? error.message.slice(0, 300) : String(error));
        }
      }
      assert.deepEqual(wrong, []);
      const pictures = readdirSync(join(folder, `out${hostileName}`));
      assert.ok(pictures.length > 0);
      for (const name of pictures)
        assert.doesNotMatch(
          readFileSync(join(folder, `out${hostileName}`, name), 'utf8'),
          /<script|<b>x/,
          name,
        );
      for (const name of readdirSync(join(folder, `copies${hostileName}`), {
        recursive: true,
        encoding: 'utf8',
      }))
        if (/\.yaml$/.test(name))
          assert.doesNotMatch(
            readFileSync(join(folder, `copies${hostileName}`, name), 'utf8'),
            /alert|red/,
            name,
          );
    }));
});
