// Draws shots as if balls had drag and lift multiplied by known factors, measured with known uncertainties; for tests.
import type { CalibrationShot } from '../../src/model/calibration-fit.ts';
import { airAt } from '../../src/physics/air.ts';
import { coefficientSets, scaledSet } from '../../src/physics/coefficients.ts';
import { fly } from '../../src/physics/flight.ts';

const degree = Math.PI / 180;
const rpm = Math.PI / 30;

export interface Practice {
  readonly drag: number;
  readonly lift: number;
  readonly count: number;
  readonly draw: () => number;
  /** Ball speed m/s, launch angle deg and spin rpm of each shot: a club each, taken in turn. */
  readonly clubs: readonly (readonly [number, number, number])[];
  readonly sessions: number;
  readonly says: readonly ('apex' | 'curve')[];
}

/** A seven iron, a five hybrid, a driver. */
export const threeClubs = [
  [44, 20, 5600],
  [52, 15, 4300],
  [62, 12, 2700],
] as const;

const u = {
  ballSpeed: 0.4,
  launchAngle: 0.7 * degree,
  start: 0.7 * degree,
  spin: 150 * rpm,
  spinTilt: 2 * degree,
};

/** True launches are drawn about the club's; what is measured of them, of the flight and of the air has an error of its own. */
export function practice({ drag, lift, count, draw, clubs, sessions, says }: Practice): CalibrationShot[] {
  const days = Array.from({ length: sessions }, () => ({
    temperature: 288 + 2 * draw(),
    pressure: 100000 + 300 * draw(),
    wind: 0.5 * draw(),
  }));
  const shots: CalibrationShot[] = [];
  for (let index = 0; index < count; index++) {
    const [speed, angle, spin] = clubs[index % clubs.length]!;
    const day = days[index % sessions]!;
    const truth = {
      ballSpeed: speed + 0.8 * draw(),
      launchAngle: (angle + 1 * draw()) * degree,
      start: 1.5 * degree * draw(),
      spin: (spin + 200 * draw()) * rpm,
      spinTilt: 4 * degree * draw(),
    };
    const air = airAt({ temperature: day.temperature, pressure: day.pressure, humidity: 0.5 })!;
    const wind = { speed: day.wind, from: 0, heightProfile: { reference: 2, roughness: 0.03 } };
    const flights = coefficientSets.map((set) => fly(truth, { air, wind }, scaledSet(set, { drag, lift }))!);
    const mean = (key: 'carry' | 'apex' | 'curve'): number =>
      flights.reduce((sum, flight) => sum + flight[key], 0) / flights.length;
    const measured = (value: number, spread: number) => ({ value: value + spread * draw(), u: spread });
    shots.push({
      session: `day ${index % sessions}`,
      air: {
        temperature: { value: 288, u: 2 },
        pressure: { value: 100000, u: 300 },
        humidity: 0.5,
        wind: { value: 0, u: 0.5 },
        windBearing: 0,
      },
      launch: {
        ballSpeed: measured(truth.ballSpeed, u.ballSpeed),
        launchAngle: measured(truth.launchAngle, u.launchAngle),
        start: measured(truth.start, u.start),
        spin: measured(truth.spin, u.spin),
        spinTilt: measured(truth.spinTilt, u.spinTilt),
      },
      carry: measured(mean('carry'), 2),
      ...(says.includes('apex') ? { apex: measured(mean('apex'), 0.8) } : {}),
      ...(says.includes('curve') ? { curve: measured(mean('curve'), 1.5) } : {}),
    });
  }
  return shots;
}
