// The interval of a share against the table of examples of Newcombe 1998, Statistics in Medicine 17:857, table I, method 3; from memory.
import assert from 'node:assert/strict';
import { wilsonInterval } from '../../src/model/proportion.ts';

const table = [
  { hits: 81, trials: 263, min: 0.2553, max: 0.3662 },
  { hits: 15, trials: 148, min: 0.0624, max: 0.1605 },
  { hits: 0, trials: 20, min: 0, max: 0.1611 },
  { hits: 1, trials: 29, min: 0.0061, max: 0.1718 },
];

describe('the interval of a share', () => {
  for (const { hits, trials, min, max } of table)
    it(`is that of the table for ${hits} of ${trials}`, () => {
      const interval = wilsonInterval(hits, trials)!;
      assert.ok(
        Math.abs(interval.min - min) < 6e-5 && Math.abs(interval.max - max) < 6e-5,
        String(interval.min),
      );
    });

  it('turns over with hits and misses, and is none of no trials', () => {
    const [one, other] = [wilsonInterval(3, 17)!, wilsonInterval(14, 17)!];
    assert.ok(Math.abs(one.min - (1 - other.max)) < 1e-12);
    assert.equal(wilsonInterval(20, 20)?.max, 1);
    assert.equal(wilsonInterval(0, 0), undefined);
    assert.equal(wilsonInterval(3, 2), undefined);
  });
});
