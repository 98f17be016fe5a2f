// Where the values of a record stand in the windows of a template; knows no place in a text and says nothing.
import type { Derivation, Value } from '../model/value.ts';
import type { TemplateFile, TemplateWindow } from '../record/document.ts';

/** `just outside`: not so far that a window of this strictness is left. */
export type WindowState = 'inside' | 'just outside' | 'outside' | 'not known';

export interface WindowStanding {
  readonly id: string;
  readonly window: TemplateWindow;
  /** The edges in SI as this player sees left and right; undefined while the hand is not known and matters. */
  readonly edges: { readonly from: number; readonly to: number } | undefined;
  /** What the record says of the quantity; undefined where neither an entry nor the model does. */
  readonly value: Value | undefined;
  /** How far the value lies outside, in standard uncertainties; 0 inside, undefined where it cannot be told. */
  readonly outsideBy: number | undefined;
  readonly state: WindowState;
}

/**
 * From how many standard uncertainties outside on a window is left (a judgement). Of a value that was measured at the very edge,
 * noise alone puts one in six beyond 1 and one in forty beyond 2 (the normal distribution, one-sided: 0.159 and 0.023).
 */
export const leftFrom: Readonly<Record<'gentle' | 'firm', number>> = { gentle: 2, firm: 1 };

/** A window that does not say how strict it is, is gentle. */
export function strictnessOf({ strict }: TemplateWindow): 'gentle' | 'firm' {
  return strict ?? 'gentle';
}

/** True where the template is for clubs of other kinds; not where the kind of the club is not known. */
export function isForOtherClub({ clubs }: TemplateFile, clubKind: string | undefined): boolean {
  return clubKind !== undefined && clubs.length > 0 && !clubs.some(({ value }) => value === clubKind);
}

/** Every window of the template, in its order. It is written as for a right-handed player and mirrored for a left-handed one. */
export function standingsOf(
  { windows }: TemplateFile,
  { values }: Derivation,
  hand: 'left' | 'right' | undefined,
): readonly WindowStanding[] {
  return [...windows].map(([id, window]) => {
    const edges = edgesOf(window, hand);
    const value = values.get(id);
    const outsideBy = value && edges && distance(value, edges);
    return { id, window, edges, value, outsideBy, state: stateOf(outsideBy, strictnessOf(window)) };
  });
}

function stateOf(outsideBy: number | undefined, strictness: keyof typeof leftFrom): WindowState {
  if (outsideBy === undefined) return 'not known';
  if (outsideBy === 0) return 'inside';
  return outsideBy >= leftFrom[strictness] ? 'outside' : 'just outside';
}

function edgesOf(
  { quantity: { lateral }, window }: TemplateWindow,
  hand: 'left' | 'right' | undefined,
): WindowStanding['edges'] {
  if (lateral && hand === undefined) return undefined;
  const ends = [window.from, window.to].map((end) => (lateral && hand === 'left' ? 0 - end : end));
  return { from: Math.min(...ends), to: Math.max(...ends) };
}

function distance({ value, u }: Value, { from, to }: { from: number; to: number }): number | undefined {
  const outside = Math.max(from - value, value - to, 0);
  if (outside === 0) return 0;
  return u === null || u <= 0 ? undefined : outside / u;
}
