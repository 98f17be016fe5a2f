// Words of the schemas that snippets offer to choose from; knows no place.
import { places } from './places.generated.ts';

/** Kinds of club, as the student's bag names them. */
export const clubKinds: readonly string[] =
  places.student.below?.['bag']?.below?.['*']?.below?.['kind']?.words ?? [];

/** Shapes of a shot, the plain ones first. */
export const shapeWords: readonly string[] = places.swing.below?.['flight']?.below?.['shape']?.words ?? [];
