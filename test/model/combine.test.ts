// Tests of several readings of one thing.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { combineReadings, doubtfulFactor } from '../../src/model/combine.ts';

const sure = (value: number, u: number) => ({ value, u, doubtful: false });

describe('combineReadings', () => {
  it('takes a single reading as it is', () => {
    assert.deepEqual(combineReadings('delivery.face', [sure(2, 0.5)]), {
      id: 'delivery.face',
      value: 2,
      u: 0.5,
    });
  });

  it('weighs by inverse variance: 10 ± 1 and 13 ± 2 give 10.6', () => {
    const combined = combineReadings('x', [sure(10, 1), sure(13, 2)])!;
    assert.ok(Math.abs(combined.value - 10.6) < 1e-12);
  });

  it('does not shrink below the weighted mean’s uncertainty where readings agree better than expected', () => {
    const combined = combineReadings('x', [sure(10, 1), sure(10, 1)])!;
    assert.ok(Math.abs(combined.u - Math.SQRT1_2) < 1e-12);
  });

  it('widens by the Birge ratio where readings disagree: 10 ± 1 and 14 ± 1 give 12 ± 2', () => {
    // By hand: χ² = 8 on one degree of freedom, √8 · 1/√2 = 2.
    const combined = combineReadings('x', [sure(10, 1), sure(14, 1)])!;
    assert.ok(Math.abs(combined.value - 12) < 1e-12);
    assert.ok(Math.abs(combined.u - 2) < 1e-12);
  });

  it('gives a doubtful reading a ninth of its weight', () => {
    const combined = combineReadings('x', [sure(0, 1), { value: 1, u: 1, doubtful: true }])!;
    assert.ok(Math.abs(combined.value - 0.1) < 1e-12);
    assert.equal(combineReadings('x', [{ value: 1, u: 2, doubtful: true }])!.u, 2 * doubtfulFactor);
  });

  it('gives nothing without a usable reading', () => {
    assert.equal(combineReadings('x', []), undefined);
    assert.equal(combineReadings('x', [sure(Number.NaN, 1), sure(1, 0), sure(1, Infinity)]), undefined);
  });

  it('stays between the readings, finite, and does not hang on their order', () => {
    const reading = fc.record({
      value: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      u: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      doubtful: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 6 }), (readings) => {
        const combined = combineReadings('x', readings)!;
        const values = readings.map((r) => r.value);
        assert.ok(
          combined.value >= Math.min(...values) - 1e-9 && combined.value <= Math.max(...values) + 1e-9,
        );
        assert.ok(Number.isFinite(combined.u) && combined.u > 0);
        const turned = combineReadings('x', readings.toReversed())!;
        assert.ok(Math.abs(turned.value - combined.value) <= 1e-9 * (1 + Math.abs(combined.value)));
        assert.ok(Math.abs(turned.u / combined.u - 1) < 1e-9);
      }),
    );
  });
});
