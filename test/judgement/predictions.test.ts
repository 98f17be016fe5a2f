// How good a coach's predictions have been, over many that are drawn with known errors.
import assert from 'node:assert/strict';
import { normals, uniforms } from '../model/draws.ts';
import type { Measured } from '../../src/judgement/measured.ts';
import { judgeOutcome } from '../../src/judgement/outcome.ts';
import { builtIn } from '../../src/registry/registry.ts';
import type { Entry } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assessPredictions, type Tested } from '../../src/judgement/predictions.ts';

describe('many predictions', () => {
  // Truths are drawn, predicted with one error and measured with another; both state their standard deviations honestly.
  const generated = (count: number, stated: number, lean = 0): readonly Tested[] => {
    const [normal, uniform] = [normals(7), uniforms(11)];
    return Array.from({ length: count }, (_, n) => {
      const hand = n % 3 === 0 ? 'left' : 'right';
      const [up, um] = [1 + uniform(), 0.5 + uniform()];
      const truth = 4 * normal();
      const predicted = truth + up * normal() + lean;
      const text = `predicted: { delivery.path: ${written(predicted)} ± ${(up * stated).toFixed(4)} deg by ${n % 2 === 0 ? 'model' : 'belief'} }\n`;
      const value: Measured = known(((truth + um * normal()) * Math.PI) / 180, (um * Math.PI) / 180);
      const outcome = judgeOutcome(
        { plan: [], predicted: predictedIn(text), measured: value, coverage: 1, registry: builtIn },
        value,
      );
      return {
        outcome: outcome.predictions[0]!,
        lesson: `lesson ${Math.floor(n / 4)}`,
        hand,
        followed: outcome.followed,
      };
    });
  };
  const predictedIn = (text: string): ReadonlyMap<string, Entry> => {
    const document = parseDocument('swing', text);
    return document.kind === 'swing' ? document.predicted : new Map();
  };
  const written = (degrees: number): string =>
    `${Math.abs(degrees).toFixed(4)} deg ${degrees < 0 ? 'left' : 'right'}`;
  const known = (value: number, u: number): Measured => ({
    of: () => ({ value, u, how: 'entered', shots: undefined, isInDoubt: false }),
    joint: () => ({ means: Float64Array.of(value), covariance: Float64Array.of(u * u) }),
  });

  it('with honest intervals are inside 95 times in 100, and nothing leans', () => {
    const { all, byOrigin, byQuantity } = assessPredictions(generated(600, 1));
    const share = all.inside / all.tested;
    // 600 trials at 0.95 have a standard deviation of 0.0089.
    assert.ok(Math.abs(share - 0.95) < 0.027, String(share));
    assert.ok(all.interval!.min < 0.95 && all.interval!.max > 0.95);
    assert.equal(all.trust, 'as good as said');
    assert.ok(Math.abs(all.spread! - 1) < 0.1, String(all.spread));
    assert.deepEqual(
      [...byOrigin].map(([origin, { tested }]) => [origin, tested]),
      [
        ['belief', 300],
        ['model', 300],
      ],
    );
    assert.equal(byQuantity[0]?.lean, 'none seen');
  });

  it('with intervals of a third of their width are too sure', () => {
    assert.equal(assessPredictions(generated(120, 0.33)).all.trust, 'too sure');
  });

  it('with intervals three times as wide are too careful', () => {
    assert.equal(assessPredictions(generated(200, 4)).all.trust, 'too careful');
  });

  it('that lie too far right are said to lean', () => {
    const same = generated(80, 1, 2).map((one) => ({ ...one, hand: 'right' as const }));
    const [tally] = assessPredictions(same).byQuantity;
    assert.equal(tally?.lean, 'too high');
    // Two degrees, with a standard deviation of about 1.8 deg/√80.
    assert.ok(Math.abs(tally.miss + (2 * Math.PI) / 180) < (0.7 * Math.PI) / 180, String(tally.miss));
    assert.equal(tally.isMirrored, false);
  });

  it('change sides for left-handers where both hands play', () => {
    const [tally] = assessPredictions(generated(80, 1)).byQuantity;
    assert.equal(tally?.isMirrored, true);
  });

  it('that are few say nothing yet', () => {
    assert.equal(assessPredictions(generated(8, 1)).all.trust, 'cannot tell');
    assert.equal(assessPredictions([]).all.interval, undefined);
    const oneLesson = generated(40, 1).map((one) => ({ ...one, lesson: 'one' }));
    assert.equal(assessPredictions(oneLesson).all.trust, 'cannot tell');
  });
});
