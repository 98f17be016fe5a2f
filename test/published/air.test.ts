// Checks of the air against published tables.
import assert from 'node:assert/strict';
import { moistAirDensity, standardAtmosphere } from '../../src/physics/air.ts';

describe('standard atmosphere (ISO 2533:1975 / ICAO)', () => {
  // Altitude m, density kg/m³, kinematic viscosity 1e-5 m²/s.
  const table = [
    [0, 1.225, 1.46072],
    [1000, 1.11164, 1.5813],
    [2000, 1.00649, 1.71483],
    [3000, 0.90912, 1.86303],
  ] as const;
  for (const [altitude, density, viscosity] of table) {
    it(`has the density and viscosity of the table at ${altitude} m`, () => {
      const air = standardAtmosphere(altitude)!;
      assert.ok(Math.abs(air.density - density) < 6e-6, `${air.density}`);
      assert.ok(Math.abs(air.kinematicViscosity * 1e5 - viscosity) < 6e-6, `${air.kinematicViscosity}`);
    });
  }
});

describe('moist air (CIPM-2007; Picard et al. 2008, Metrologia 45:149)', () => {
  // °C, Pa, relative humidity, kg/m³; evaluated from the published equation by another implementation, of which the
  // value at 25 °C also appears in a third.
  const table = [
    [20, 101325, 0, 1.204557],
    [20, 101325, 0.5, 1.199314],
    [20, 101325, 1, 1.194087],
    [25, 101325, 0.5, 1.177315],
    [30, 100000, 0.8, 1.134777],
  ] as const;
  for (const [celsius, pressure, humidity, density] of table) {
    it(`weighs ${density} kg/m³ at ${celsius} °C, ${pressure} Pa and ${humidity * 100} %`, () => {
      const computed = moistAirDensity(celsius + 273.15, pressure, humidity)!;
      assert.ok(Math.abs(computed - density) < 1.1e-6, `${computed}`);
    });
  }
});
