// Holds the JSON Schemas against their meta-schema, against draft-07, and against files that are and are not in shape.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'yaml';
import { quantities } from '../../src/registry/generated.ts';
import * as validators from '../../src/record/validators.generated.js';
import { files, type Kind } from './sample-files.ts';

const kinds: readonly Kind[] = ['swing', 'student', 'template', 'faults', 'review', 'workspace'];
const compiled = {
  swing: validators.validateSwing,
  student: validators.validateStudent,
  template: validators.validateTemplate,
  faults: validators.validateFaults,
  review: validators.validateReview,
  workspace: validators.validateWorkspace,
};

type Node = { readonly [key: string]: unknown };

function schemaOf(kind: Kind): Node {
  const path = join(resolve(import.meta.dirname, '../..'), `schemas/${kind}.schema.json`);
  return JSON.parse(readFileSync(path, 'utf8')) as Node;
}

/** Every schema within a schema, by the place at which it stands; names of properties are no keywords. */
function* subschemas(schema: Node, place = '#'): Generator<readonly [string, Node]> {
  yield [place, schema];
  for (const key of ['properties', 'definitions', 'patternProperties']) {
    for (const [name, child] of Object.entries((schema[key] ?? {}) as Node)) {
      yield* subschemas(child as Node, `${place}/${key}/${name}`);
    }
  }
  for (const key of ['items', 'additionalProperties']) {
    if (typeof schema[key] === 'object') yield* subschemas(schema[key] as Node, `${place}/${key}`);
  }
  for (const [index, child] of ((schema.allOf ?? []) as Node[]).entries()) {
    yield* subschemas(child, `${place}/allOf/${index}`);
  }
}

const shared = new Set([
  ...[
    '$schema',
    '$id',
    '$comment',
    '$ref',
    'title',
    'description',
    'definitions',
    'type',
    'enum',
    'properties',
  ],
  ...[
    'additionalProperties',
    'required',
    'items',
    'pattern',
    'patternProperties',
    'minimum',
    'maximum',
    'exclusiveMinimum',
    'allOf',
  ],
]);

for (const kind of kinds) {
  describe(`schema of ${kind} files`, () => {
    const schema = schemaOf(kind);
    const nodes = [...subschemas(schema)];
    const in2020 = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);
    const in07 = new Ajv({ allErrors: true, allowUnionTypes: true }).compile({
      ...schema,
      $schema: 'http://json-schema.org/draft-07/schema#',
    });
    const says = (data: unknown): readonly boolean[] => [in2020(data), in07(data), compiled[kind](data)];

    it('is valid under draft 2020-12 and carries its version', () => {
      const ajv = new Ajv2020();
      assert.equal(ajv.validateSchema(schema), true, ajv.errorsText(ajv.errors));
      assert.equal(schema.$id, `urn:swingwright:schema:${kind}:1`);
    });

    it('compiles in strict mode, without a keyword that nobody knows or a type that does not go with it', () => {
      const strict = new Ajv2020({ strict: true, allowUnionTypes: true });
      assert.equal(typeof strict.compile(schema), 'function');
    });

    it('uses only keywords that draft-07 shares, and neither oneOf nor anyOf', () => {
      const foreign = nodes.flatMap(([place, node]) =>
        Object.keys(node)
          .filter((key) => !shared.has(key))
          .map((key) => `${place}/${key}`),
      );
      assert.deepEqual(foreign, []);
    });

    it('closes every mapping', () => {
      const open = nodes.filter(
        ([, node]) => node.properties !== undefined && node.additionalProperties === undefined,
      );
      assert.deepEqual(open, []);
    });

    it('describes every key', () => {
      const silent = nodes
        .filter(([place, node]) => /\/properties\/[^/]+$/.test(place) && typeof node.description !== 'string')
        .map(([place]) => place);
      assert.deepEqual(silent, []);
    });

    it('lets every value be empty, but wants the version key', () => {
      const refusing = nodes.filter(([place, node]) => {
        if (!/\/(properties\/[^/]+|items)$/.test(place) || node.allOf !== undefined) return false;
        const types = (node.type ?? node.enum) as readonly unknown[];
        return !types.includes('null') && !types.includes(null);
      });
      assert.deepEqual(
        refusing.map(([place]) => place),
        [],
      );
      const [required] = schema.required as string[];
      assert.deepEqual(says({ [required ?? '']: 1 }), [true, true, true]);
      assert.deepEqual(says({}), [false, false, false]);
      assert.deepEqual(says({ [required ?? '']: 2 }), [false, false, false]);
    });

    for (const { title, text, errors } of files[kind]) {
      it(`${errors.length === 0 ? 'takes' : 'refuses'} ${title}`, () => {
        const data: unknown = parse(text);
        const expected = errors.length === 0;
        assert.deepEqual(says(data), [expected, expected, expected]);
        const found = (compiled[kind].errors ?? []).map((e) => `${e.instancePath} ${e.keyword}`);
        assert.deepEqual(found.sort(), [...errors].sort());
      });
    }
  });
}

describe('quantities in the schemas', () => {
  it('may all be written into a swing record or a student file', () => {
    for (const { id, section } of quantities) {
      const below = section === 'student' ? id.slice('student.'.length) : id;
      const path = section === 'club' ? ['bag', 'seven', ...id.split('.').slice(1)] : below.split('.');
      const kind = section === 'student' || section === 'club' ? 'student' : 'swing';
      const data = path.reduceRight<unknown>((inner, key) => ({ [key]: inner }), '3');
      assert.ok(compiled[kind]({ [kind]: 1, ...(data as object) }), id);
    }
  });
});
