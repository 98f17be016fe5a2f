// What a number of shots say together: means, spreads, where they come down, which lie far out; knows no file and no record.

/** One shot: SI values by quantity id, right positive. */
export type Shot = ReadonlyMap<string, number>;

export interface ShotStatistic {
  readonly id: string;
  /** Shots that say it, those that lie far out left out. */
  readonly count: number;
  readonly mean: number;
  readonly median: number;
  /** Standard deviation of one shot, n − 1 in the denominator; undefined for a single one. */
  readonly sd: number | undefined;
  /** Standard uncertainty of the mean, sd/√n (JCGM 100:2008, 4.2.3); undefined for a single one. */
  readonly u: number | undefined;
}

/** An ellipse over the ground, seen from above. */
export interface Ellipse {
  readonly count: number;
  /** Mean place where the ball came down: m along the target line and m right of it. */
  readonly ahead: number;
  readonly right: number;
  /** Standard deviations along the long and across it, m: the semi-axes of the 1-sigma ellipse. */
  readonly long: number;
  readonly short: number;
  /** Direction of the long axis, rad right of the target line, above −π/2 and up to π/2. */
  readonly direction: number;
  /** What the semi-axes are multiplied with so that the next shot comes down within with a probability of 95 %. */
  readonly factor95: number;
}

export interface ShotSummary {
  /** Shots that say anything. */
  readonly count: number;
  /** Those of them that do not lie far out: means, spreads and ellipse rest on these. */
  readonly used: number;
  readonly statistics: ReadonlyMap<string, ShotStatistic>;
  /** Covariance of two quantities over the used shots that say both, SI; undefined below two such shots. */
  readonly covariance: (a: string, b: string) => number | undefined;
  readonly ellipse: Ellipse | undefined;
  /** Places of the shots that lie far out in the list that was given, in order. */
  readonly outliers: readonly number[];
  /** The place of the shot nearest to the medians. */
  readonly typical: number | undefined;
}

const carryId = 'flight.carry';
const finishId = 'flight.finish';

/** Means and the like of shots, with the finish filled in where start, curve and carry give it. Undefined of no shots. */
export function summariseShots(given: readonly Shot[]): ShotSummary | undefined {
  const shots = given.map(withFinish);
  const said = shots.flatMap((shot, index) => (shot.size > 0 ? [index] : []));
  if (said.length === 0) return undefined;
  const outliers = outliersOf(shots);
  const isOut = new Set(outliers);
  const used = said.filter((index) => !isOut.has(index));
  const kept = used.map((index) => shots[index]!);
  const ids = [...new Set(kept.flatMap((shot) => [...shot.keys()]))].sort();
  const statistics = new Map(ids.map((id) => [id, statisticOf(id, valuesOf(kept, id))]));
  const typical = typicalOf(kept, statistics);
  return {
    count: said.length,
    used: used.length,
    statistics,
    covariance: (a, b) => covarianceOf(pairsOf(kept, a, b)),
    ellipse: ellipseOf(landings(kept)),
    outliers,
    typical: typical === undefined ? undefined : used[typical],
  };
}

/** finish = carry · sin(start + asin(curve/carry)), as the flight's geometry has it. */
function withFinish(shot: Shot): Shot {
  const [carry, start, curve] = [carryId, 'flight.start', 'flight.curve'].map((id) => shot.get(id));
  if (shot.has(finishId) || carry === undefined || start === undefined || curve === undefined) return shot;
  if (!(carry > 0) || Math.abs(curve) > carry) return shot;
  return new Map([...shot, [finishId, carry * Math.sin(start + Math.asin(curve / carry))]]);
}

/** With fewer shots the median says too little of what is usual (judgement). */
const fewestForOutliers = 6;

/** Iglewicz & Hoaglin 1993, How to Detect and Handle Outliers (ASQC Basic References in Quality Control 16), p. 11–13. */
const farOut = 3.5;

/** Of any other quantity only what can be no shot of the kind: a reading that failed. By judgement. */
const failed = 6;

/** 1/Φ⁻¹(3/4): the median absolute deviation times this estimates σ of a normal distribution. */
const madToSigma = 1.482602218505602;

/** By how much the median absolute deviation of so few values is too small (Croux & Rousseeuw 1992, COMPSTAT 1:411, from memory). */
function fewValues(count: number): number {
  const small: Readonly<Record<number, number>> = { 6: 1.2, 7: 1.14, 8: 1.129, 9: 1.107 };
  return small[count] ?? count / (count - 0.8);
}

/**
 * Shots of which carry or finish has a modified z-score 0.6745 |x − median|/MAD above 3.5 (Iglewicz & Hoaglin 1993, from
 * memory), or anything else one above 6. Where more than half of the shots say the same number, MAD is zero and none lies out. Of clean normal sets of
 * twelve it leaves a shot out in about one of five, which takes 3 % from the spread; test/model/shots.test.ts holds it to that.
 */
