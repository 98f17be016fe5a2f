// Holds every generated file against what the generator makes of schemas/quantities.yaml now.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { generate } from '../../build/registry/outputs.ts';

const root = resolve(import.meta.dirname, '../..');
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const source = read('schemas/quantities.yaml');

describe('generator', () => {
  let files: ReadonlyMap<string, string>;
  before(async () => {
    files = await generate(source);
  });

  it('finds every generated file up to date (else run `npx tsx build/generate.ts`)', () => {
    const differing = [...files].filter(([path, text]) => read(path) !== text).map(([path]) => path);
    assert.deepEqual(differing, []);
  });

  it('gives the same files twice', async () => {
    assert.deepEqual([...(await generate(source))], [...files]);
  });

  it('makes validators that need no module, no eval and no compiler', () => {
    const code = files.get('src/record/validators.generated.js') ?? '';
    assert.match(code, /export\s*\{/);
    assert.doesNotMatch(code, /\brequire\s*\(|\bimport\s|\beval\s*\(|new Function/);
  });

  it('names every quantity on the reference page', async () => {
    const { quantities } = await import('../../src/registry/generated.ts');
    const page = files.get('schemas/QUANTITIES.md') ?? '';
    for (const { id, checkpoint, key } of quantities) {
      assert.ok(page.includes(`\`${id}\``) || (checkpoint !== undefined && page.includes(`\`${key}\``)), id);
    }
  });

  const broken: readonly (readonly [string, (text: string) => string, RegExp])[] = [
    ['a unit of the wrong dimension', (t) => t.replace('unit: m/s', 'unit: kg'), /"kg" is a unit of mass/],
    [
      'a unit spelled otherwise',
      (t) => t.replace('unit: cm', 'unit: centimetres'),
      /not the printed spelling/,
    ],
    ['unknown direction words', (t) => t.replace('directions: along', 'directions: alnog'), /alnog/],
    ['an unknown key', (t) => t.replace('decimals: 1', 'decimal: 1'), /wrong shape/],
    ['a practice window at a checkpoint that has no such quantity', moveStance, /does not belong to top/],
    [
      'practice by club that leaves a kind out',
      (t) => t.replace(/driver: \[12, 62\],\s*/, ''),
      /needs driver, fairway, hybrid, iron, wedge/,
    ],
    ['a missing checkpoint', (t) => t.replace(/^ {2}takeaway: .*\n/m, ''), /checkpoints must be/],
  ];
  for (const [what, damage, message] of broken) {
    it(`refuses ${what} and says where`, async () => {
      const damaged = damage(source);
      assert.notEqual(damaged, source);
      await assert.rejects(generate(damaged), message);
    });
  }
});

function moveStance(text: string): string {
  return text.replace(/address: \[8, 80\]/, 'top: [8, 80]');
}
