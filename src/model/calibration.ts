// Fits multipliers of drag and lift to measured shots and says where that says too little; knows no record and no workspace file.
import {
  fitted,
  plainCarries,
  prepared,
  type CalibrationShot,
  type Fitted,
  type PreparedShot,
} from './calibration-fit.ts';
import type { Calibration } from './value.ts';

export interface CalibrationFit extends Calibration {
  readonly shots: number;
  readonly ballSpeed: { readonly from: number; readonly to: number };
  /** Root mean square of carry less prediction, m: with the published coefficients as they are, and with the multipliers. */
  readonly before: number;
  readonly after: number;
  /** Shots that lie far from all others after the fit and were left out of it. */
  readonly leftOut: number;
}

export type CalibrationOutcome =
  | {
      readonly kind: 'fitted';
      readonly fit: CalibrationFit;
      /** Sentences on what the fit does not say. */
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Judgement: two factors and the spread of what is left want some five shots each. */
export const fewestShots = 10;

/** More are thinned out evenly: the uncertainty no longer falls with them, since sessions share their air. */
const mostShots = 500;

/** Beyond these the two factors are not told apart, or a factor is hardly known (judgement). */
const mostCorrelated = 0.98;
const mostUncertain = 0.15;

/** No ball's drag or lift is less than half or more than twice what was published of others (judgement). */
const [least, most] = [0.5, 2];

/** Shots farther from the fit than this many robust standard deviations are left out (Iglewicz & Hoaglin 1993, from memory). */
const farOut = 3.5;

/**
 * The multipliers of published drag and lift under which the mean of the three published sets flies the shots as they
 * flew. Each carry (curve, apex) is weighed by its own uncertainty and that of its launch, to first order; temperature,
 * pressure and wind of a session are parameters of their own with their uncertainties. Where the shots scatter more
 * than that, all uncertainties are enlarged by the Birge ratio √(χ²/(n − p)) (Birge 1932, Phys. Rev. 40:207). A bias of the
 * instrument that all shots share is taken into the multipliers, and that carry and apex of one shot share the errors of
 * its launch is left out of account: over drawn practices the uncertainties hold all the same (test/model/calibration.test.ts).
 */
export function calibrate(given: readonly CalibrationShot[]): CalibrationOutcome {
  const stride = Math.max(1, Math.ceil(given.length / mostShots));
  const shots = given.filter((_, index) => index % stride === 0).flatMap((shot) => prepared(shot) ?? []);
  if (shots.length < fewestShots) {
    return {
      kind: 'refused',
      reason: `Found ${shots.length} shots with ball speed, launch angle, spin and carry; expected at least ${fewestShots}.`,
    };
  }
  const first = fitted(shots, 'both') ?? fitted(shots, 'drag');
  if (first === undefined)
    return { kind: 'refused', reason: 'No multiplier makes these shots fly as they flew.' };
  const kept = withoutFarOut(shots, first);
  const both = fitted(kept, 'both');
  const isApart =
    both !== undefined && Math.abs(both.correlation) <= mostCorrelated && both.lift.u <= mostUncertain;
  const chosen = isApart ? both : fitted(kept, 'drag');
  if (chosen === undefined || chosen.drag.u > mostUncertain)
    return {
      kind: 'refused',
      reason: 'These shots say too little of drag; expected more of them, or surer ones.',
    };
  const factors = isApart ? [chosen.drag.value, chosen.lift.value] : [chosen.drag.value];
  if (!factors.every((factor) => factor >= least && factor <= most)) {
    const words = factors.map((factor) => factor.toFixed(2)).join(' and lift × ');
    return {
      kind: 'refused',
      reason: `The shots would need drag × ${words}; expected ${least} to ${most}, so look at their units.`,
    };
  }
  return { kind: 'fitted', ...described(kept, chosen, isApart, shots.length - kept.length) };
}

/** Leaves out what lies far from the fit in the carry, measured by the median of what is left over. */
function withoutFarOut(shots: readonly PreparedShot[], { carries }: Fitted): readonly PreparedShot[] {
  const sizes = carries.map(Math.abs).sort((a, b) => a - b);
  const sigma = 1.4826 * sizes[sizes.length >> 1]!;
  const kept = shots.filter((_, index) => !(Math.abs(carries[index]!) > farOut * sigma));
  return kept.length >= fewestShots ? kept : shots;
}

function described(
  shots: readonly PreparedShot[],
  { drag, lift, correlation, carries }: Fitted,
  isApart: boolean,
  leftOut: number,
): Pick<Extract<CalibrationOutcome, { kind: 'fitted' }>, 'fit' | 'cautions'> {
  const speeds = shots.map(({ launch }) => launch.ballSpeed);
  const ballSpeed = {
    from: speeds.reduce((a, b) => Math.min(a, b)),
    to: speeds.reduce((a, b) => Math.max(a, b)),
  };
  const sessions = new Set(shots.map(({ shot }) => shot.session)).size;
  const range = `${ballSpeed.from.toFixed(1)} to ${ballSpeed.to.toFixed(1)} m/s`;
  const cautions = [
    `It holds for ball speeds of ${range}; beyond, the spread of the published coefficients is added again.`,
    ...(isApart ? [] : ['Lift cannot be told from drag by these shots, so lift is left as published.']),
    ...(sessions > 1
      ? []
      : [
          'All shots are of one session, so that its wind and air stand in the factors as far as they are known.',
        ]),
    ...(leftOut === 0
      ? []
      : [
          `${leftOut} ${leftOut === 1 ? 'shot lies' : 'shots lie'} far from the others and ${leftOut === 1 ? 'is' : 'are'} left out.`,
        ]),
  ];
  const fit: CalibrationFit = {
    drag,
    lift: isApart ? lift : undefined,
    correlation: isApart ? correlation : 0,
    shots: shots.length,
    ballSpeed,
    before: rootMeanSquare(plainCarries(shots)),
    after: rootMeanSquare(carries),
    leftOut,
  };
  return { fit, cautions };
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
