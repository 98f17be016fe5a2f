// Tests of the `schema` command: its schemas take every sample, as an independent validator reads them, and refuse slips.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { parse } from 'yaml';
import { schemaCommand } from '../../src/cli/schema.ts';

const samples = new URL('../../samples', import.meta.url).pathname;
const never = new AbortController().signal;

describe('swingwright schema', () => {
  const out = mkdtempSync(join(tmpdir(), 'schemas-'));
  const validators = new Map<string, ValidateFunction>();
  const ids = new Map<string, string>();

  before(async function () {
    // A schema of four thousand lines takes a while to compile on a busy machine.
    this.timeout(120_000);
    assert.equal(await quietly(() => schemaCommand(join(samples, 'tove'), out, never)), 0);
    for (const name of readdirSync(out)) {
      const schema = JSON.parse(readFileSync(join(out, name), 'utf8')) as { $id: string };
      ids.set(name.split('.')[0]!, schema.$id);
      validators.set(
        name.split('.')[0]!,
        new Ajv2020({ allowUnionTypes: true, strict: true }).compile(schema),
      );
    }
  });
  after(() => rmSync(out, { recursive: true }));

  it('writes one for each kind of file, with an id and the version of the format', () => {
    assert.deepEqual([...ids.keys()].sort(), [
      'faults',
      'review',
      'student',
      'swing',
      'template',
      'workspace',
    ]);
    assert.equal(ids.get('faults'), 'urn:swingwright:schema:faults:1');
    assert.match(ids.get('swing')!, /^urn:swingwright:schema:swing:1:own-[0-9a-f]{8}$/);
  });

  it('takes every sample, own quantities included', () => {
    const files = readdirSync(samples, { recursive: true, encoding: 'utf8' });
    const told = files.flatMap((file) => {
      const kind = file.endsWith('swingwright.yaml') ? 'workspace' : /\.([a-z]+)\.yaml$/.exec(file)?.[1];
      const validate = validators.get(kind ?? '');
      // The record with mistakes planted on purpose has a misspelt key among them.
      if (validate === undefined || file.startsWith('bram')) return [];
      assert.ok(
        validate(parse(readFileSync(join(samples, file), 'utf8'))),
        `${file}: ${JSON.stringify(validate.errors)}`,
      );
      return [file];
    });
    assert.ok(told.length >= 8, told.join(', '));
  });

  it('refuses a misspelt own quantity and a long form that is none', () => {
    const swing = validators.get('swing')!;
    assert.ok(swing({ swing: 1, checkpoints: { impact: { lead_heel: '1 cm' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heal: '1 cm' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heel: { valeu: '1 cm' } } } }));
  });

  it('says so where it cannot write', async () => {
    assert.equal(await quietly(() => schemaCommand(samples, join(out, 'swing.schema.json'), never)), 2);
  });
});

async function quietly(run: () => Promise<number>): Promise<number> {
  const streams = [process.stdout, process.stderr];
  for (const stream of streams) stream.write = () => true;
  try {
    return await run();
  } finally {
    // The method itself is the prototype's; only what stands in for it goes.
    for (const stream of streams) Reflect.deleteProperty(stream, 'write');
  }
}
