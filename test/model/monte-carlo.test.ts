// Holds first-order uncertainties of identities and of the arc against 20,000 seeded draws through formulas written anew here.
import assert from 'node:assert/strict';
import { derive } from '../../src/model/derive.ts';
import { degree, situationOf } from './situations.ts';

const draws = 20000;

/** Mulberry32: 32 bits of state, enough for a test. */
function uniforms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Box & Muller. */
function normals(seed: number): (mean: number, u: number) => number {
  const next = uniforms(seed);
  return (mean, u) => mean + u * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

function momentsOf(draw: () => number): { mean: number; u: number } {
  let [mean, squares] = [0, 0];
  for (let n = 1; n <= draws; n++) {
    const x = draw();
    const step = x - mean;
    mean += step / n;
    squares += step * (x - mean);
  }
  return { mean, u: Math.sqrt(squares / (draws - 1)) };
}

/** Within 3 %: four standard errors of a deviation from 20,000 draws are 2 %, the rest is for second order. */
function assertAgrees(id: string, entered: Record<string, number>, draw: () => number): void {
  const value = derive(situationOf([], entered)).values.get(id);
  assert.ok(value && value.u !== null, id);
  const drawn = momentsOf(draw);
  assert.ok(Math.abs(value.u / drawn.u - 1) < 0.03, `u ${value.u} against ${drawn.u}`);
  assert.ok(Math.abs(value.value - drawn.mean) < 0.08 * drawn.u, `${value.value} against ${drawn.mean}`);
}

describe('first-order uncertainty against Monte Carlo', () => {
  const normal = normals(20260514);

  it('of face-to-path', () => {
    assertAgrees('delivery.face_to_path', { 'delivery.face': 0.03, 'delivery.path': -0.05 }, () => {
      return normal(0.03, 1.2 * degree) - normal(-0.05, degree);
    });
  });

  it('of the speed ratio', () => {
    assertAgrees('flight.speed_ratio', { 'flight.ball_speed': 57, 'delivery.club_speed': 41 }, () => {
      return normal(57, 0.5) / normal(41, 0.5);
    });
  });

  it('of the low point from a steep attack, with the step’s own inexactness', () => {
    const entered = {
      'delivery.attack': -6 * degree,
      'delivery.arc.radius': 1.6,
      'delivery.arc.inclination': 58 * degree,
    };
    const centre = (1.6 * Math.sin(6 * degree)) / Math.sin(58 * degree);
    assertAgrees('delivery.low_point.ahead', entered, () => {
      const ratio = Math.sin(normal(-6 * degree, degree)) / Math.sin(normal(58 * degree, 3 * degree));
      return -normal(1.6, 0.12) * ratio + normal(0, Math.hypot(0.03 * centre, 0.005));
    });
  });

  it('of the path by way of the attack, where the inclination enters twice', () => {
    const entered = {
      'delivery.low_point.ahead': 0.17,
      'delivery.arc.radius': 1.6,
      'delivery.arc.inclination': 58 * degree,
      'delivery.arc.direction': degree,
    };
    const attack = Math.asin((-0.17 / 1.6) * Math.sin(58 * degree));
    const outward = -Math.atan(Math.tan(Math.asin(-0.17 / 1.6)) * Math.cos(58 * degree));
    assertAgrees('delivery.path', entered, () => {
      const inclination = normal(58 * degree, 3 * degree);
      const sine = -normal(0.17, 0.03) / normal(1.6, 0.12);
      const steepness =
        Math.asin(sine * Math.sin(inclination)) + normal(0, Math.hypot(0.03 * attack, 0.1 * degree));
      const angle = Math.asin(Math.sin(steepness) / Math.sin(inclination));
      const path = normal(degree, 2 * degree) - Math.atan(Math.tan(angle) * Math.cos(inclination));
      return path + normal(0, Math.hypot(0.02 * outward, 0.2 * degree));
    });
  });

  it('of face-to-path where path itself was derived from face-to-path’s partners on the arc', () => {
    const entered = {
      'delivery.face': 0.02,
      'delivery.arc.direction': degree,
      'delivery.arc.inclination': 58 * degree,
      'delivery.attack': -4 * degree,
    };
    const outward = -Math.atan(
      Math.tan(Math.asin(Math.sin(-4 * degree) / Math.sin(58 * degree))) * Math.cos(58 * degree),
    );
    assertAgrees('delivery.face_to_path', entered, () => {
      const inclination = normal(58 * degree, 3 * degree);
      const angle = Math.asin(Math.sin(normal(-4 * degree, degree)) / Math.sin(inclination));
      const path = normal(degree, 2 * degree) - Math.atan(Math.tan(angle) * Math.cos(inclination));
      return normal(0.02, 1.2 * degree) - path - normal(0, Math.hypot(0.02 * outward, 0.2 * degree));
    });
  });
});
