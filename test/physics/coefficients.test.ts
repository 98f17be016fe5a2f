// Tests of the coefficient sets: bounded and smooth wherever a ball may get to.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { coefficientSets, scaledSet, smitsSmith } from '../../src/physics/coefficients.ts';
import { anyNumber, between } from './scenarios.ts';

describe('coefficientSets', () => {
  for (const set of coefficientSets) {
    it(`stays bounded for any flow (${set.name})`, () => {
      fc.assert(
        fc.property(anyNumber, anyNumber, (re, s) => {
          const [drag, lift] = [set.drag(Math.abs(re), Math.abs(s)), set.lift(Math.abs(re), Math.abs(s))];
          if (Number.isNaN(re)) return;
          assert.ok(drag > 0.1 && drag < 2.2, `drag ${drag}`);
          assert.ok(lift >= 0 && lift < 0.7, `lift ${lift}`);
        }),
      );
    });

    it(`lifts nothing without spin and more with more of it (${set.name})`, () => {
      fc.assert(
        fc.property(between(4e4, 2.4e5), between(0, 0.59), (re, s) => {
          assert.equal(set.lift(re, 0), 0);
          assert.ok(set.lift(re, s + 0.01) > set.lift(re, s));
          assert.ok(set.drag(re, s + 0.01) > set.drag(re, s));
        }),
      );
    });

    it(`has no jumps (${set.name})`, () => {
      fc.assert(
        fc.property(between(2e4, 3e5), between(0.02, 0.8), (re, s) => {
          assert.ok(Math.abs(set.drag(re + 10, s) - set.drag(re, s)) < 1e-3);
          assert.ok(Math.abs(set.lift(re + 10, s) - set.lift(re, s)) < 1e-3);
          assert.ok(Math.abs(set.lift(re, s + 1e-4) - set.lift(re, s)) < 1e-3);
        }),
      );
    });

    it(`names its source and where it holds (${set.name})`, () => {
      assert.match(set.source, /\w+/);
      assert.match(set.validity, /held/);
    });
  }
});

describe('scaledSet', () => {
  it('multiplies drag and lift and keeps the rest', () => {
    const set = scaledSet(smitsSmith, { drag: 1.1, lift: 0.9 });
    assert.ok(Math.abs(set.drag(1e5, 0.1) - 1.1 * smitsSmith.drag(1e5, 0.1)) < 1e-15);
    assert.ok(Math.abs(set.lift(1e5, 0.1) - 0.9 * smitsSmith.lift(1e5, 0.1)) < 1e-15);
    assert.equal(set.source, smitsSmith.source);
  });
});
