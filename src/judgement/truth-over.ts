// Whether a condition holds for all, for none or for some of the values that its quantities can take; knows no record and no syntax.
import type { Box, ConditionPart } from './walk.ts';

/** Of one quantity that curves: more finely than anybody measures. */
const steps = 4000;

/**
 * Of one quantity by the values at which a comparison turns over and those between them, which is exact where all comparisons are
 * linear, and at many values where one is not. Of several quantities by what is sure of each comparison alone: of `x < 1 and x + y > 9`
 * it may say NaN where nothing fulfils both.
 */
export function truthOver({ holds, over, margins }: ConditionPart, box: Box): number {
  const [from, to] = [box.min[0], box.max[0]];
  if (box.min.length > 1 || from === undefined || to === undefined) return over(box);
  const turns = margins?.flatMap((margin) => {
    const [atFrom, atTo] = [margin([from]), margin([to])];
    const turn = from + ((to - from) * atFrom) / (atFrom - atTo);
    return turn > from && turn < to ? [turn] : [];
  });
  const ends = [from, ...(turns ?? evenly(from, to)), to].sort((a, b) => a - b);
  const between = ends.slice(1).map((end, i) => (end + ends[i]!) / 2);
  const truths = new Set([...ends, ...between].map((value) => holds([value])));
  const [only = NaN] = truths;
  return truths.size === 1 ? only : NaN;
}

function evenly(from: number, to: number): readonly number[] {
  return Array.from({ length: steps - 1 }, (_, i) => from + ((to - from) * (i + 1)) / steps);
}
