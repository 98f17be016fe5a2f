// The mean flight through all sets, its slopes, and that what was asked before changes no digit.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { agree } from '../../src/model/agreement.ts';
import { derive } from '../../src/model/derive.ts';
import { localSlopes } from '../../src/model/estimate.ts';
import {
  coarseTolerance,
  flightInputs,
  flightOutputs,
  flightSlopes,
  flownBySets,
  meanFlight,
} from '../../src/model/flights.ts';
import { explainQuantity } from '../../src/model/explain.ts';
import { remembered } from '../../src/model/remembered.ts';
import { scaleOf } from '../../src/model/scales.ts';
import { flightRules } from '../../src/model/rules/flight.ts';
import type { Situation } from '../../src/model/value.ts';
import { windowsFromFlight } from '../../src/model/windows.ts';
import { builtIn } from '../../src/registry/registry.ts';

const breeze = { clubKind: 'iron', windBearing: 0.7 };
const still = { clubKind: 'iron', windBearing: undefined };
const iron = [52, 0.3, 0.02, 600, -0.06, 291, 99000, 0.6, 0, 1];
const widths = flightInputs.map((id) => scaleOf(id, builtIn));

describe('flightSlopes', () => {
  for (const [words, inputs, context] of [
    ['in still air', iron, still],
    ['in wind', iron.with(8, 4), breeze],
  ] as const) {
    it(`are those of differences of the mean flight ${words}, to a small part of the step's own inexactness`, () => {
      const slopes = flightSlopes(inputs, widths, context)!;
      const mean = meanFlight(inputs, context, coarseTolerance)!;
      const inexact = flightRules
        .find(({ name }) => name === 'flight')!
        .discrepancy.of(inputs, mean, context);
      for (const [i, id] of flightInputs.entries()) {
        const plain = localSlopes((at) => meanFlight(at, context, 1e-8), inputs, i, widths[i]!)!;
        for (const [o, output] of flightOutputs.entries()) {
          const off = Math.abs(slopes[i]![o]! - plain[o]!) * widths[i]!;
          assert.ok(
            off < (/temperature|pressure|humidity/.test(id) ? 0.02 : 0.1) * inexact[o]!,
            `${output} by ${id}: ${slopes[i]![o]} for ${plain[o]}`,
          );
        }
      }
    });
  }

  it('are none where no ball flies', () => {
    assert.equal(flightSlopes(iron.with(5, 100), widths, still), undefined);
    assert.deepEqual(flownBySets(iron.with(5, 100), still, coarseTolerance), [
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe('remembered', () => {
  it('gives what the function itself gives, whatever was asked before', () => {
    const sum = (numbers: readonly number[]): string => numbers.map((x) => String(1 / x)).join();
    const number = fc.constantFrom(0, -0, 1, 2.5, NaN);
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { maxLength: 30 }), (asked) => {
        const quick = remembered(2, 3, sum);
        for (const numbers of asked) assert.equal(quick(numbers), sum(numbers));
      }),
    );
  });

  it('asks the function once for the same numbers', () => {
    let asked = 0;
    const quick = remembered(1, 2, ([x]) => {
      asked += 1;
      return x!;
    });
    for (const x of [1, 2, 1, 2, 2, 1]) assert.equal(quick([x]), x);
    assert.equal(asked, 2);
  });
});

describe('what follows from a record', () => {
  const record = (speed: number, further: readonly [string, number, number][] = []): Situation => ({
    hand: 'right',
    clubKind: 'iron',
    windBearing: undefined,
    observations: new Map(
      (
        [
          ['flight.ball_speed', speed, 1.5],
          ['flight.launch_angle', 0.3, 0.02],
          ['flight.spin', 600, 40],
          ['flight.carry', 138, 4],
          ['flight.start', 0.02, 0.02],
          ['flight.curve', -4, 2],
          ...further,
        ] as const
      ).map(([id, value, u]) => [id, { id, value, u }]),
    ),
  });
  const all = (situation: Situation) => [
    agree(situation),
    derive(situation),
    windowsFromFlight(situation),
    explainQuantity(situation, 'flight.curve'),
  ];

  it('has the same digits whatever was computed before it', () => {
    const first = all(record(52));
    for (let n = 1; n < 40; n++) all(record(52 + n / 7));
    assert.deepEqual(all(record(52)), first);
    assert.deepEqual(all(record(52)), first);
    // Some forty whole records with all their explanations: half a minute on a slow machine.
  }).timeout(120_000);

  it('names each entry as it is now where only one that hangs on nothing has changed', () => {
    const elbow = (angle: number) => agree(record(52, [['checkpoints.top.trail_elbow_bend', angle, 0.1]]));
    const [before, after] = [elbow(1.5), elbow(1.6)];
    assert.deepEqual(after.posterior, before.posterior);
    assert.deepEqual(
      after.entries
        .filter((entry, i) => entry.value !== before.entries[i]!.value)
        .map(({ id, value }) => [id, value]),
      [['checkpoints.top.trail_elbow_bend', 1.6]],
    );
  });
});
