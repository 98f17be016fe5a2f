// The table of what is private knows every key that may hold words.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { treatments } from '../../src/analysis/share-parts.ts';
import { methods } from '../../src/registry/generated.ts';

describe('the table of what is private', () => {
  /** Values under these keys are measurements, words that the format checks, ids or expressions. */
  const harmless: Readonly<Record<string, readonly string[]>> = {
    swing: [
      'club',
      'shape',
      'fault',
      'at',
      'misses',
      'miss',
      'contact',
      'change',
      'to',
      'because',
      'proof',
      'by',
    ],
    student: ['hand', 'kind', 'shape', 'contact', 'club', 'part', 'side', 'body_table', 'by'],
    template: ['clubs', 'strict', 'window'],
    faults: [
      'at',
      'evidence',
      'expression',
      'effect',
      'direction',
      'size',
      'of',
      'change',
      'to',
      'by',
      'when',
      'cautions',
    ],
    workspace: [
      'like',
      'unit',
      'bounds',
      'practice',
      'otherwise',
      'at',
      'is',
      'says',
      'when',
      'severity',
      'by',
      'drag',
      'lift',
      'ball_speed',
      'uncertainty',
      'show',
      'severities',
      'quantity',
      'directions',
    ],
  };

  for (const [kind, table] of Object.entries(treatments))
    it(`knows every key of ${kind} files that may hold words`, () => {
      const schema = JSON.parse(
        readFileSync(join(import.meta.dirname, `../../schemas/${kind}.schema.json`), 'utf8'),
      ) as Schema;
      const keys = wordKeys(schema, schema, '', new Set());
      const figures = ['value', 'give_or_take', ...methods.map(({ name }) => name)];
      const unknown = [...keys].filter(
        (key) =>
          !key.startsWith('(') &&
          !figures.includes(key) &&
          !Object.hasOwn(table, key) &&
          !Object.hasOwn(table, `/${key}`) &&
          !harmless[kind]!.includes(key),
      );
      assert.deepEqual(unknown, []);
      assert.ok(keys.size > 3);
    });
});

interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema;
  readonly definitions?: Readonly<Record<string, Schema>>;
}

/** Keys whose value may be words; those of measurements (by their definition) and of tables by method or dimension aside. */
function wordKeys(node: Schema, root: Schema, key: string, found: Set<string>): Set<string> {
  const name = node.$ref?.split('/').at(-1);
  const isMeasure = name !== undefined && /^(?:measure|target|window|written-.*)$/.test(name);
  if (isMeasure) {
    // The long form holds words of its own; it is looked at once.
    const seen = `(${name})`;
    if (!found.has(seen)) {
      found.add(seen);
      wordKeys(root.definitions![name]!, root, '', found);
    }
    return found;
  }
  for (const part of node.allOf ?? []) wordKeys(part, root, key, found);
  if ([node.type].flat().includes('string') && key !== '') found.add(key);
  for (const [below, schema] of Object.entries(node.properties ?? {})) wordKeys(schema, root, below, found);
  if (typeof node.additionalProperties === 'object') wordKeys(node.additionalProperties, root, key, found);
  if (node.items) wordKeys(node.items, root, key, found);
  return found;
}
