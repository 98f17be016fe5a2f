// Limits of agreement against the worked example that introduced them.
import assert from 'node:assert/strict';
import { compareMethods, repeatabilityOf } from '../../src/model/method-comparison.ts';

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