function outliersOf(shots: readonly Shot[]): readonly number[] {
  const out = new Set<number>();
  for (const id of new Set(shots.flatMap((shot) => [...shot.keys()]))) {
    const limit = id === carryId || id === finishId ? farOut : failed;
    const values = valuesOf(shots, id);
    if (values.length < fewestForOutliers) continue;
    const middle = medianOf(values);
    const sigma =
      madToSigma * fewValues(values.length) * medianOf(values.map((value) => Math.abs(value - middle)));
    if (!(sigma > 0)) continue;
    for (const [index, shot] of shots.entries()) {
      const value = shot.get(id);
      if (value !== undefined && Math.abs(value - middle) > limit * sigma) out.add(index);
    }
  }
  return [...out].sort((a, b) => a - b);
}

function valuesOf(shots: readonly Shot[], id: string): readonly number[] {
  return shots.flatMap((shot) => shot.get(id) ?? []);
}

function statisticOf(id: string, values: readonly number[]): ShotStatistic {
  const count = values.length;
  const mean = meanOf(values);
  const variance = covarianceOf(values.map((value) => [value, value] as const));
  const sd = variance === undefined ? undefined : Math.sqrt(Math.max(0, variance));
  const u = sd === undefined ? undefined : sd / Math.sqrt(count);
  return { id, count, mean, median: medianOf(values), sd, u };
}

/** Σ x/n, then what rounding left of it (Neumaier's second pass), so that readings that share many digits lose none. */
function meanOf(values: readonly number[]): number {
  const first = values.reduce((sum, value) => sum + value, 0) / values.length;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

type Pair = readonly [number, number];

function pairsOf(shots: readonly Shot[], a: string, b: string): readonly Pair[] {
  return shots.flatMap((shot) => {
    const [first, second] = [shot.get(a), shot.get(b)];
    return first === undefined || second === undefined ? [] : [[first, second] as const];
  });
}

/** Σ (x − x̄)(y − ȳ)/(n − 1), in two passes (Chan, Golub & LeVeque 1983, Am. Stat. 37:242). */
function covarianceOf(pairs: readonly Pair[]): number | undefined {
  if (pairs.length < 2) return undefined;
  const [x, y] = [meanOf(pairs.map(([first]) => first)), meanOf(pairs.map(([, second]) => second))];
  return pairs.reduce((sum, [first, second]) => sum + (first - x) * (second - y), 0) / (pairs.length - 1);
}

/** Where each shot came down that says it, those that lie far out among them: m along the target line and right of it. */
export function landingsOf(given: readonly Shot[]): readonly (readonly [number, number])[] {
  return landings(given.map(withFinish));
}

/** The carry is the straight way to where the ball comes down. */
function landings(shots: readonly Shot[]): readonly Pair[] {
  return pairsOf(shots, carryId, finishId).flatMap(([carry, finish]) =>
    Math.abs(finish) > carry ? [] : [[Math.sqrt(carry * carry - finish * finish), finish] as const],
  );
}

/**
 * The principal axes of the covariance of the landings. The next shot of n + 1 normal ones lies within factor95 with
 * factor95² = 2 (n² − 1)/(n (n − 2)) F₀.₉₅(2, n − 2) (Hotelling's T² for one more observation; Chew 1966, J. Am. Stat.
 * Assoc. 61:605, from memory), where F₀.₉₅(2, m) = (m/2) (0.05^(−2/m) − 1); towards √χ²₀.₉₅(2) = 2.45 for many shots.
 */
function ellipseOf(places: readonly Pair[]): Ellipse | undefined {
  const count = places.length;
  const xx = covarianceOf(places.map(([x]) => [x, x]));
  const xy = covarianceOf(places);
  const yy = covarianceOf(places.map(([, y]) => [y, y]));
  if (count < 3 || xx === undefined || xy === undefined || yy === undefined) return undefined;
  const middle = (xx + yy) / 2;
  const half = Math.hypot((xx - yy) / 2, xy);
  const direction = half > 0 ? Math.atan2(2 * xy, xx - yy) / 2 : 0;
  return {
    count,
    ahead: meanOf(places.map(([x]) => x)),
    right: meanOf(places.map(([, y]) => y)),
    long: Math.sqrt(Math.max(0, middle + half)),
    short: Math.sqrt(Math.max(0, middle - half)),
    direction,
    factor95: Math.sqrt(((count * count - 1) / count) * (0.05 ** (-2 / (count - 2)) - 1)),
  };
}

/**
 * The shot with the least sum of squares of its distances from the medians, each in standard deviations, over the
 * quantities of the flight that every shot says; the first of equals.
 */
function typicalOf(
  shots: readonly Shot[],
  statistics: ReadonlyMap<string, ShotStatistic>,
): number | undefined {
  const shared = [...statistics.values()].filter(
    ({ id, count }) => count === shots.length && id.startsWith('flight.'),
  );
  let best: number | undefined;
  let least = Infinity;
  if (shared.length === 0) return undefined;
  for (const [index, shot] of shots.entries()) {
    const distance = shared.reduce((sum, { id, median, sd }) => {
      const off = shot.get(id)! - median;
      return off === 0 ? sum : sum + (off / (sd || 1)) ** 2;
    }, 0);
    if (distance >= least) continue;
    [best, least] = [index, distance];
  }
  return best;
}
