// How units are found and converted.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { siUnits } from '../../src/measure/unit-table.ts';
import type { Dimension } from '../../src/measure/measure.ts';
import {
  differenceFromSI,
  differenceToSI,
  findUnit,
  fromSI,
  toSI,
  unitsOf,
} from '../../src/measure/units.ts';
import { isClose } from './notations.ts';

const dimensions = Object.keys(siUnits) as Dimension[];
const everyUnit = dimensions.flatMap((dimension) => unitsOf(dimension));

describe('units', () => {
  it('has units of every dimension', () => {
    for (const dimension of dimensions) assert.ok(unitsOf(dimension).length > 0, dimension);
  });

  it('finds each unit by its name and by every other spelling', () => {
    for (const unit of everyUnit) {
      for (const spelling of [unit.name, ...unit.aliases])
        assert.equal(findUnit(spelling)?.name, unit.name, spelling);
    }
  });

  it('has no spelling that two units share, whatever the letter case', () => {
    const spellings = everyUnit.flatMap((unit) => [
      ...new Set([unit.name, ...unit.aliases].map((s) => s.toLowerCase())),
    ]);
    assert.equal(new Set(spellings).size, spellings.length);
  });

  it('finds units in any letter case', () => {
    assert.equal(findUnit('MPH')?.name, 'mph');
    assert.equal(findUnit('Yards')?.name, 'yd');
    assert.equal(findUnit('inhg')?.name, 'inHg');
  });

  it('knows the spellings that coaches use', () => {
    const spoken = {
      inches: 'in',
      feet: 'ft',
      yards: 'yd',
      degrees: 'deg',
      '°': 'deg',
      knots: 'kn',
      lbs: 'lb',
      C: '°C',
      degF: '°F',
      percent: '%',
    };
    for (const [spelling, name] of Object.entries(spoken)) assert.equal(findUnit(spelling)?.name, name);
    for (const spelling of ['g cm²', 'g cm2', 'g·cm²', 'g cm^2', 'gcm2'])
      assert.equal(findUnit(spelling)?.name, 'g cm²');
  });

  it('does not find what is no unit', () => {
    for (const text of ['cn', 'constructor', '__proto__', ' ', 'm2', 'toString'])
      assert.equal(findUnit(text), undefined);
  });

  it('converts decimal units to the nearest floating-point number', () => {
    assert.equal(toSI(57, 'cm'), 0.57);
    assert.equal(toSI(7, 'in'), 0.1778);
    assert.equal(toSI(66, '%'), 0.66);
    assert.equal(toSI(35, 'ms'), 0.035);
  });

  it('leaves the zero of a temperature out of a difference', () => {
    assert.equal(differenceToSI(3, '°C'), 3);
    assert.ok(isClose(differenceToSI(9, '°F'), 5));
    assert.ok(isClose(differenceFromSI(5, '°F'), 9));
    assert.equal(toSI(0, '°C'), 273.15);
    assert.ok(isClose(toSI(32, '°F'), 273.15));
  });

  it('brings every value back from SI', () => {
    const units = fc.constantFrom(...everyUnit.map((unit) => unit.name));
    fc.assert(
      fc.property(units, fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
        // A temperature near its own zero loses digits to the 273.15 or 459.67 that are added and taken away.
        const scale = Math.max(Math.abs(value), Math.abs(fromSI(0, unit)));
        assert.ok(Math.abs(fromSI(toSI(value, unit), unit) - value) <= 1e-300 + 8 * Number.EPSILON * scale);
        assert.ok(isClose(differenceFromSI(differenceToSI(value, unit), unit), value));
      }),
    );
  });

  it('refuses to convert by a name that it does not know', () => {
    assert.throws(() => toSI(1, 'furlong'), RangeError);
  });
});
