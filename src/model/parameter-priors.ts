// What a fit takes of each cause before it has seen any entry: an assumption said aloud, or a wide window; knows no steps.
import { builtIn } from '../registry/registry.ts';
import type { Prior } from './least-squares.ts';
import { priorsFor } from './priors.ts';
import type { Context } from './rule.ts';

export interface ParameterPrior extends Prior {
  /** For the reader: "a strike neither toward heel nor toe", "a window of practice". */
  readonly words: string;
  readonly source: string;
}

const degree = Math.PI / 180;
const inch = 0.0254;

/**
 * The prior of the cause `id`. Whoever entered it has said what it is: then only a window is left, which keeps the fit in
 * the region of sense and carries next to no weight. Where nobody did, an assumption stands if there is one.
 */
export function parameterPrior(id: string, context: Context, isEntered: boolean): ParameterPrior {
  const assumed = isEntered ? undefined : assumptions(context).find((assumption) => assumption.id === id);
  if (assumed) {
    const { value: mean, u, words, source } = assumed;
    return { mean, u, kind: 'evidence', words, source };
  }
  return windowByKind(id, context) ?? windowOfPractice(id, context);
}

interface Assumed {
  readonly id: string;
  readonly value: number;
  readonly u: number;
  readonly words: string;
  readonly source: string;
}

function assumptions(context: Context): readonly Assumed[] {
  return [...priorsFor(context), ...drift];
}

/** How the lead shoulder moves through the strike. */
const drift: readonly Assumed[] = [
  {
    id: 'linkage.hub_along',
    value: 0,
    u: 0.5,
    words: 'a lead shoulder at rest along the target line',
    source: 'judgement: half a centimetre in a hundredth of a second either way',
  },
  {
    id: 'linkage.hub_up',
    value: 0,
    u: 0.5,
    words: 'a lead shoulder that neither rises nor falls',
    source: 'judgement: half a centimetre in a hundredth of a second either way',
  },
];

/**
 * The window seen in practice, or where there is none what is possible, as 95 % of a normal distribution: its middle, and a
 * quarter of its width as standard uncertainty. By judgement; swings are not drawn from it.
 */
function windowOfPractice(id: string, { registry = builtIn }: Context): ParameterPrior {
  const quantity = registry.find(id);
  const range = quantity?.practice ?? quantity?.bounds;
  if (!range) return { mean: 0, u: 1, kind: 'window', words: 'a wide window', source: 'judgement' };
  return {
    mean: (range.min + range.max) / 2,
    u: (range.max - range.min) / 4,
    kind: 'window',
    words: 'the window seen in practice',
    source: range.source,
  };
}

type Pair = readonly [mean: number, u: number];

/** Clubs of a kind, by judgement: [loft °, u], [lie °, u], [length in, u]. */
const clubs: Readonly<Record<string, readonly [loft: Pair, lie: Pair, length: Pair]>> = {
  driver: [
    [10.5, 1.5],
    [57, 2],
    [45, 0.8],
  ],
  fairway: [
    [17, 3],
    [57, 2],
    [42.5, 1],
  ],
  hybrid: [
    [22, 4],
    [59, 2],
    [40, 1],
  ],
  iron: [
    [32, 8],
    [62, 2],
    [37, 1.2],
  ],
  wedge: [
    [53, 6],
    [64, 2],
    [35.5, 0.8],
  ],
};

function windowByKind(id: string, { clubKind }: Context): ParameterPrior | undefined {
  const club = clubKind === undefined || !Object.hasOwn(clubs, clubKind) ? undefined : clubs[clubKind];
  const field = ['club.loft', 'club.lie', 'club.length'].indexOf(id);
  const pair = club?.[field];
  if (!pair) return undefined;
  const unit = id === 'club.length' ? inch : degree;
  // Twice the spread of common clubs: a window must hold the odd ones as well.
  const [mean, u] = [pair[0] * unit, 2 * pair[1] * unit];
  return {
    mean,
    u,
    kind: 'window',
    words: `a usual ${clubKind}`,
    source: 'judgement: common clubs of the kind',
  };
}
