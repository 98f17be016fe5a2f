// Published sets of drag and lift coefficients of a golf ball behind one shape; knows nothing of trajectories.
import { createCurve } from './curve.ts';

export interface CoefficientSet {
  readonly name: string;
  /** Author, year, where. */
  readonly source: string;
  /** Where the source says that it holds, and what is done outside. */
  readonly validity: string;
  /** Drag coefficient at a Reynolds number Re = 2 r V/ν and spin parameter S = r ω/V, both ≥ 0. */
  drag(re: number, s: number): number;
  /** Lift coefficient at the same. */
  lift(re: number, s: number): number;
}

/**
 * C_D = 0.24 + 0.18 S + 0.06 sin[π (Re − 9e4)/2e5]; C_L = 0.54 S^0.4.
 * Source: Smits & Smith 1994, Science and Golf II, 340–347, as quoted by others (not read in the original).
 */
export const smitsSmith: CoefficientSet = {
  name: 'Smits & Smith 1994',
  source: 'Smits & Smith 1994, Science and Golf II, 340–347 (second-hand reading)',
  validity: '7e4 < Re < 2.1e5 and 0.08 < S < 0.2; Re held at its ends, S continued to 0 and to 0.6',
  drag: (re, s) => {
    const held = re < 7e4 ? 7e4 : re > 2.1e5 ? 2.1e5 : re;
    return 0.24 + 0.18 * heldSpin(s) + 0.06 * Math.sin((Math.PI * (held - 9e4)) / 2e5);
  },
  lift: (_re, s) => 0.54 * heldSpin(s) ** 0.4,
};

/**
 * C_D = C_D0(Re) + 0.2087217 S; C_L = 0.2294096 S^0.4, with C_D0 1.9451114 up to Re 0.5e5 and falling linearly to 0.13248
 * at 1e5 and beyond.
 * Source: A. Nathan, University of Illinois, golf trajectory workbook.
 */
export const nathan: CoefficientSet = {
  name: 'Nathan',
  source: 'A. Nathan, University of Illinois, golf trajectory workbook',
  validity: 'no range stated; S held at 0.6',
  drag: (re, s) => {
    const share = re < 5e4 ? 0 : re > 1e5 ? 1 : (re - 5e4) / 5e4;
    return 1.9451114 + share * (0.13248 - 1.9451114) + 0.2087217 * heldSpin(s);
  },
  lift: (_re, s) => 0.2294096 * heldSpin(s) ** 0.4,
};

/** Bearman & Harvey 1976 at 3500 rpm, as tabulated in the NTNU TKT4140 lecture notes (ball 0.041 m across). */
export const bearmanHarveyRow = {
  speed: [13.7, 21.6, 29.9, 38.4, 46.9, 55.2, 63.1, 71.9, 80.2, 88.1],
  drag: [0.3918, 0.37575, 0.334, 0.29565, 0.2752, 0.264, 0.2609, 0.259, 0.25715, 0.25715],
  lift: [0.3831, 0.35625, 0.32485, 0.2683, 0.2228, 0.20055, 0.18405, 0.16955, 0.15875, 0.1516],
} as const;

const rowRadius = 0.0205;
const rowSpin = (3500 * Math.PI) / 30;
const rowViscosity = 1.5e-5;
const dragSlope = (0.32 - 0.27) / (0.3 - 0.02);
const liftExponent = Math.log(0.25 / 0.08) / Math.log(0.3 / 0.02);
const rowReynolds = bearmanHarveyRow.speed.map((v) => (2 * rowRadius * v) / rowViscosity);
const rowS = bearmanHarveyRow.speed.map((v) => (rowRadius * rowSpin) / v);
const spinlessDrag = createCurve(
  rowReynolds,
  bearmanHarveyRow.drag.map((c, i) => c - dragSlope * (rowS[i] ?? 0)),
);
const liftFactor = createCurve(
  rowReynolds,
  bearmanHarveyRow.lift.map((c, i) => c / (rowS[i] ?? 1) ** liftExponent),
);

/**
 * C_D = D(Re) + 0.179 S; C_L = L(Re) S^0.420.
 *
 * Read from the source: the row at 3500 rpm (hexagonal dimples), along which V sets both Re and S; and, for the
 * conventional ball, C_D 0.27 → 0.32 and C_L 0.08 → 0.25 as S goes 0.02 → 0.3, nearly independent of Re for
 * 1.26e5–2.38e5. Judged by us: that the slope of C_D and the power of C_L in S that those ends give (0.179, 0.420) hold
 * for the hexagonal ball too; D and L then are what reproduces the row exactly, a monotone cubic in Re between its points. That
 * D comes out constant to 0.003 for Re ≥ 1.5e5 speaks for it. Also judged: ν 1.5e-5 m²/s in the tunnel.
 */
export const bearmanHarvey: CoefficientSet = {
  name: 'Bearman & Harvey 1976',
  source:
    'Bearman & Harvey 1976, Aeronaut. Q. 27:112–122, hexagonal dimples, one tabulated row spread over S by us',
  validity: '3.7e4 < Re < 2.4e5 and 0.02 < S < 0.55; Re held at its ends, S continued to 0 and to 0.6',
  drag: (re, s) => spinlessDrag(re) + dragSlope * heldSpin(s),
  lift: (re, s) => liftFactor(re) * heldSpin(s) ** liftExponent,
};

/** All published sets; their spread is the uncertainty of the aerodynamics. */
export const coefficientSets: readonly CoefficientSet[] = [smitsSmith, bearmanHarvey, nathan];

/** The same set with drag and lift multiplied, as for a workspace that has been calibrated on its own shots. */
export function scaledSet(
  set: CoefficientSet,
  factors: { readonly drag: number; readonly lift: number },
): CoefficientSet {
  return {
    ...set,
    drag: (re, s) => factors.drag * set.drag(re, s),
    lift: (re, s) => factors.lift * set.lift(re, s),
  };
}

/** Beyond S = 0.6 nothing was measured: coefficients stay what they are there. */
function heldSpin(s: number): number {
  return s > 0.6 ? 0.6 : s > 0 ? s : 0;
}
