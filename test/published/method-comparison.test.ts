// Limits of agreement against the worked example that introduced them.
import assert from 'node:assert/strict';
import { compareMethods, repeatabilityOf, scatterOf } from '../../src/model/method-comparison.ts';

// Peak expiratory flow of 17 people by two meters, twice each, l/min: Bland & Altman 1986, Lancet 327:307–310, table 1.
// The table was entered from memory; that its published statistics come out of it is the check on that too.
const large = [
  [494, 490],
  [395, 397],
  [516, 512],
  [434, 401],
  [476, 470],
  [557, 611],
  [413, 415],
  [442, 431],
  [650, 638],
  [433, 429],
  [417, 420],
  [656, 633],
  [267, 275],
  [478, 492],
  [178, 165],
  [423, 372],
  [427, 421],
] as const;
const mini = [
  [512, 525],
  [430, 415],
  [520, 508],
  [428, 444],
  [500, 500],
  [600, 625],
  [364, 460],
  [380, 390],
  [658, 642],
  [445, 432],
  [432, 420],
  [626, 605],
  [260, 227],
  [477, 467],
  [259, 268],
  [350, 370],
  [451, 443],
] as const;

describe('limits of agreement of Bland & Altman 1986', () => {
  const found = compareMethods(large.map(([one], i) => ({ one, other: mini[i]![0] })))!;
  const near = (value: number, published: number, within: number): void =>
    assert.ok(Math.abs(value - published) <= within, `${value}, published ${published}`);

  it('has the published mean difference and standard deviation', () => {
    assert.equal(found.count, 17);
    near(found.bias, -2.1, 0.05);
    near(found.deviation, 38.8, 0.05);
  });

  it('has the published limits, which take 2 for 1.96 standard deviations', () => {
    near(found.bias - 2 * found.deviation, -79.7, 0.1);
    near(found.bias + 2 * found.deviation, 75.5, 0.1);
    near(found.limits.from, -78.1, 0.1);
    near(found.limits.to, 73.9, 0.1);
  });

  it('has the published intervals of the bias and of the lower and upper limit', () => {
    near(found.biasInterval.from, -22.0, 0.1);
    near(found.biasInterval.to, 17.8, 0.1);
    // Published about limits at two standard deviations: −114.3 to −45.1 and 40.9 to 110.1.
    const shift = 0.04 * found.deviation;
    near(found.limitIntervals.from.from - shift, -114.3, 0.3);
    near(found.limitIntervals.from.to - shift, -45.1, 0.3);
    near(found.limitIntervals.to.from + shift, 40.9, 0.3);
    near(found.limitIntervals.to.to + shift, 110.1, 0.3);
  });

  it('has the published standard deviation of single differences from means of two, at any scale', () => {
    // Published: s_D̄ = 33.2 of the means, s₁ = 21.6 and s₂ = 28.2 of repeats, √(33.2² + 21.6²/4 + 28.2²/4) = 37.7; from memory.
    for (const scale of [1, 10]) {
      const scaled = (all: typeof large | typeof mini): number[][] =>
        all.map((pair) => pair.map((value) => scale * value));
      const [one, other] = [scaled(large), scaled(mini)];
      const pairs = one.map((pair, i) => ({
        one: (pair[0]! + pair[1]!) / 2,
        other: (other[i]![0]! + other[i]![1]!) / 2,
      }));
      const ofMeans = compareMethods(pairs)!;
      near(ofMeans.deviation / scale, 33.2, 0.1);
      const corrected = compareMethods(pairs, [scatterOf(one), scatterOf(other)])!;
      near(corrected.deviation / scale, 37.7, 0.1);
      near(corrected.bias, ofMeans.bias, 1e-9);
      near(corrected.limits.from / scale, corrected.bias / scale - 1.96 * 37.7, 0.2);
      // What is known of the bias is known from the means.
      near(corrected.biasInterval.to, ofMeans.biasInterval.to, 1e-9);
      assert.ok(corrected.limitIntervals.to.to > corrected.limits.to);
    }
  });

  it('has the published repeatability of both meters', () => {
    // Published: coefficients 43.2 (large) and 56.4 (mini), as twice the root mean square difference of repeats.
    for (const [pairs, published] of [
      [large, 43.2],
      [mini, 56.4],
    ] as const) {
      const { within, coefficient, things, measurements } = repeatabilityOf(pairs)!;
      assert.deepEqual([things, measurements], [17, 34]);
      near(2 * Math.SQRT2 * within, published, 1);
      near(coefficient, (1.96 / 2) * published, 1);
    }
  });
});
