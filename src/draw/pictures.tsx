// The one table of pictures of a record: a name for each, and the function that draws it; holds no picture itself.
import type { Analysis } from '../analysis/result.ts';
import type { Checkpoint } from '../registry/quantity.ts';
import { FigureDownTheLine } from './figure-down-the-line.tsx';
import { FigureFaceOn } from './figure-face-on.tsx';
import { checkpointsWithEntries } from './figure-pose.ts';
import { Agreement } from './agreement.tsx';
import { Causes } from './causes.tsx';
import { FlightPicture } from './flight.tsx';
import type { Picture } from './picture.tsx';
import { Pressure } from './pressure.tsx';
import { StrikeFromAbove } from './strike-from-above.tsx';
import { StrikeFromFront } from './strike-from-front.tsx';
import type { Theme } from './theme.ts';

interface Drawn {
  readonly analysis: Analysis;
  readonly theme: Theme;
}

interface Named {
  /** Kebab-case; file names and pages call it so. */
  readonly name: string;
  readonly title: string;
}

/** One of the whole record, or one for each checkpoint. */
export type RecordPicture =
  | (Named & { readonly checkpoints: false; readonly draw: (props: Drawn) => Picture })
  | (Named & {
      readonly checkpoints: true;
      readonly draw: (props: Drawn & { readonly checkpoint: Checkpoint }) => Picture;
    });

export const pictures: readonly RecordPicture[] = [
  { name: 'figure-face-on', title: 'The player face-on', checkpoints: true, draw: FigureFaceOn },
  {
    name: 'figure-down-the-line',
    title: 'The player down the line',
    checkpoints: true,
    draw: FigureDownTheLine,
  },
  {
    name: 'strike-from-above',
    title: 'The strike from above',
    checkpoints: false,
    draw: StrikeFromAbove,
  },
  {
    name: 'strike-from-front',
    title: 'The strike from the front',
    checkpoints: false,
    draw: StrikeFromFront,
  },
  { name: 'flight', title: 'The flight', checkpoints: false, draw: FlightPicture },
  { name: 'pressure', title: 'Pressure under the lead foot', checkpoints: false, draw: Pressure },
  { name: 'causes', title: 'What causes what', checkpoints: false, draw: Causes },
  { name: 'agreement', title: 'How the entries agree', checkpoints: false, draw: Agreement },
];

/** A picture of one record, ready to be drawn in the colours of a theme. */
export interface Sheet extends Named {
  readonly checkpoint: Checkpoint | undefined;
  readonly draw: (theme: Theme) => Picture;
}

/**
 * What there is to be drawn of a record: a picture for each checkpoint that has entries, where there is one for each. With a
 * checkpoint only its own, whether it has entries or not.
 */
export function sheetsOf(picture: RecordPicture, analysis: Analysis, only?: Checkpoint): readonly Sheet[] {
  const { name, title } = picture;
  if (!picture.checkpoints) {
    if (only !== undefined) return [];
    return [{ name, title, checkpoint: undefined, draw: (theme) => picture.draw({ analysis, theme }) }];
  }
  const wanted = only === undefined ? checkpointsWithEntries(analysis) : [only];
  return wanted.map((checkpoint) => ({
    name,
    title: `${title}: ${checkpoint.replaceAll('_', ' ')}`,
    checkpoint,
    draw: (theme) => picture.draw({ analysis, theme, checkpoint }),
  }));
}
