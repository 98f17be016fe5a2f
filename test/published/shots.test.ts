// Holds the summing up of shots against certified data sets, tables and an independent library.
import assert from 'node:assert/strict';
import fQuantile from '@stdlib/stats-base-dists-f-quantile';
import fc from 'fast-check';
import { sampleCovariance, sampleStandardDeviation, median, mean } from 'simple-statistics';
import { summariseShots, type Shot, type ShotStatistic } from '../../src/model/shots.ts';

function statisticsOf(values: readonly number[]): ShotStatistic {
  // Only carry and finish can lie far out; the spin of a shot cannot, so that nothing is left out here.
  return summariseShots(values.map((value) => new Map([['flight.spin', value]])))!.statistics.get(
    'flight.spin',
  )!;
}

/** −log₁₀ of the relative error, as NIST counts correct digits. */
function digits(found: number, certified: number): number {
  return found === certified ? 15 : -Math.log10(Math.abs(found / certified - 1));
}

describe('published: sums over shots', () => {
  it('agree with NIST StRD NumAcc1: mean 10000002, standard deviation 1', () => {
    // NIST Statistical Reference Datasets, univariate, NumAcc1 (values from memory).
    const { mean: found, sd } = statisticsOf([10000001, 10000003, 10000002]);
    assert.equal(found, 10000002);
    assert.equal(sd, 1);
  });

  it('agree with NIST StRD NumAcc2, NumAcc3 and NumAcc4: standard deviation 0.1 about 1.2, 1000000.2, 10000000.2', () => {
    // NIST StRD, univariate: 1001 values, one at the middle, then alternately 0.1 below and above (from memory).
    for (const [middle, leastDigits] of [
      [1.2, 14],
      [1000000.2, 8],
      [10000000.2, 7],
    ] as const) {
      const values = [middle, ...Array.from({ length: 1000 }, (_, k) => middle + (k % 2 === 0 ? -0.1 : 0.1))];
      const { mean: found, sd } = statisticsOf(values);
      assert.ok(digits(found, middle) > 14, `mean ${found}`);
      // The data themselves hold no more digits of 0.1 than that once they are binary numbers.
      assert.ok(digits(sd!, 0.1) > leastDigits, `sd ${sd} at ${middle}`);
    }
  });

  it('agree with NIST StRD Michelso: mean 299.8524, standard deviation 0.0790105478190518', () => {
    // NIST StRD, univariate, Michelso: Michelson's hundred speeds of light of 1879 less 299 000 km/s (data and values from memory).
    const runs = `850 740 900 1070 930 850 950 980 980 880 1000 980 930 650 760 810 1000 1000 960 960
      960 940 960 940 880 800 850 880 900 840 830 790 810 880 880 830 800 790 760 800
      880 880 880 860 720 720 620 860 970 950 880 910 850 870 840 840 850 840 840 840
      890 810 810 820 800 770 760 740 750 760 910 920 890 860 880 720 840 850 850 780
      890 840 780 810 760 810 790 810 820 850 870 870 810 740 810 940 950 800 810 870`;
    const values = runs.split(/\s+/).map((run) => 299 + Number(run) / 1000);
    const { mean: found, sd, count } = statisticsOf(values);
    assert.equal(count, 100);
    assert.ok(digits(found, 299.8524) > 14);
    assert.ok(digits(sd!, 0.0790105478190518) > 12, `${sd}`);
  });

  it('agree with simple-statistics on any numbers', () => {
    const number = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { minLength: 2, maxLength: 40 }), (pairs) => {
        const shots: Shot[] = pairs.map(
          ([a, b]) =>
            new Map([
              ['flight.spin', a],
              ['flight.apex', b],
            ]),
        );
        const summary = summariseShots(shots)!;
        const used = pairs.filter((_, place) => !summary.outliers.includes(place));
        const [a, b] = [used.map(([x]) => x), used.map(([, y]) => y)];
        const found = summary.statistics.get('flight.spin')!;
        assert.ok(Math.abs(found.mean - mean(a)) < 1e-10);
        assert.ok(Math.abs(found.median - median(a)) < 1e-10);
        if (used.length < 2) return;
        assert.ok(Math.abs(found.sd! - sampleStandardDeviation(a)) < 1e-9);
        assert.ok(
          Math.abs(summary.covariance('flight.spin', 'flight.apex')! - sampleCovariance(a, b)) < 1e-7,
        );
      }),
    );
  });

  it('take the F quantile of the ellipse as tables have it: F₀.₉₅(2, 10) = 4.10', () => {
    // Fisher & Yates' table of F (from memory): F₀.₉₅(2, 10) = 4.103; n = 12.
    const shots = Array.from({ length: 12 }, (_, k): Shot => {
      const angle = (k * Math.PI) / 6;
      return new Map([
        ['flight.carry', 150 + 5 * Math.cos(angle)],
        ['flight.finish', 5 * Math.sin(angle)],
      ]);
    });
    const { factor95, count } = summariseShots(shots)!.ellipse!;
    assert.equal(count, 12);
    const fromTable = Math.sqrt(((2 * (144 - 1)) / (12 * 10)) * 4.103);
    assert.ok(Math.abs(factor95 / fromTable - 1) < 2e-4);
    const fromLibrary = Math.sqrt(((2 * (144 - 1)) / (12 * 10)) * fQuantile(0.95, 2, 10));
    assert.ok(Math.abs(factor95 / fromLibrary - 1) < 1e-9);
  });

  it('name the far-out value by the modified z-score: 0.6745 |x − median|/MAD above 3.5', () => {
    // Iglewicz & Hoaglin 1993 (from memory). Median 10, MAD 0.1; the factor of Croux & Rousseeuw for ten values is 10/9.2.
    const clean = [9.8, 9.9, 9.9, 10, 10, 10, 10.1, 10.1, 10.2];
    const bound = (3.5 * 0.1 * (10 / 9.2)) / 0.6745;
    for (const [value, isOut] of [
      [10 + bound * 1.01, true],
      [10 + bound * 0.99, false],
    ] as const) {
      const shots = [...clean, value].map((carry): Shot => new Map([['flight.carry', carry]]));
      assert.deepEqual(summariseShots(shots)!.outliers, isOut ? [9] : []);
    }
  });
});
