// Runs the transcripts that the README shows: each command prints the lines below it, in order; `…` stands for lines that are left out.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { swingwright } from './cli/program.ts';

const root = resolve(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

interface Step {
  readonly command: string;
  readonly lines: readonly string[];
}

function transcripts(): readonly Step[] {
  const blocks = [...readme.matchAll(/^```console\n(.*?)^```$/gms)].map(([, block = '']) => block);
  return blocks.flatMap((block) =>
    block
      .split(/^\$ /m)
      .slice(1)
      .map((step) => {
        const [command = '', ...lines] = step.trimEnd().split('\n');
        return { command, lines };
      }),
  );
}

/** Each stretch between two `…` stands in the output as it is, after the one before it. */
function assertShows(output: string, lines: readonly string[]): void {
  const said = output
    .trimEnd()
    .split('\n')
    .map((line) => line.trimEnd());
  let from = 0;
  let isAnywhere = false;
  for (const line of lines) {
    if (line.trim() === '…') {
      isAnywhere = true;
      continue;
    }
    const at = said.indexOf(line.trimEnd(), from);
    assert.ok(at >= 0, `not in the output, or not in this order: ${line}\n\n${output}`);
    assert.ok(isAnywhere || at === from, `lines are left out before: ${line}\n\n${output}`);
    [from, isAnywhere] = [at + 1, false];
  }
  assert.ok(isAnywhere || from === said.length, `more was printed than shown:\n${output}`);
}

describe('the README', () => {
  const steps = transcripts();
  let folder = '';
  before(() => {
    folder = mkdtempSync(join(tmpdir(), 'swingwright-readme-'));
    cpSync(join(root, 'samples'), join(folder, 'samples'), { recursive: true });
  });
  after(() => rmSync(folder, { recursive: true, force: true }));

  it('shows a worked lesson', () => {
    const shown = steps.map(({ command }) => command.split(' ')[1]);
    assert.ok(['faults', 'plan', 'outcome'].every((command) => shown.includes(command)));
  });

  for (const { command, lines } of steps)
    it(`shows what \`${command}\` prints`, () => {
      const [program, ...args] = command.split(' ');
      assert.equal(program, 'swingwright');
      const { code, out, err } = swingwright(args, folder);
      assert.equal(err, '');
      assert.equal(code, 0);
      assertShows(out, lines);
    });
});
