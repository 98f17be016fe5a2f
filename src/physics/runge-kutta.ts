// An adaptive Runge–Kutta integrator of order 5 with dense output; knows nothing of what it integrates.

/** Writes the derivative of `y` at `t` into `out`; must not keep either array. */
export type Derivative = (t: number, y: Float64Array, out: Float64Array) => void;

export interface Control {
  /** Allowed error of a step, relative to `weights` + |y|. */
  readonly tolerance: number;
  /** Size of each component below which its error counts as absolute. */
  readonly weights: Float64Array;
  readonly firstStep: number;
  readonly end: number;
  readonly maximumSteps: number;
}

export interface Integrator {
  readonly from: number;
  readonly to: number;
  /** State at `to`; overwritten by the next step. */
  readonly state: Float64Array;
  /** Component of the state at a time within the last step, by the fourth-order interpolant. */
  at(t: number, component: number): number;
  /** Time within [left, right] of the last step at which the component crosses zero; needs a change of sign. */
  root(component: number, left: number, right: number): number;
  /** Runs until `visit`, called after each step, says stop. */
  run(derivative: Derivative, initial: Float64Array, control: Control, visit: () => 'go' | 'stop'): Outcome;
}

/** `stuck`: the steps were used up, or a derivative was not a number. */
export type Outcome = 'stopped' | 'ended' | 'stuck';

/**
 * An integrator of systems of that dimension, with its working arrays, so that runs allocate nothing. Not re-entrant.
 *
 * Method: Dormand & Prince 1980, J. Comput. Appl. Math. 6:19, RK5(4)7M, fifth order carried on; interpolant and step
 * control as in Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I, II.4–II.6.
 */
export function createIntegrator(dimension: number): Integrator {
  const n = dimension;
  const room = () => new Float64Array(n);
  const [start, trial, k1, k2, k3, k4, k5, k6, k7] = [
    room(), room(), room(), room(), room(), room(), room(), room(), room(),
  ] as const; // prettier-ignore
  const state = room();
  const [dense2, dense3, dense4, dense5] = [room(), room(), room(), room()] as const;
  let from = 0;
  let to = 0;

  /** Takes a trial step of size h into `trial`; returns the weighted error, 1 being just allowed. */
  function attempt(derivative: Derivative, t: number, h: number, control: Control): number {
    for (let i = 0; i < n; i++) trial[i] = state[i]! + h * 0.2 * k1[i]!;
    derivative(t + 0.2 * h, trial, k2);
    for (let i = 0; i < n; i++) trial[i] = state[i]! + h * (0.075 * k1[i]! + 0.225 * k2[i]!);
    derivative(t + 0.3 * h, trial, k3);
    for (let i = 0; i < n; i++) {
      trial[i] = state[i]! + h * ((44 / 45) * k1[i]! - (56 / 15) * k2[i]! + (32 / 9) * k3[i]!);
    }
    derivative(t + 0.8 * h, trial, k4);
    for (let i = 0; i < n; i++) {
      trial[i] =
        state[i]! +
        h *
          ((19372 / 6561) * k1[i]! -
            (25360 / 2187) * k2[i]! +
            (64448 / 6561) * k3[i]! -
            (212 / 729) * k4[i]!);
    }
    derivative(t + (8 / 9) * h, trial, k5);
    for (let i = 0; i < n; i++) {
      trial[i] =
        state[i]! +
        h *
          ((9017 / 3168) * k1[i]! -
            (355 / 33) * k2[i]! +
            (46732 / 5247) * k3[i]! +
            (49 / 176) * k4[i]! -
            (5103 / 18656) * k5[i]!);
    }
    derivative(t + h, trial, k6);
    for (let i = 0; i < n; i++) {
      trial[i] =
        state[i]! +
        h *
          ((35 / 384) * k1[i]! +
            (500 / 1113) * k3[i]! +
            (125 / 192) * k4[i]! -
            (2187 / 6784) * k5[i]! +
            (11 / 84) * k6[i]!);
    }
    derivative(t + h, trial, k7);
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const error =
        h *
        ((71 / 57600) * k1[i]! -
          (71 / 16695) * k3[i]! +
          (71 / 1920) * k4[i]! -
          (17253 / 339200) * k5[i]! +
          (22 / 525) * k6[i]! -
          (1 / 40) * k7[i]!);
      const size = Math.max(Math.abs(state[i]!), Math.abs(trial[i]!));
      const share = error / (control.tolerance * (control.weights[i]! + size));
      sum += share * share;
    }
    return Math.sqrt(sum / n);
  }

  function accept(t: number, h: number): void {
    for (let i = 0; i < n; i++) {
      const before = state[i]!;
      const rise = trial[i]! - before;
      const bend = h * k1[i]! - rise;
      start[i] = before;
      dense2[i] = rise;
      dense3[i] = bend;
      dense4[i] = rise - h * k7[i]! - bend;
      dense5[i] =
        h *
        ((-12715105075 / 11282082432) * k1[i]! +
          (87487479700 / 32700410799) * k3[i]! -
          (10690763975 / 1880347072) * k4[i]! +
          (701980252875 / 199316789632) * k5[i]! -
          (1453857185 / 822651844) * k6[i]! +
          (69997945 / 29380423) * k7[i]!);
      state[i] = trial[i]!;
      k1[i] = k7[i]!;
    }
    from = t;
    to = t + h;
  }

  function at(t: number, component: number): number {
    const c = component;
    const share = to > from ? (t - from) / (to - from) : 0;
    const rest = 1 - share;
    return start[c]! + share * (dense2[c]! + rest * (dense3[c]! + share * (dense4[c]! + rest * dense5[c]!)));
  }

  /** Regula falsi in its Illinois form. */
  function root(component: number, left: number, right: number): number {
    let [a, b] = [left, right];
    let [valueA, valueB] = [at(a, component), at(b, component)];
    for (let i = 0; i < 50 && Math.abs(b - a) > 1e-12 * Math.abs(b) && valueB !== valueA; i++) {
      const c = b - (valueB * (b - a)) / (valueB - valueA);
      const value = at(c, component);
      if (value * valueB <= 0) [a, valueA] = [b, valueB];
      else valueA /= 2;
      [b, valueB] = [c, value];
      if (value === 0) break;
    }
    return Math.min(right, Math.max(left, b));
  }

  function run(
    derivative: Derivative,
    initial: Float64Array,
    control: Control,
    visit: () => 'go' | 'stop',
  ): Outcome {
    state.set(initial);
    from = to = 0;
    let h = Math.min(control.firstStep, control.end);
    derivative(0, state, k1);
    for (let steps = 0; steps < control.maximumSteps; steps++) {
      const error = attempt(derivative, to, h, control);
      if (error <= 1) {
        accept(to, h);
        if (visit() === 'stop') return 'stopped';
        if (to >= control.end) return 'ended';
      }
      // A step that gave no number is retried far smaller; the count of steps bounds this too.
      const factor = error === error ? 0.9 * Math.max(error, 1e-8) ** -0.2 : 0.1;
      h = Math.min(h * Math.min(5, Math.max(0.1, factor)), control.end - to);
    }
    return 'stuck';
  }

  return {
    get from() {
      return from;
    },
    get to() {
      return to;
    },
    state,
    at,
    root,
    run,
  };
}
