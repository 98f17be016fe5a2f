// The words that the schemas take from the registry, and how its quantities are cut into mappings; knows no kind of file.
import type { Dimension } from '../../../src/measure/measure.ts';
import type {
  Checkpoint,
  Contact,
  Method,
  Miss,
  Quantity,
  Section,
  Shape,
} from '../../../src/registry/quantity.ts';
import { mapping, quantityTree, type Schema } from './parts.ts';

export interface Vocabulary {
  readonly quantities: readonly Quantity[];
  readonly shapes: readonly Shape[];
  readonly misses: readonly Miss[];
  readonly contacts: readonly Contact[];
  readonly clubKinds: readonly string[];
  readonly methods: readonly Method[];
  readonly dimensions: readonly Dimension[];
  readonly checkpoints: Readonly<Record<Checkpoint, { readonly title: string; readonly meaning: string }>>;
}

export function ofSection(quantities: readonly Quantity[], section: Section): readonly Quantity[] {
  return quantities.filter((quantity) => quantity.section === section);
}

/** The id below the section, and below the checkpoint where there is one. */
export function below(quantity: Quantity): string {
  const skipped = quantity.section === 'checkpoints' ? 2 : 1;
  return quantity.id.split('.').slice(skipped).join('.');
}

/** One mapping for each checkpoint. */
export function checkpointMappings(
  { quantities, checkpoints }: Vocabulary,
  definition: 'measure' | 'window',
): Readonly<Record<string, Schema>> {
  return Object.fromEntries(
    Object.entries(checkpoints).map(([name, { title, meaning }]) => {
      const here = quantities.filter((quantity) => quantity.checkpoint === name);
      return [name, mapping(`${title}: ${meaning}.`, quantityTree(here, below, definition))];
    }),
  );
}
