// Gives every generated file by its path, as text, from the text of quantities.yaml; reads and writes no file of the project.
import { readRegistry } from './source.ts';
import { writeTable } from './table.ts';

/** Paths relative to the project's root; the same text gives the same files. */
export async function generate(quantitiesYaml: string): Promise<ReadonlyMap<string, string>> {
  const registry = readRegistry(quantitiesYaml);
  return new Map([['src/registry/generated.ts', writeTable(registry)]]);
}
