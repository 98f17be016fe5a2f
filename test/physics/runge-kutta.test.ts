// Tests of the integrator on equations with known solutions.
import assert from 'node:assert/strict';
import { createIntegrator, type Control } from '../../src/physics/runge-kutta.ts';

const control: Control = {
  tolerance: 1e-10,
  weights: Float64Array.of(1, 1),
  firstStep: 0.1,
  end: 10,
  maximumSteps: 10000,
};

function oscillator(_t: number, y: Float64Array, out: Float64Array): void {
  out[0] = y[1]!;
  out[1] = -y[0]!;
}

describe('createIntegrator', () => {
  it('follows a harmonic oscillator to its tolerance', () => {
    const integrator = createIntegrator(2);
    assert.equal(
      integrator.run(oscillator, Float64Array.of(0, 1), control, () => 'go'),
      'ended',
    );
    assert.equal(integrator.to, 10);
    assert.ok(Math.abs(integrator.state[0]! - Math.sin(10)) < 1e-8);
  });

  it('gains a fifth-order error from a tolerance: a hundred thousandth costs ten times the steps', () => {
    const count = (tolerance: number) => {
      let steps = 0;
      const visit = () => (steps++, 'go') as 'go';
      createIntegrator(2).run(oscillator, Float64Array.of(0, 1), { ...control, tolerance }, visit);
      return steps;
    };
    const ratio = count(1e-11) / count(1e-6);
    assert.ok(ratio > 8 && ratio < 12, `${ratio}`);
  });

  it('finds a crossing inside a step by its interpolant', () => {
    const integrator = createIntegrator(2);
    let crossing = Number.NaN;
    const outcome = integrator.run(oscillator, Float64Array.of(0, 1), control, () => {
      if (integrator.state[0]! >= 0) return 'go';
      crossing = integrator.root(0, integrator.from, integrator.to);
      return 'stop';
    });
    assert.equal(outcome, 'stopped');
    assert.ok(Math.abs(crossing - Math.PI) < 1e-8);
    assert.ok(Math.abs(integrator.at(crossing, 1) - -1) < 1e-8);
  });

  it('interpolates both ends of a step exactly', () => {
    const integrator = createIntegrator(2);
    let before = [0, 1];
    integrator.run(oscillator, Float64Array.of(0, 1), control, () => {
      for (const i of [0, 1]) {
        assert.ok(Math.abs(integrator.at(integrator.from, i) - before[i]!) < 1e-14);
        assert.ok(Math.abs(integrator.at(integrator.to, i) - integrator.state[i]!) < 1e-14);
      }
      before = [...integrator.state];
      return 'go';
    });
  });

  it('gives up where the solution runs away, and where the derivative is no number', () => {
    const few = { ...control, maximumSteps: 500 };
    const blowUp = createIntegrator(2).run(
      (_t, y, out) => {
        out[0] = y[0]! * y[0]!;
        out[1] = 0;
      },
      Float64Array.of(1, 0),
      few,
      () => 'go',
    );
    assert.equal(blowUp, 'stuck');
    const nothing = createIntegrator(2).run(
      (_t, _y, out) => out.fill(Number.NaN),
      Float64Array.of(1, 0),
      few,
      () => 'go',
    );
    assert.equal(nothing, 'stuck');
  });
});
