// Tests of the `schema` command: its schemas take every sample and refuse slips, as a validator reads them that has no part in the build.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Validator, type Schema } from '@cfworker/json-schema';
import { parse } from 'yaml';
import { schemaCommand } from '../../src/cli/schema.ts';

const samples = new URL('../../samples', import.meta.url).pathname;
const planted = join('bram', '2026-05-09-seven-iron.swing.yaml');
const never = new AbortController().signal;

describe('swingwright schema', () => {
  const out = mkdtempSync(join(tmpdir(), 'schemas-'));
  const validators = new Map<string, Validator>();
  const ids = new Map<string, string>();

  before(async () => {
    assert.equal(await quietly(() => schemaCommand(join(samples, 'tove'), out, never)), 0);
    for (const name of readdirSync(out)) {
      const schema = JSON.parse(readFileSync(join(out, name), 'utf8')) as Schema & { $id: string };
      ids.set(name.split('.')[0]!, schema.$id);
      validators.set(name.split('.')[0]!, new Validator(schema, '2020-12', false));
    }
  });
  after(() => rmSync(out, { recursive: true }));

  it('says where no folder can be made, and does not go on trying', async function () {
    if (process.platform !== 'linux') this.skip();
    writeFileSync(join(out, 'file'), '');
    try {
      for (const [place, why] of [
        ['/proc/nope/deeper', /cannot make the folder `\/proc\/nope\/deeper`: no folder can be made there/],
        [join(out, 'file', 'below'), /a file stands where a folder above it would be/],
        [join(out, 'file'), /a file of its name is there/],
      ] as const) {
        const { code, said } = await complaint(() => schemaCommand(samples, place, never));
        assert.equal(code, 2);
        assert.match(said, why);
      }
    } finally {
      rmSync(join(out, 'file'));
    }
  });

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

  it('holds the day and the ids of a plan to what there is', () => {
    const validator = validators.get('swing')!;
    const says = (record: object): readonly string[] => wrong(validator, { swing: 1, ...record });
    // Days by ISO 8601: months have 28 to 31 days.
    for (const date of ['2026-02-29', '2024-02-29', '2026-12-31']) assert.deepEqual(says({ date }), [], date);
    for (const date of ['2026-02-30', '2026-04-31', '2026-13-01', '26-05-14', '14.05.2026', '2026-5-14'])
      assert.deepEqual(says({ date }), ['#/date'], date);
    const plan = (change: string): object => ({ plan: [{ change, to: '2 deg' }] });
    assert.deepEqual(says(plan('delivery.face')), []);
    assert.deepEqual(says(plan('delivery.fac')), ['#/plan/0/change']);
  });

  it('takes every sample, own quantities included', () => {
    const files = readdirSync(samples, { recursive: true, encoding: 'utf8' });
    const told = files.flatMap((file) => {
      const kind = file.endsWith('swingwright.yaml') ? 'workspace' : /\.([a-z]+)\.yaml$/.exec(file)?.[1];
      const validator = validators.get(kind ?? '');
      if (validator === undefined || file === planted) return [];
      assert.deepEqual(wrong(validator, parse(readFileSync(join(samples, file), 'utf8'))), [], file);
      return [file];
    });
    assert.ok(told.length >= 14, told.join(', '));
  });

  it('finds the misspelt key and what breaks the notation in the record with mistakes planted on purpose, and nothing else', () => {
    const record: unknown = parse(readFileSync(join(samples, planted), 'utf8'));
    // A method that nobody knows, an angle for a width, a minus beside a direction, a key.
    assert.deepEqual(
      wrong(validators.get('swing')!, record),
      ['lead_pressure', 'stance_width', 'ball_position', 'lead_foot_flair'].map(
        (key) => `#/checkpoints/address/${key}`,
      ),
    );
  });

  it('refuses a misspelt own quantity and a long form that is none', () => {
    const validator = validators.get('swing')!;
    const swing = (record: unknown): boolean => wrong(validator, record).length === 0;
    assert.ok(swing({ swing: 1, checkpoints: { impact: { lead_heel: '1 cm' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heal: '1 cm' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heel: { valeu: '1 cm' } } } }));
    assert.ok(swing({ swing: 1, checkpoints: { impact: { lead_heel: '~1 cm off the ground by video' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heel: '1 deg' } } }));
    assert.ok(!swing({ swing: 1, checkpoints: { impact: { lead_heel: '1 cm ahead' } } }));
  });

  it('says so where it cannot write', async () => {
    assert.equal(await quietly(() => schemaCommand(samples, join(out, 'swing.schema.json'), never)), 2);
  });
});

/** The places that have no schema of their own: every other error is one of a mapping around them. */
function wrong(validator: Validator, instance: unknown): readonly string[] {
  const { valid, errors } = validator.validate(instance);
  const places = errors.map(({ instanceLocation }) => instanceLocation);
  const innermost = places.filter((place) => !places.some((other) => other.startsWith(`${place}/`)));
  return valid ? [] : [...new Set(innermost)];
}

async function quietly(run: () => Promise<number>): Promise<number> {
  return (await complaint(run)).code;
}

async function complaint(
  run: () => Promise<number>,
): Promise<{ readonly code: number; readonly said: string }> {
  const streams = [process.stdout, process.stderr];
  let said = '';
  for (const stream of streams)
    stream.write = (words) => {
      said += String(words);
      return true;
    };
  try {
    return { code: await run(), said };
  } finally {
    // The method itself is the prototype's; only what stands in for it goes.
    for (const stream of streams) Reflect.deleteProperty(stream, 'write');
  }
}
