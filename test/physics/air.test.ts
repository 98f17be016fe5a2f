// Tests of the air's density and viscosity: defaults, limits, directions of change.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { airAt, moistAirDensity, standardAtmosphere, usualHumidity } from '../../src/physics/air.ts';
import { anyNumber, between, numbersOf } from './scenarios.ts';

describe('airAt', () => {
  it('is the standard atmosphere at sea level, moist, where nothing is given', () => {
    const air = airAt({})!;
    assert.equal(air.temperature, 288.15);
    assert.equal(air.pressure, 101325);
    assert.equal(air.humidity, usualHumidity);
    assert.ok(Math.abs(air.density - 1.225) < 0.006);
  });

  it('agrees with the dry standard atmosphere to the gas law’s own accuracy', () => {
    fc.assert(
      fc.property(between(-500, 4000), (altitude) => {
        const dry = airAt({ altitude, humidity: 0 })!;
        assert.ok(Math.abs(dry.density / standardAtmosphere(altitude)!.density - 1) < 1e-3);
      }),
    );
  });

  it('takes a measured pressure before the altitude’s', () => {
    assert.equal(airAt({ altitude: 1500, pressure: 9e4 })!.pressure, 9e4);
  });

  it('gives finite numbers or none for any weather', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (temperature, altitude, pressure, humidity) => {
        const air = airAt({ temperature, altitude, pressure, humidity });
        assert.ok(numbersOf(air).every((x) => Number.isFinite(x) && x >= 0));
      }),
    );
  });
});

describe('moistAirDensity', () => {
  it('falls with warmth and with moisture and grows with pressure', () => {
    fc.assert(
      fc.property(
        between(260, 320),
        between(8e4, 1.1e5),
        between(0, 0.9),
        (temperature, pressure, humidity) => {
          const here = moistAirDensity(temperature, pressure, humidity)!;
          assert.ok(moistAirDensity(temperature + 5, pressure, humidity)! < here);
          assert.ok(moistAirDensity(temperature, pressure, humidity + 0.1)! < here);
          assert.ok(moistAirDensity(temperature, pressure + 1e3, humidity)! > here);
        },
      ),
    );
  });
});

describe('standardAtmosphere', () => {
  it('ends where its layer ends', () => {
    assert.equal(standardAtmosphere(11001), undefined);
    assert.equal(standardAtmosphere(Number.NaN), undefined);
  });
});
