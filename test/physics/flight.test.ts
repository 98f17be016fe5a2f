// Tests of the flight: its invariants, its path, and what no ball does.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { coefficientSets, smitsSmith } from '../../src/physics/coefficients.ts';
import { finishFrom } from '../../src/physics/flight-geometry.ts';
import { fly } from '../../src/physics/flight.ts';
import { mirrored, sideways } from '../../src/physics/mirror.ts';
import { anyAir, anyLaunch, anyNumber, anyWind, between, degree, numbersOf } from './scenarios.ts';

const air = { density: 1.2, kinematicViscosity: 1.5e-5 };
const anySet = fc.constantFrom(...coefficientSets);
const launch = { ballSpeed: 65, launchAngle: 13 * degree, start: 0, spin: 300, spinTilt: 0 };

describe('fly', () => {
  it('is NaN-free and orders apex and landing as a flight must', () => {
    fc.assert(
      fc.property(anyLaunch, anyAir, anyWind, anySet, (blow, around, wind, set) => {
        const flight = fly(blow, { air: around, wind }, set);
        if (flight === undefined) return;
        assert.ok(numbersOf(flight).every(Number.isFinite));
        assert.ok(flight.time > flight.apexTime && flight.apexTime > 0);
        assert.ok(flight.apex > 0 && flight.descent > 0);
        assert.ok(flight.landing.spin <= blow.spin);
        assert.ok(Math.abs(flight.landing.backSpin) <= flight.landing.spin * (1 + 1e-12));
      }),
    );
  });

  it('always has a flight for what players do', () => {
    fc.assert(
      fc.property(anyLaunch, anyAir, anySet, (blow, around, set) => {
        assert.notEqual(fly(blow, { air: around }, set), undefined);
      }),
    );
  });

  it('keeps finish = carry · sin(start + asin(curve/carry))', () => {
    fc.assert(
      fc.property(anyLaunch, anyAir, anySet, (blow, around, set) => {
        const { finish, curve, carry } = fly(blow, { air: around }, set)!;
        if (Math.abs(curve) > 0.9 * carry) return;
        assert.ok(Math.abs(finishFrom(blow.start, curve, carry)! - finish) < 1e-9 * (1 + carry));
      }),
    );
  });

  it('mirrors with launch and wind', () => {
    fc.assert(
      fc.property(anyLaunch, anyAir, anyWind, anySet, (blow, around, wind, set) => {
        const flight = fly(blow, { air: around, wind }, set);
        const image = fly(
          mirrored(blow, sideways.launch.slice(0, 2)),
          { air: around, wind: mirrored(wind, sideways.wind) },
          set,
        );
        assert.equal(image === undefined, flight === undefined);
        if (flight === undefined || image === undefined) return;
        const back = mirrored(image, sideways.flight);
        for (const name of ['carry', 'finish', 'curve', 'apex', 'time', 'descent'] as const) {
          assert.ok(Math.abs(back[name] - flight[name]) < 1e-6 * (1 + Math.abs(flight[name])), name);
        }
      }),
    );
  });

  it('turns with the start line', () => {
    fc.assert(
      fc.property(anyLaunch, anySet, (blow, set) => {
        const fine = { tolerance: 1e-9 };
        const flight = fly(blow, { air }, set, fine)!;
        const turned = fly({ ...blow, start: 0 }, { air }, set, fine)!;
        // The drag of one set has corners, which cost the steps on either side some millimetres.
        assert.ok(Math.abs(flight.carry - turned.carry) < 0.01);
        assert.ok(Math.abs(flight.curve - turned.curve) < 0.01);
      }),
      { numRuns: 60 },
    );
  });

  it('curves toward the tilt of its axis', () => {
    fc.assert(
      fc.property(anySet, between(2 * degree, 40 * degree), (set, spinTilt) => {
        assert.ok(fly({ ...launch, spinTilt }, { air }, set)!.curve > 0);
        assert.ok(fly({ ...launch, spinTilt: -spinTilt }, { air }, set)!.curve < 0);
      }),
    );
  });

  it('carries shorter into the wind and drifts with one from the side', () => {
    const still = fly(launch, { air }, smitsSmith)!;
    const into = fly(launch, { air, wind: { speed: 5, from: 0 } }, smitsSmith)!;
    const behind = fly(launch, { air, wind: { speed: 5, from: Math.PI } }, smitsSmith)!;
    const fromLeft = fly(launch, { air, wind: { speed: 5, from: Math.PI / 2 } }, smitsSmith)!;
    assert.ok(into.carry < still.carry && still.carry < behind.carry);
    assert.ok(fromLeft.finish > 5);
  });

  it('is moved more by a wind that is the same at every height than by one that grows from the ground', () => {
    const wind = { speed: 5, from: Math.PI / 2 };
    const low = { ...launch, launchAngle: 4 * degree, spin: 100 };
    const growing = fly(low, { air, wind }, smitsSmith)!;
    const uniform = fly(low, { air, wind: { ...wind, heightProfile: 'uniform' } }, smitsSmith)!;
    assert.ok(uniform.finish > growing.finish && growing.finish > 0);
  });

  it('samples the path evenly from the ball to the landing', () => {
    fc.assert(
      fc.property(anyLaunch, anySet, fc.integer({ min: 2, max: 60 }), (blow, set, samples) => {
        const flight = fly(blow, { air }, set, { samples })!;
        const path = flight.path!;
        assert.equal(path.length, samples);
        assert.deepEqual(path[0], { time: 0, ahead: 0, right: 0, up: 0 });
        const last = path.at(-1)!;
        assert.ok(Math.abs(last.time - flight.time) < 1e-12 * flight.time);
        assert.equal(last.up, 0);
        assert.ok(Math.abs(last.right - flight.finish) < 1e-9 * (1 + flight.carry));
        assert.ok(path.every((point) => point.up <= flight.apex + 1e-4 && point.up >= -1e-6));
      }),
    );
  });

  it('gives no path unless asked', () => {
    assert.equal('path' in fly(launch, { air }, smitsSmith)!, false);
    assert.equal('path' in fly(launch, { air }, smitsSmith, { samples: 1 })!, false);
  });

  it('keeps the carry to a decimetre at its usual tolerance', () => {
    fc.assert(
      fc.property(anyLaunch, anySet, (blow, set) => {
        const usual = fly(blow, { air }, set)!;
        const exact = fly(blow, { air }, set, { tolerance: 1e-10 })!;
        assert.ok(Math.abs(usual.carry - exact.carry) < 0.1);
      }),
      { numRuns: 60 },
    );
  });

  it('has no flight of a ball that does not rise', () => {
    assert.equal(fly({ ...launch, ballSpeed: 0 }, { air }, smitsSmith), undefined);
    assert.equal(fly({ ...launch, launchAngle: 0 }, { air }, smitsSmith), undefined);
    assert.equal(fly({ ...launch, launchAngle: -0.1 }, { air }, smitsSmith), undefined);
  });

  it('brings a ball that goes straight up down where it was', () => {
    const flight = fly({ ...launch, launchAngle: Math.PI / 2, spin: 0 }, { air }, smitsSmith)!;
    assert.ok(flight.carry < 1e-9);
    assert.ok(Math.abs(flight.descent - Math.PI / 2) < 1e-9);
  });

  it('gives finite numbers or none for any launch, spin and weather', () => {
    const anyInput = fc.tuple(anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, anyNumber);
    fc.assert(
      fc.property(anyInput, anySet, ([ballSpeed, launchAngle, start, spin, spinTilt, speed, from], set) => {
        const flight = fly(
          { ballSpeed, launchAngle, start, spin, spinTilt },
          { air, wind: { speed, from } },
          set,
        );
        assert.ok(numbersOf(flight).every(Number.isFinite));
      }),
      { numRuns: 300 },
    );
  });

  it('gives finite numbers or none for a ball that spins beyond reason', () => {
    fc.assert(
      fc.property(anyLaunch, between(1e3, 1e6), anySet, (blow, spin, set) => {
        assert.ok(numbersOf(fly({ ...blow, spin }, { air }, set)).every(Number.isFinite));
      }),
    );
  });
});
