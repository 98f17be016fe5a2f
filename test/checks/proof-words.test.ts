// What a proof asks for is read with its side, as numbers are everywhere; the text stays as it is written.
import assert from 'node:assert/strict';
import { proofText, sidesOf } from '../../src/checks/proof-words.ts';
import { proofAsks } from '../../src/judgement/proof.ts';
import { builtIn } from '../../src/registry/registry.ts';

const sides = (text: string): string => sidesOf(proofAsks(text, builtIn));

describe('the words of a proof', () => {
  it('say the side of a number below zero, and turn the sign with it', () => {
    assert.equal(
      proofText(proofAsks('delivery.path  > -2 deg', builtIn)),
      'delivery.path > -2 deg (club path under 2 deg left)',
    );
    assert.equal(sides('delivery.attack <= -3.5 deg'), 'attack angle 3.5 deg down or more');
    assert.equal(
      sides('checkpoints.impact.shaft_lean >= 6 deg'),
      'shaft lean at impact 6 deg forward or more',
    );
    assert.equal(sides('-2 deg < delivery.path'), 'club path under 2 deg left');
  });

  it('say of zero on which side it is met', () => {
    assert.equal(sides('delivery.attack < 0 deg'), 'attack angle down');
    assert.equal(sides('delivery.low_point.ahead >= 0 cm'), 'low point ahead or 0');
  });

  it('take face less path for what it is, and of other sums say what the signs are', () => {
    assert.equal(sides('delivery.face - delivery.path < 4 deg'), 'face to path under 4 deg right');
    assert.equal(
      sides('delivery.path > -2 deg and delivery.attack < 0 deg'),
      '+ is right, - is left; + is up, - is down',
    );
  });

  it('say nothing where no sign has a side, or nothing can be read', () => {
    assert.equal(sides('checkpoints.impact.lead_pressure > 62 %'), '');
    assert.equal(proofText(proofAsks('delivery.path >', builtIn)), 'delivery.path >');
    assert.equal(sides(''), '');
  });
});
