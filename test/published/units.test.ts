// Holds the factors of the unit table against values that were published or agreed elsewhere.
import assert from 'node:assert/strict';
import { differenceToSI, toSI } from '../../src/measure/units.ts';

/** Exact by definition, so they must agree but for the last bit. */
const exact: readonly (readonly [unit: string, si: number, source: string])[] = [
  ['yd', 0.9144, 'international yard and pound agreement, 1959'],
  ['ft', 0.9144 / 3, 'a third of the yard of 1959'],
  ['in', 0.0254, 'a thirty-sixth of the yard of 1959'],
  ['lb', 0.45359237, 'international yard and pound agreement, 1959'],
  ['oz', 0.45359237 / 16, 'a sixteenth of the pound of 1959'],
  ['mph', (1760 * 0.9144) / 3600, '1760 yards in an hour'],
  ['ft/s', 0.3048, 'NIST SP 811 (2008), Appendix B.8'],
  [
    'kn',
    1852 / 3600,
    'nautical mile of 1852 m, International Hydrographic Conference, Monaco, 1929, from memory',
  ],
  ['km/h', 1 / 3.6, 'SI'],
  ['rpm', (2 * Math.PI) / 60, 'a turn is 2π rad, SI brochure'],
  ['rev/s', 2 * Math.PI, 'a turn is 2π rad, SI brochure'],
  ['deg', Math.PI / 180, 'SI brochure (2019), table 8'],
  ['g cm²', 1e-7, 'SI'],
  ['mbar', 100, 'NIST SP 811 (2008), Appendix B.8, from memory'],
];

/** Rounded to seven digits where they were published. */
const rounded: readonly (readonly [unit: string, si: number, source: string])[] = [
  ['deg', 1.745329e-2, 'NIST SP 811 (2008), Appendix B.8'],
  [
    'mmHg',
    1.333224e2,
    'NIST SP 811 (2008), Appendix B.8, conventional millimetre (as a tenth of the centimetre)',
  ],
  ['inHg', 3.386389e3, 'NIST SP 811 (2008), Appendix B.8, conventional inch'],
  ['rpm', 1.047198e-1, 'NIST SP 811 (2008), Appendix B.8, from memory'],
  ['kn', 5.144444e-1, 'NIST SP 811 (2008), Appendix B.8, from memory'],
  ['oz', 2.834952e-2, 'NIST SP 811 (2008), Appendix B.8, from memory'],
];

describe('published factors of units', () => {
  for (const [unit, si, source] of exact) {
    it(`takes one ${unit} for ${si} (${source})`, () => {
      assert.ok(Math.abs(toSI(1, unit) / si - 1) <= 2 * Number.EPSILON, String(toSI(1, unit)));
    });
  }

  for (const [unit, si, source] of rounded) {
    it(`takes one ${unit} for ${si} to seven digits (${source})`, () => {
      assert.equal(Number(toSI(1, unit).toPrecision(7)), si);
    });
  }

  it('takes degrees Fahrenheit for (t + 459.67) / 1.8 K (NIST SP 811 (2008), Appendix B.8)', () => {
    for (const t of [-40, 0, 32, 59, 98.6]) assert.ok(Math.abs(toSI(t, '°F') - (t + 459.67) / 1.8) < 1e-12);
    assert.ok(Math.abs(differenceToSI(1, '°F') - 1 / 1.8) < 1e-15);
  });

  it('takes degrees Celsius for t + 273.15 K (NIST SP 811 (2008), Appendix B.8)', () => {
    for (const t of [-40, 0, 14, 100]) assert.equal(toSI(t, '°C'), t + 273.15);
  });
});
