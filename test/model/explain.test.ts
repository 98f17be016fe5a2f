// Holds explanations of quantities to the fit that they explain: shares, steps, and values without an entry.
import assert from 'node:assert/strict';
import { agree } from '../../src/model/agreement.ts';
import { explainQuantity } from '../../src/model/explain.ts';
import type { Situation } from '../../src/model/value.ts';
import { everything } from './situations.ts';

const all: Situation = {
  hand: 'right',
  clubKind: 'hybrid',
  windBearing: undefined,
  observations: everything,
};

describe('the explanation of a quantity', () => {
  const explained = explainQuantity(all, 'delivery.face_to_path');

  it('gives the value and uncertainty of the agreement', () => {
    const known = agree(all).posterior.get('delivery.face_to_path');
    assert.ok(explained && known);
    assert.deepEqual([explained.value, explained.u], [known.value, known.u]);
  });

  it('shares the variance out whole, but for what is too small to tell', () => {
    const sum = explained!.shares.reduce((total, { share }) => total + share, 0);
    assert.ok(sum > 0.97 && sum <= 1 + 1e-9, `${sum}`);
  });

  it('names the steps from cause to effect', () => {
    const names = explained!.steps.map((step) => step.rule);
    assert.ok(names.includes('face-from-path') && names.includes('impact'));
    assert.ok(names.indexOf('face-from-path') < names.indexOf('impact'));
  });

  it('says what a record without an entry would give', () => {
    const { value, u } = explained!.without.find(({ id }) => id === 'delivery.face_to_path')!;
    const observations = new Map(everything);
    observations.delete('delivery.face_to_path');
    const without = agree({ ...all, observations }).posterior.get('delivery.face_to_path')!;
    assert.ok(Math.abs(value - without.value) < 0.1 * without.u, `${value} ${without.value}`);
    assert.ok(Math.abs(u / without.u - 1) < 0.05, `${u} ${without.u}`);
  });

  it('is none for a quantity that the fit does not have', () => {
    assert.equal(explainQuantity(all, 'checkpoints.top.shoulder_turn'), undefined);
  });
});
