// What a computed value is shown as.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { secondUnit, showSize, showValue, showWindow } from '../../src/measure/show.ts';
import { findUnit, toSI } from '../../src/measure/units.ts';
import { angle, notations, offset, ratio, share, side, speed, spin, temperature, wind } from './notations.ts';

const deg = (degrees: number): number => toSI(degrees, 'deg');

describe('a shown value', () => {
  it('has the decimals of its uncertainty: two digits if the first is 1 or 2, else one', () => {
    assert.equal(showValue(offset, 0.089, 0.021), '8.9 cm ahead ± 2.1 cm');
    assert.equal(showValue(angle, deg(2.3), deg(0.4)), '2.3 deg right ± 0.4 deg');
    assert.equal(showValue(share, 0.58, 0.03), '58 % ± 3 %');
    assert.equal(showValue(ratio, 1.4523, 0.013), '1.452 ± 0.013');
    assert.equal(showValue(spin, toSI(2864, 'rpm'), toSI(312, 'rpm')), '2900 rpm ± 300 rpm');
    assert.equal(showValue(temperature, toSI(14.2, '°C'), 1.5), '14.2 °C ± 1.5 °C');
  });

  it('has the decimals of the notation without an uncertainty', () => {
    assert.equal(showValue(speed, 41), '41.0 m/s');
    assert.equal(showValue(speed, 41, null), '41.0 m/s');
    assert.equal(showValue(side, toSI(-14.3, 'yd')), '14 yd left');
  });

  it('has no direction and no sign where it rounds to zero', () => {
    assert.equal(showValue(angle, 0), '0 deg');
    assert.equal(showValue(angle, deg(-0.01)), '0 deg');
    assert.equal(showValue(angle, deg(-0.01), deg(0.4)), '0.0 deg ± 0.4 deg');
    assert.equal(showValue(share, -0.001), '0 %');
  });

  it('has a minus only where no direction word says it', () => {
    assert.equal(showValue(share, -0.05), '-5 %');
    assert.equal(showValue(offset, -0.05), '5.0 cm behind');
  });

  it('may be in another unit of the dimension', () => {
    assert.equal(showValue(offset, 0.0889, 0.02, 'in'), '3.5 in ahead ± 0.8 in');
    assert.equal(showValue(speed, 41, undefined, 'mph'), '91.7 mph');
    assert.equal(showValue(speed, 41, undefined, 'kg'), '41.0 m/s');
  });

  it('does not tell a bearing from a sign', () => {
    assert.equal(showValue(wind, 3, 0.5), '3.0 m/s ± 0.5 m/s');
  });

  it('is "no value" where it is not finite, and shows no uncertainty that is not', () => {
    for (const value of [NaN, Infinity, -Infinity]) assert.equal(showValue(offset, value, 0.01), 'no value');
    for (const u of [NaN, Infinity, 0, -1]) assert.equal(showValue(offset, 0.05, u), '5.0 cm ahead');
  });

  it('never has minus zero, NaN or Infinity in it', () => {
    const number = fc.double();
    fc.assert(
      fc.property(fc.constantFrom(...notations), number, fc.option(number), (notation, value, u) => {
        assert.doesNotMatch(showValue(notation, value, u), /NaN|Infinity|undefined|(^|[ ±])-0(\.0*)?( |$)/);
        assert.doesNotMatch(
          showWindow(notation, Math.min(value, u ?? 0), Math.max(value, u ?? 0)),
          /NaN|Infinity|undefined|-0([ .]|$)(?!\d)/,
        );
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a shown window', () => {
  it('has its direction once on one side of zero, the smaller number first', () => {
    assert.equal(showWindow(angle, deg(-5), deg(-2)), '2..5 deg left');
    assert.equal(showWindow(angle, deg(2), deg(5.5)), '2..5.5 deg right');
    assert.equal(showWindow(side, toSI(-5, 'yd'), 0), '0..5 yd left');
    assert.equal(showWindow(share, 0.45, 0.6), '45..60 %');
  });

  it('has a direction on each side where it reaches across zero', () => {
    assert.equal(showWindow(angle, deg(-1), deg(2)), '1 deg left..2 deg right');
    assert.equal(showWindow(share, -0.05, 0.1), '-5..10 %');
  });

  it('has more decimals where the bounds would look alike', () => {
    assert.equal(showWindow(angle, deg(2.31), deg(2.34)), '2.31..2.34 deg right');
  });

  it('is "no value" where a bound is not finite', () => {
    assert.equal(showWindow(angle, NaN, 1), 'no value');
  });
});

describe('the size of a difference', () => {
  it('has the decimals of its uncertainty and no direction', () => {
    assert.equal(showSize(offset, -0.07, 0.01), '7.0 cm');
    assert.equal(showSize(speed, 3), '3.0 m/s');
    assert.equal(showSize(offset, NaN, 0.01), 'no value');
  });

  it('is in points between two shares', () => {
    assert.equal(showSize(share, 0.15), '15 points');
    assert.equal(showSize(share, -0.15, 0.012), '15.0 points');
    assert.equal(showSize(share, 0.01), '1 point');
    assert.equal(showSize(share, 0.11), '11 points');
  });

  it('knows no zero of a temperature', () => {
    assert.equal(showSize(temperature, 2, 1.4), '2.0 °C');
  });
});

describe('the second unit', () => {
  it('is one of the other system', () => {
    assert.deepEqual([offset, side, speed, temperature].map(secondUnit), ['in', 'm', 'mph', '°F']);
  });

  it('is missing where nobody would want one', () => {
    assert.deepEqual([angle, share, ratio, spin].map(secondUnit), [
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('has the dimension of the first', () => {
    for (const notation of notations) {
      const second = secondUnit(notation);
      if (second !== undefined) assert.equal(findUnit(second)?.dimension, notation.dimension);
    }
  });
});
