// What is expected of a player's posture and balance at each checkpoint where nothing was recorded; all wide, none measured.

export type SwingCheckpoint =
  | 'address'
  | 'takeaway'
  | 'lead_arm_parallel_back'
  | 'top'
  | 'lead_arm_parallel_down'
  | 'shaft_parallel_down'
  | 'impact'
  | 'shaft_parallel_through'
  | 'finish';

export interface Prior {
  /** SI */
  readonly value: number;
  /** Standard uncertainty, SI. */
  readonly u: number;
}

export interface BalancePriors {
  /** Acceleration of the centre of mass toward the target, m/s². */
  readonly acceleration: Prior;
  /** Middle of the grip ahead of the ball, m. */
  readonly hands: Prior;
  /** Turn of the shoulders away from the target, rad. */
  readonly shoulderTurn: Prior;
  /** How far the lead knee is ahead of the straight line from hip to ankle, m. */
  readonly leadKnee: Prior;
  /** The same of the trail knee. */
  readonly trailKnee: Prior;
  /** Whether the centre of mass itself is well described, m: the model's own discrepancy at this checkpoint. */
  readonly discrepancy: number;
}

/**
 * Source of every number here.
 *
 * Accelerations: standing still there is none, and what a body sways is a few hundredths of m/s². In the swing the order of
 * size follows from what pressure mats show: the pressure is 5 to 15 cm away from the centre of mass, which at k ≈ 0.11 s² is 0.5 to
 * 1.5 m/s². At the top the body is being pushed toward the target, so pressure lies behind the centre of mass; from mid-downswing it
 * is usually braked, so pressure lies ahead. Usually: in one of the two styles that Ball & Best 2007 found at every level of skill
 * (62 golfers) the pressure runs back at impact. Hence ± 1.8 m/s² there, which moves the pressure by 0.2 m, about
 * two fifths of a stance: no lead pressure between 0 and 1 is impossible.
 */
export const balancePriorSource =
  'judgement: usual postures face-on and what pressure mats show; Ball & Best 2007 for the width at impact';

const degree = Math.PI / 180;

export const balancePriors: Readonly<Record<SwingCheckpoint, BalancePriors>> = {
  address: row([0, 0.05], [0.02, 0.07], [0, 8], [0, 0.03], [0, 0.03], 0.012),
  takeaway: row([0, 0.7], [-0.38, 0.15], [30, 12], [-0.03, 0.04], [0, 0.03], 0.015),
  lead_arm_parallel_back: row([0.4, 0.9], [-0.75, 0.16], [70, 15], [-0.06, 0.05], [0, 0.04], 0.018),
  top: row([0.9, 1], [-0.4, 0.22], [90, 15], [-0.08, 0.05], [0, 0.04], 0.02),
  lead_arm_parallel_down: row([0, 1.5], [-0.65, 0.18], [45, 15], [-0.02, 0.05], [0.03, 0.04], 0.02),
  shaft_parallel_down: row([-0.5, 1.7], [-0.25, 0.15], [15, 15], [0, 0.05], [0.05, 0.05], 0.02),
  impact: row([-0.5, 1.8], [0.08, 0.06], [-25, 15], [0, 0.04], [0.07, 0.05], 0.02),
  shaft_parallel_through: row([-0.5, 1.8], [0.4, 0.2], [-55, 20], [0, 0.04], [0.12, 0.06], 0.025),
  finish: row([0, 0.4], [0, 0.3], [-110, 25], [0, 0.05], [0.2, 0.1], 0.035),
};

type Pair = readonly [value: number, u: number];

function row(
  acceleration: Pair,
  hands: Pair,
  turnInDegrees: Pair,
  leadKnee: Pair,
  trailKnee: Pair,
  discrepancy: number,
): BalancePriors {
  return {
    acceleration: prior(acceleration, 1),
    hands: prior(hands, 1),
    shoulderTurn: prior(turnInDegrees, degree),
    leadKnee: prior(leadKnee, 1),
    trailKnee: prior(trailKnee, 1),
    discrepancy,
  };
}

function prior([value, u]: Pair, unit: number): Prior {
  return { value: value * unit, u: u * unit };
}
