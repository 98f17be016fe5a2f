// Density and viscosity of the air from what a coach can read off; knows nothing of the ball.

export interface Air {
  /** K */
  readonly temperature: number;
  /** Pa */
  readonly pressure: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity: number;
  /** kg/m³ */
  readonly density: number;
  /** Pa s */
  readonly dynamicViscosity: number;
  /** m²/s */
  readonly kinematicViscosity: number;
}

export interface Weather {
  /** K */
  readonly temperature?: number;
  /** m above the sea */
  readonly altitude?: number;
  /** Pa, at the place itself */
  readonly pressure?: number;
  /** Relative humidity, 0 to 1 */
  readonly humidity?: number;
}

/** Humidity that is taken where none is given: judgement; between 0 and 1 the density changes by 1 % at most at 25 °C. */
export const usualHumidity = 0.5;

const seaLevelTemperature = 288.15;
const seaLevelPressure = 101325;
const lapse = 0.0065;
const specificGasConstant = 287.05287;
const gravity = 9.80665;

/**
 * Dry air of the standard atmosphere: T = 288.15 − 0.0065 H, p = 101325 (T/288.15)^(g/(R·0.0065)), ρ = p/(R T).
 * Source: ISO 2533:1975 (the ICAO standard atmosphere), troposphere.
 *
 * @param altitude geopotential, m, −1000 to 11000.
 * @returns undefined outside that range.
 */
export function standardAtmosphere(altitude: number): Air | undefined {
  if (!(altitude >= -1000 && altitude <= 11000)) return undefined;
  const temperature = seaLevelTemperature - lapse * altitude;
  const pressure = standardPressure(altitude);
  return airOf(temperature, pressure, 0, pressure / (specificGasConstant * temperature));
}

/**
 * Air at the place: what is given is used; what is missing comes from the standard atmosphere at the altitude
 * (0 m if left out) and `usualHumidity`.
 *
 * @returns undefined for weather that no golfer meets (200–340 K, 30–120 kPa, −1000–11000 m).
 */
export function airAt(weather: Weather): Air | undefined {
  const altitude = weather.altitude ?? 0;
  const standard = standardAtmosphere(altitude);
  if (standard === undefined) return undefined;
  const temperature = weather.temperature ?? standard.temperature;
  const pressure = weather.pressure ?? standard.pressure;
  const humidity = weather.humidity ?? usualHumidity;
  const density = moistAirDensity(temperature, pressure, humidity);
  return density === undefined ? undefined : airOf(temperature, pressure, humidity, density);
}

/**
 * Density of moist air, kg/m³: ρ = p M_a/(Z R T) · (1 − x_v (1 − M_v/M_a)).
 * Source: CIPM-2007, Picard, Davis, Gläser & Fujii 2008, Metrologia 45:149, appendix A.1, for 400 ppm of CO₂.
 * Stated for 600–1100 hPa and 15–27 °C to 22 ppm; used beyond, where it stays far better than the weather is known.
 *
 * @param temperature K. @param pressure Pa. @param humidity 0 to 1.
 * @returns undefined outside 200–340 K, 30–120 kPa, 0–1.
 */
export function moistAirDensity(temperature: number, pressure: number, humidity: number): number | undefined {
  if (!(temperature >= 200 && temperature <= 340 && pressure >= 3e4 && pressure <= 1.2e5)) return undefined;
  if (!(humidity >= 0 && humidity <= 1)) return undefined;
  const celsius = temperature - 273.15;
  const saturation = Math.exp(
    1.2378847e-5 * temperature * temperature -
      1.9121316e-2 * temperature +
      33.93711047 -
      6.3431645e3 / temperature,
  );
  const enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * celsius * celsius;
  const vapour = (humidity * enhancement * saturation) / pressure;
  const ratio = pressure / temperature;
  const compressibility =
    1 -
    ratio *
      (1.58123e-6 -
        2.9331e-8 * celsius +
        1.1043e-10 * celsius * celsius +
        (5.707e-6 - 2.051e-8 * celsius) * vapour +
        (1.9898e-4 - 2.376e-6 * celsius) * vapour * vapour) +
    ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
  const molarMass = 28.96546e-3;
  const vapourMolarMass = 18.01528e-3;
  const gasConstant = 8.314472;
  return (
    ((pressure * molarMass) / (compressibility * gasConstant * temperature)) *
    (1 - (1 - vapourMolarMass / molarMass) * vapour)
  );
}

/**
 * Dynamic viscosity of air, Pa s: 1.458e-6 T^1.5/(T + 110.4) (Sutherland; constants of ISO 2533:1975).
 * Of dry air; moisture changes it by less than 1 %.
 */
export function sutherlandViscosity(temperature: number): number {
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
}

function standardPressure(altitude: number): number {
  const ratio = 1 - (lapse * altitude) / seaLevelTemperature;
  return seaLevelPressure * ratio ** (gravity / (specificGasConstant * lapse));
}

function airOf(temperature: number, pressure: number, humidity: number, density: number): Air {
  const dynamicViscosity = sutherlandViscosity(temperature);
  return {
    temperature,
    pressure,
    humidity,
    density,
    dynamicViscosity,
    kinematicViscosity: dynamicViscosity / density,
  };
}
