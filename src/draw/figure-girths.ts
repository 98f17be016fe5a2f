// How broad and deep a body is along its limbs, trunk and head, over stature; draws nothing.

/**
 * Half the breadth over stature, at shares of the way down each segment. Breadth of hips and shoulders outside fit Drillis &
 * Contini; all other girths are drawn after nature: judgement.
 */
export const girths = {
  thigh: [
    [0, 0.046],
    [0.25, 0.048],
    [0.65, 0.038],
    [1, 0.031],
  ],
  shank: [
    [0, 0.03],
    [0.28, 0.0325],
    [0.65, 0.024],
    [1, 0.0185],
  ],
  upperArm: [
    [0, 0.03],
    [0.3, 0.0285],
    [0.7, 0.024],
    [1, 0.021],
  ],
  forearm: [
    [0, 0.0205],
    [0.25, 0.0225],
    [0.65, 0.018],
    [1, 0.0145],
  ],
  hand: [
    [0, 0.015],
    [0.6, 0.019],
    [1, 0.019],
  ],
  fists: [
    [0, 0.018],
    [0.5, 0.0205],
    [1, 0.018],
  ],
  neck: [
    [0, 0.036],
    [0.5, 0.03],
    [1, 0.03],
  ],
  yoke: [
    [0, 0.0275],
    [0.25, 0.033],
    [0.5, 0.036],
    [0.75, 0.033],
    [1, 0.0275],
  ],
  sole: [
    [0, 0.0215],
    [0.6, 0.021],
    [1, 0.019],
  ],
  toes: [
    [0, 0.019],
    [1, 0.012],
  ],
  instep: [
    [0, 0.0185],
    [0.6, 0.022],
    [1, 0.02],
  ],
} as const satisfies Record<string, readonly (readonly [number, number])[]>;

/** A level across the trunk or the head: how far along its line, and half its breadth and depth over stature. */
export interface Level {
  readonly along: number;
  readonly side: number;
  readonly deep: number;
  /** How far the middle lies before the line. */
  readonly before: number;
}

const level = (along: number, side: number, deep: number, before = 0): Level => ({
  along,
  side,
  deep,
  before,
});

/** Shares of the way from hips to shoulders. */
export const hipLevels = [
  level(-0.22, 0.03, 0.028),
  level(-0.16, 0.075, 0.056, -0.008),
  level(-0.05, 0.098, 0.072, -0.014),
  level(0.08, 0.095, 0.072, -0.01),
  level(0.2, 0.085, 0.06),
  level(0.29, 0.05, 0.035),
];
export const trunkLevels = [
  level(0.12, 0.05, 0.036),
  level(0.18, 0.086, 0.06),
  level(0.36, 0.076, 0.056, 0.004),
  level(0.55, 0.084, 0.063, -0.002),
  level(0.75, 0.095, 0.072, -0.008),
  level(0.9, 0.1, 0.07, -0.012),
  level(1.02, 0.082, 0.05, -0.01),
  level(1.09, 0.05, 0.034, -0.006),
];
/** Heights above and below the ear over stature. */
export const headLevels = [
  level(-0.066, 0.012, 0.012, 0.032),
  level(-0.054, 0.026, 0.03, 0.022),
  level(-0.028, 0.037, 0.05, 0.01),
  level(0.005, 0.043, 0.057, 0.004),
  level(0.035, 0.0435, 0.059, 0),
  level(0.057, 0.034, 0.045, -0.003),
  level(0.066, 0.014, 0.02, -0.004),
];
