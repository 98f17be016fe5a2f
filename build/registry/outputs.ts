// Gives every generated file by its path, as text, from the text of quantities.yaml; reads and writes no file of the project.
import type { Dimension } from '../../src/measure/measure.ts';
import { siUnits } from '../../src/measure/unit-table.ts';
import type { FileKind } from '../../src/record/document.ts';
import { heldToNotation } from '../../src/record/notation-schema.ts';
import { expand } from '../../src/registry/expand.ts';
import { writeDescriptions } from './descriptions.ts';
import { writeKeys } from './keys.ts';
import { writePlaces } from './places.ts';
import { writeReference } from './reference.ts';
import {
  faultsSchema,
  reviewSchema,
  studentSchema,
  templateSchema,
  workspaceSchema,
} from './schemas/others.ts';
import type { Schema } from './schemas/parts.ts';
import { swingSchema } from './schemas/swing.ts';
import type { Vocabulary } from './schemas/vocabulary.ts';
import { readRegistry } from './source.ts';
import { writeTable } from './table.ts';
import { compileValidators } from './validators.ts';

/** Paths relative to the project's root; the same text gives the same files. */
export async function generate(quantitiesYaml: string): Promise<ReadonlyMap<string, string>> {
  const registry = readRegistry(quantitiesYaml);
  const vocabulary: Vocabulary = {
    quantities: expand(registry.checkpointRows, registry.plainRows),
    shapes: registry.shapes,
    misses: registry.misses,
    contacts: registry.contacts,
    clubKinds: Object.keys(registry.clubKinds),
    methods: registry.methods,
    dimensions: Object.keys(siUnits) as Dimension[],
    checkpoints: registry.checkpoints,
  };
  const schemas: ReadonlyMap<string, Schema> = new Map([
    ['swing', swingSchema(vocabulary)],
    ['student', studentSchema(vocabulary)],
    ['template', templateSchema(vocabulary)],
    ['faults', faultsSchema()],
    ['review', reviewSchema()],
    ['workspace', workspaceSchema(vocabulary)],
  ]);
  const known = {
    quantities: vocabulary.quantities,
    methodNames: registry.methods.map(({ name }) => name),
  };
  const validators = await compileValidators(
    new Map(
      [...schemas].map(([kind, schema]) => [`validate${kind[0]?.toUpperCase()}${kind.slice(1)}`, schema]),
    ),
  );
  return new Map([
    ['src/registry/generated.ts', writeTable(registry)],
    ...[...schemas].map(([kind, schema]): [string, string] => [
      `schemas/${kind}.schema.json`,
      `${JSON.stringify(heldToNotation(kind as FileKind, schema, known), null, 2)}\n`,
    ]),
    ['src/record/keys.generated.ts', writeKeys(schemas)],
    ['src/language/places.generated.ts', writePlaces(schemas)],
    ['src/language/descriptions.generated.ts', writeDescriptions(schemas)],
    ['src/record/validators.generated.js', validators.code],
    ['src/record/validators.generated.d.ts', validators.declarations],
    ['schemas/QUANTITIES.md', writeReference(registry)],
  ]);
}
