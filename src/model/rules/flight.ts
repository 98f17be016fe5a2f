// The steps from the ball's launch to where it flies, lands and comes to rest; knows nothing of the club.
import { airAt } from '../../physics/air.ts';
import { coefficientSets } from '../../physics/coefficients.ts';
import { curveFrom, finishFrom, startFrom } from '../../physics/flight-geometry.ts';
import {
  coarseTolerance,
  fineTolerance,
  flightInputs,
  flightOutputs,
  flightSlopes,
  flownBySets,
  meanFlight,
} from '../flights.ts';
import { exact, type Context, type Rule } from '../rule.ts';
import type { Assumption, Calibration } from '../value.ts';

const degree = Math.PI / 180;
const seenFromAbove = 'Geometry of the flight seen from above';

export const flightRules: readonly Rule[] = [
  {
    name: 'pressure-from-altitude',
    formula: 'p = 101325 Pa · (1 − 0.0065 H / 288.15 K)^5.256',
    source: 'ISO 2533:1975',
    inputs: ['conditions.altitude'],
    outputs: ['conditions.pressure'],
    compute: ([altitude]) => {
      const air = airAt({ altitude: altitude! });
      return air && [air.pressure];
    },
    discrepancy: { of: () => [900], reason: 'Highs and lows of the weather, 9 hPa by judgement.' },
  },
  {
    name: 'finish-from-curve',
    formula: 'finish = carry · sin(start + asin(curve / carry))',
    source: seenFromAbove,
    inputs: ['flight.start', 'flight.curve', 'flight.carry'],
    outputs: ['flight.finish'],
    compute: ([start, curve, carry]) => single(finishFrom(start!, curve!, carry!)),
    discrepancy: exact,
    yields: ['flight.curve', 'flight.start'],
  },
  {
    name: 'curve-from-finish',
    direction: 'inverse',
    formula: 'curve = carry · sin(asin(finish / carry) − start)',
    source: seenFromAbove,
    inputs: ['flight.start', 'flight.finish', 'flight.carry'],
    outputs: ['flight.curve'],
    compute: ([start, finish, carry]) => single(curveFrom(start!, finish!, carry!)),
    discrepancy: exact,
  },
  {
    name: 'start-from-finish',
    direction: 'inverse',
    formula: 'start = asin(finish / carry) − asin(curve / carry)',
    source: seenFromAbove,
    inputs: ['flight.curve', 'flight.finish', 'flight.carry'],
    outputs: ['flight.start'],
    compute: ([curve, finish, carry]) => single(startFrom(curve!, finish!, carry!)),
    discrepancy: exact,
  },
  {
    name: 'flight',
    formula:
      'm · dv/dt = drag(Re, S) + lift(Re, S) − m · g, mean over three published sets of coefficients, multiplied where calibrated',
    source: coefficientSets.map((set) => set.source).join('; '),
    inputs: flightInputs,
    outputs: flightOutputs,
    compute: (inputs, context) => meanFlight(inputs, context, fineTolerance),
    roughly: (inputs, context) => meanFlight(inputs, context, coarseTolerance),
    slopes: flightSlopes,
    discrepancy: {
      of: flightDiscrepancy,
      reason:
        'Standard deviation over three published sets of coefficients, and what balls differ by among themselves: 0.02 in both ' +
        'coefficients, 18 m of driver carry from end to end (Lyu, Kensrud, Smith & Tosaya 2018, Proc. 2(6):238), shares by judgement. ' +
        'Where drag and lift are calibrated, the uncertainties of their multipliers stand in place of the first; beyond the ball ' +
        'speeds of the calibration the spread comes back over a tenth of the speed (judgement).',
    },
    restsOn: (inputs, { calibration }) => calibration && restsOnCalibration(inputs[0]!, calibration),
  },
  {
    name: 'total-from-run',
    formula: 'total = carry + bounce and run',
    source: 'definition',
    inputs: ['flight.carry', 'flight.run'],
    outputs: ['flight.total'],
    compute: ([carry, further]) => [carry! + further!],
    discrepancy: exact,
    yields: ['flight.carry'],
  },
];

