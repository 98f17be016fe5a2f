// What a plan leads to and how goals stand, in words: no digits that nobody reads, no values that cannot be, goals in their own unit.
import assert from 'node:assert/strict';
import { goalWords, outlookWords, spreadOf } from '../../src/checks/forecast-words.ts';
import { forecastOf } from '../../src/analysis/plan.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { analyseFiles } from './files.ts';

const deg = Math.PI / 180;
const start = builtIn.find('flight.start')!;
const carry = builtIn.find('flight.carry')!;

describe('words of a forecast', () => {
  it('tell no movement that nobody could read', () => {
    const words = (difference: number, uDifference: number): string =>
      outlookWords({ quantity: start, origin: 'model', value: null, u: null, difference, uDifference });
    for (const [difference, u] of [
      [-0.01, 0.05],
      [-0.03, 0.024],
    ] as const)
      assert.equal(
        words(difference * deg, u * deg),
        'start direction moves by less than anybody can read, by model',
      );
    assert.equal(words(-0.5 * deg, 0.2 * deg), 'start direction moves 0.50 deg left ± 0.20 deg, by model');
    assert.match(words(0, 2 * deg), /moves 0\.0 deg ± 2\.0 deg/);
  });

  it('leave out what cannot be', () => {
    assert.equal(spreadOf(carry, 5, 3), '0..11 m');
    assert.equal(spreadOf(carry, 100, 3), '94..106 m');
  });

  it('answer goals in the unit in which they were asked', () => {
    const { subject, account } = analyseFiles({
      'a.swing.yaml': `swing: 1
student: r.student.yaml
flight: { carry: 150 m ± 2 m, finish: 9.144 m left ± 1 m }
goals: [{ carry: 160..170 yd, finish: 5 yd left..5 yd right, start: 0 deg }]
`,
      'r.student.yaml': 'student: 1\nhand: right\n',
    });
    const words = forecastOf(subject, account)!.goals.map(goalWords);
    // A yard is 0.9144 m exactly (international yard and pound agreement of 1959, from memory).
    assert.match(words[0]!, /^carry 160\.\.170 yd: now 164\.0 yd ± 2\.2 yd/);
    assert.match(words[1]!, /^finish 5 yd left\.\.5 yd right: now 10\.0 yd left ± 1\.1 yd/);
  });
});
