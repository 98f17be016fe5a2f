// Known multipliers are found again within their uncertainties, and shots that say too little are refused.
import assert from 'node:assert/strict';
import { calibrate, fewestShots, type CalibrationFit } from '../../src/model/calibration.ts';
import type { CalibrationShot } from '../../src/model/calibration-fit.ts';
import { derive } from '../../src/model/derive.ts';
import type { Calibration, Situation, Value } from '../../src/model/value.ts';
import { practice, threeClubs, type Practice } from './calibration-shots.ts';
import { normals } from './draws.ts';

const usual: Omit<Practice, 'draw'> = {
  drag: 1.06,
  lift: 0.95,
  count: 24,
  clubs: threeClubs,
  sessions: 3,
  says: ['apex'],
};

function fitOf(shots: readonly CalibrationShot[]): CalibrationFit {
  const outcome = calibrate(shots);
  if (outcome.kind === 'refused') assert.fail(outcome.reason);
  return outcome.fit;
}

describe('calibration', () => {
  it('finds known multipliers again as often as its uncertainties say', function () {
    this.timeout(60_000);
    const draw = normals(3);
    const off: number[] = [];
    for (let round = 0; round < 20; round++) {
      const { drag, lift } = fitOf(practice({ ...usual, draw }));
      off.push((drag.value - 1.06) / drag.u, (lift!.value - 0.95) / lift!.u);
    }
    // Forty numbers, in pairs correlated; of standard normal ones the root mean square is 1 ± 0.15 or so.
    const rms = Math.sqrt(off.reduce((sum, z) => sum + z * z, 0) / off.length);
    assert.ok(rms > 0.65 && rms < 1.35, `${rms}`);
    assert.ok(off.filter((z) => Math.abs(z) < 2).length >= 35);
  });

  it('says how many shots, at which ball speeds, and how much nearer the carries are', () => {
    const fit = fitOf(practice({ ...usual, draw: normals(4) }));
    assert.equal(fit.shots + fit.leftOut, 24);
    assert.ok(fit.ballSpeed.from > 38 && fit.ballSpeed.from < 46 && fit.ballSpeed.to > 58);
    assert.ok(fit.after < 0.6 * fit.before, `${fit.before} to ${fit.after} m`);
    assert.ok(Math.abs(fit.correlation) < 1);
  });

  it('is little moved by one shot that was measured wrong', () => {
    const shots = practice({ ...usual, draw: normals(5) });
    const [first, ...others] = shots;
    const wrong = { ...first!, carry: { ...first!.carry, value: first!.carry.value + 60 } };
    const [clean, moved] = [fitOf(shots), fitOf([wrong, ...others])];
    assert.equal(moved.leftOut, clean.leftOut + 1);
    assert.ok(Math.abs(moved.drag.value - clean.drag.value) < clean.drag.u);
  });

  it('fits drag alone, and says so, where one club and its carries do not tell lift from drag', () => {
    const outcome = calibrate(
      practice({ ...usual, clubs: [threeClubs[0]], sessions: 1, says: [], draw: normals(6) }),
    );
    assert.ok(outcome.kind === 'fitted');
    assert.equal(outcome.fit.lift, undefined);
    assert.match(outcome.cautions.join(' '), /Lift cannot be told from drag/);
    assert.match(
      outcome.cautions.join(' '),
      /beyond, the spread of the published coefficients is added again/,
    );
    assert.match(outcome.cautions.join(' '), /one session/);
  });

  it('refuses fewer shots than it needs, and says how many', () => {
    const outcome = calibrate(practice({ ...usual, count: 7, draw: normals(7) }));
    assert.ok(outcome.kind === 'refused');
    assert.match(outcome.reason, new RegExp(`^Found 7 shots .*; expected at least ${fewestShots}\\.$`));
    assert.equal(calibrate([]).kind, 'refused');
  });

  it('refuses carries in the wrong unit', () => {
    const shots = practice({ ...usual, draw: normals(8) }).map(({ apex: _, ...shot }) => ({
      ...shot,
      carry: { ...shot.carry, value: shot.carry.value * 0.3048 },
    }));
    assert.equal(calibrate(shots).kind, 'refused');
  });

  it('gives no number that is none, whatever the shots say', () => {
    const shots = practice({ ...usual, count: 12, draw: normals(9) }).map((shot, index) => ({
      ...shot,
      carry: { value: [0, Number.NaN, Infinity, -5][index % 4]!, u: index % 3 },
    }));
    assert.equal(calibrate(shots).kind, 'refused');
  });
});

describe('a calibrated flight', () => {
  const degree = Math.PI / 180;
  const observed = (ballSpeed: number): Situation => ({
    hand: 'right',
    clubKind: 'iron',
    windBearing: undefined,
    observations: new Map(
      Object.entries({
        'flight.ball_speed': [ballSpeed, 0.2],
        'flight.launch_angle': [18 * degree, 0.3 * degree],
        'flight.start': [0, 0.3 * degree],
        'flight.spin': [550, 8],
        'flight.spin_tilt': [0, 1 * degree],
        'conditions.temperature': [288, 1],
        'conditions.pressure': [101000, 100],
        'conditions.wind': [0, 0.1],
      }).map(([id, [value, u]]) => [id, { id, value: value!, u: u! }]),
    ),
  });
  const calibration: Calibration = {
    drag: { value: 1.05, u: 0.01 },
    lift: { value: 0.98, u: 0.02 },
    correlation: 0.8,
    shots: 48,
    ballSpeed: { from: 40, to: 55 },
  };
  const carryAt = (ballSpeed: number, factors?: Calibration): Value =>
    derive({ ...observed(ballSpeed), calibration: factors }).values.get('flight.carry')!;

  it('is shorter with more drag, and surer than by published coefficients', () => {
    const [plain, calibrated] = [carryAt(48), carryAt(48, calibration)];
    assert.ok(calibrated.value < plain.value);
    assert.ok(calibrated.u! < 0.6 * plain.u!, `${plain.u} to ${calibrated.u}`);
  });

  it('names the calibration among what it rests on', () => {
    const words = carryAt(48, calibration).assumed.map((assumption) => assumption.words);
    assert.ok(
      words.includes('drag × 1.05 and lift × 0.98 as calibrated on 48 shots of your own'),
      words.join(),
    );
    assert.ok(!carryAt(48).assumed.some(({ id }) => id === 'flight.calibration'));
  });

  it('is as unsure as before, and says why, far beyond the ball speeds that were calibrated', () => {
    const far = carryAt(70, calibration);
    assert.ok(far.u! > 0.8 * carryAt(70).u!);
    assert.ok(far.assumed.some(({ words }) => words.endsWith('at other ball speeds')));
  });

  it('is less sure with less sure multipliers, and with ones that err together against each other', () => {
    const unsure = carryAt(48, { ...calibration, drag: { value: 1.05, u: 0.05 } });
    const opposed = carryAt(48, { ...calibration, correlation: -0.8 });
    const usualU = carryAt(48, calibration).u!;
    assert.ok(unsure.u! > usualU && opposed.u! > usualU);
  });

  it('is the published flight where both multipliers are 1', () => {
    const one = carryAt(48, { ...calibration, drag: { value: 1, u: 0.01 }, lift: undefined });
    assert.ok(Math.abs(one.value - carryAt(48).value) < 1e-9);
  });
});
