// The one table of pictures of a record: a name for each, and the function that draws it; holds no picture itself.
import type { Analysis } from '../analysis/result.ts';
import { FlightPicture } from './flight.tsx';
import type { Picture } from './picture.tsx';
import { StrikeFromAbove } from './strike-from-above.tsx';
import { StrikeFromFront } from './strike-from-front.tsx';
import type { Theme } from './theme.ts';

export interface RecordPicture {
  /** Kebab-case; file names and pages call it so. */
  readonly name: string;
  readonly title: string;
  readonly draw: (props: { readonly analysis: Analysis; readonly theme: Theme }) => Picture;
}

export const pictures: readonly RecordPicture[] = [
  { name: 'strike-from-above', title: 'The strike from above', draw: StrikeFromAbove },
  { name: 'strike-from-front', title: 'The strike from the front', draw: StrikeFromFront },
  { name: 'flight', title: 'The flight', draw: FlightPicture },
];