function flightDiscrepancy(
  inputs: readonly number[],
  outputs: readonly number[],
  context: Context,
): readonly number[] {
  const { calibration } = context;
  const [carry, curve, apex, , time, further] = outputs;
  const balls = [0.02 * carry!, 0.05 * curve!, 0.04 * apex!, 1 * degree, 0.02 * time!, 2 + 0.3 * further!];
  const share = calibration === undefined ? 1 : shareBeyond(inputs[0]!, calibration);
  const spreads = share > 0 ? spreadOfSets(inputs, outputs, context) : outputs.map(() => 0);
  const factors = calibration ? spreadOfFactors(inputs, context, calibration) : outputs.map(() => 0);
  return balls.map((ball, o) => Math.hypot(share * spreads[o]!, factors[o]!, ball));
}

/** Standard deviation over the published sets. */
function spreadOfSets(
  inputs: readonly number[],
  outputs: readonly number[],
  context: Context,
): readonly number[] {
  const sets = flownBySets(inputs, context, coarseTolerance);
  return outputs.map((mean, o) => {
    const squares = sets.map((outcome) => ((outcome?.[o] ?? mean) - mean) ** 2);
    return Math.sqrt(squares.reduce((a, b) => a + b, 0) / (sets.length - 1));
  });
}

/** u² = gᵀ V g over the two multipliers with their correlation (JCGM 100:2008, eq. 13); zero where nothing can be flown. */
function spreadOfFactors(
  inputs: readonly number[],
  context: Context,
  { drag, lift, correlation }: Calibration,
): readonly number[] {
  const at = (d: number, l: number): readonly number[] | undefined =>
    meanFlight(inputs, context, coarseTolerance, { drag: d, lift: l });
  const [d, l] = [drag.value, lift?.value ?? 1];
  const half = (u: number, move: (by: number) => readonly number[] | undefined): readonly number[] => {
    const [above, below] = u > 0 ? [move(u), move(-u)] : [];
    return flightOutputs.map((_, o) => ((above?.[o] ?? 0) - (below?.[o] ?? 0)) / 2);
  };
  const byDrag = half(Math.min(drag.u, d / 2), (by) => at(d + by, l));
  const byLift = half(Math.min(lift?.u ?? 0, l / 2), (by) => at(d, l + by));
  return flightOutputs.map((_, o) => {
    const [a, b] = [byDrag[o]!, byLift[o]!];
    return Math.sqrt(Math.max(0, a * a + b * b + 2 * correlation * a * b));
  });
}

/** From 0 at the ends of the ball speeds that were calibrated to 1 a tenth beyond them; 0 where those are not known. */
function shareBeyond(speed: number, { ballSpeed }: Calibration): number {
  if (ballSpeed === undefined) return 0;
  const { from, to } = ballSpeed;
  const beyond = Math.max((speed - to) / (0.1 * to), (from - speed) / (0.1 * from), 0);
  return Math.min(1, beyond);
}

function restsOnCalibration(speed: number, calibration: Calibration): Assumption {
  const { drag, lift, shots } = calibration;
  const factors = `drag × ${drag.value.toFixed(2)}${lift === undefined ? '' : ` and lift × ${lift.value.toFixed(2)}`}`;
  const basis = shots === undefined ? 'your own shots' : `${shots} shots of your own`;
  const beyond = shareBeyond(speed, calibration) > 0 ? ' at other ball speeds' : '';
  return {
    id: 'flight.calibration',
    value: drag.value,
    u: drag.u,
    words: `${factors} as calibrated on ${basis}${beyond}`,
    source: 'the workspace file',
  };
}

function single(number: number | undefined): readonly number[] | undefined {
  return number === undefined ? undefined : [number];
}
