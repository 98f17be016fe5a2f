// How long the agreement of a whole record takes, beside one flight of the ball and one derivation; prints medians.
import { agree } from '../../src/model/agreement.ts';
import { derive } from '../../src/model/derive.ts';
import { flightRules } from '../../src/model/rules/flight.ts';
import type { Observation, Situation } from '../../src/model/value.ts';
import { quantities } from '../../src/registry/generated.ts';
import { drawRecords } from './records.ts';

function median(run: () => unknown): number {
  for (let n = 0; n < 60; n++) run();
  const times = Array.from({ length: 41 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[20]!;
}

/** The same record with every reading a little different each time, so that nothing is known from before. */
let times = 0;
function anew(situation: Situation): Situation {
  times += 1;
  const moved = [...situation.observations.values()].map((one): [string, Observation] => [
    one.id,
    { ...one, value: one.value + 1e-4 * times * one.u },
  ]);
  return { ...situation, observations: new Map(moved), readings: new Map() };
}

const drawn = drawRecords(60, 5).map(({ situation }) => situation);
const bySize = drawn.toSorted((a, b) => a.observations.size - b.observations.size);
const largest = bySize.at(-1)!;

/** Every quantity entered: those of the largest generated record as drawn, all others in the middle of practice. */
const everything: Situation = {
  ...largest,
  observations: new Map(
    quantities.map(({ id, practice, bounds, uncertainty }): [string, Observation] => {
      const { min, max } = practice ?? bounds;
      const middle = { id, value: (min + max) / 2, u: uncertainty.otherwise };
      return [id, largest.observations.get(id) ?? middle];
    }),
  ),
};

const flight = flightRules.find((rule) => rule.name === 'flight')!;
const launch = [57, 0.25, 0.02, 480, -0.08, 287, 97500, 0.6, 0, 1];
const still = { clubKind: 'hybrid', windBearing: undefined };
console.log(
  `one flight through three sets of coefficients   ${median(() => flight.compute(launch.with(0, 57 + 1e-4 * times++), still)).toFixed(2)} ms`,
);
for (const [words, situation] of [
  ['a middling record', bySize[30]!],
  ['the largest of 60 generated records', largest],
  ['every quantity of the registry entered', everything],
] as const) {
  const { conflicts } = agree(situation);
  const title = `${words}: ${situation.observations.size} entries, ${conflicts.length} conflicts`;
  console.log(
    `${title}\n  derive ${median(() => derive(anew(situation))).toFixed(2)} ms, agree ${median(() => agree(anew(situation))).toFixed(2)} ms`,
  );
}
